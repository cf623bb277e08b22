using System.Collections.Immutable;
using PlanForge.Geometry;
using PlanForge.Geometry.Fitting;
using PlanForge.Parts.Shapes;

namespace PlanForge.Parts.Arrangement;

/// <summary>The fuselage's outlines in side and plan view as exact samples, front to rear; two at each station, one for each bay.</summary>
internal static class BodyCurves
{
    // A cubic over a bay is followed by arcs of so many pieces far within the drawing tolerance.
    private const int StepCount = 32;

    /// <summary>The top on the centre line: x the station, y the height.</summary>
    public static ImmutableArray<CurveSample> Upper(FuselageShape body, double from, double to) =>
        Along(body, from, to, section => section.Upper);

    /// <summary>The bottom on the centre line: x the station, y the height.</summary>
    public static ImmutableArray<CurveSample> Lower(FuselageShape body, double from, double to) =>
        Along(body, from, to, section => section.Lower);

    /// <summary>The widest half-breadth: x the station, y the half-breadth.</summary>
    public static ImmutableArray<CurveSample> HalfBreadth(FuselageShape body) => Along(body, body.From, body.To, Widest);

    /// <summary>
    /// The greatest half-breadth of a cross-section. Its rate along the body is that of the place where it lies: at a greatest
    /// value the shift of the place itself does not count.
    /// </summary>
    public static Dual Widest(CrossSection section)
    {
        var isWiderAbove = section.UpperBreadth.Value >= section.LowerBreadth.Value;
        var (corner, sideEnd) = isWiderAbove ? (Zone.UpperCorner, 1.0) : (Zone.LowerCorner, 0.0);
        if (!section.Has(corner))
        {
            return isWiderAbove ? section.UpperBreadth : section.LowerBreadth;
        }

        // Leaning outward, a side is widest within its rounded corner, where the rounding begins to outweigh the lean.
        double Rate(double v) => section.At(corner, Dual.V(v)).Y.Dv;
        return RootFinder.Bracketed(Rate, 1e-9, 1 - 1e-9, 1e-12) is { } v
            ? section.At(corner, v).Y
            : section.Has(Zone.Side) ? section.At(Zone.Side, sideEnd).Y : section.At(corner, 1 - sideEnd).Y;
    }

    private static ImmutableArray<CurveSample> Along(FuselageShape body, double from, double to, Func<CrossSection, Dual> value)
    {
        var samples = ImmutableArray.CreateBuilder<CurveSample>();
        foreach (var bay in body.Bays)
        {
            double first = Math.Max(bay.From, from), last = Math.Min(bay.To, to);
            for (var i = 0; first < last && i <= StepCount; i++)
            {
                var station = i == StepCount ? last : first + ((last - first) * i / StepCount);
                var height = value(bay.At(Dual.U(station)));
                samples.Append(new(new(station, height.Value), new Vector2(1, height.Du).Unit()));
            }
        }

        return samples.ToImmutable();
    }
}
