using PlanForge.Drafting.Lettering;
using PlanForge.Drafting.Model;
using PlanForge.Geometry;

namespace PlanForge.Drafting.Tests;

/// <summary>
/// The corners of the smallest rectangle along a text's reading around its strokes, or of an arrow head: measured from what is
/// drawn, not by the code that placed it.
/// </summary>
internal sealed record InkBox(Point2[] Corners)
{
    public static InkBox Of(DrawingItem.Text text)
    {
        var bounds = Bounds2.Empty;
        foreach (var stroke in TextLayout.StrokesOf(text.Content, text.At, text.Height, text.Angle))
        {
            foreach (var point in stroke.Flattened(0.02))
            {
                bounds = bounds.Including(Point2.Origin + (point - text.At).Turned(-text.Angle));
            }
        }

        // Half the pen.
        bounds = bounds.Grown(text.Height / 20);
        Point2[] corners = [new(bounds.MinX, bounds.MinY), new(bounds.MaxX, bounds.MinY), new(bounds.MaxX, bounds.MaxY), new(bounds.MinX, bounds.MaxY)];
        return new([.. corners.Select(corner => text.At + (corner - Point2.Origin).Turned(text.Angle))]);
    }

    public static InkBox Of(DrawingItem.Fill fill) => new([.. fill.Paths[0].Vertices.Select(vertex => vertex.Point)]);

    /// <summary>Separating axis theorem over the sides of both.</summary>
    public bool Overlaps(InkBox other) => !HasGap(other) && !other.HasGap(this);

    /// <summary>How long a piece of a straight line lies inside, mm.</summary>
    public double LengthInside(Point2 start, Point2 end)
    {
        var (low, high) = (0.0, 1.0);
        for (var i = 0; i < Corners.Length; i++)
        {
            // Corners run anticlockwise: inside lies left of every side.
            var side = (Corners[(i + 1) % Corners.Length] - Corners[i]).Unit();
            var (from, change) = (side.Cross(start - Corners[i]), side.Cross(end - start));
            if (change == 0)
            {
                high = from < 0 ? -1 : high;
            }
            else if (change > 0)
            {
                low = Math.Max(low, -from / change);
            }
            else
            {
                high = Math.Min(high, -from / change);
            }
        }

        return Math.Max(0, high - low) * start.DistanceTo(end);
    }

    public static Bounds2 BoundsOf(InkBox box) => Bounds2.Around(box.Corners);

    private bool HasGap(InkBox other)
    {
        for (var i = 0; i < Corners.Length; i++)
        {
            var normal = (Corners[(i + 1) % Corners.Length] - Corners[i]).Unit().Left;
            var own = Corners.Select(corner => (corner - Point2.Origin).Dot(normal)).ToList();
            var others = other.Corners.Select(corner => (corner - Point2.Origin).Dot(normal)).ToList();
            if (own.Max() < others.Min() || others.Max() < own.Min())
            {
                return true;
            }
        }

        return false;
    }
}
