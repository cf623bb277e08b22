using PlanForge.Geometry;

namespace PlanForge.Output.Curves;

/// <summary>
/// Arcs taken apart by their bulge alone. Neither centre nor angle is used: nearly straight arcs stay exact, and with only
/// the four operations and square roots the same numbers come out on every machine.
/// </summary>
internal static class Arcs
{
    /// <summary>True when the arc strays from its chord by less than some distance (sagitta: chord times bulge over two).</summary>
    public static bool IsFlatterThan(this Segment2 arc, double sagitta) =>
        Math.Abs(arc.Bulge) * (arc.End - arc.Start).Length < 2 * sagitta;

    /// <summary>The two halves of an arc.</summary>
    public static (Segment2 First, Segment2 Second) Halves(this Segment2 arc)
    {
        // The summit lies on the right of the chord when anticlockwise. tan(a/2) = tan a / (1 + sqrt(1 + tan² a)).
        var chord = arc.End - arc.Start;
        var summit = arc.Start.Towards(arc.End, 0.5) - (chord.Left * (arc.Bulge / 2));
        var bulge = arc.Bulge / (1 + Math.Sqrt(1 + (arc.Bulge * arc.Bulge)));
        return (new(arc.Start, summit, bulge), new(summit, arc.End, bulge));
    }

    /// <summary>The inner control points of the cubic Bézier curve that shares the arc's ends, end tangents and middle.</summary>
    /// <remarks>
    /// They lie on the end tangents at the distance 4/3 r tan(θ/4); with b = tan(θ/4) and the chord c that is (1 + b²) c / 3,
    /// and the tangent leaves the chord by θ/2, whose cosine and sine are (1 − b²)/(1 + b²) and 2b/(1 + b²).
    /// </remarks>
    public static (Point2 First, Point2 Second) BezierControls(this Segment2 arc)
    {
        var third = (arc.End - arc.Start) / 3;
        var along = third * (1 - (arc.Bulge * arc.Bulge));
        var across = third.Left * (2 * arc.Bulge);
        return (arc.Start + (along - across), arc.End - (along + across));
    }

    /// <summary>A bound on how far that Bézier curve strays from the arc, mm; for a quarter circle 2.7256e-4 of the radius.</summary>
    /// <remarks>
    /// The squared distance from the centre less r² has double zeros at the ends and the middle, so it is C t²(1 − t)²(1 − 2t)²;
    /// the cubic coefficient of the curve has the length 2cb², so C = c²b⁴, and the product of the three is at most 1/108.
    /// Divided by 2r, r = c(1 + b²)/(4b), that is c b⁵ / (54 (1 + b²)).
    /// </remarks>
    public static double BezierError(this Segment2 arc)
    {
        var squared = arc.Bulge * arc.Bulge;
        return (arc.End - arc.Start).Length * Math.Abs(arc.Bulge) * squared * squared / (54 * (1 + squared));
    }
}
