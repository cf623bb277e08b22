using System.Collections.Immutable;
using PlanForge.Airframe;
using PlanForge.Geometry;
using PlanForge.Geometry.Regions;

namespace PlanForge.Parts.Formers;

/// <summary>A former's wood as cut: net outline, allowances, tabs, notches and all openings.</summary>
/// <param name="Wood">What is cut.</param>
/// <param name="TrimLines">Finished edges inside an allowance.</param>
/// <param name="DowelHoles">The dowel holes' contours, clockwise; also openings of the wood.</param>
internal sealed record FormerBlank(Region2 Wood, ImmutableArray<Path2> TrimLines, ImmutableArray<Path2> DowelHoles)
{
    /// <summary>Builds the wood from the net outline, in the order a builder would: leave on, stick out, cut away, lighten.</summary>
    public static FormerBlank Of(FormerDescription former, FormerOutline outline, RiggedAirframe airframe)
    {
        var (wood, trims) = WithAllowances(outline.Net, former.Allowance);
        wood = wood.Union(FormerFeatures.Tabs(former, outline));
        wood = wood.Difference(FormerFeatures.Notches(former, outline, airframe));
        wood = wood.Difference(FormerFeatures.Openings(former));
        wood = wood.Difference(FormerFeatures.Slots(former));
        var holes = FormerFeatures.DowelHoles(former, airframe);
        if (holes.Length > 0)
        {
            wood = wood.Difference(Region2.FromContours(FillRule.NonZero, holes.Select(hole => hole.Reversed())));
        }

        if (former.Lightening is { } lightening)
        {
            wood = wood.Difference(FormerFeatures.Lightening(wood, lightening));
        }

        return new(wood, trims, holes);
    }

    private static (Region2 Wood, ImmutableArray<Path2> Trims) WithAllowances(Region2 net, AllowanceDescription allowance)
    {
        var wood = net;
        var trims = ImmutableArray.CreateBuilder<Path2>();
        Add(allowance.Upper, new(0, 1));
        Add(allowance.Lower, new(0, -1));
        Add(allowance.Side, new(1, 0));
        Add(allowance.Side, new(-1, 0));
        return (wood, trims.ToImmutable());

        void Add(double extra, Vector2 facing)
        {
            if (extra <= 0)
            {
                return;
            }

            foreach (var part in net.Parts)
            {
                if (OutlineEdge.Facing(part.Outer, facing) is { } edge)
                {
                    wood = OutlineEdge.Extended(wood, edge, facing * extra);
                    trims.Add(edge);
                }
            }
        }
    }
}
