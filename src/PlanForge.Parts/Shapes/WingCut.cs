using System.Collections.Immutable;
using PlanForge.Geometry;
using PlanForge.Geometry.Fitting;

namespace PlanForge.Parts.Shapes;

/// <summary>
/// The line in which a plane square to the datum line cuts the wing's surface (moved out by the seat tape): on a former
/// the wood ends there. Two halves meet in a V on the centre line where there is dihedral.
/// </summary>
internal static class WingCut
{
    private const int StepCount = 24;

    /// <summary>The starboard half of the line from the centre outboard, x starboard and y up.</summary>
    /// <param name="wing">The wing.</param>
    /// <param name="side">Which surface.</param>
    /// <param name="seatTape">Thickness of the seat tape, mm.</param>
    /// <param name="station">The plane's station, mm.</param>
    /// <param name="halfBreadth">How far out the line is wanted, mm.</param>
    /// <returns>Exact samples; null where the plane misses the wing on the centre line.</returns>
    public static ImmutableArray<CurveSample>? Half(WingShape wing, WingSide side, double seatTape, double station, double halfBreadth)
    {
        if (IsFarFrom(wing, seatTape, station))
        {
            return null;
        }

        var samples = ImmutableArray.CreateBuilder<CurveSample>();
        int? panelBefore = null;
        var yBefore = 0.0;
        for (var i = 0; i <= StepCount; i++)
        {
            var y = halfBreadth * i / StepCount;
            if (At(wing, side, seatTape, station, y) is not { } here)
            {
                // A swept wing may end on the plane before the side is reached; the line then ends there.
                return i == 0 ? null : samples.Count >= 2 ? samples.ToImmutable() : null;
            }

            if (panelBefore is { } before && before != here.Panel)
            {
                AddCorner(wing, side, seatTape, station, (yBefore, before), (y, here.Panel), samples);
            }

            samples.Add(here.Sample);
            (panelBefore, yBefore) = (here.Panel, y);
        }

        return samples.ToImmutable();
    }

    // Before or behind all that a section of the root's chord can reach at up to 45 degrees of incidence, and the tape on it: the wing's shape
    // is not asked.
    private static bool IsFarFrom(WingShape wing, double seatTape, double station)
    {
        var (front, chord, tape) = (wing.Station, wing.RootChord, 1 + (10 * seatTape));
        return station < front - (chord / 2) - tape || station > front + (1.25 * chord) + tape;
    }

    /// <summary>Height of the line at a half-breadth, mm; null where the plane misses the wing.</summary>
    public static double? HeightAt(WingShape wing, WingSide side, double seatTape, double station, double halfBreadth) =>
        halfBreadth == 0 && IsFarFrom(wing, seatTape, station) ? null : At(wing, side, seatTape, station, halfBreadth)?.Sample.Point.Y;

    private static (CurveSample Sample, int Panel)? At(WingShape wing, WingSide side, double seatTape, double station, double y)
    {
        double Ahead(double w) => SeatAt(wing, side, seatTape, w, y).Seat.Point.X - station;
        if (RootFinder.Bracketed(Ahead, WingShape.Nose, 1, 1e-14) is not { } w)
        {
            return null;
        }

        var ((_, normal, seat), panel) = SeatAt(wing, side, seatTape, w, y);

        // Within the plane the line is square to the surface normal; outboard is positive.
        var direction = new Vector2(normal.Z, -normal.Y);
        direction = direction.X < 0 ? -direction : direction;
        return (new(new(seat.Y, seat.Z), direction.Unit()), panel);
    }

    // The seat at w and a given y: panel by panel outboard, along the panel by secant steps (y is all but linear there).
    private static (WingSeat Seat, int Panel) SeatAt(WingShape wing, WingSide side, double seatTape, double w, double y)
    {
        const int Rounds = 12;
        for (var panel = 0; ; panel++)
        {
            var isLast = panel == wing.Panels.Length - 1;
            var along = Math.Max(0, y - wing.Panels[panel].Start.Y);
            WingSeat seat = default;
            for (var round = 0; round < Rounds; round++)
            {
                seat = wing.SeatAt(panel, side, along, w, seatTape);
                var miss = y - seat.Point.Y;
                if (Math.Abs(miss) < 1e-12)
                {
                    break;
                }

                along += miss / seat.Surface.Du.Y;
            }

            if (isLast || along <= wing.Range(panel, side, w, seatTape).To)
            {
                return (seat, panel);
            }
        }
    }

    private static void AddCorner(
        WingShape wing, WingSide side, double seatTape, double station, (double Y, int Panel) a, (double Y, int Panel) b, ImmutableArray<CurveSample>.Builder samples)
    {
        while (b.Y - a.Y > 1e-10)
        {
            var middle = (a.Y + b.Y) / 2;
            if (At(wing, side, seatTape, station, middle) is not { } here)
            {
                return;
            }

            (a, b) = here.Panel == a.Panel ? ((middle, a.Panel), b) : (a, (middle, here.Panel));
        }

        if (At(wing, side, seatTape, station, a.Y) is { } inner && At(wing, side, seatTape, station, b.Y) is { } outer)
        {
            samples.Add(inner.Sample);
            samples.Add(outer.Sample with { Point = inner.Sample.Point });
        }
    }
}
