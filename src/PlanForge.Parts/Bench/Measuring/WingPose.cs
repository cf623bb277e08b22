using PlanForge.Airframe.Measuring;
using PlanForge.Geometry;

namespace PlanForge.Parts.Bench.Measuring;

/// <summary>How a wing sits against the drawing: a rigid misplacement about the root leading edge, and a warp.</summary>
/// <remarks>
/// A point of the wing is turned by the warp about the y axis (starboard half by +warp, port half by −warp), then by roll about x,
/// by incidence about y, by yaw about z, all right-handed about axes through the drawn root leading edge, then moved. Yaw comes last,
/// so that no height depends on it.
/// </remarks>
/// <param name="Incidence">Error of incidence, radians, leading edge up positive.</param>
/// <param name="Roll">Radians, starboard up positive.</param>
/// <param name="Warp">Half the difference of starboard less port incidence, radians.</param>
/// <param name="Height">Height of the root leading edge over the drawn one, mm.</param>
/// <param name="Yaw">Radians, starboard tip forward (trailing edge to starboard) positive.</param>
/// <param name="Aft">How far the wing sits aft of its drawn place, mm.</param>
public readonly record struct WingPose(double Incidence, double Roll, double Warp, double Height, double Yaw, double Aft)
{
    /// <summary>How many unknowns there are.</summary>
    internal const int Count = 6;

    /// <summary>One of the unknowns.</summary>
    public double this[PoseUnknown unknown] => unknown switch
    {
        PoseUnknown.Incidence => Incidence,
        PoseUnknown.Roll => Roll,
        PoseUnknown.Warp => Warp,
        PoseUnknown.Height => Height,
        PoseUnknown.Yaw => Yaw,
        _ => Aft,
    };

    /// <summary>The pose with one unknown changed by an amount.</summary>
    public WingPose Plus(PoseUnknown unknown, double by) => unknown switch
    {
        PoseUnknown.Incidence => this with { Incidence = Incidence + by },
        PoseUnknown.Roll => this with { Roll = Roll + by },
        PoseUnknown.Warp => this with { Warp = Warp + by },
        PoseUnknown.Height => this with { Height = Height + by },
        PoseUnknown.Yaw => this with { Yaw = Yaw + by },
        _ => this with { Aft = Aft + by },
    };

    /// <summary>Where a drawn point of the wing lies.</summary>
    /// <param name="pivot">The drawn root leading edge.</param>
    /// <param name="point">The point as drawn.</param>
    /// <param name="hand">Which half of the wing it belongs to.</param>
    public Point3 Moved(Point3 pivot, Point3 point, Hand hand) => pivot + Turned(Warped(point - pivot, hand)) + new Vector3(Aft, 0, Height);

    /// <summary>How fast that place moves with one of the unknowns: mm for each radian, or for each mm.</summary>
    internal Vector3 Rate(PoseUnknown unknown, Point3 pivot, Point3 point, Hand hand)
    {
        // A turn about an axis moves an arm by axis × arm; the axes of the earlier turns are carried along by the later ones.
        var warped = Warped(point - pivot, hand);
        var arm = Turned(warped);
        return unknown switch
        {
            PoseUnknown.Incidence => AboutZ(new(0, 1, 0), Yaw).Cross(arm),
            PoseUnknown.Roll => AboutZ(AboutY(new(1, 0, 0), Incidence), Yaw).Cross(arm),
            PoseUnknown.Warp => Turned(new Vector3(0, Side(hand), 0).Cross(warped)),
            PoseUnknown.Height => new(0, 0, 1),
            PoseUnknown.Yaw => new Vector3(0, 0, 1).Cross(arm),
            _ => new(1, 0, 0),
        };
    }

    private static double Side(Hand hand) => hand == Hand.Starboard ? 1 : -1;

    private Vector3 Warped(Vector3 arm, Hand hand) => AboutY(arm, Side(hand) * Warp);

    private Vector3 Turned(Vector3 arm) => AboutZ(AboutY(AboutX(arm, Roll), Incidence), Yaw);

    private static Vector3 AboutX(Vector3 v, double angle)
    {
        var (sin, cos) = Math.SinCos(angle);
        return new(v.X, (v.Y * cos) - (v.Z * sin), (v.Y * sin) + (v.Z * cos));
    }

    private static Vector3 AboutY(Vector3 v, double angle)
    {
        var (sin, cos) = Math.SinCos(angle);
        return new((v.X * cos) + (v.Z * sin), v.Y, (v.Z * cos) - (v.X * sin));
    }

    private static Vector3 AboutZ(Vector3 v, double angle)
    {
        var (sin, cos) = Math.SinCos(angle);
        return new((v.X * cos) - (v.Y * sin), (v.X * sin) + (v.Y * cos), v.Z);
    }
}

/// <summary>What is to be found out about a wing's seat; see <see cref="WingPose"/> for signs and units.</summary>
public enum PoseUnknown
{
    /// <summary>Error of incidence.</summary>
    Incidence,

    /// <summary>Roll.</summary>
    Roll,

    /// <summary>Left against right incidence.</summary>
    Warp,

    /// <summary>Height of the root leading edge.</summary>
    Height,

    /// <summary>Yaw: whether the wing is square to the centre line.</summary>
    Yaw,

    /// <summary>Place fore and aft.</summary>
    Aft,
}

/// <summary>What kind of quantity an unknown is.</summary>
public static class PoseUnknowns
{
    /// <summary>True for lengths, mm; the others are angles, radians.</summary>
    public static bool IsLength(this PoseUnknown unknown) => unknown is PoseUnknown.Height or PoseUnknown.Aft;
}
