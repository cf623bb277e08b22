using System.Collections.Immutable;
using PlanForge.Airframe;
using PlanForge.Airframe.Diagnostics;
using PlanForge.Airframe.Reading;
using PlanForge.Parts.Arrangement;
using PlanForge.Parts.Bench.Setup;
using PlanForge.Parts.Bolts;
using PlanForge.Parts.Dowels;
using PlanForge.Parts.Formers;
using PlanForge.Parts.Joints;
using PlanForge.Parts.Rigging;
using PlanForge.Parts.Saddles;
using PlanForge.Parts.SandingForms;
using PlanForge.Parts.Shims;

namespace PlanForge.Parts;

/// <summary>Everything made from a description: parts, figures and findings, in a fixed order.</summary>
/// <param name="Parts">The parts; empty when an error was found.</param>
/// <param name="Figures">Figures of the whole airframe, then of each part.</param>
/// <param name="Findings">Warnings and errors that only geometry shows.</param>
public sealed record PartList(ImmutableArray<Part> Parts, ImmutableArray<Figure> Figures, ImmutableArray<Diagnostic> Findings)
{
    /// <summary>The figures that belong to no part: the first of all.</summary>
    public ImmutableArray<Figure> AirframeFigures { get; init; } = [];

    /// <summary>The whole airframe in views; null when wing and body could not be brought together.</summary>
    public ArrangementViews? Arrangement { get; init; }

    /// <summary>All kinds of parts, in the order of the sheets. A new kind is a new folder and a line here.</summary>
    public static ImmutableArray<IPartKind> Kinds { get; } =
    [
        new WingJointParts(), new SaddleTemplates(), new SandingFormParts(), new FormerParts(), new WingDowelTemplates(), new BoltParts(), new ShimParts(),
        new SetupSheet(), new CradleParts(), new LevelRestParts(), new DrillingGuideParts(), new ThrustWasherParts(),
    ];

    /// <summary>Makes all parts of a checked description.</summary>
    /// <param name="description">The description.</param>
    public static PartList Of(AirframeDescription description) =>
        Of(description, new(), static (airframe, kept) => Kinds.Select(kind => Make(kind, airframe, kept)));

    /// <summary>
    /// Makes all parts of a checked description, as far as they are not kept from an earlier run, several kinds at a time. The result is
    /// the same.
    /// </summary>
    /// <param name="description">The description; not a watched one, since its log serves one thread.</param>
    /// <param name="values">The values it was made from; null where they are not known.</param>
    /// <param name="kept">What is kept from earlier runs.</param>
    public static PartList Of(AirframeDescription description, ReadValues? values, KeptParts kept)
    {
        ArgumentNullException.ThrowIfNull(kept);
        kept.Begin(values);
        return Of(description, kept, static (airframe, kept) =>
        {
            var started = Kinds.Select(kind => Task.Run(() => Make(kind, airframe, kept))).ToList();
            return started.Select(kind => kind.GetAwaiter().GetResult());
        });
    }

    private static PartList Of(
        AirframeDescription description,
        KeptParts kept,
        Func<RiggedAirframe, KeptParts, IEnumerable<(List<Part> Parts, List<Diagnostic> Findings)>> make)
    {
        var findings = new List<Diagnostic>();
        if (RiggedAirframe.Of(description, findings) is not { } airframe)
        {
            return new([], [], [.. findings]);
        }

        var parts = ImmutableArray.CreateBuilder<Part>();
        var figures = ImmutableArray.CreateBuilder<Figure>();
        var airframeFigures = RiggingFigures.Of(airframe);
        figures.AddRange(airframeFigures);
        foreach (var (made, found) in make(airframe, kept))
        {
            findings.AddRange(found);
            foreach (var part in made)
            {
                parts.Add(part);
                figures.AddRange(part.Figures);
            }
        }

        var hasErrors = findings.Any(finding => finding.Severity == Severity.Error);
        return new(hasErrors ? [] : kept.Known(parts.ToImmutable()), figures.ToImmutable(), [.. findings.OrderBy(finding => finding.At.Line).ThenBy(finding => finding.At.Column)])
        {
            AirframeFigures = airframeFigures,
            Arrangement = hasErrors ? null : ArrangementViews.Of(airframe),
        };
    }

    private static (List<Part> Parts, List<Diagnostic> Findings) Make(IPartKind kind, RiggedAirframe airframe, KeptParts kept)
    {
        var findings = new List<Diagnostic>();
        var parts = kind is FormerParts formers ? formers.Make(airframe, findings, kept.Formers) : kind.Make(airframe, findings);
        return ([.. parts], findings);
    }
}
