using System.Collections.Immutable;
using PlanForge.Geometry;
using PlanForge.Parts.Shapes;

namespace PlanForge.Parts.Bench.Measuring;

/// <summary>What turns the tailplane to its place: wood off the four corners of its seat, or shims at them instead.</summary>
/// <remarks>
/// The tailplane lies on a seat as long as its root chord and as wide as <c>seat_width</c>. With its height error e at a corner, the
/// wood to take off there is e less the least e, the shim the greatest e less e: neither is ever negative, and one corner stays.
/// </remarks>
/// <param name="TakeOff">Wood to take off.</param>
/// <param name="Shims">The shims instead.</param>
public sealed record TailSeat(SeatCorners TakeOff, SeatCorners Shims)
{
    /// <summary>The correction; null when neither incidence nor roll is settled.</summary>
    /// <param name="airframe">The airframe as drawn.</param>
    /// <param name="tail">Its tailplane.</param>
    /// <param name="estimates">How the tailplane sits.</param>
    /// <param name="againstWing">The error of incidence that it is to have: the wing's own, for the drawn decalage; 0 for the drawn place.</param>
    internal static TailSeat? Of(RiggedAirframe airframe, WingShape tail, ImmutableArray<PoseEstimate> estimates, double againstWing)
    {
        var (incidence, roll) = (estimates[(int)PoseUnknown.Incidence], estimates[(int)PoseUnknown.Roll]);
        if (!incidence.IsSettled && !roll.IsSettled)
        {
            return null;
        }

        var pose = new WingPose(incidence.IsSettled ? incidence.Value - againstWing : 0, roll.Value, 0, 0, 0, 0);
        var pivot = tail.InPlace(Point3.Origin);
        var half = airframe.Description.Tailplane!.SeatWidth / 2;
        var error = new SeatCorners(ErrorAt(0, -half), ErrorAt(tail.RootChord, -half), ErrorAt(0, half), ErrorAt(tail.RootChord, half));
        return new(error.Map(it => it - error.Least), error.Map(it => error.Most - it));

        double ErrorAt(double x, double y)
        {
            var place = pivot + new Vector3(x, y, 0);
            return pose.Moved(pivot, place, Airframe.Measuring.Hand.Starboard).Z - place.Z;
        }
    }
}

/// <summary>A thickness at each end of a seat on both sides, mm.</summary>
/// <param name="PortFront">Left, front end.</param>
/// <param name="PortRear">Left, rear end.</param>
/// <param name="StarboardFront">Right, front end.</param>
/// <param name="StarboardRear">Right, rear end.</param>
public readonly record struct SeatCorners(double PortFront, double PortRear, double StarboardFront, double StarboardRear)
{
    /// <summary>The least of the four, mm.</summary>
    public double Least => Math.Min(Math.Min(PortFront, PortRear), Math.Min(StarboardFront, StarboardRear));

    /// <summary>The most of the four, mm.</summary>
    public double Most => Math.Max(Math.Max(PortFront, PortRear), Math.Max(StarboardFront, StarboardRear));

    internal SeatCorners Map(Func<double, double> change) => new(change(PortFront), change(PortRear), change(StarboardFront), change(StarboardRear));
}
