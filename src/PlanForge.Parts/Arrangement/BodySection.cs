using System.Collections.Immutable;
using PlanForge.Geometry;
using PlanForge.Geometry.Fitting;
using PlanForge.Parts.Shapes;

namespace PlanForge.Parts.Arrangement;

/// <summary>The closed outline in which a plane square to the datum line cuts the outside of the body; symmetric, so it is the same from both ends.</summary>
internal static class BodySection
{
    private const int CornerStepCount = 24;

    /// <summary>The outline at a station, x across and y up.</summary>
    public static Path2 Outside(FuselageShape body, double station)
    {
        var section = body.BayAt(station).At(station);
        var samples = ImmutableArray.CreateBuilder<CurveSample>();
        foreach (var zone in (ReadOnlySpan<Zone>)[Zone.Bottom, Zone.LowerCorner, Zone.Side, Zone.UpperCorner, Zone.Top])
        {
            if (!section.Has(zone))
            {
                continue;
            }

            var steps = zone is Zone.LowerCorner or Zone.UpperCorner ? CornerStepCount : 1;
            for (var i = 0; i <= steps; i++)
            {
                var (y, z) = section.At(zone, Dual.V((double)i / steps));
                samples.Append(new(new(y.Value, z.Value), new Vector2(y.Dv, z.Dv).Unit()));
            }
        }

        var starboard = ViewLines.Through(samples.ToImmutable());
        var port = starboard.Placed(Placement2.Mirror).Reversed();
        return Path2.Closed([.. starboard.Vertices[..^1], .. port.Vertices[..^1]]);
    }
}
