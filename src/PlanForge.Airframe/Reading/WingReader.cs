using System.Collections.Immutable;
using PlanForge.Airframe.Diagnostics;
using PlanForge.Airframe.Format;
using PlanForge.Airframe.Inputs;
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
        var rootOrigin = values.OriginOf(WingFormat.Root).FromFiles(WingFormat.Section, SectionReader.FilesOf(root?.Choice(WingFormat.Section)));
        var incidence = IncidenceReader.Read(values.Choice(WingFormat.Incidence), rootChord, values.OriginOf(WingFormat.Root), values.At, findings);
        var panels = ReadPanels(values.List(WingFormat.Panels), rootSection, rootChord, rootOrigin, sections);
        return root is null || rootSection is null || values.Mapping(WingFormat.LeadingEdge) is not { } leadingEdge
            ? null
            : new(
                (WingPlacement)values.Word(WingFormat.Placement),
                ReadPoint(leadingEdge),
                incidence,
                new(rootSection, rootChord, root.At) { Origin = rootOrigin },
                panels,
                values.At)
            { Origin = values.Origin };
    }

    /// <summary>A point on the centre line.</summary>
    public static SidePoint ReadPoint(MappingValues values) => new(values.Number(WingFormat.Station), values.Number(WingFormat.Height)) { Origin = values.Origin };

    /// <summary>The section at an outer end; what its mapping leaves out comes from the inner end.</summary>
    public static SectionStation Tip(Section section, double chord, SourcePosition at, MappingValues? given, Origin own, Origin inner)
    {
        var origin = own;
        origin = given?.Has(WingFormat.TipSection) is true
            ? origin.FromFiles(WingFormat.Section, SectionReader.FilesOf(given.Choice(WingFormat.TipSection)))
            : origin.From(WingFormat.Section, inner, WingFormat.Section);
        origin = given?.Has(WingFormat.TipChord) is true ? origin : origin.From(WingFormat.Chord, inner, WingFormat.Chord);
        return new(section, chord, at) { Origin = origin };
    }

    private static ImmutableArray<PanelDescription> ReadPanels(
        List<ReadValue> items, Section? innerSection, double innerChord, Origin innerOrigin, SectionReader sections)
    {
        var panels = ImmutableArray.CreateBuilder<PanelDescription>(items.Count);
        var (section, chord, twist) = (innerSection, innerChord, 0.0);
        var (inner, twistBefore) = (innerOrigin, default(Origin));
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

            var (origin, tipOrigin) = (values.Origin, values.OriginOf(WingFormat.PanelTip));
            if (tip?.Has(WingFormat.Twist) is not true)
            {
                origin = origin.From(WingFormat.Twist, twistBefore, WingFormat.Twist);
                tipOrigin = tipOrigin.From(WingFormat.Twist, twistBefore, WingFormat.Twist);
            }

            twistBefore = tipOrigin;
            if (section is not null)
            {
                var built = Tip(section, chord, tip?.At ?? values.At, tip, tipOrigin, inner);
                inner = built.Origin;
                panels.Add(new(
                    values.Number(WingFormat.PanelLength),
                    values.Number(WingFormat.Dihedral),
                    built,
                    sweep,
                    twist,
                    values.At)
                { Origin = origin });
            }
        }

        return panels.ToImmutable();
    }
}
