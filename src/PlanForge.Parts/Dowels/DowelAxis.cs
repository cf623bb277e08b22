using PlanForge.Airframe;
using PlanForge.Geometry;

namespace PlanForge.Parts.Dowels;

/// <summary>
/// The axes of the wing dowels, parallel to the root chord line: one straight line in side view, carried from the wing to
/// any plane. Wing-side and former-side holes both come from it, so that they agree by construction.
/// </summary>
internal sealed class DowelAxis
{
    private readonly RiggedAirframe _airframe;

    private DowelAxis(RiggedAirframe airframe, DowelsDescription dowels) => (_airframe, Dowels) = (airframe, dowels);

    /// <summary>The dowels as described.</summary>
    public DowelsDescription Dowels { get; }

    /// <summary>Half the distance between the two axes, mm; 0 for a single dowel.</summary>
    public double Across => Dowels.Spacing / 2;

    /// <summary>Angle between the axis and the normal of a former, radians: the wing's incidence.</summary>
    public double Obliquity => Math.Abs(Rise);

    /// <summary>Angle of the axis to the datum line, radians, nose up positive.</summary>
    public double Rise => -Math.Atan2(Direction.Z, Direction.X);

    /// <summary>Station of the dowel's front end, mm.</summary>
    public double FrontStation => (At - (Direction * Dowels.Protrusion)).X;

    // Worked out when asked for, so that each part's inputs are what it asks. In side view both axes are one.
    private Point3 At => _airframe.Wing.InPlace(new Point3(0, 0, Dowels.AboveChord));

    private Vector3 Direction => _airframe.Wing.InPlace(new Vector3(1, 0, 0));

    /// <summary>The axes of an airframe; null where it has no dowels.</summary>
    public static DowelAxis? Of(RiggedAirframe airframe) =>
        airframe.Description.Dowels is { } dowels ? new(airframe, dowels) : null;

    /// <summary>The axes that pass a former: null unless it is a cross-former of an airframe with dowels.</summary>
    public static DowelAxis? Through(FormerDescription former, RiggedAirframe airframe) => former.IsCrossFormer ? Of(airframe) : null;

    /// <summary>Height of the axes above the datum line at a station, mm.</summary>
    public double HeightAt(double station)
    {
        var (at, direction) = (At, Direction);
        return at.Z + ((station - at.X) * direction.Z / direction.X);
    }

    /// <summary>
    /// The hole the axis makes in a plane square to the datum line: semi-axis across r and up r/cos of the obliquity, with
    /// r half of dowel and fit. Source: a plane cuts a cylinder of radius r at angle a in an ellipse r, r/cos a.
    /// </summary>
    public EllipticHole HoleAt(double station)
    {
        var radius = (Dowels.Diameter + Dowels.Fit) / 2;
        return new(new Point2(Across, HeightAt(station)), radius, radius / Math.Cos(Obliquity));
    }
}
