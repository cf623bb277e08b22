using System.Collections.Immutable;
using PlanForge.Airframe.Format;
using PlanForge.Airframe.Inputs;
using PlanForge.Airframe.Sections;

namespace PlanForge.Airframe.Building;

/// <summary>Takes over measured wing sections.</summary>
/// <remarks>
/// A section is made thicker or thinner about its mean line until it measures what was measured; its stations and its camber stay. With
/// a measured chord alone it keeps its proportions. An outer end whose section or chord the description takes from the inner
/// end still does. Incidences stay the angles they are, also where they were given as a rise over the chord.
/// </remarks>
internal static class WingAsBuilt
{
    // In chords: what a ratio of measured lengths loses.
    private const double Rounding = 1e-12;

    /// <summary>The wing with measured sections.</summary>
    public static WingDescription Apply(WingDescription designed, ImmutableArray<Measurement> measurements)
    {
        if (!measurements.Any(measurement => measurement.Thing is SectionThickness or SectionChord))
        {
            return designed;
        }

        var root = Built(designed.Root, designed.Root, 0, measurements);
        var inner = root;
        var panels = ImmutableArray.CreateBuilder<PanelDescription>(designed.Panels.Length);
        foreach (var panel in designed.Panels)
        {
            var origin = panel.Tip.Origin;
            origin = panel.SectionIsInnerEnds ? origin.Instead(WingFormat.Section, inner.Origin, WingFormat.Section) : origin;
            origin = panel.ChordIsInnerEnds ? origin.Instead(WingFormat.Chord, inner.Origin, WingFormat.Chord) : origin;
            var tip = new SectionStation(
                panel.SectionIsInnerEnds ? inner.Section : panel.Tip.Section,
                panel.ChordIsInnerEnds ? inner.Chord : panel.Tip.Chord,
                panel.Tip.At)
            { Origin = origin };
            inner = Built(tip, panel.Tip, panels.Count + 1, measurements);
            panels.Add(panel with { Tip = inner });
        }

        return designed with { Root = root, Panels = panels.MoveToImmutable() };
    }

    /// <summary>A section as measured.</summary>
    /// <param name="station">What holds where nothing was measured.</param>
    /// <param name="designed">The designed one, whose shape a measured thickness is given to.</param>
    /// <param name="panel">The panel whose outer end it is, or 0.</param>
    /// <param name="measurements">What was measured.</param>
    private static SectionStation Built(
        SectionStation station, SectionStation designed, int panel, ImmutableArray<Measurement> measurements)
    {
        if (measurements.Of(new SectionChord(panel)) is { } chord)
        {
            station = station with { Chord = chord.Built, Origin = chord.InsteadOf(station.Origin, WingFormat.Chord) };
        }

        if (measurements.Of(new SectionThickness(panel)) is { } thickness)
        {
            var origin = station.Origin.Instead(WingFormat.Section, designed.Origin, WingFormat.Section);
            station = station with
            {
                Section = Thick(designed.Section, thickness.Built / station.Chord),
                Origin = thickness.Into(origin, WingFormat.Section).From(WingFormat.Section, station.Origin, WingFormat.Chord),
            };
        }

        return station with { Origin = Numbered(station.Origin, measurements) };
    }

    // Which panel was measured is asked for every one.
    private static Origin Numbered(Origin origin, ImmutableArray<Measurement> measurements)
    {
        foreach (var tip in measurements.Where(measurement => measurement.Thing is SectionThickness { Panel: > 0 } or SectionChord { Panel: > 0 }))
        {
            origin = origin.From(WingFormat.Section, tip.Origin, tip.ThingKey!).From(WingFormat.Chord, tip.Origin, tip.ThingKey!);
        }

        return origin;
    }

    private static Section Thick(Section section, double thickness) => Math.Abs(section.Thickness - thickness) <= Rounding
        ? section
        : ScaledSection.Create(section, thickness, null) ?? section;
}
