using PlanForge.Drafting.Lettering;
using PlanForge.Drafting.Model;
using PlanForge.Geometry;

namespace PlanForge.Drafting.Conventions;

/// <summary>The sign ℄ at an end of a long straight centre line.</summary>
internal static class CentreLineSymbol
{
    private const string Sign = "℄";

    // Shorter centre lines are the crosses of holes, which need no sign.
    private const double LeastLength = 40;
    private const double Gap = 1;

    /// <summary>
    /// The sign beyond either end, the upper (or right) one first, then beside them; none where the line is short or not straight.
    /// </summary>
    public static IEnumerable<DrawingItem.Text> For(Path2 line, double height)
    {
        if (line.SegmentCount != 1 || line.IsClosed || !line.SegmentAt(0).IsLine || line.Start.DistanceTo(line.End) < LeastLength)
        {
            yield break;
        }

        var isUpright = Math.Abs(line.End.Y - line.Start.Y) > Math.Abs(line.End.X - line.Start.X);
        var isEndFar = isUpright ? line.End.Y > line.Start.Y : line.End.X > line.Start.X;
        var (far, near) = isEndFar ? (line.End, line.Start) : (line.Start, line.End);
        var ink = TextExtents.Of(Sign, default, height, 0);
        yield return At(far + (isUpright ? new Vector2(-ink.Centre.X, Gap - ink.MinY) : new(Gap - ink.MinX, -ink.Centre.Y)));
        yield return At(near + (isUpright ? new Vector2(-ink.Centre.X, -Gap - ink.MaxY) : new(-Gap - ink.MaxX, -ink.Centre.Y)));

        // Dimensions from the centre line go on where it ends: beside it then.
        foreach (var end in (Point2[])[far, near])
        {
            yield return At(end + (isUpright ? new Vector2(Gap - ink.MinX, -ink.Centre.Y) : new(-ink.Centre.X, Gap - ink.MinY)));
            yield return At(end + (isUpright ? new Vector2(-Gap - ink.MaxX, -ink.Centre.Y) : new(-ink.Centre.X, -Gap - ink.MaxY)));
        }

        DrawingItem.Text At(Point2 start) => new(Layer.CentreAndDatum, Sign, start, height, 0);
    }
}
