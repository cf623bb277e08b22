using PlanForge.Drafting.Model;

namespace PlanForge.Drafting.Cutting;

/// <summary>What a cut file holds: how many lines, arcs and circles, and how far the machine goes for each operation.</summary>
/// <param name="Lines">Straight segments.</param>
/// <param name="Arcs">Arcs that are no full circle.</param>
/// <param name="Circles">Full circles.</param>
/// <param name="Engraved">Length engraved, mm.</param>
/// <param name="Scored">Length scored, mm.</param>
/// <param name="Cut">Length cut through, mm.</param>
public sealed record CutFigures(int Lines, int Arcs, int Circles, double Engraved, double Scored, double Cut)
{
    /// <summary>All lengths together, mm.</summary>
    public double Length => Engraved + Scored + Cut;

    /// <summary>The figures of a drawing.</summary>
    /// <param name="drawing">The drawing.</param>
    /// <param name="profile">Which operations count.</param>
    /// <exception cref="ArgumentException">Something in the drawing that no machine does.</exception>
    public static CutFigures Of(CutDrawing drawing, CutProfile profile)
    {
        var (lines, arcs, circles) = (0, 0, 0);
        var lengths = new double[(int)CutOperation.Notes + 1];
        foreach (var (operation, path) in CutSteps.Of(drawing, profile))
        {
            lengths[(int)operation] += path.Length;
            if (path.AsCircle() is not null)
            {
                circles++;
                continue;
            }

            for (var i = 0; i < path.SegmentCount; i++)
            {
                var isLine = path.SegmentAt(i).IsLine;
                lines += isLine ? 1 : 0;
                arcs += isLine ? 0 : 1;
            }
        }

        return new(
            lines,
            arcs,
            circles,
            lengths[(int)CutOperation.Engrave],
            lengths[(int)CutOperation.Score],
            lengths[(int)CutOperation.CutInside] + lengths[(int)CutOperation.CutOutside]);
    }

    /// <summary>
    /// The time under the beam, s: each length over its speed. Ways between the lines come on top, and what has no speed.
    /// </summary>
    /// <param name="engrave">Speed of engraving, mm/s, over 0, or null when it is not known.</param>
    /// <param name="score">Speed of scoring, mm/s, over 0, or null.</param>
    /// <param name="cut">Speed of cutting, mm/s, over 0, or null.</param>
    public double Seconds(double? engrave, double? score, double? cut) =>
        (Engraved / (engrave ?? double.PositiveInfinity)) + (Scored / (score ?? double.PositiveInfinity)) + (Cut / (cut ?? double.PositiveInfinity));
}
