using PlanForge.Drafting.Clipping;
using PlanForge.Drafting.Conventions;
using PlanForge.Drafting.Dimensions;
using PlanForge.Drafting.Model;
using PlanForge.Geometry;
using PlanForge.Parts;

namespace PlanForge.Drafting.PartDrawings;

/// <summary>Draws a part for the cutting machine: cut lines, scored marks inside the part, its engraved name and fingerprint, nothing else.</summary>
public static class CutDrawings
{
    // Chords for the outline at which marks end: a mark may end this much off the edge, mm. Far below the width of a beam.
    private const double Tolerance = 0.01;

    // A machine stops at both ends of a segment; shorter ones are no shape, mm.
    internal const double ShortestSegment = 0.05;

    // A mark nearer to an edge, mm, would be burnt twice: less lets doubled lines through, more would drop wanted ones.
    private const double Doubled = 0.05;

    private const double NameHeight = 5;

    /// <summary>The drawing of a part in its own coordinates.</summary>
    /// <param name="part">A part that is cut from sheet.</param>
    /// <exception cref="ArgumentException">The part is not cut, or has no closed cut line.</exception>
    public static CutDrawing Of(Part part)
    {
        ArgumentNullException.ThrowIfNull(part);
        var sketch = new Sketch();
        var outlines = new List<Path2>();
        foreach (var line in part.Lines)
        {
            if (line.Use == LineUse.Cut)
            {
                var path = CrumbFilter.Clean(line.Path, ShortestSegment, Tolerance / 2);
                outlines.Add(path);
                sketch.Stroke(Layer.Cut, path, LineConventions.StyleOf(LineUse.Cut));
            }
        }

        if (part.Making != Making.Cut || !outlines.Exists(outline => outline.IsClosed))
        {
            throw new ArgumentException($"{part.Id} has no outline to cut.", nameof(part));
        }

        var material = new EvenOddArea(outlines, Tolerance);
        foreach (var line in part.Lines)
        {
            if (IsMarked(line.Use))
            {
                AddMark(sketch, line, material);
            }
        }

        AddNames(sketch, part, material);
        return new(part.Id, new(sketch.Items));
    }

    // The trim line is marked too: it is the edge the wood is worked to after cutting.
    private static bool IsMarked(LineUse use) => use is LineUse.Score or LineUse.Trim or LineUse.Centre or LineUse.Datum;

    private static void AddMark(Sketch sketch, PartLine line, EvenOddArea material)
    {
        var style = new LineStyle(LineType.Continuous, LineConventions.StyleOf(LineUse.Score).Width);
        foreach (var piece in material.Inside(line.Path))
        {
            if (material.DistanceToOutline(MiddleOf(piece)) > Doubled)
            {
                sketch.Stroke(Layer.Score, piece, style);
            }
        }
    }

    private static Point2 MiddleOf(Path2 path)
    {
        var longest = path.SegmentAt(0);
        for (var i = 1; i < path.SegmentCount; i++)
        {
            var segment = path.SegmentAt(i);
            longest = segment.Length > longest.Length ? segment : longest;
        }

        return longest.PointAt(0.5);
    }

    private static void AddNames(Sketch sketch, Part part, EvenOddArea material)
    {
        var isNamed = false;
        foreach (var label in part.Labels)
        {
            if (label.IsEngraved)
            {
                var height = Math.Max(LetteringSizes.Least, label.Height);
                var place = ReadableText.Place(label.Text, label.At, label.Anchor, label.Angle, height);
                sketch.Text(Layer.Score, label.Text, place.At, height, place.Angle);
                isNamed = true;
            }
        }

        var occupancy = new Occupancy(PartOutline.BoundsOf(part));
        foreach (var item in sketch.Items)
        {
            occupancy.Mark(item);
        }

        if (!isNamed && PartName.Place(part, part.Title, material, occupancy, Layer.Score, NameHeight) is { } name)
        {
            sketch.Text(name.Layer, name.Content, name.At, name.Height);
            occupancy.Mark(name);
        }

        // On a part too small for it the name alone must do.
        if (part.Fingerprint is { } fingerprint
            && PartName.PlaceEitherWay(part, fingerprint.Code, material, occupancy, Layer.Score) is { } code)
        {
            sketch.Text(code.Layer, code.Content, code.At, code.Height, code.Angle);
        }
    }
}
