using System.Collections.Immutable;
using PlanForge.Geometry;
using PlanForge.Parts.Shapes;

namespace PlanForge.Parts.Saddles;

/// <summary>A saddle line unrolled: numbers alone, which hold as long as nothing changes that they were worked out from.</summary>
/// <remarks>
/// A curve on a surface keeps its length and its turning within the surface (geodesic curvature) when the surface is
/// unrolled; so the flat line is built by adding up both along the solved points. Source: M. do Carmo, Differential
/// Geometry of Curves and Surfaces (1976), section 4-4. Rulings at constant station then carry heights from the line into
/// the sheet. Where a side cannot be unrolled (it is curved both ways) lengths away from the line come out wrong; that
/// error is measured along the template's lower edge and kept as <see cref="LeftoverError"/>.
/// </remarks>
/// <param name="Frames">The points of the line as they come out, before they are put in place.</param>
/// <param name="Placement">Puts them in place: the lower edge level at its height, the front end of the line above or below x = 0.</param>
/// <param name="EdgeHeight">Height above the datum line of the template's straight edge, mm.</param>
/// <param name="Edge">Flat places of that edge below (or above) each point of the line.</param>
/// <param name="LeftoverError">
/// The greatest accumulated difference between the edge's length on the body and on the flat template, mm. 0 within
/// rounding where the side can be unrolled.
/// </param>
internal sealed record UnrolledSide(
    ImmutableArray<FlatFrame> Frames, Placement2 Placement, double EdgeHeight, ImmutableArray<Point2> Edge, double LeftoverError)
{
    // The two sides of a corner stand nearer than this, mm.
    private const double SamePlace = 1e-9;

    /// <summary>Unrolls a line.</summary>
    /// <param name="body">The fuselage.</param>
    /// <param name="line">Its saddle line.</param>
    /// <param name="edgeHeight">Height of the template's other edge above the datum line, mm.</param>
    public static UnrolledSide Of(FuselageShape body, SaddleLine line, double edgeHeight)
    {
        var lengths = new SideLengths(body);
        var points = line.Points;
        var frames = Unrolled(points);
        var raw = EdgePoints(Placement2.Identity);

        // Level the lower edge and give it its height; the front end of the line becomes x = 0 of the edge below it.
        var turn = Placement2.TurnedBy(-(raw[^1] - raw[0]).Angle);
        var levelled = turn.Apply(raw[0]);
        var placement = turn.Then(Placement2.MovedBy(new Point2(0, edgeHeight) - levelled));
        return new(frames, placement, edgeHeight, EdgePoints(placement), LengthError(raw));

        ImmutableArray<Point2> EdgePoints(Placement2 placing)
        {
            var edge = ImmutableArray.CreateBuilder<Point2>(frames.Length);
            for (var i = 0; i < frames.Length; i++)
            {
                var outer = points[i].Outer;
                edge.Add(placing.Apply(frames[i].Place + (frames[i].Up * lengths.Girth(outer.X, outer.Z, edgeHeight))));
            }

            return edge.MoveToImmutable();
        }

        double LengthError(ImmutableArray<Point2> edge)
        {
            double difference = 0, greatest = 0;
            for (var i = 1; i < edge.Length; i++)
            {
                double x0 = points[i - 1].Outer.X, x1 = points[i].Outer.X;
                var flat = (edge[i] - edge[i - 1]).Length;
                difference += flat - lengths.Waterline(edgeHeight, x0, x1);
                greatest = Math.Max(greatest, Math.Abs(difference));
            }

            return greatest;
        }
    }

    private static ImmutableArray<FlatFrame> Unrolled(ImmutableArray<SaddlePoint> points)
    {
        var frames = ImmutableArray.CreateBuilder<FlatFrame>(points.Length);
        var place = Point2.Origin;
        var angle = 0.0;
        frames.Add(FlatFrame.At(points[0], place, angle));
        for (var i = 1; i < points.Length; i++)
        {
            var (a, b) = (points[i - 1], points[i]);
            var step = b.Outer - a.Outer;
            if (step.Length < SamePlace)
            {
                angle += CornerTurn(a, b);
                frames.Add(FlatFrame.At(b, place, angle));
                continue;
            }

            // The chord leaves the line at a and meets it again at b, each by an angle within the surface there.
            double leaving = TurnWithin(a.Tangent, step, a.SideNormal), meeting = TurnWithin(step, b.Tangent, b.SideNormal);

            // A chord is shorter than its arc by κ²h²/24; the part of the curvature out of the surface is lost in the flat.
            var outOfFace = (b.Tangent - a.Tangent).Dot((a.SideNormal + b.SideNormal).Unit());
            place += Vector2.FromAngle(angle + leaving) * (step.Length * (1 + (outOfFace * outOfFace / 24)));
            angle += leaving + meeting;
            frames.Add(FlatFrame.At(b, place, angle));
        }

        return frames.MoveToImmutable();
    }

    // How far the flat line turns at a corner, where a and b are the same place.
    private static double CornerTurn(SaddlePoint a, SaddlePoint b)
    {
        var fold = a.SideNormal.Cross(b.SideNormal);
        if (fold.Length < 1e-9)
        {
            return TurnWithin(a.Tangent, b.Tangent, a.SideNormal);
        }

        // At a fold of the body both faces keep the angle between the line and the fold.
        var crease = fold.Unit();
        return TurnWithin(a.Tangent, crease, a.SideNormal) + TurnWithin(crease, b.Tangent, b.SideNormal);
    }

    // The angle from one direction to another within a surface, radians, anticlockwise with x aft and y up: seen against
    // the outward normal.
    private static double TurnWithin(Vector3 from, Vector3 to, Vector3 normal) => Math.Atan2(-from.Cross(to).Dot(normal), from.Dot(to));
}
