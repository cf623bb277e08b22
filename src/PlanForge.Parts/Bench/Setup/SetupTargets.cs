using System.Collections.Immutable;
using PlanForge.Geometry;
using PlanForge.Parts.Arrangement;

namespace PlanForge.Parts.Bench.Setup;

/// <summary>A length to measure on the building board.</summary>
/// <param name="Key">Its key among the figures.</param>
/// <param name="Name">What is measured, as the builder reads it.</param>
/// <param name="Value">What it should be, mm.</param>
/// <param name="Tolerance">How far off it may be, mm.</param>
internal sealed record SetupTarget(string Key, string Name, double Value, double Tolerance);

/// <summary>All that is measured on the board, in the order it is done; each of it is worked out when it is asked for, and knows what it was made from.</summary>
internal sealed class SetupTargets
{
    // Common practice, no source: what a height gauge and a straightedge hold, and what a cord pulled tight does.
    private const double Tolerance = 0.25;
    private const double Rise = 0.1;
    private const double Tips = 1;

    private readonly RiggedAirframe _airframe;
    private readonly Shared<double> _across;
    private readonly Shared<WingPins> _pins;
    private readonly Shared<TailplanePins> _tail;

    private SetupTargets(RiggedAirframe airframe)
    {
        (_airframe, var inputs) = (airframe, airframe.Inputs);
        _across = new(inputs, () => PinPoints.AcrossOf(airframe));
        _pins = new(inputs, () => new(PinPoints.EdgeAt(airframe.Wing, Across, 0), PinPoints.EdgeAt(airframe.Wing, Across, 1)));
        _tail = new(inputs, () => new(TailPins.Of(airframe)));
    }

    /// <summary>Distance of the wing's pins from the centre line, mm.</summary>
    public double Across => _across.Value;

    /// <summary>The leading edge at the wing's pins, starboard.</summary>
    public Point3 Front => _pins.Value.Front;

    /// <summary>The trailing edge at the wing's pins, starboard.</summary>
    public Point3 Rear => _pins.Value.Rear;

    /// <summary>How much higher the wing's front pins stand than the rear ones, mm.</summary>
    public double WingRise => Front.Z - Rear.Z;

    /// <summary>How far the board lies below the datum line, mm.</summary>
    public double Board => BoardHeight.OfDatum(_airframe);

    /// <summary>True when there is a tailplane.</summary>
    public bool HasTail => _airframe.Description.Tailplane is not null;

    /// <summary>The tailplane's pins, or null.</summary>
    public TailPins? Tail => _tail.Value.Pins;

    /// <summary>Leading edge of the starboard tip.</summary>
    public Point3 Tip => ArrangedWing.TipLeading(_airframe.Wing);

    /// <summary>Station of the pin at the tail, mm.</summary>
    public double CordStation => _airframe.Description.Bench.CordStation ?? _airframe.Body.To;

    /// <summary>The pin at the tail, on the top of the body.</summary>
    public Point3 Cord
    {
        get
        {
            var (station, body) = (CordStation, _airframe.Body);
            return new(station, 0, body.UpperAt(Math.Clamp(station, body.From, body.To)));
        }
    }

    /// <summary>Those of an airframe.</summary>
    public static SetupTargets Of(RiggedAirframe airframe) => new(airframe);

    /// <summary>Length of the cord from the pin at the tail to either tip, mm, through the air.</summary>
    public double CordLength => Cord.DistanceTo(Tip);

    /// <summary>Height of both tips' leading edges above the board, mm.</summary>
    public double TipAboveBoard => Tip.Z + Board;

    /// <summary>Everything to measure.</summary>
    public ImmutableArray<SetupTarget> All()
    {
        var targets = ImmutableArray.CreateBuilder<SetupTarget>();
        void Add(string key, string name, double value, double tolerance) => targets.Add(new($"setup.{key}", name, value, tolerance));
        var (front, rear, board) = (Front, Rear, Board);
        Add("datum.front", "datum line at the front cradle", board, Tolerance);
        Add("datum.rear", "datum line at the rear cradle", board, Tolerance);
        Add("p1", "P1 height, front left (port)", front.Z + board, Tolerance);
        Add("p2", "P2 height, front right (starboard)", front.Z + board, Tolerance);
        Add("p3", "P3 height, rear left (port)", rear.Z + board, Tolerance);
        Add("p4", "P4 height, rear right (starboard)", rear.Z + board, Tolerance);
        Add("rise.port", "P1 over P3, left (port)", WingRise, Rise);
        Add("rise.starboard", "P2 over P4, right (starboard)", WingRise, Rise);
        Add("across.front", "P1 to P2, across", 2 * front.Y, Tolerance);
        Add("across.rear", "P3 to P4, across", 2 * rear.Y, Tolerance);
        Add("along", "P1 to P3 and P2 to P4", front.DistanceTo(rear), Tolerance);
        Add("diagonal", "P1 to P4 and P2 to P3", front.DistanceTo(rear with { Y = -rear.Y }), Tolerance);
        Add("tip.port", "left (port) tip height, leading edge", TipAboveBoard, Tips);
        Add("tip.starboard", "right (starboard) tip height, leading edge", TipAboveBoard, Tips);
        Add("cord.port", "cord to left (port) tip, leading edge", CordLength, Tips);
        Add("cord.starboard", "cord to right (starboard) tip, leading edge", CordLength, Tips);
        if (Tail is { } tail)
        {
            Add("tail.front", "T1 and T2 height", tail.Front.Z + board, Tolerance);
            Add("tail.rise.port", "T1 over T3, left (port)", tail.Rise, Rise);
            Add("tail.rise.starboard", "T2 over T4, right (starboard)", tail.Rise, Rise);
        }

        return targets.ToImmutable();
    }

    private sealed record WingPins(Point3 Front, Point3 Rear);

    private sealed record TailplanePins(TailPins? Pins);
}
