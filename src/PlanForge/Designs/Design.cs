using System.Collections.Immutable;
using PlanForge.Airframe;
using PlanForge.Airframe.Described;
using PlanForge.Airframe.Diagnostics;
using PlanForge.Drafting.Model;
using PlanForge.Parts;
using PlanForge.Parts.Comparison;

namespace PlanForge.Designs;

/// <summary>A description carried all the way to drawings.</summary>
/// <param name="FileName">The description's file name without its folder.</param>
/// <param name="Airframe">What it describes.</param>
/// <param name="Parts">The parts, in the order of the sheets.</param>
/// <param name="AirframeFigures">The figures that belong to no part.</param>
/// <param name="Sheets">The drawings.</param>
/// <param name="Warnings">What the builder should look at; there are no errors.</param>
internal sealed record Design(
    string FileName,
    AirframeDescription Airframe,
    ImmutableArray<Part> Parts,
    ImmutableArray<Figure> AirframeFigures,
    SheetSet Sheets,
    ImmutableArray<Diagnostic> Warnings)
{
    /// <summary>The files it was read from: the description, then its section files in the order of reading.</summary>
    public required ImmutableArray<SourceFile> Sources { get; init; }

    /// <summary>The values for parameters that it was planned with in the place of the description's, each <c>NAME=VALUE</c> as given.</summary>
    public required ImmutableArray<string> With { get; init; }

    /// <summary>Lists the description's values.</summary>
    public required Func<DescribedValues> ListValues { get; init; }

    /// <summary>What goes to the cutter.</summary>
    public required DesignCuts Cuts { get; init; }

    /// <summary>What moved by what was measured on the wood; null when nothing was, or when the design before cannot be drawn.</summary>
    public required AsBuiltChanges? Moved { get; init; }
}

/// <summary>A file that a design was read from.</summary>
/// <param name="Name">Its name as seen from the description's folder.</param>
/// <param name="Content">Its bytes.</param>
internal sealed record SourceFile(string Name, ReadOnlyMemory<byte> Content);

/// <summary>What came of planning a description.</summary>
/// <param name="Design">The design, or null when there is an error among the findings.</param>
/// <param name="Findings">Every warning and error.</param>
/// <param name="Texts">The text of each file that was read, by its name in the findings.</param>
internal sealed record PlanningResult(
    Design? Design, ImmutableArray<Diagnostic> Findings, IReadOnlyDictionary<string, string> Texts)
{
    /// <summary>The paths of files that were asked for and are not there.</summary>
    public ImmutableArray<string> Missing { get; init; } = [];
}
