using PlanForge.Airframe;
using PlanForge.Airframe.Diagnostics;

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
            if (Former(airframe, former, findings) is { } part)
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

        var blank = FormerBlank.Of(former, outline, airframe);
        WallCheck.Check(former, blank, airframe, findings);
        var sketch = new PartSketch();
        FormerLines.Add(airframe, former, outline, blank, sketch);
        FormerTexts.Add(airframe, former, outline, blank, sketch);
        var grain = former.Grain == GrainDirection.Across ? 0 : Math.PI / 2;
        return sketch.AsCut($"former-{former.Name}", Title, $"Former {former.Name}", former.Material, former.Thickness, grain);
    }
}
