using System.Collections.Immutable;
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
            var tip = new SectionStation(
                panel.SectionIsInnerEnds ? inner.Section : panel.Tip.Section,
                panel.ChordIsInnerEnds ? inner.Chord : panel.Tip.Chord,
                panel.Tip.At);
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
        var chord = measurements.BuiltOf(new SectionChord(panel)) ?? station.Chord;
        return station with
        {
            Chord = chord,
            Section = measurements.BuiltOf(new SectionThickness(panel)) is { } thickness
                ? Thick(designed.Section, thickness / chord)
                : station.Section,
        };
    }

    private static Section Thick(Section section, double thickness) => Math.Abs(section.Thickness - thickness) <= Rounding
        ? section
        : ScaledSection.Create(section, thickness, null) ?? section;
}
