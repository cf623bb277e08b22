using System.Collections.Immutable;
using PlanForge.Geometry;
using PlanForge.Parts.Shapes;

namespace PlanForge.Parts.Saddles;

/// <summary>The saddle line of a side unrolled flat, seen from outside the port side: x aft, y up, heights kept at the lower edge.</summary>
/// <remarks>
/// A curve on a surface keeps its length and its turning within the surface (geodesic curvature) when the surface is
/// unrolled; so the flat line is built by adding up both along the solved points. Source: M. do Carmo, Differential
/// Geometry of Curves and Surfaces (1976), section 4-4. Rulings at constant station then carry heights from the line into
/// the sheet. Where a side cannot be unrolled (it is curved both ways) lengths away from the line come out wrong; that
/// error is measured along the template's lower edge and kept as <see cref="LeftoverError"/>.
/// </remarks>
internal sealed class SaddleDevelopment
{
    // The two sides of a corner stand nearer than this, mm.
    private const double SamePlace = 1e-9;

    private readonly FuselageShape _body;
    private readonly ImmutableArray<Frame> _frames;
    private readonly Placement2 _placement;

    private SaddleDevelopment(FuselageShape body, SaddleLine line, double edgeHeight)
    {
        (_body, Line, EdgeHeight) = (body, line, edgeHeight);
        _frames = Unrolled(line.Points);
        var raw = EdgePoints(Placement2.Identity);
        LeftoverError = LengthError(raw);

        // Level the lower edge and give it its height; the front end of the line becomes x = 0 of the edge below it.
        var turn = Placement2.TurnedBy(-(raw[^1] - raw[0]).Angle);
        var levelled = turn.Apply(raw[0]);
        _placement = turn.Then(Placement2.MovedBy(new Point2(0, edgeHeight) - levelled));
        Edge = EdgePoints(_placement);
    }

    /// <summary>The solved line.</summary>
    public SaddleLine Line { get; }

    /// <summary>Height above the datum line of the template's straight edge, mm.</summary>
    public double EdgeHeight { get; }

    /// <summary>Flat places of that edge below (or above) each point of the line.</summary>
    public ImmutableArray<Point2> Edge { get; }

    /// <summary>
    /// The greatest accumulated difference between the edge's length on the body and on the flat template, mm. 0 within
    /// rounding where the side can be unrolled.
    /// </summary>
    public double LeftoverError { get; }

    /// <summary>Unrolls a line.</summary>
    /// <param name="body">The fuselage.</param>
    /// <param name="line">Its saddle line.</param>
    /// <param name="edgeHeight">Height of the template's other edge above the datum line, mm.</param>
    public static SaddleDevelopment Of(FuselageShape body, SaddleLine line, double edgeHeight) => new(body, line, edgeHeight);

    /// <summary>Flat place of a point of the line on the outer face, with the flat direction of the line.</summary>
    public CurveFrame OuterAt(int index)
    {
        var frame = _frames[index];
        return new(_placement.Apply(frame.Place), _placement.Apply(frame.Along));
    }

    /// <summary>Flat place on the outer face opposite the line's point on the inner face.</summary>
    public Point2 InnerAt(int index)
    {
        var point = Line.Points[index];
        return _placement.Apply(_frames[index].Flat(point, point.InnerFoot - point.Outer));
    }

    /// <summary>Flat place at a station and height on the outer face; a station beyond the ends of the line is carried along the edge.</summary>
    public Point2 At(double station, double height)
    {
        var points = Line.Points;
        if (station < Line.From || station > Line.To)
        {
            return Beyond(station, height);
        }

        var index = 1;
        while (index < points.Length - 1 && points[index].Outer.X < station)
        {
            index++;
        }

        var (a, b) = (points[index - 1], points[index]);
        var width = b.Outer.X - a.Outer.X;
        var fraction = width > 1e-9 ? (station - a.Outer.X) / width : 0;
        var edge = Edge[index - 1].Towards(Edge[index], fraction);
        var up = UpAt(index - 1).Towards(UpAt(index), Math.Clamp(fraction, 0, 1));
        return edge + ((up - Point2.Origin).Unit() * Girth(station, EdgeHeight, height));
    }

    // Ahead of and behind the line the edge runs straight on with its length on the body. The base for its direction is the
    // whole edge: the points at the round nose stand too close to show one.
    private Point2 Beyond(double station, double height)
    {
        var isAhead = station < Line.From;
        var (end, index) = isAhead ? (Edge[0], 0) : (Edge[^1], Edge.Length - 1);
        var direction = (Edge[^1] - Edge[0]).Unit() * (isAhead ? -1 : 1);
        var length = WaterlineLength(Math.Min(station, isAhead ? Line.From : Line.To), Math.Max(station, isAhead ? Line.From : Line.To));
        var up = (UpAt(index) - Point2.Origin).Unit();
        return end + (direction * length) + (up * Girth(station, EdgeHeight, height));
    }

    // Unit flat direction of the ruling, as a point so that two can be mixed.
    private Point2 UpAt(int index) => Point2.Origin + _placement.Apply(_frames[index].Up);

    private ImmutableArray<Point2> EdgePoints(Placement2 placement)
    {
        var edge = ImmutableArray.CreateBuilder<Point2>(_frames.Length);
        for (var i = 0; i < _frames.Length; i++)
        {
            var outer = Line.Points[i].Outer;
            edge.Add(placement.Apply(_frames[i].Place + (_frames[i].Up * Girth(outer.X, outer.Z, EdgeHeight))));
        }

        return edge.MoveToImmutable();
    }

    // Signed length around the outside at a station from one height to another, mm, up positive.
    private double Girth(double station, double from, double to)
    {
        var bay = _body.BayAt(station);
        double Rate(double height)
        {
            var lean = bay.At(station).HalfBreadthAt(Dual.V(height)).Dv;
            return Math.Sqrt(1 + (lean * lean));
        }

        double start = Rate(from), end = Rate(to);
        if (start == end && start == Rate((from + to) / 2))
        {
            return (to - from) * start;
        }

        // Simpson's rule; 24 pieces give 1e-7 mm on the bodies' quarter ellipses away from their very top.
        const int Pieces = 24;
        var sum = start + end;
        for (var i = 1; i < Pieces; i++)
        {
            sum += Rate(from + ((to - from) * i / Pieces)) * (i % 2 == 0 ? 2 : 4);
        }

        return sum * (to - from) / (3 * Pieces);
    }

    private double LengthError(ImmutableArray<Point2> edge)
    {
        double difference = 0, greatest = 0;
        for (var i = 1; i < edge.Length; i++)
        {
            double x0 = Line.Points[i - 1].Outer.X, x1 = Line.Points[i].Outer.X;
            var flat = (edge[i] - edge[i - 1]).Length;
            difference += flat - WaterlineLength(x0, x1);
            greatest = Math.Max(greatest, Math.Abs(difference));
        }

        return greatest;
    }

    // Length of the line at the edge's height on the body between two near stations, mm.
    private double WaterlineLength(double from, double to)
    {
        var middle = (from + to) / 2;
        double a = _body.HalfBreadthAt(from, EdgeHeight), b = _body.HalfBreadthAt(middle, EdgeHeight), c = _body.HalfBreadthAt(to, EdgeHeight);
        double half = (to - from) / 2;
        double chord = Math.Sqrt((4 * half * half) + ((c - a) * (c - a)));
        double halves = Math.Sqrt((half * half) + ((b - a) * (b - a))) + Math.Sqrt((half * half) + ((c - b) * (c - b)));

        // Two chords miss a quarter of what one chord misses of the arc (Richardson).
        return halves + ((halves - chord) / 3);
    }

    private static ImmutableArray<Frame> Unrolled(ImmutableArray<SaddlePoint> points)
    {
        var frames = ImmutableArray.CreateBuilder<Frame>(points.Length);
        var place = Point2.Origin;
        var angle = 0.0;
        frames.Add(Frame.At(points[0], place, angle));
        for (var i = 1; i < points.Length; i++)
        {
            var (a, b) = (points[i - 1], points[i]);
            var step = b.Outer - a.Outer;
            if (step.Length < SamePlace)
            {
                angle += CornerTurn(a, b);
                frames.Add(Frame.At(b, place, angle));
                continue;
            }

            // The chord leaves the line at a and meets it again at b, each by an angle within the surface there.
            double leaving = TurnWithin(a.Tangent, step, a.SideNormal), meeting = TurnWithin(step, b.Tangent, b.SideNormal);

            // A chord is shorter than its arc by κ²h²/24; the part of the curvature out of the surface is lost in the flat.
            var outOfFace = (b.Tangent - a.Tangent).Dot((a.SideNormal + b.SideNormal).Unit());
            place += Vector2.FromAngle(angle + leaving) * (step.Length * (1 + (outOfFace * outOfFace / 24)));
            angle += leaving + meeting;
            frames.Add(Frame.At(b, place, angle));
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

    /// <summary>A point of the flat line: place, direction of the line, and direction of the ruling upward.</summary>
    private readonly record struct Frame(Point2 Place, Vector2 Along, Vector2 Up)
    {
        public static Frame At(SaddlePoint point, Point2 place, double angle)
        {
            var along = Vector2.FromAngle(angle);

            // The ruling: the direction within the outer face that keeps the station, upward.
            var n = point.SideNormal;
            var ruling = new Vector3(0, -n.Z, n.Y).Unit();
            var frame = new Frame(place, along, default);
            return frame with { Up = (frame.Flat(point, ruling) - place).Unit() };
        }

        /// <summary>Flat place of a short displacement within the outer face.</summary>
        public Point2 Flat(SaddlePoint point, Vector3 displacement)
        {
            var across = point.Tangent.Cross(point.SideNormal);
            return Place + (Along * displacement.Dot(point.Tangent)) + (Along.Left * displacement.Dot(across));
        }
    }
}

/// <summary>A place on a flat line and its unit direction there.</summary>
/// <param name="Place">The place, mm.</param>
/// <param name="Along">The unit direction of travel.</param>
internal readonly record struct CurveFrame(Point2 Place, Vector2 Along);
