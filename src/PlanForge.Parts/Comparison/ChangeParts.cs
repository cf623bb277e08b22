using System.Collections.Immutable;
using PlanForge.Geometry;
using PlanForge.Geometry.Deviations;
using PlanForge.Parts.Wording;

namespace PlanForge.Parts.Comparison;

/// <summary>Changed parts drawn new over old at true size, with the wood that differs hatched and what to do written at its places.</summary>
public static class ChangeParts
{
    private const string Kind = "Changes";

    // A sheet with more arrows is not read: the others follow from the hatching.
    private const int MostZones = 12;

    private const double HatchSpacing = 1.2;
    private const double TextDistance = 14;

    /// <summary>One drawing for each part whose lines changed, in the order of the parts; what is only read, only reworded or fits as it is has none.</summary>
    /// <param name="comparison">What changed.</param>
    /// <param name="text">Writes lengths.</param>
    /// <param name="causes">Says what caused the change of a part, in sentences.</param>
    public static ImmutableArray<Part> Of(PartListComparison comparison, MeasureText text, Func<PartComparison, IEnumerable<string>> causes)
    {
        ArgumentNullException.ThrowIfNull(comparison);
        ArgumentNullException.ThrowIfNull(causes);
        var words = new ComparisonTexts(text);
        return [.. comparison.Parts.Where(IsDrawn).Select(part => Drawing(part, words, causes(part)))];
    }

    /// <summary>True when a part's change shows as lines.</summary>
    public static bool IsDrawn(PartComparison part)
    {
        ArgumentNullException.ThrowIfNull(part);
        return part.State == PartState.Changed && part.New!.Making != Making.View && !part.Lines.IsEmpty && part.Largest is not { Distance: <= PartComparison.Threshold };
    }

    private static Part Drawing(PartComparison part, ComparisonTexts words, IEnumerable<string> causes)
    {
        var now = part.New!;
        var sketch = new PartSketch();
        foreach (var line in now.Lines)
        {
            sketch.Line(line.Use, line.Path);
        }

        if (part.Pieces.IsEmpty)
        {
            AddBefore(part, default, sketch);
        }

        foreach (var piece in part.Pieces)
        {
            var (what, move, name) = (piece.Comparison, piece.Origin - Point2.Origin, $"{piece.Name}: ");
            if (what.State == PartState.Changed)
            {
                AddBefore(what, move, sketch);
                AddZones(what, move, name, words, sketch);
            }
            else if (what.State == PartState.New)
            {
                var bounds = what.Part.Lines[0].Path.Bounds;
                sketch.Leader(new Point2(bounds.MaxX, bounds.MinY) + move, new Point2(bounds.MaxX + TextDistance, bounds.MinY) + move, name + words.Of(what));
            }
        }

        sketch.Note($"{Sentence(words.Of(part))}. {(part.Pieces.IsEmpty ? "Lines as they were lie under the new ones, by the same centre and datum lines." : "Each piece as it was lies under the new one, by the lower left corner.")}");
        foreach (var cause in causes)
        {
            sketch.Note(cause);
        }

        AddZones(part, default, "", words, sketch);
        return sketch.AsView($"change-{now.Id}", Kind, $"{now.Title}: new over old");
    }

    private static void AddBefore(PartComparison part, Vector2 move, PartSketch sketch)
    {
        foreach (var line in WorkedLines.Of(part.Old!))
        {
            if (part.Lines.Contains(line.Use) && line.Use is not (LineUse.Centre or LineUse.Datum or LineUse.Station or LineUse.Neighbour))
            {
                sketch.Line(LineUse.Before, line.Path.Placed(Placement2.MovedBy(move)));
            }
        }
    }

    private static void AddZones(PartComparison part, Vector2 move, string name, ComparisonTexts words, PartSketch sketch)
    {
        if (part.Wood is not { } wood)
        {
            return;
        }

        IReadOnlyList<Path2> before = WorkedLines.ShapeOf(part.Old!).Contours, after = WorkedLines.ShapeOf(part.New!).Contours;
        foreach (var line in DifferenceHatch.Of(before, after, HatchSpacing, Math.PI / 4, PartComparison.Threshold))
        {
            if (WorkedLines.Touches(part.Old!, part.New!, line))
            {
                sketch.Line(LineUse.Difference, line.Start + move, line.End + move);
            }
        }

        var middle = after.Concat(before).Aggregate(Bounds2.Empty, (all, path) => all.Joined(path.Bounds)).Centre;
        foreach (var zone in wood.Zones.OrderByDescending(zone => zone.Largest.Distance).Take(MostZones))
        {
            var outward = zone.Middle - middle;
            sketch.Leader(zone.Middle + move, zone.Middle + move + (outward.Length > 0 ? outward.Unit() * TextDistance : new(TextDistance, 0)), name + words.Of(zone));
        }

        if (wood.Zones.Length > MostZones)
        {
            sketch.Note($"Only the {MeasureText.Rounded(MostZones, 0)} largest of {MeasureText.Rounded(wood.Zones.Length, 0)} places are named.");
        }
    }

    private static string Sentence(string text) => text.Length > 0 ? char.ToUpperInvariant(text[0]) + text[1..] : text;
}
