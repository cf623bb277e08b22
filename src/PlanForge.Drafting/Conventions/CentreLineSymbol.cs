using PlanForge.Drafting.Lettering;
using PlanForge.Drafting.Model;
using PlanForge.Geometry;

namespace PlanForge.Drafting.Conventions;

/// <summary>The sign ℄ beyond the upper (or right) end of a long straight centre line.</summary>
internal static class CentreLineSymbol
{
    private const string Sign = "℄";

    // Shorter centre lines are the crosses of holes, which need no sign.
    private const double LeastLength = 40;
    private const double Gap = 1;

    /// <summary>The sign for a line, or null where the line is short or not straight.</summary>
    public static DrawingItem.Text? For(Path2 line, double height)
    {
        if (line.SegmentCount != 1 || line.IsClosed || !line.SegmentAt(0).IsLine || line.Start.DistanceTo(line.End) < LeastLength)
        {
            return null;
        }

        var isUpright = Math.Abs(line.End.Y - line.Start.Y) > Math.Abs(line.End.X - line.Start.X);
        var isEndFar = isUpright ? line.End.Y > line.Start.Y : line.End.X > line.Start.X;
        var end = isEndFar ? line.End : line.Start;
        var extents = TextExtents.Of(Sign, default, height, 0);
        var move = isUpright
            ? new Vector2(-extents.Centre.X, Gap - extents.MinY)
            : new Vector2(Gap - extents.MinX, -extents.Centre.Y);
        return new(Layer.CentreAndDatum, Sign, end + move, height, 0);
    }
}
