using System.Collections.Immutable;
using PlanForge.Airframe;
using PlanForge.Airframe.Diagnostics;
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
    /// <summary>All kinds of parts, in the order of the sheets. A new kind is a new folder and a line here.</summary>
    public static ImmutableArray<IPartKind> Kinds { get; } =
        [new WingJointParts(), new SaddleTemplates(), new SandingFormParts(), new FormerParts(), new WingDowelTemplates(), new BoltParts(), new ShimParts()];

    /// <summary>Makes all parts of a checked description.</summary>
    public static PartList Of(AirframeDescription description)
    {
        var findings = new List<Diagnostic>();
        if (RiggedAirframe.Of(description, findings) is not { } airframe)
        {
            return new([], [], [.. findings]);
        }

        var parts = ImmutableArray.CreateBuilder<Part>();
        var figures = ImmutableArray.CreateBuilder<Figure>();
        figures.AddRange(RiggingFigures.Of(airframe));
        foreach (var kind in Kinds)
        {
            foreach (var part in kind.Make(airframe, findings))
            {
                parts.Add(part);
                figures.AddRange(part.Figures);
            }
        }

        var hasErrors = findings.Any(finding => finding.Severity == Severity.Error);
        return new(hasErrors ? [] : parts.ToImmutable(), figures.ToImmutable(), [.. findings.OrderBy(finding => finding.At.Line).ThenBy(finding => finding.At.Column)]);
    }
}
