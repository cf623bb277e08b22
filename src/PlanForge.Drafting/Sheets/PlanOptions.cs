using System.Collections.Immutable;
using PlanForge.Airframe;
using PlanForge.Airframe.Diagnostics;
using PlanForge.Airframe.Inputs;
using PlanForge.Drafting.Model;

namespace PlanForge.Drafting.Sheets;

/// <summary>What the sheets of a design say and are drawn on.</summary>
/// <param name="Name">The design's name.</param>
/// <param name="Issue">What the title block says besides.</param>
/// <param name="Sheets">What to draw on.</param>
/// <param name="Unit">The unit lengths are shown in.</param>
/// <param name="Notes">Lines of the owner's own for every sheet.</param>
/// <param name="Version">Name and version of the tool.</param>
public sealed record PlanOptions(
    string Name,
    IssueDescription Issue,
    SheetsDescription Sheets,
    DisplayUnit Unit,
    ImmutableArray<string> Notes,
    string Version)
{
    /// <summary>The design's name.</summary>
    public string Name { get => Noted(field, Recording?.Name); init; } = Name;

    /// <summary>The unit lengths are shown in.</summary>
    public DisplayUnit Unit { get => Noted(field, Recording?.Unit); init; } = Unit;

    /// <summary>Lines of the owner's own for every sheet.</summary>
    public ImmutableArray<string> Notes { get => Noted(field, Recording?.Notes); init; } = Notes;

    /// <summary>Notes what of the description is read for the sheets; null for options made by hand.</summary>
    internal PlanRecording? Recording { get; init; }

    /// <summary>What a description asks for.</summary>
    /// <param name="airframe">The description.</param>
    /// <param name="version">Name and version of the tool.</param>
    public static PlanOptions Of(AirframeDescription airframe, string version)
    {
        ArgumentNullException.ThrowIfNull(airframe);
        var log = new InputLog();
        var watched = airframe.Watched(log);
        var name = log.Record(() => watched.Name);
        DisplayUnit unit = default;
        var unitInputs = log.InputsOf(() => unit = watched.DisplayUnit);
        ImmutableArray<string> lines = [];
        var lineInputs = log.InputsOf(() => lines = [.. DrawnWith(watched), .. AsBuiltNote.Of(watched), .. watched.Notes]);
        return new(name.Unnoted, watched.Issue, watched.Sheets, unit, lines, version)
        {
            Recording = new(log, name.Inputs, unitInputs, lineInputs, log.InputsOf(() => PlanRecording.ReadStock(watched))),
        };
    }

    private static T Noted<T>(T value, RecordedInputs? inputs)
    {
        inputs?.Use();
        return value;
    }

    // A sheet that does not follow the file alone must say so.
    private static IEnumerable<string> DrawnWith(AirframeDescription airframe)
    {
        if (!airframe.Overrides.IsEmpty)
        {
            var values = airframe.Overrides.Select(parameter => $"{parameter.Name} = {ParameterText.Of(parameter, airframe.DisplayUnit)}");
            yield return $"Drawn with {string.Join(", ", values)}, not as the file says.";
        }
    }
}

/// <summary>The sheets of a design.</summary>
/// <param name="Sheets">The sheets; none when there is an error among the findings.</param>
/// <param name="Findings">
/// What the builder should know: parts in pieces; and errors: paper that holds no sheet, entries too long for the title block.
/// </param>
public sealed record PlanSheetsResult(SheetSet Sheets, ImmutableArray<Diagnostic> Findings);
