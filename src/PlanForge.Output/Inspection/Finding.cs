using PlanForge.Geometry;

namespace PlanForge.Output.Inspection;

/// <summary>How bad a finding is.</summary>
public enum FindingSeverity
{
    /// <summary>Good to know.</summary>
    Note,

    /// <summary>It can be cut but should be looked at.</summary>
    Warning,

    /// <summary>It would be cut wrongly, or not at all.</summary>
    Fault,
}

/// <summary>One finding about a cut file.</summary>
/// <param name="Severity">How bad it is.</param>
/// <param name="Code">The word for this kind of finding, one of <see cref="FindingCode"/>.</param>
/// <param name="Line">The line in the file, from 1; 0 for the file as a whole.</param>
/// <param name="Column">The column in the line, from 1; 0 for the file as a whole.</param>
/// <param name="Text">What is wrong and what would be right: no full stop, invariant.</param>
/// <param name="At">Where on the drawing, mm, as the file's coordinates say (SVG: y down); null when it is no place.</param>
public sealed record Finding(FindingSeverity Severity, string Code, int Line, int Column, string Text, Point2? At = null)
{
    /// <summary><c>file:line:column: fault: code: text</c>, without line and column when the whole file is meant.</summary>
    public string In(string file)
    {
        var place = Line == 0 ? file : FormattableString.Invariant($"{file}:{Line}:{Column}");
        return $"{place}: {WordOf(Severity)}: {Code}: {Text}";
    }

    /// <summary>The word for a severity: <c>note</c>, <c>warning</c> or <c>fault</c>.</summary>
    public static string WordOf(FindingSeverity severity) => severity switch
    {
        FindingSeverity.Note => "note",
        FindingSeverity.Warning => "warning",
        _ => "fault",
    };
}
