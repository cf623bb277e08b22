using System.Collections.Immutable;
using F = PlanForge.Airframe.Format.WorkshopFormat;

namespace PlanForge.Airframe.Reading;

/// <summary>Makes the cutter from its values.</summary>
internal static class CutterReader
{
    /// <summary>What the cutter needs; null when it failed.</summary>
    public static CutterDescription? Read(MappingValues? values, Findings findings) => values is null
        ? null
        : new(values.OptionalNumber(F.Kerf), values.At)
        {
            Origin = values.Origin,
            Kerfs = Kerfs(values.List(F.Kerfs), findings),
            Fit = values.OptionalNumber(F.SlotFit) ?? 0,
            HoldingTabs = HoldingTabs(values.Mapping(F.HoldingTabs), findings),
            Profile = values.TextValue(F.CutterProfile) is { } file ? new(file.Text, file.At) : null,
            CutSpeed = values.OptionalNumber(F.CutSpeed),
            ScoreSpeed = values.OptionalNumber(F.ScoreSpeed),
            EngraveSpeed = values.OptionalNumber(F.EngraveSpeed),
        };

    private static ImmutableArray<KerfDescription> Kerfs(List<ReadValue> items, Findings findings)
    {
        var kerfs = ImmutableArray.CreateBuilder<KerfDescription>(items.Count);
        foreach (var item in items)
        {
            if (item is not MappingValues values)
            {
                continue;
            }

            var kerf = new KerfDescription(
                values.Text(F.KerfMaterial), values.OptionalNumber(F.KerfThickness), values.Number(F.KerfWidth), values.At);
            foreach (var known in kerfs)
            {
                if (known.Material.Length > 0 && known.IsForSameSheetAs(kerf))
                {
                    findings.Error(kerf.At, $"the kerf of this sheet is given already, in line {known.At.Line}");
                    break;
                }
            }

            kerfs.Add(kerf);
        }

        return kerfs.ToImmutable();
    }

    private static HoldingTabsDescription? HoldingTabs(MappingValues? values, Findings findings)
    {
        if (values is null)
        {
            return null;
        }

        var count = values.Number(F.HoldingTabCount);
        if (count - Math.Floor(count) > 0)
        {
            findings.Error(values.AtValue(F.HoldingTabCount), "`count` must be a whole number");
        }

        return new(values.Number(F.HoldingTabWidth), double.IsNaN(count) ? 1 : (int)count, values.At);
    }
}
