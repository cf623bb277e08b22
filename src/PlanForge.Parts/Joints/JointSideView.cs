using PlanForge.Geometry;
using PlanForge.Geometry.Fitting;
using PlanForge.Parts.Arrangement;
using PlanForge.Parts.Bolts;
using PlanForge.Parts.Dowels;
using PlanForge.Parts.Shapes;

namespace PlanForge.Parts.Joints;

/// <summary>
/// The side view of the joint, seen from port: x the station, y the height. The wing is cut at the centre line, where chord,
/// dowels and bolts are measured; the saddle line is that of the port side, in front of it.
/// </summary>
internal sealed class JointSideView
{
    // Body shown before and behind what belongs to the wing, mm.
    private const double Beyond = 15;

    // Centre lines stand out of what they belong to by this, mm.
    private const double Overhang = 5;

    private readonly RiggedAirframe _airframe;
    private readonly PartSketch _sketch = new();

    public JointSideView(RiggedAirframe airframe)
    {
        _airframe = airframe;
        Dowel = DowelAxis.Of(airframe);
        Bolt = BoltAxis.Of(airframe);
        Section = RootSection.Closed(ArcFitter.Fit(RootSection.Outline(airframe.Wing), Drawn.Tolerance));
        Root = ArrangedWing.RootOf(airframe.Wing);
        var from = Math.Min(Section.Bounds.MinX, Dowel?.FrontStation ?? double.PositiveInfinity) - Beyond;
        Body = JointBody.Of(
            airframe, Math.Max(from, airframe.Body.From), Math.Min(Section.Bounds.MaxX + Beyond, airframe.Body.To));
    }

    /// <summary>The dowels' axis, or null.</summary>
    public DowelAxis? Dowel { get; }

    /// <summary>The bolts' axis, or null.</summary>
    public BoltAxis? Bolt { get; }

    /// <summary>The wing's section on the centre line.</summary>
    public Path2 Section { get; }

    /// <summary>The wing's leading and trailing edge on the centre line.</summary>
    public WingChord Root { get; }

    /// <summary>The body's side.</summary>
    public JointBody Body { get; }

    /// <summary>Draws the part.</summary>
    public Part Draw(string kind)
    {
        AddBodyAndWing();
        AddFormers();
        AddDowel();
        AddBolt();
        AddAxes();
        JointTexts.Add(_airframe, this, _sketch);
        return _sketch.AsTemplate("wing-joint-side", kind, "Wing joint, side view");
    }

    /// <summary>A place as the side view shows it.</summary>
    public static Point2 Flat(Point3 place) => new(place.X, place.Z);

    private void AddBodyAndWing()
    {
        _sketch.Line(LineUse.Edge, Body.Far);
        _sketch.Line(LineUse.Edge, Body.Near);
        _sketch.Line(LineUse.Neighbour, Body.Uncut);
        if (Body.InnerFace is { } inner)
        {
            _sketch.Line(LineUse.Hidden, inner);
        }

        var side = Body.Side;
        foreach (var (piece, middle) in Silhouette.Pieces(Section, side))
        {
            _sketch.Line(side.Contains(middle) ? LineUse.Hidden : LineUse.Edge, piece);
        }
    }

    // Both faces between the skins, clear of the wing: behind the side, so hidden.
    private void AddFormers()
    {
        foreach (var former in _airframe.Description.Formers)
        {
            foreach (var (station, _) in FormerFaces.Between(former, Body.From, Body.To))
            {
                if (station > Body.From && station < Body.To)
                {
                    var (bottom, top) = InsideAt(station);
                    var (lower, upper) = FormerStation.At(station, _airframe);
                    (lower, upper) = (Math.Max(lower, bottom), Math.Min(upper, top));
                    if (upper > lower)
                    {
                        _sketch.Line(LineUse.Hidden, new Point2(station, lower), new(station, upper));
                    }
                }
            }
        }
    }

    // The skins' inner faces on the centre line: of the flats, or of the corners where they meet there.
    private (double Bottom, double Top) InsideAt(double station)
    {
        var (body, section) = (_airframe.Body, _airframe.Body.BayAt(station).At(station));
        var bottom = body.Skins.InPlane(station, section.Has(Zone.Bottom) ? Zone.Bottom : Zone.LowerCorner, 0);
        var top = body.Skins.InPlane(station, section.Has(Zone.Top) ? Zone.Top : Zone.UpperCorner, 1);
        return (bottom.Y, top.Y);
    }

    // Its length in the wing is the builder's: it is drawn as far into the wing as it stands out, and left open there.
    private void AddDowel()
    {
        if (Dowel is not { } axis)
        {
            return;
        }

        double front = axis.FrontStation, rear = (2 * Root.Leading.X) - front, radius = axis.Dowels.Diameter / 2;
        Point2 a = new(front, axis.HeightAt(front)), b = new(rear, axis.HeightAt(rear));
        var up = (b - a).Unit().Left * radius;
        _sketch.Line(LineUse.Hidden, Path2.Polyline(b + up, a + up, a - up, b - up));
        var beyond = (b - a).Unit() * Overhang;
        _sketch.Line(LineUse.Centre, Path2.Polyline(a - beyond, a.Towards(b, 0.5), b + beyond));
    }

    private void AddBolt()
    {
        if (Bolt is not { } axis)
        {
            return;
        }

        var plate = axis.Bolts.Plate;
        double low = Math.Min(axis.NearFace, axis.FarFace), high = Math.Max(axis.NearFace, axis.FarFace);
        var middle = axis.StationAt((low + high) / 2);
        _sketch.Line(LineUse.Hidden, Path2.Rectangle(new(middle - (plate.Length / 2), low, middle + (plate.Length / 2), high)));
        AddHole(low, high, axis.Fastener.Tapping / 2);

        // Through the wing: from the surface it lies on to the other one.
        var ray = Path2.Line(new(axis.StationAt(Section.Bounds.MinY - 1), Section.Bounds.MinY - 1), new(axis.StationAt(Section.Bounds.MaxY + 1), Section.Bounds.MaxY + 1));
        var heights = ray.IntersectionsWith(Section, 1e-6).Select(crossing => crossing.Point.Y).ToArray();
        if (heights.Length >= 2)
        {
            AddHole(heights.Min(), heights.Max(), axis.Fastener.Clearance / 2);
            (low, high) = (Math.Min(low, heights.Min()), Math.Max(high, heights.Max()));
        }

        _sketch.Line(LineUse.Centre, On(low - Overhang, 0), On(high + Overhang, 0));

        void AddHole(double from, double to, double radius)
        {
            _sketch.Line(LineUse.Hidden, On(from, -radius), On(to, -radius));
            _sketch.Line(LineUse.Hidden, On(from, radius), On(to, radius));
        }

        // In this view the edges run beside the axis, square to it a radius away.
        Point2 On(double height, double beside) => new(axis.StationAt(height) + (beside / Math.Cos(axis.Lean)), height);
    }

    private void AddAxes()
    {
        var (leading, trailing) = (Flat(Root.Leading), Flat(Root.Trailing));
        var beyond = (trailing - leading).Unit() * Overhang;
        _sketch.Line(LineUse.Datum, leading, trailing + beyond);
        _sketch.Line(LineUse.Datum, new Point2(Body.From - Overhang, 0), new(Body.To + (2 * Overhang), 0));
    }
}
