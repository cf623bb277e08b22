using PlanForge.Airframe;
using PlanForge.Geometry;
using PlanForge.Parts.Shapes;

namespace PlanForge.Parts.Bolts;

/// <summary>The axes of the wing bolts, square to the root chord line, and where they pass wing and plate.</summary>
internal sealed class BoltAxis
{
    private readonly RiggedAirframe _airframe;
    private readonly Shared<Point3> _seat;

    private BoltAxis(RiggedAirframe airframe, BoltsDescription bolts, Fastener fastener)
    {
        (_airframe, Bolts, Fastener) = (airframe, bolts, fastener);
        _seat = new(airframe.Inputs, () => SeatOf(airframe));
    }

    /// <summary>The bolts as described.</summary>
    public BoltsDescription Bolts { get; }

    /// <summary>Hole sizes.</summary>
    public Fastener Fastener { get; }

    /// <summary>Half the distance between the two axes, mm; 0 for a single bolt.</summary>
    public double Across => Bolts.Spacing / 2;

    /// <summary>Distance of the axes from the root leading edge along the chord, mm.</summary>
    public double OnChord => _airframe.Wing.RootChord - Bolts.AheadOfTrailingEdge;

    /// <summary>Where the axis leaves the wing towards the body.</summary>
    public Point3 Seat => _seat.Value;

    /// <summary>Height of the plate's face next to the wing, mm.</summary>
    public double NearFace => Seat.Z + (TowardsBody * (_airframe.Description.Saddle.SeatTape + Bolts.Plate.Gap));

    /// <summary>Height of its other face, mm.</summary>
    public double FarFace => NearFace + (TowardsBody * Bolts.Plate.Thickness);

    /// <summary>Angle between the axis and the plate's normal, radians: the wing's incidence.</summary>
    public double Obliquity => Math.Abs(Lean);

    /// <summary>Lean of the axis from upright, radians; positive when its upper end leans aft.</summary>
    public double Lean => Math.Atan2(Direction.X, Direction.Z);

    // Worked out when asked for, so that each part's inputs are what it asks.
    private Vector3 Direction => _airframe.Wing.InPlace(new Vector3(0, 0, 1));

    private int TowardsBody => _airframe.WingSide == WingSide.Lower ? -1 : 1;

    /// <summary>The axes of an airframe; null where it has no bolts or the thread is unknown (the reader has said so).</summary>
    public static BoltAxis? Of(RiggedAirframe airframe) =>
        airframe.Description.Bolts is { } bolts && Fastener.Find(bolts.Thread) is { } fastener ? new(airframe, bolts, fastener) : null;

    /// <summary>Station of the axes at a height, mm.</summary>
    public double StationAt(double height)
    {
        var (onChord, direction) = (_airframe.Wing.InPlace(new Point3(OnChord, 0, 0)), Direction);
        return onChord.X + ((height - onChord.Z) * direction.X / direction.Z);
    }

    // The point of the wing's surface on the axis: in the wing's own axes the axis keeps x, so w follows from x alone.
    private Point3 SeatOf(RiggedAirframe airframe)
    {
        var (wing, onChord) = (airframe.Wing, OnChord);
        var it = wing.Panels[wing.PanelAt(Across)];
        var along = Across - it.Start.Y;
        for (var round = 0; ; round++)
        {
            double Ahead(double w) => it.At(airframe.WingSide, along, w).X.Value - onChord;
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
