using PlanForge.Geometry;

namespace PlanForge.Parts.Shapes;

/// <summary>A point of the wing's surface moved out by the seat tape: where wood meets the wing.</summary>
/// <param name="Surface">The bare surface with its tangents.</param>
/// <param name="Normal">Unit normal out of the wing.</param>
/// <param name="Point">The point on the tape.</param>
internal readonly record struct WingSeat(Dual3 Surface, Vector3 Normal, Point3 Point)
{
    /// <summary>The seat over a point of a surface, in whichever axes that is given.</summary>
    public static WingSeat On(WingSide side, Dual3 surface, double seatTape)
    {
        // u runs to starboard and v aft: u × v = y × x points down.
        var down = surface.Normal;
        var outward = side == WingSide.Lower ? down : -down;
        return new(surface, outward, surface.Point + (outward * seatTape));
    }
}
