using PlanForge.Drafting.Clipping;
using PlanForge.Drafting.Conventions;
using PlanForge.Drafting.Dimensions.Placing;
using PlanForge.Drafting.Lettering;
using PlanForge.Drafting.Model;
using PlanForge.Geometry;
using PlanForge.Parts;
using PlanForge.Parts.Wording;

namespace PlanForge.Drafting.PartDrawings;

/// <summary>The part itself: its lines, labels and dimensions, and its name and grain arrow where it has room for them.</summary>
internal sealed class FlatPart
{
    private const double LooseGrainLength = 25;

    // Lengths of the grain arrow on the part: the longest that finds room is taken. The last is just longer than its word.
    private static ReadOnlySpan<double> GrainLengths => [60, 40, 25, 22];

    private readonly Part _part;
    private readonly LetteringSizes _sizes;

    public FlatPart(Part part, ShownUnits units, LetteringSizes sizes)
    {
        (_part, _sizes) = (part, sizes);
        Material = PartOutline.MaterialOf(part);
        DrawLines();
        Annotations.Draw(Sketch, part, units, sizes, Material);
        Occupancy = new(Sketch.Bounds.IsEmpty ? new(0, 0, 0, 0) : Sketch.Bounds);
        foreach (var item in Sketch.Items)
        {
            Occupancy.Mark(item);
        }

        Name = PlaceName();
        LooseGrainArrow = DrawGrainArrow();
    }

    /// <summary>What is drawn.</summary>
    public Sketch Sketch { get; } = new();

    /// <summary>Which places are taken.</summary>
    public Occupancy Occupancy { get; }

    /// <summary>
    /// The part's name on its material, not drawn yet: a text block on the material makes it needless; null without room.
    /// </summary>
    public DrawingItem.Text? Name { get; }

    /// <summary>Where the part's material is.</summary>
    public EvenOddArea Material { get; }

    /// <summary>The grain arrow when the part has no room for it; null when it is drawn or the grain does not matter.</summary>
    public Sketch? LooseGrainArrow { get; }

    private void DrawLines()
    {
        foreach (var line in _part.Lines)
        {
            Sketch.Stroke(LineConventions.LayerOf(line.Use), line.Path, LineConventions.StyleOf(line.Use));
        }
    }

    private DrawingItem.Text? PlaceName()
    {
        foreach (var label in _part.Labels)
        {
            if (label.IsEngraved)
            {
                return null;
            }
        }

        var name = PartName.Place(_part, _part.Title, Material, Occupancy, Layer.Notes, _sizes.Name);
        if (name is not null)
        {
            Occupancy.Mark(TextExtents.Of(name));
        }

        return name;
    }

    private Sketch? DrawGrainArrow()
    {
        if (_part.GrainAngle is not { } angle)
        {
            return null;
        }

        return TryDrawGrainArrow(angle, Material.Contains) || TryDrawGrainArrow(angle, _ => true)
            ? null
            : GrainArrow.Draw(angle, LooseGrainLength, _sizes.Body);
    }

    private bool TryDrawGrainArrow(double angle, Func<Point2, bool> isAccepted)
    {
        var middle = Sketch.Bounds.Centre;
        foreach (var length in GrainLengths)
        {
            var arrow = GrainArrow.Draw(angle, length, _sizes.Body);
            var bounds = arrow.Bounds;
            if (Occupancy.Find(bounds.Width, bounds.Height, middle, isAccepted) is { } corner)
            {
                Sketch.Add(arrow, corner - new Point2(bounds.MinX, bounds.MinY));
                Occupancy.Mark(new Bounds2(corner.X, corner.Y, corner.X + bounds.Width, corner.Y + bounds.Height));
                return true;
            }
        }

        return false;
    }
}
