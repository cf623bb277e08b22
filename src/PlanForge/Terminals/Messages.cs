using PlanForge.Airframe.Diagnostics;

namespace PlanForge.Terminals;

/// <summary>Writes findings, faults and progress for a person at a terminal.</summary>
internal sealed class Messages(Terminal terminal, bool isQuiet)
{
    private const string Red = "\e[1;31m";
    private const string Yellow = "\e[1;33m";
    private const string Plain = "\e[0m";
    private const string StartOfEmptyLine = "\r\e[2K";

    private bool _hasProgress;

    /// <summary>A finding with its source line and carets.</summary>
    /// <param name="finding">The finding.</param>
    /// <param name="text">The text of the file it is about, empty when it is about a file as a whole.</param>
    public void Finding(Diagnostic finding, string text)
    {
        var rendered = DiagnosticText.Render(finding, DiagnosticText.Lines(text));
        WriteLine(finding.Severity == Severity.Error
            ? Coloured(rendered, ": error: ", Red)
            : Coloured(rendered, ": warning: ", Yellow));
    }

    /// <summary>A warning without a place in a file.</summary>
    public void Warning(string file, string message) => Finding(Diagnostic.Warning(SourcePosition.WholeFile(file), message), "");

    /// <summary>An error without a place in a file.</summary>
    /// <param name="subject">What it is about: a path, or the program's name.</param>
    /// <param name="message">What is wrong.</param>
    public void Error(string subject, string message) => Finding(Diagnostic.Error(SourcePosition.WholeFile(subject), message), "");

    /// <summary>A plain line.</summary>
    public void Line(string text) => WriteLine(text);

    /// <summary>Shows what is being done, in place of what was shown before; only on a terminal.</summary>
    public void Progress(string text)
    {
        if (terminal.IsLive && !isQuiet)
        {
            terminal.Messages.Write($"{StartOfEmptyLine}{text}");
            _hasProgress = true;
        }
    }

    /// <summary>Takes the progress away; to be called before anything is written to either stream.</summary>
    public void ClearProgress()
    {
        if (_hasProgress)
        {
            terminal.Messages.Write(StartOfEmptyLine);
            _hasProgress = false;
        }
    }

    private void WriteLine(string text)
    {
        ClearProgress();
        terminal.Messages.Write(text + "\n");
    }

    private string Coloured(string rendered, string word, string colour)
    {
        var at = terminal.HasColour ? rendered.IndexOf(word, StringComparison.Ordinal) : -1;
        return at < 0 ? rendered : $"{rendered[..(at + 2)]}{colour}{rendered[(at + 2)..(at + word.Length - 1)]}{Plain}{rendered[(at + word.Length - 1)..]}";
    }
}
