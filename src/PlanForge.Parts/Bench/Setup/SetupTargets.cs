using System.Collections.Immutable;
using PlanForge.Geometry;
using PlanForge.Parts.Arrangement;

namespace PlanForge.Parts.Bench.Setup;

/// <summary>A length to measure on the building board.</summary>
/// <param name="Key">Its key among the figures.</param>
/// <param name="Name">What is measured, as the builder reads it.</param>
/// <param name="Value">What it should be, mm.</param>
/// <param name="Tolerance">How far off it may be, mm.</param>
internal readonly record struct SetupTarget(string Key, string Name, double Value, double Tolerance);

/// <summary>All that is measured on the board, in the order it is done.</summary>
/// <param name="Pins">The wing's pins.</param>
/// <param name="Tail">The tailplane's pins, or null.</param>
/// <param name="Tip">Leading edge of the starboard tip.</param>
/// <param name="Cord">The pin at the tail, on the top of the body.</param>
internal sealed record SetupTargets(PinPoints Pins, TailPins? Tail, Point3 Tip, Point3 Cord)
{
    // Common practice, no source: what a height gauge and a straightedge hold, and what a cord pulled tight does.
    private const double Across = 0.25;
    private const double Rise = 0.1;
    private const double Tips = 1;

    /// <summary>Collects them.</summary>
    public static SetupTargets Of(RiggedAirframe airframe)
    {
        var body = airframe.Body;
        var station = airframe.Description.Bench.CordStation ?? body.To;
        var cord = new Point3(station, 0, body.UpperAt(Math.Clamp(station, body.From, body.To)));
        return new(PinPoints.Of(airframe), TailPins.Of(airframe), ArrangedWing.Of(airframe.Wing).Tip.Leading, cord);
    }

    /// <summary>Length of the cord from the pin at the tail to either tip, mm, through the air.</summary>
    public double CordLength => Cord.DistanceTo(Tip);

    /// <summary>Height of both tips' leading edges above the board, mm.</summary>
    public double TipAboveBoard => Tip.Z + Pins.BoardBelowDatum;

    /// <summary>Everything to measure.</summary>
    public ImmutableArray<SetupTarget> All()
    {
        var targets = ImmutableArray.CreateBuilder<SetupTarget>();
        void Add(string key, string name, double value, double tolerance) => targets.Add(new($"setup.{key}", name, value, tolerance));
        var (front, rear) = (Pins.Front, Pins.Rear);
        Add("datum.front", "datum line at the front cradle", Pins.BoardBelowDatum, Across);
        Add("datum.rear", "datum line at the rear cradle", Pins.BoardBelowDatum, Across);
        Add("p1", "P1 height, front left (port)", Pins.FrontAboveBoard, Across);
        Add("p2", "P2 height, front right (starboard)", Pins.FrontAboveBoard, Across);
        Add("p3", "P3 height, rear left (port)", Pins.RearAboveBoard, Across);
        Add("p4", "P4 height, rear right (starboard)", Pins.RearAboveBoard, Across);
        Add("rise.port", "P1 over P3, left (port)", Pins.Rise, Rise);
        Add("rise.starboard", "P2 over P4, right (starboard)", Pins.Rise, Rise);
        Add("across.front", "P1 to P2, across", 2 * front.Y, Across);
        Add("across.rear", "P3 to P4, across", 2 * rear.Y, Across);
        Add("along", "P1 to P3 and P2 to P4", front.DistanceTo(rear), Across);
        Add("diagonal", "P1 to P4 and P2 to P3", front.DistanceTo(rear with { Y = -rear.Y }), Across);
        Add("tip.port", "left (port) tip height, leading edge", TipAboveBoard, Tips);
        Add("tip.starboard", "right (starboard) tip height, leading edge", TipAboveBoard, Tips);
        Add("cord.port", "cord to left (port) tip, leading edge", CordLength, Tips);
        Add("cord.starboard", "cord to right (starboard) tip, leading edge", CordLength, Tips);
        if (Tail is { } tail)
        {
            Add("tail.front", "T1 and T2 height", tail.Front.Z + Pins.BoardBelowDatum, Across);
            Add("tail.rise.port", "T1 over T3, left (port)", tail.Rise, Rise);
            Add("tail.rise.starboard", "T2 over T4, right (starboard)", tail.Rise, Rise);
        }

        return targets.ToImmutable();
    }
}
