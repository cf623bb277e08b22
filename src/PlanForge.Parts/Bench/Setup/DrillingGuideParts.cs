using PlanForge.Airframe.Diagnostics;
using PlanForge.Parts.Bolts;
using PlanForge.Parts.Dowels;

namespace PlanForge.Parts.Bench.Setup;

/// <summary>What holds the drill at its angle: plates for the dowels in the cross-former, gauges for the bolts.</summary>
public sealed class DrillingGuideParts : IPartKind
{
    /// <inheritdoc/>
    public string Title => "Drilling guides";

    /// <inheritdoc/>
    public IEnumerable<Part> Make(RiggedAirframe airframe, ICollection<Diagnostic> findings)
    {
        foreach (var former in airframe.Description.Formers)
        {
            var plates = airframe.Inputs.Record(() =>
                DowelAxis.Through(former, airframe) is { } axis ? DowelGuides.Of(airframe, former, axis, Title).ToArray() : []);
            foreach (var plate in plates.Unnoted)
            {
                yield return plate with { Inputs = plates.Inputs.ToSet() };
            }
        }

        if (BoltAxis.Of(airframe) is not { } bolts)
        {
            yield break;
        }

        if (ShapeGuard.Make(airframe, "the drilling gauge for the plate", bolts.Bolts.At, findings, () => BoltGauges.OnPlate(airframe, bolts, Title)) is { } onPlate)
        {
            yield return onPlate;
        }

        if (ShapeGuard.Make(airframe, "the drilling gauge for the wing", bolts.Bolts.At, findings, () => BoltGauges.OnWing(airframe, bolts, Title)) is { } gauge)
        {
            yield return gauge;
        }
    }
}
