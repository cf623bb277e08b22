using System.Collections.Immutable;
using PlanForge.Airframe;
using PlanForge.Airframe.Diagnostics;
using PlanForge.Geometry.Fitting;

namespace PlanForge.Parts.Formers;

/// <summary>All formers, the cross-former included, seen from the tail looking forward.</summary>
public sealed class FormerParts : IPartKind
{
    /// <inheritdoc/>
    public string Title => "Formers";

    /// <inheritdoc/>
    public IEnumerable<Part> Make(RiggedAirframe airframe, ICollection<Diagnostic> findings)
    {
        foreach (var former in airframe.Description.Formers)
        {
            if (ShapeGuard.Make(airframe, $"former {former.Name}", former.At, findings, () => Former(airframe, former, findings)) is { } part)
            {
                yield return part;
            }
        }
    }

    private Part? Former(RiggedAirframe airframe, FormerDescription former, ICollection<Diagnostic> findings)
    {
        if (FormerOutline.Of(former, airframe) is not { } outline)
        {
            findings.Add(Diagnostic.Error(
                former.At,
                $"nothing of former {former.Name} remains at station {airframe.Text.CoarseWithUnit(former.Station)} inside the skins and clear of the wing"));
            return null;
        }

        if (StraddlesWingEdge(outline))
        {
            findings.Add(Diagnostic.Warning(
                former.At,
                $"the wing's leading or trailing edge passes former {former.Name} between its faces or across its width: its edge at the wing is doubtful, move the former"));
        }

        var blank = FormerBlank.Of(former, outline, airframe);
        WallCheck.Check(former, blank, airframe, findings);
        var sketch = new PartSketch();
        FormerLines.Add(airframe, former, outline, blank, sketch);
        FormerTexts.Add(airframe, former, outline, blank, sketch);
        var grain = former.Grain == GrainDirection.Across ? 0 : Math.PI / 2;
        return sketch.AsCut($"former-{former.Name}", Title, $"Former {former.Name}", former.Material, former.Thickness, grain) with { Station = former.Station };
    }

    // One face in the wing and the other clear of it, or a cut line that ends before the side.
    private static bool StraddlesWingEdge(FormerOutline outline)
    {
        const double Slack = 0.01;
        var width = outline.Net.Bounds.MaxX;
        bool EndsShort(ImmutableArray<CurveSample>? cut) => cut is { } half && half[^1].Point.X <= width - Slack;
        return EndsShort(outline.FrontCut) || EndsShort(outline.RearCut) || (outline.FrontCut is null) != (outline.RearCut is null);
    }
}
