using System.Collections.Immutable;
using PlanForge.Airframe.Format;
using PlanForge.Airframe.Sections;

namespace PlanForge.Airframe.Reading;

/// <summary>Makes the wing from its values.</summary>
internal static class WingReader
{
    /// <summary>The wing; null when a part of it failed.</summary>
    public static WingDescription? Read(MappingValues? values, SectionReader sections, Findings findings)
    {
        if (values is null)
        {
            return null;
        }

        var root = values.Mapping(WingFormat.Root);
        var rootSection = sections.Read(root?.Choice(WingFormat.Section));
        var rootChord = root?.Number(WingFormat.Chord) ?? double.NaN;
        var incidence = IncidenceReader.Read(values.Choice(WingFormat.Incidence), rootChord, values.At, findings);
        var panels = ReadPanels(values.List(WingFormat.Panels), rootSection, rootChord, sections);
        return root is null || rootSection is null || values.Mapping(WingFormat.LeadingEdge) is not { } leadingEdge
            ? null
            : new(
                (WingPlacement)values.Word(WingFormat.Placement),
                ReadPoint(leadingEdge),
                incidence,
                new(rootSection, rootChord, root.At),
                panels,
                values.At);
    }

    /// <summary>A point on the centre line.</summary>
    public static SidePoint ReadPoint(MappingValues values) => new(values.Number(WingFormat.Station), values.Number(WingFormat.Height));

    private static ImmutableArray<PanelDescription> ReadPanels(
        List<ReadValue> items, Section? innerSection, double innerChord, SectionReader sections)
    {
        var panels = ImmutableArray.CreateBuilder<PanelDescription>(items.Count);
        var (section, chord, twist) = (innerSection, innerChord, 0.0);
        foreach (var item in items)
        {
            if (item is not MappingValues values)
            {
                continue;
            }

            var tip = values.Mapping(WingFormat.PanelTip);
            var sweep = 0.0;
            if (tip is not null)
            {
                section = tip.Has(WingFormat.TipSection) ? sections.Read(tip.Choice(WingFormat.TipSection)) : section;
                chord = tip.OptionalNumber(WingFormat.TipChord) ?? chord;
                twist = tip.OptionalNumber(WingFormat.Twist) ?? twist;
                sweep = tip.Number(WingFormat.Sweep);
            }

            if (section is not null)
            {
                panels.Add(new(
                    values.Number(WingFormat.PanelLength),
                    values.Number(WingFormat.Dihedral),
                    new(section, chord, tip?.At ?? values.At),
                    sweep,
                    twist,
                    values.At)
                {
                    SectionIsInnerEnds = tip?.Has(WingFormat.TipSection) != true,
                    ChordIsInnerEnds = tip?.Has(WingFormat.TipChord) != true,
                });
            }
        }

        return panels.ToImmutable();
    }
}
