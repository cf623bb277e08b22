using System.Collections.Immutable;

namespace PlanForge.Airframe.Diagnostics;

/// <summary>Collects the findings about one description while it is read.</summary>
/// <param name="file">The description's own file name; findings about other files are listed after its own.</param>
internal sealed class DiagnosticList(string file)
{
    private readonly List<Diagnostic> _items = [];

    /// <summary>True once an error was added.</summary>
    public bool HasErrors { get; private set; }

    public void Error(SourcePosition at, string message) => Add(Diagnostic.Error(at, message));

    public void Warning(SourcePosition at, string message) => Add(Diagnostic.Warning(at, message));

    public void Add(Diagnostic diagnostic)
    {
        _items.Add(diagnostic);
        HasErrors |= diagnostic.Severity == Severity.Error;
    }

    /// <summary>
    /// Every finding once: those about the description first, then those about other files in the order the files were
    /// first spoken of; within a file by position, then in the order of finding.
    /// </summary>
    public ImmutableArray<Diagnostic> ToSorted()
    {
        if (_items.Count == 0)
        {
            return [];
        }

        var files = new List<string> { file };
        var keyed = new List<(int File, int Order, Diagnostic Item)>(_items.Count);
        var seen = new HashSet<Diagnostic>();
        foreach (var item in _items)
        {
            if (!seen.Add(item))
            {
                continue;
            }

            if (!files.Contains(item.At.File))
            {
                files.Add(item.At.File);
            }

            keyed.Add((files.IndexOf(item.At.File), keyed.Count, item));
        }

        keyed.Sort(static (a, b) =>
            a.File != b.File ? a.File.CompareTo(b.File)
            : a.Item.At.Line != b.Item.At.Line ? a.Item.At.Line.CompareTo(b.Item.At.Line)
            : a.Item.At.Column != b.Item.At.Column ? a.Item.At.Column.CompareTo(b.Item.At.Column)
            : a.Order.CompareTo(b.Order));
        var sorted = ImmutableArray.CreateBuilder<Diagnostic>(keyed.Count);
        foreach (var entry in keyed)
        {
            sorted.Add(entry.Item);
        }

        return sorted.MoveToImmutable();
    }
}
