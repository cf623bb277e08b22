using System.Collections.Immutable;
using PlanForge.Airframe.Format;

namespace PlanForge.Airframe.Reading;

/// <summary>Makes the formers from their values.</summary>
internal static class FormerReader
{
    /// <summary>The formers that can be made.</summary>
    /// <param name="items">The formers' values.</param>
    /// <param name="sheets">The sheets of stock that slots and tabs may name.</param>
    /// <param name="findings">Takes what is wrong.</param>
    public static ImmutableArray<FormerDescription> Read(List<ReadValue> items, NamedSheets sheets, Findings findings)
    {
        var formers = ImmutableArray.CreateBuilder<FormerDescription>(items.Count);
        foreach (var item in items)
        {
            if (item is not MappingValues values)
            {
                continue;
            }

            formers.Add(new(
                values.Text(FormerFormat.Name),
                values.Number(FormerFormat.Station),
                values.Number(FormerFormat.Thickness),
                values.Text(FormerFormat.Material),
                (GrainDirection)values.Word(FormerFormat.Grain),
                values.WordText(FormerFormat.Role) == "cross-former",
                ReadAllowance(values.Mapping(FormerFormat.Allowance)),
                ReadBevel(values.Mapping(FormerFormat.Bevel)),
                ReadOpenings(values.List(FormerFormat.Openings), findings),
                ReadLightening(values.Mapping(FormerFormat.Lightening)),
                ReadSlots(values.List(FormerFormat.Slots), sheets),
                ReadTabs(values.List(FormerFormat.Tabs), sheets),
                values.At)
            { Origin = values.Origin });
        }

        findings.AreNamesDifferent(items, FormerFormat.Name, "a former");
        return formers.ToImmutable();
    }

    private static AllowanceDescription ReadAllowance(MappingValues? values) => values is null
        ? default
        : new(
            values.Number(FormerFormat.UpperAllowance),
            values.Number(FormerFormat.LowerAllowance),
            values.Number(FormerFormat.SideAllowance))
        { Origin = values.Origin };

    private static EdgeBevelDescription? ReadBevel(MappingValues? values) => values is null
        ? null
        : new(
            (FormerEdge)values.Word(FormerFormat.BevelEdge),
            (FormerFace)values.Word(FormerFormat.BevelFace),
            values.Number(FormerFormat.BevelAngle),
            values.At)
        { Origin = values.Origin };

    private static ImmutableArray<OpeningDescription> ReadOpenings(List<ReadValue> items, Findings findings)
    {
        var openings = ImmutableArray.CreateBuilder<OpeningDescription>(items.Count);
        foreach (var item in items)
        {
            if (item is not MappingValues values)
            {
                continue;
            }

            double width, depth, radius;
            if (values.Format == FormerFormat.RoundOpening)
            {
                width = depth = values.Number(FormerFormat.Diameter);
                radius = width / 2;
            }
            else
            {
                (width, depth) = (values.Number(FormerFormat.Width), values.Number(FormerFormat.Depth));
                radius = findings.AtMost(
                    values.Number(FormerFormat.CornerRadius),
                    Math.Min(width, depth) / 2,
                    "`corner_radius`",
                    "half the smaller size",
                    values.AtValue(FormerFormat.CornerRadius));
            }

            openings.Add(new(values.Number(FormerFormat.Across), values.Number(FormerFormat.Height), width, depth, radius, values.At) { Origin = values.Origin });
        }

        return openings.ToImmutable();
    }

    private static LighteningDescription? ReadLightening(MappingValues? values) => values is null
        ? null
        : new(values.Number(FormerFormat.Rim), values.Number(FormerFormat.InsideRadius), values.At) { Origin = values.Origin };

    private static ImmutableArray<SlotDescription> ReadSlots(List<ReadValue> items, NamedSheets sheets)
    {
        var slots = ImmutableArray.CreateBuilder<SlotDescription>(items.Count);
        foreach (var item in items)
        {
            if (item is not MappingValues values)
            {
                continue;
            }

            double width, depth;
            var origin = values.Origin;
            if (values.Format == FormerFormat.SheetSlot)
            {
                origin = sheets.SlotOrigin(origin, values.TextValue(FormerFormat.SlotSheet));
                var (across, along) = (sheets.SlotWidth(values.TextValue(FormerFormat.SlotSheet)), values.Number(FormerFormat.SlotLength));
                (width, depth) = values.WordText(FormerFormat.SlotRuns) == "across" ? (along, across) : (across, along);
            }
            else
            {
                (width, depth) = (values.Number(FormerFormat.Width), values.Number(FormerFormat.Depth));
            }

            slots.Add(new(values.Number(FormerFormat.Across), values.Number(FormerFormat.Height), width, depth, values.At) { Origin = origin });
        }

        return slots.ToImmutable();
    }

    private static ImmutableArray<TabDescription> ReadTabs(List<ReadValue> items, NamedSheets sheets)
    {
        var tabs = ImmutableArray.CreateBuilder<TabDescription>(items.Count);
        foreach (var item in items)
        {
            if (item is not MappingValues values)
            {
                continue;
            }

            tabs.Add(new(
                (TabEdge)values.Word(FormerFormat.TabEdge),
                values.Number(FormerFormat.TabPosition),
                values.Number(FormerFormat.TabWidth),
                values.Format == FormerFormat.SheetTab
                    ? sheets.Thickness(values.TextValue(FormerFormat.TabThrough))
                    : values.Number(FormerFormat.TabDepth),
                values.At)
            { Origin = sheets.TabOrigin(values.Origin, values.Format == FormerFormat.SheetTab ? values.TextValue(FormerFormat.TabThrough) : null) });
        }

        return tabs.ToImmutable();
    }
}
