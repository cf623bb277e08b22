using System.Collections.Immutable;
using PlanForge.Airframe.Measuring;
using PlanForge.Geometry;
using PlanForge.Parts.Shapes;

namespace PlanForge.Parts.Bench.Measuring;

/// <summary>
/// The least wood to take off the two saddles so that the wing sits at its drawn incidence and level, or the shims that do it instead.
/// </summary>
/// <remarks>
/// With the wing's vertical error e at a place of the saddle line, the wood to take off there is e less the least e on both saddles:
/// never negative, nothing at one place, and the wing comes down by no more than it must. Measured square to the datum line, at the
/// drawn saddle line; the slope of the seat changes that by less than a tenth of the correction itself. For a low wing, whose saddles
/// lie on top of it, the signs turn round. A warped wing cannot be cured here: its halves want different incidences, and whatever
/// is sanded turns both alike.
/// </remarks>
/// <param name="Stations">Nine places from the front end to the rear end.</param>
/// <param name="LeadingEdgeMove">How far the root leading edge moves when this is sanded, mm, up positive.</param>
/// <param name="Shims">The shims instead, all 0 or more, one of them 0 or nearly.</param>
public sealed record SaddleCorrection(ImmutableArray<CorrectionStation> Stations, double LeadingEdgeMove, SeatCorners Shims)
{
    private const int StationCount = 9;

    /// <summary>The most to take off anywhere, mm.</summary>
    public double Most => Stations.Max(station => Math.Max(station.Port, station.Starboard));

    // What the sanding has to undo, up positive, less its least value on both saddles.
    private double Least { get; init; }

    private WingPose Seat { get; init; }

    private Point3 Pivot { get; init; }

    private double Sign { get; init; }

    /// <summary>Wood to take off below a place of the starboard saddle line, or below its mirror image on port, mm.</summary>
    internal double TakeOffAt(Point3 place, Hand hand) => Math.Max(0, ErrorAt(place, hand) - Least);

    internal static SaddleCorrection? Of(RiggedAirframe airframe, WingPose pose, ImmutableArray<PoseEstimate> estimates)
    {
        bool hasIncidence = estimates[(int)PoseUnknown.Incidence].IsSettled, hasRoll = estimates[(int)PoseUnknown.Roll].IsSettled;
        if (!hasIncidence && !hasRoll)
        {
            return null;
        }

        var line = airframe.SaddleLine!;
        ImmutableArray<Point3> places = [.. line.Spread(StationCount).Select(point => point.Outer)];
        var raw = new SaddleCorrection([], 0, default)
        {
            Seat = new(hasIncidence ? pose.Incidence : 0, hasRoll ? pose.Roll : 0, 0, 0, 0, 0),
            Pivot = airframe.Wing.InPlace(Point3.Origin),
            Sign = airframe.WingSide == WingSide.Lower ? 1 : -1,
        };
        double least = double.PositiveInfinity, greatest = double.NegativeInfinity;
        foreach (var place in line.Points.Select(point => point.Outer).Concat(places))
        {
            foreach (var hand in new[] { Hand.Port, Hand.Starboard })
            {
                var error = raw.ErrorAt(place, hand);
                (least, greatest) = (Math.Min(least, error), Math.Max(greatest, error));
            }
        }

        raw = raw with { Least = least, LeadingEdgeMove = raw.Sign * least };
        Point3 front = places[0], rear = places[^1];
        double Shim(Point3 place, Hand hand) => Math.Max(0, greatest - raw.ErrorAt(place, hand));
        return raw with
        {
            Stations = [.. places.Select(place => new CorrectionStation(
                place.X, place.X - line.From, raw.TakeOffAt(place, Hand.Port), raw.TakeOffAt(place, Hand.Starboard)))],
            Shims = new(Shim(front, Hand.Port), Shim(rear, Hand.Port), Shim(front, Hand.Starboard), Shim(rear, Hand.Starboard)),
        };
    }

    // How far the wing stands off its drawn height at a place of the line, towards the side that wood is taken off for, mm.
    private double ErrorAt(Point3 place, Hand hand)
    {
        var own = hand == Hand.Starboard ? place : place with { Y = -place.Y };
        return Sign * (Seat.Moved(Pivot, own, hand).Z - own.Z);
    }
}

/// <summary>Wood to take off at a station of both saddles.</summary>
/// <param name="Station">The station, mm.</param>
/// <param name="FromFront">Distance from the front end of the saddle, mm.</param>
/// <param name="Port">Off the left saddle, mm, 0 or more.</param>
/// <param name="Starboard">Off the right saddle, mm, 0 or more.</param>
public readonly record struct CorrectionStation(double Station, double FromFront, double Port, double Starboard);

/// <summary>How to turn a wing or tailplane square: sanding the seat does nothing for it.</summary>
/// <param name="To">To which side the root trailing edge has to go.</param>
/// <param name="TrailingEdge">How far, mm, 0 or more.</param>
/// <param name="Tip">How far either tip then goes fore or aft, mm, 0 or more: the one on the side <paramref name="To"/> forward.</param>
public readonly record struct SquareCorrection(Hand To, double TrailingEdge, double Tip)
{
    internal static SquareCorrection Of(WingShape wing, double yaw)
    {
        // A positive yaw has carried the trailing edge to starboard and the starboard tip forward.
        var sine = Math.Abs(Math.Sin(yaw));
        return new(yaw > 0 ? Hand.Port : Hand.Starboard, wing.RootChord * sine, wing.HalfSpan * sine);
    }
}
