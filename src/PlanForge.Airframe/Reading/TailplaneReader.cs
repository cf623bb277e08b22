using PlanForge.Airframe.Format;

namespace PlanForge.Airframe.Reading;

/// <summary>Makes the tailplane from its values.</summary>
internal static class TailplaneReader
{
    /// <summary>The tailplane; null when there is none or a part of it failed.</summary>
    public static TailplaneDescription? Read(MappingValues? values, SectionReader sections, Findings findings)
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
        var tip = values.Mapping(WingFormat.TailplaneTip);
        var tipSection = tip?.Has(WingFormat.TipSection) is true ? sections.Read(tip.Choice(WingFormat.TipSection)) : rootSection;
        return root is null || rootSection is null || tip is null || tipSection is null
            || values.Mapping(WingFormat.LeadingEdge) is not { } leadingEdge
            ? null
            : new(
                WingReader.ReadPoint(leadingEdge),
                incidence,
                values.Number(WingFormat.Span),
                new(rootSection, rootChord, root.At) { Origin = rootOrigin },
                WingReader.Tip(tipSection, tip.OptionalNumber(WingFormat.TipChord) ?? rootChord, tip.At, tip, tip.Origin, rootOrigin),
                tip.Number(WingFormat.Sweep),
                values.Number(WingFormat.SeatWidth),
                values.At)
            { Origin = values.Origin };
    }
}
