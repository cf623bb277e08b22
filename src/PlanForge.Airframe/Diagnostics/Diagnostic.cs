namespace PlanForge.Airframe.Diagnostics;

/// <summary>How bad a finding is.</summary>
public enum Severity
{
    /// <summary>It can be built but should be looked at.</summary>
    Warning,

    /// <summary>It cannot be built; nothing is written.</summary>
    Error,
}

/// <summary>One finding about a description, with the place it speaks of.</summary>
/// <param name="Severity">Warning or error.</param>
/// <param name="At">Where in the file.</param>
/// <param name="Message">What is wrong, why, and what would be right: one sentence, no full stop, invariant culture.</param>
public sealed record Diagnostic(Severity Severity, SourcePosition At, string Message)
{
    /// <summary>An error at a place.</summary>
    public static Diagnostic Error(SourcePosition at, string message) => new(Severity.Error, at, message);

    /// <summary>A warning at a place.</summary>
    public static Diagnostic Warning(SourcePosition at, string message) => new(Severity.Warning, at, message);

    /// <summary><c>file:line:column: error: text</c>, without line and column when the whole file is meant.</summary>
    public override string ToString()
    {
        var place = At.Line == 0 ? At.File : FormattableString.Invariant($"{At.File}:{At.Line}:{At.Column}");
        return $"{place}: {(Severity == Severity.Error ? "error" : "warning")}: {Message}";
    }
}
