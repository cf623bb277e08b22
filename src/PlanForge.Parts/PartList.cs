using System.Collections.Immutable;
using PlanForge.Airframe;
using PlanForge.Airframe.Described;
using PlanForge.Airframe.Diagnostics;
using PlanForge.Airframe.Inputs;
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

    /// <summary>What the views and the figures of the airframe were made from.</summary>
    public InputSet ArrangementInputs { get; init; } = InputSet.None;

    /// <summary>All kinds of parts, in the order of the sheets. A new kind is a new folder and a line here.</summary>
    public static ImmutableArray<IPartKind> Kinds { get; } =
    [
        new WingJointParts(), new SaddleTemplates(), new SandingFormParts(), new FormerParts(), new WingDowelTemplates(), new BoltParts(), new ShimParts(),
        new SetupSheet(), new CradleParts(), new LevelRestParts(), new DrillingGuideParts(), new ThrustWasherParts(),
    ];

    // What a kind reads between its parts may go into each part that follows; what it reads within ShapeGuard goes into one alone.
    private static IEnumerable<Part> Made(IPartKind kind, RiggedAirframe airframe, List<Diagnostic> findings)
    {
        IEnumerator<Part>? parts = null;
        RecordedInputs? before = null;
        while (true)
        {
            var step = airframe.Inputs.Record(() =>
            {
                before?.Use();
                parts ??= kind.Make(airframe, findings).GetEnumerator();
                return parts.MoveNext() ? parts.Current : null;
            });
            if (step.Unnoted is not { } part)
            {
                parts!.Dispose();
                yield break;
            }

            before = step.Inputs;
            if (airframe.Kept.IsEarlier(part))
            {
                yield return part;
                continue;
            }

            yield return part with { Inputs = part.Inputs.With(step.Inputs.ToSet()) };
        }
    }

    /// <summary>Makes all parts of a checked description.</summary>
    /// <param name="description">The description.</param>
    public static PartList Of(AirframeDescription description) => Of(description, () => DescribedValues.None, new());

    /// <summary>The same, where parts of an earlier run that nothing has changed for are those very objects.</summary>
    /// <param name="description">The description.</param>
    /// <param name="values">Lists its values.</param>
    /// <param name="kept">What is kept from earlier runs.</param>
    public static PartList Of(AirframeDescription description, Func<DescribedValues> values, KeptParts kept)
    {
        ArgumentNullException.ThrowIfNull(kept);
        kept.Begin(values);
        var findings = new List<Diagnostic>();
        if (RiggedAirframe.Of(description, findings, kept) is not { } airframe)
        {
            return new([], [], [.. findings]);
        }

        var parts = ImmutableArray.CreateBuilder<Part>();
        var figures = ImmutableArray.CreateBuilder<Figure>();
        ImmutableArray<Figure> airframeFigures = [];
        var whole = airframe.Inputs.InputsOf(() => airframeFigures = RiggingFigures.Of(airframe));
        figures.AddRange(airframeFigures);
        foreach (var kind in Kinds)
        {
            foreach (var part in Made(kind, airframe, findings))
            {
                parts.Add(part);
                figures.AddRange(part.Figures);
            }
        }

        var hasErrors = findings.Any(finding => finding.Severity == Severity.Error);
        var views = hasErrors ? null : airframe.Piece("the views", () => ArrangementViews.Of(airframe));
        return new(hasErrors ? [] : kept.Known(parts.ToImmutable()), figures.ToImmutable(), [.. findings.OrderBy(finding => finding.At.Line).ThenBy(finding => finding.At.Column)])
        {
            AirframeFigures = airframeFigures,
            Arrangement = views?.Unnoted,
            ArrangementInputs = views?.Inputs.ToSet().With(whole.ToSet()) ?? InputSet.None,
        };
    }
}
