using PlanForge.Airframe;
using PlanForge.Geometry;
using PlanForge.Parts.Shapes;

namespace PlanForge.Parts.Bolts;

/// <summary>The axes of the wing bolts, square to the root chord line, and where they pass wing and plate.</summary>
internal sealed class BoltAxis
{
    private readonly Point3 _onChord;
    private readonly Vector3 _direction;

    private BoltAxis(RiggedAirframe airframe, BoltsDescription bolts, Fastener fastener)
    {
        (Bolts, Fastener) = (bolts, fastener);
        OnChord = airframe.Wing.RootChord - bolts.AheadOfTrailingEdge;
        _onChord = airframe.Wing.InPlace(new Point3(OnChord, Across, 0));
        _direction = airframe.Wing.InPlace(new Vector3(0, 0, 1));
        Seat = SeatOf(airframe);
        var below = airframe.WingSide == WingSide.Lower ? -1 : 1;
        NearFace = Seat.Z + (below * (airframe.Description.Saddle.SeatTape + bolts.Plate.Gap));
        FarFace = NearFace + (below * bolts.Plate.Thickness);
    }

    /// <summary>The bolts as described.</summary>
    public BoltsDescription Bolts { get; }

    /// <summary>Hole sizes.</summary>
    public Fastener Fastener { get; }

    /// <summary>Half the distance between the two axes, mm; 0 for a single bolt.</summary>
    public double Across => Bolts.Spacing / 2;

    /// <summary>Distance of the axes from the root leading edge along the chord, mm.</summary>
    public double OnChord { get; }

    /// <summary>Where the axis leaves the wing towards the body.</summary>
    public Point3 Seat { get; }

    /// <summary>Height of the plate's face next to the wing, mm.</summary>
    public double NearFace { get; }

    /// <summary>Height of its other face, mm.</summary>
    public double FarFace { get; }

    /// <summary>Angle between the axis and the plate's normal, radians: the wing's incidence.</summary>
    public double Obliquity => Math.Abs(Lean);

    /// <summary>Lean of the axis from upright, radians; positive when its upper end leans aft.</summary>
    public double Lean => Math.Atan2(_direction.X, _direction.Z);

    /// <summary>The axes of an airframe; null where it has no bolts or the thread is unknown (the reader has said so).</summary>
    public static BoltAxis? Of(RiggedAirframe airframe) =>
        airframe.Description.Bolts is { } bolts && Fastener.Find(bolts.Thread) is { } fastener ? new(airframe, bolts, fastener) : null;

    /// <summary>Station of the axes at a height, mm.</summary>
    public double StationAt(double height) => _onChord.X + ((height - _onChord.Z) * _direction.X / _direction.Z);

    // The point of the wing's surface on the axis: in the wing's own axes the axis keeps x, so w follows from x alone.
    private Point3 SeatOf(RiggedAirframe airframe)
    {
        var wing = airframe.Wing;
        var it = wing.Panels[wing.PanelAt(Across)];
        var along = Across - it.Start.Y;
        for (var round = 0; ; round++)
        {
            double Ahead(double w) => it.At(airframe.WingSide, along, w).X.Value - OnChord;
            var found = RootFinder.Bracketed(Ahead, 1e-6, 1, 1e-13) ?? 1;
            var surface = it.At(airframe.WingSide, along, found);
            var miss = Across - surface.Y.Value;
            if (Math.Abs(miss) < 1e-10 || round == 20)
            {
                return wing.InPlace(surface.Point);
            }

            along += miss / surface.Y.Du;
        }
    }
}
