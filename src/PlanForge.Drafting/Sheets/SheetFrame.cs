using System.Globalization;
using PlanForge.Drafting.Conventions;
using PlanForge.Drafting.Lettering;
using PlanForge.Drafting.Model;
using PlanForge.Geometry;

namespace PlanForge.Drafting.Sheets;

/// <summary>The frame of a sheet with its centring marks and grid reference (ISO 5457; see shared/check-values.md section 4).</summary>
internal static class SheetFrame
{
    /// <summary>How far a centring mark reaches into the space inside the frame, mm.</summary>
    public const double MarkLength = 10;

    // Fields are 50 mm long, counted from the centring marks; what is left over goes to the last ones.
    private const double FieldLength = 50;

    // Between the frame and the outer line of the grid: room for a sign of 3.5 mm.
    private const double GridWidth = 5;
    private const double SignHeight = 3.5;

    // Smaller sheets than A3 have no grid.
    private const double LeastGridArea = 297 * 420;

    /// <summary>Draws frame, marks and, where the paper is large enough, the grid.</summary>
    public static void Draw(Sketch sketch, SheetLayout layout)
    {
        var (paper, frame) = (layout.Paper, layout.Frame);
        sketch.Stroke(Layer.Frame, Path2.Rectangle(frame), LineConventions.Frame);
        if (paper.IsRoll)
        {
            return;
        }

        var hasGrid = paper.Width * paper.Height >= LeastGridArea * 0.999;
        var outer = hasGrid ? frame.Grown(GridWidth) : frame;
        DrawMarks(sketch, layout, outer);
        if (hasGrid)
        {
            sketch.Stroke(Layer.Frame, Path2.Rectangle(outer), LineConventions.Field);
            DrawColumns(sketch, paper.Width / 2, frame, outer);
            DrawRows(sketch, paper.Height / 2, frame, outer);
        }
    }

    /// <summary>
    /// What the centring marks take of the space inside the frame: where something of the sheet's own stands, a mark ends at the
    /// frame and takes nothing.
    /// </summary>
    public static IEnumerable<Bounds2> MarkRooms(SheetLayout layout)
    {
        const double Clear = 1.5;
        foreach (var (end, inward) in Marks(layout))
        {
            var room = Bounds2.Around(end, end + (inward * (MarkLength + Clear))).Joined(Bounds2.Around(
                end - (inward.Left * Clear), end + (inward.Left * Clear)));
            if (!layout.IsTaken(room))
            {
                yield return room;
            }
        }
    }

    /// <summary>The number of fields along an edge.</summary>
    public static int FieldCount(double edge) => 2 * (int)Math.Round(edge / 2 / FieldLength);

    /// <summary>Where the marks meet the frame, and the way inward; rolls have none.</summary>
    private static IEnumerable<(Point2 End, Vector2 Inward)> Marks(SheetLayout layout)
    {
        var (paper, frame) = (layout.Paper, layout.Frame);
        if (paper.IsRoll)
        {
            yield break;
        }

        var (x, y) = (paper.Width / 2, paper.Height / 2);
        yield return (new(x, frame.MaxY), new(0, -1));
        yield return (new(x, frame.MinY), new(0, 1));
        yield return (new(frame.MinX, y), new(1, 0));
        yield return (new(frame.MaxX, y), new(-1, 0));
    }

    private static void DrawMarks(Sketch sketch, SheetLayout layout, Bounds2 outer)
    {
        var rooms = MarkRooms(layout).ToList();
        var beyond = layout.Frame.MinX - outer.MinX;
        foreach (var (end, inward) in Marks(layout))
        {
            var reach = rooms.Exists(room => room.Contains(end)) ? MarkLength : 0;
            if (reach + beyond > 0)
            {
                sketch.Line(Layer.Frame, end - (inward * beyond), end + (inward * reach), LineConventions.Frame);
            }
        }
    }

    private static void DrawColumns(Sketch sketch, double centre, Bounds2 frame, Bounds2 outer)
    {
        var edges = FieldEdges(centre, 2 * centre, frame.MinX, frame.MaxX);
        for (var i = 0; i + 1 < edges.Length; i++)
        {
            var sign = (i + 1).ToString(CultureInfo.InvariantCulture);
            var middle = (edges[i] + edges[i + 1]) / 2;
            Sign(sketch, sign, new(middle, frame.MaxY + (GridWidth / 2)));
            Sign(sketch, sign, new(middle, frame.MinY - (GridWidth / 2)));
            if (i > 0 && edges[i] != centre)
            {
                sketch.Line(Layer.Frame, new(edges[i], frame.MaxY), new(edges[i], outer.MaxY), LineConventions.Field);
                sketch.Line(Layer.Frame, new(edges[i], frame.MinY), new(edges[i], outer.MinY), LineConventions.Field);
            }
        }
    }

    private static void DrawRows(Sketch sketch, double centre, Bounds2 frame, Bounds2 outer)
    {
        var edges = FieldEdges(centre, 2 * centre, frame.MinY, frame.MaxY);
        for (var i = 0; i + 1 < edges.Length; i++)
        {
            // Letters run downwards.
            var sign = ReferenceLetters.All[edges.Length - 2 - i].ToString();
            var middle = (edges[i] + edges[i + 1]) / 2;
            Sign(sketch, sign, new(frame.MinX - (GridWidth / 2), middle));
            Sign(sketch, sign, new(frame.MaxX + (GridWidth / 2), middle));
            if (i > 0 && edges[i] != centre)
            {
                sketch.Line(Layer.Frame, new(frame.MinX, edges[i]), new(outer.MinX, edges[i]), LineConventions.Field);
                sketch.Line(Layer.Frame, new(frame.MaxX, edges[i]), new(outer.MaxX, edges[i]), LineConventions.Field);
            }
        }
    }

    private static double[] FieldEdges(double centre, double length, double from, double to)
    {
        var count = FieldCount(length);
        var edges = new double[count + 1];
        for (var i = 0; i <= count; i++)
        {
            edges[i] = i == 0 ? from : i == count ? to : centre + ((i - (count / 2)) * FieldLength);
        }

        return edges;
    }

    private static void Sign(Sketch sketch, string sign, Point2 middle)
    {
        var extents = TextExtents.Of(sign, default, SignHeight, 0);
        sketch.Text(Layer.Frame, sign, middle - new Vector2(extents.Centre.X, extents.Centre.Y), SignHeight);
    }
}
