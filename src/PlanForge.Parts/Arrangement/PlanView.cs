using System.Collections.Immutable;
using PlanForge.Geometry;
using PlanForge.Parts.Shapes;

namespace PlanForge.Parts.Arrangement;

/// <summary>The plan view, seen from above, nose to the left: (x, y), starboard up.</summary>
internal static class PlanView
{
    public static ImmutableArray<PartLine> Draw(RiggedAirframe airframe, WingShape? tail, ArrangedThrust? thrust)
    {
        var view = new ViewLines();
        var body = airframe.Body;
        var starboard = ViewLines.Through(BodyCurves.HalfBreadth(body));
        var port = Upended(starboard);
        var bodyOutline = ViewLines.Between(port, starboard);
        var inBody = new Silhouette(bodyOutline);
        var wing = ArrangedWing.Of(airframe.Wing);
        var above = new List<Silhouette>();
        var isHigh = airframe.WingSide == WingSide.Lower;
        AddWing(wing, isHigh, inBody, above, view);
        if (tail is not null)
        {
            // The tailplane lies on top where its leading edge is in the upper half of the body.
            var leading = tail.InPlace(Point3.Origin);
            var station = Math.Clamp(leading.X, body.From, body.To);
            AddWing(ArrangedWing.Of(tail), leading.Z > (body.LowerAt(station) + body.UpperAt(station)) / 2, inBody, above, view);
        }

        view.Edge(bodyOutline, above);
        AddMeanChord(wing, view);
        AddAxes(body, thrust, view);
        return view.Lines;
    }

    private static void AddWing(ArrangedWing wing, bool isAbove, Silhouette inBody, List<Silhouette> above, ViewLines view)
    {
        var leading = wing.Joints.Select(joint => new Point2(joint.Leading.X, joint.Leading.Y));
        var trailing = wing.Joints.Select(joint => new Point2(joint.Trailing.X, joint.Trailing.Y));
        Point2[] half = [.. leading.Reverse(), .. leading.Skip(1).Select(Upended)];
        Point2[] back = [.. trailing.Skip(1).Select(Upended).Reverse(), .. trailing];
        var outline = Path2.Polygon([.. half, .. back]);
        IReadOnlyCollection<Silhouette> inFront = isAbove ? [] : [inBody];
        view.Edge(outline, inFront);
        foreach (var (a, b) in wing.Joints.Skip(1).SkipLast(1))
        {
            foreach (var side in (ReadOnlySpan<int>)[1, -1])
            {
                foreach (var (piece, middle) in Silhouette.Pieces(Path2.Line(new(a.X, side * a.Y), new(b.X, side * b.Y)), inFront))
                {
                    view.Add(inFront.Any(silhouette => silhouette.Contains(middle)) ? LineUse.Hidden : LineUse.Score, piece);
                }
            }
        }

        if (isAbove)
        {
            above.Add(new(outline));
        }
    }

    // The mean chord with a cross at its quarter, on the port half.
    private static void AddMeanChord(ArrangedWing wing, ViewLines view)
    {
        Point3 leading = wing.MeanLeading, quarter = wing.MeanQuarter;
        view.Add(LineUse.Centre, new Point2(leading.X, -leading.Y), new(leading.X + (4 * (quarter.X - leading.X)), -leading.Y));
        var arm = wing.MeanChord * 0.06;
        view.Add(LineUse.Score, new Point2(quarter.X, -quarter.Y - arm), new(quarter.X, -quarter.Y + arm));
    }

    private static void AddAxes(FuselageShape body, ArrangedThrust? thrust, ViewLines view)
    {
        const double Overhang = 0.03;
        var past = (body.To - body.From) * Overhang;
        view.Add(LineUse.Centre, new Point2(body.From - past, 0), new(body.To + past, 0));
        if (thrust is { } line)
        {
            // To starboard positive: ahead of the nose the line runs to starboard, upward here.
            var ahead = new Vector2(-Math.Cos(line.Right), Math.Sin(line.Right)) * line.Length;
            var nose = new Point2(line.Station, 0);
            view.Add(LineUse.Centre, nose + ahead, nose - ahead);
        }
    }

    private static Point2 Upended(Point2 point) => new(point.X, -point.Y);

    private static Path2 Upended(Path2 path) => Path2.Open(path.Vertices.Select(vertex => new PathVertex(Upended(vertex.Point), -vertex.Bulge)));
}
