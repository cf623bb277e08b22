using System.Collections.Immutable;
using System.Globalization;
using PlanForge.Geometry;

namespace PlanForge.Output.Inspection;

/// <summary>Collects findings; of one kind only the first few dozen are kept, the others counted.</summary>
internal sealed class FindingList
{
    // More of a kind would hide the others and tell nothing new.
    private const int MostOfAKind = 40;

    private readonly List<Finding> _items = [];
    private readonly Dictionary<string, (int Count, FindingSeverity Worst)> _kinds = new(StringComparer.Ordinal);

    public void Fault(string code, TextPlace at, string text, Point2? place = null) => Add(FindingSeverity.Fault, code, at, text, place);

    public void Warning(string code, TextPlace at, string text, Point2? place = null) => Add(FindingSeverity.Warning, code, at, text, place);

    public void Note(string code, TextPlace at, string text, Point2? place = null) => Add(FindingSeverity.Note, code, at, text, place);

    /// <summary>All findings in the order of the file, those about the whole file first.</summary>
    public ImmutableArray<Finding> ToSorted()
    {
        // Mostly there are none, and sorting them would still have to be compiled.
        var sorted = _items.Count < 2 ? [.. _items] : _items.OrderBy(item => (item.Line, item.Column)).ToList();
        foreach (var (code, (count, worst)) in _kinds)
        {
            if (count > MostOfAKind)
            {
                sorted.Add(new(worst, code, 0, 0, string.Create(CultureInfo.InvariantCulture, $"and {count - MostOfAKind} more of this kind")));
            }
        }

        return [.. sorted];
    }

    /// <summary>Says that a line is drawn where another is: a fault where both are cut, else a warning.</summary>
    public void Duplicate(bool isCut, TextPlace at, int otherLine, Point2 place, double length) => Add(
        isCut ? FindingSeverity.Fault : FindingSeverity.Warning,
        FindingCode.Duplicate,
        at,
        FormattableString.Invariant($"runs for {Words.Of(length)} over what line {otherLine} draws, from {Words.Of(place)}; draw it once"),
        place);

    /// <summary>Says something whose weight the caller decides.</summary>
    public void Add(FindingSeverity severity, string code, TextPlace at, string text, Point2? place)
    {
        var (count, worst) = _kinds.GetValueOrDefault(code, (0, severity));
        _kinds[code] = (count + 1, severity > worst ? severity : worst);
        if (count < MostOfAKind)
        {
            _items.Add(new(severity, code, at.Line, at.Column, text, place));
        }
    }
}

/// <summary>A place in a text, from 1; 0, 0 for the whole text.</summary>
internal readonly record struct TextPlace(int Line, int Column)
{
    public static TextPlace WholeFile => default;

    /// <summary>True when this place comes earlier in the text.</summary>
    public bool IsBefore(TextPlace other) => (Line, Column).CompareTo((other.Line, other.Column)) < 0;
}
