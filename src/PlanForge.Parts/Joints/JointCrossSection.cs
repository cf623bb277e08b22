using System.Collections.Immutable;
using PlanForge.Geometry;
using PlanForge.Geometry.Fitting;
using PlanForge.Parts.Arrangement;
using PlanForge.Parts.Dowels;
using PlanForge.Parts.Shapes;
using PlanForge.Parts.Wording;

namespace PlanForge.Parts.Joints;

/// <summary>
/// The joint cut across at the wing's quarter chord, seen from the tail like the formers: starboard on the right, heights
/// upward. It shows how the wing's V lies in the seat, and the dowels ahead of it.
/// </summary>
internal sealed class JointCrossSection(RiggedAirframe airframe)
{
    // How much wing is shown beside the body, mm.
    private const double Beside = 25;
    private const double Overhang = 5;

    private readonly PartSketch _sketch = new();

    /// <summary>Draws the part; null where the plane misses the wing or the body.</summary>
    /// <exception cref="CurveException">An outline folds.</exception>
    public Part? Draw(string kind)
    {
        var wing = airframe.Wing;
        var station = wing.InPlace(new Point3(wing.RootChord / 4, 0, 0)).X;
        if (station < airframe.Body.From || station > airframe.Body.To)
        {
            return null;
        }

        var outside = BodySection.Outside(airframe.Body, station);
        var reach = Math.Min(outside.Bounds.MaxX + Beside, wing.HalfSpan);
        if (WingCut.Half(wing, WingSide.Lower, 0, station, reach) is not { } lower
            || WingCut.Half(wing, WingSide.Upper, 0, station, reach) is not { } upper)
        {
            return null;
        }

        var faces = Whole(upper).Bounds.Joined(Whole(lower).Bounds);
        var cut = ViewLines.Between(Whole(lower), Whole(upper));
        var inWing = new Silhouette(cut);
        foreach (var (piece, middle) in Silhouette.Pieces(outside, inWing))
        {
            _sketch.Line(IsTaken(middle, inWing, faces) ? LineUse.Neighbour : LineUse.Edge, piece);
        }

        if (BodyOutline.Inside(airframe.Body, station, Drawn.Tolerance) is { } inside)
        {
            foreach (var (piece, middle) in Silhouette.Pieces(inside, inWing))
            {
                _sketch.Line(IsTaken(middle, inWing, faces) ? LineUse.Neighbour : LineUse.Edge, piece);
            }
        }

        _sketch.Line(LineUse.Edge, Whole(lower));
        _sketch.Line(LineUse.Edge, Whole(upper));
        AddDowels();
        AddAxes(outside.Bounds.Joined(faces));
        AddTexts(station, outside.Bounds.Joined(faces), outside.Bounds);
        return _sketch.AsTemplate("wing-joint-section", kind, "Wing joint, cross-section");
    }

    // Beyond the wing's seat the body is gone on the wing's side: above a high wing's underside, below a low one's upper side.
    private bool IsTaken(Point2 place, Silhouette inWing, Bounds2 faces)
    {
        if (inWing.Contains(place))
        {
            return true;
        }

        return airframe.WingSide == WingSide.Lower ? place.Y > faces.Centre.Y : place.Y < faces.Centre.Y;
    }

    private static Path2 Whole(ImmutableArray<CurveSample> half)
    {
        var starboard = ArcFitter.Fit(half, Drawn.Tolerance);
        var port = starboard.Placed(Placement2.Mirror).Reversed();
        return Path2.Open([.. port.Vertices[..^1], .. starboard.Vertices]);
    }

    private void AddDowels()
    {
        if (DowelAxis.Of(airframe) is not { } axis)
        {
            return;
        }

        // Their front ends, as far ahead as they stand out: hidden behind the wing.
        var hole = axis.HoleAt(axis.FrontStation);
        bool[] sides = axis.Across > 0 ? [false, true] : [false];
        foreach (var isPort in sides)
        {
            var centre = isPort ? new Point2(-hole.Centre.X, hole.Centre.Y) : hole.Centre;
            _sketch.Line(LineUse.Hidden, Path2.Circle(centre, axis.Dowels.Diameter / 2));
            _sketch.Cross(LineUse.Centre, centre, axis.Dowels.Diameter + 6);
        }
    }

    private void AddAxes(Bounds2 bounds)
    {
        _sketch.Line(LineUse.Centre, new Point2(0, bounds.MinY - Overhang), new(0, bounds.MaxY + Overhang));
        _sketch.Line(LineUse.Datum, new Point2(bounds.MinX - Overhang, 0), new(bounds.MaxX + Overhang, 0));
        _sketch.Label("datum line", new(bounds.MaxX + Overhang + 2, -1.25), Anchor.Start);
    }

    private void AddTexts(double station, Bounds2 bounds, Bounds2 body)
    {
        // Texts keep clear of the centre line's ends.
        const double FirstRow = 9 + Overhang;
        var text = airframe.Text;
        var isHigh = airframe.WingSide == WingSide.Lower;

        // The body's breadth on the side away from the wing, the dowels' spacing on the wing's.
        var far = isHigh ? body.MinY : body.MaxY;
        _sketch.Across(new(body.MinX, body.Centre.Y), new(body.MaxX, body.Centre.Y), far + (isHigh ? -FirstRow : FirstRow) - body.Centre.Y);
        if (DowelAxis.Of(airframe) is { Across: > 0 } axis)
        {
            var height = axis.HeightAt(axis.FrontStation);
            var at = isHigh ? bounds.MaxY + FirstRow : bounds.MinY - FirstRow;
            _sketch.Across(new(-axis.Across, height), new(axis.Across, height), at - height);
        }

        // The seat's height on the centre line, measured at the left.
        if (WingCut.HeightAt(airframe.Wing, airframe.WingSide, 0, station, 0) is { } seat)
        {
            Point2 datum = new(bounds.MinX - Overhang, 0), centre = new(0, seat);
            var (low, high) = seat >= 0 ? (datum, centre) : (centre, datum);
            _sketch.Up(low, high, low.X - (bounds.MinX - 12));
        }

        var panel = airframe.Wing.Panels[airframe.Wing.PanelAt(body.MaxX)];
        _sketch.Note($"Cut at station {text.CoarseWithUnit(station)}, a quarter of the root chord, seen from the tail; dihedral beside the body {MeasureText.Angle(panel.Dihedral)}.");
        _sketch.Note($"Height: the wing's {(isHigh ? "underside" : "upper side")} on the centre line. Dashed circles: the dowels' front ends.");
    }
}
