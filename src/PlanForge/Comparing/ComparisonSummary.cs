using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using PlanForge.Designs;
using PlanForge.Parts.Comparison;
using PlanForge.Parts.Wording;
using PlanForge.Reports;

namespace PlanForge.Comparing;

/// <summary>Says for a builder what a change leaves to print, cut or sand, and what still holds.</summary>
internal sealed class ComparisonSummary
{
    private const int MostFiguresOfPart = 4;

    private static readonly ImmutableArray<(PartAdvice Advice, string Title)> Groups =
    [
        (PartAdvice.Make, "Make or make anew"),
        (PartAdvice.TakeOff, "Take wood off until it fits"),
        (PartAdvice.MarkAnew, "The wood holds, mark it anew"),
        (PartAdvice.PutElsewhere, "The same part at another place"),
        (PartAdvice.PrintAgain, "Templates and drawings that differ"),
        (PartAdvice.Discard, "No longer needed"),
        (PartAdvice.Keep, "Still holds"),
    ];

    private readonly StringBuilder _text = new();
    private readonly DesignComparison _comparison;
    private readonly ComparisonTexts _words;
    private readonly FigureText _figures;

    private ComparisonSummary(DesignComparison comparison)
    {
        var unit = comparison.New.Airframe.DisplayUnit;
        (_comparison, _words, _figures) = (comparison, new(new MeasureText(unit)), new(unit));
    }

    /// <summary>The summary; every line ends with LF.</summary>
    public static string Of(DesignComparison comparison)
    {
        var summary = new ComparisonSummary(comparison);
        summary._text.Append(NameOf(comparison.Old)).Append(" -> ").Append(NameOf(comparison.New)).Append('\n');
        if (comparison.IsSame)
        {
            return summary._text.Append("\nNothing differs: all that was printed and cut still holds.\n").ToString();
        }

        foreach (var (advice, title) in Groups)
        {
            summary.AddGroup(title, comparison.Parts.Parts.Where(part => part.Advice == advice));
        }

        summary.AddSheets();
        summary.AddFigures();
        return summary._text.ToString();
    }

    private static string NameOf(Design design)
    {
        var issue = design.Airframe.Issue;
        return $"{design.Airframe.Name}{(issue.Revision.Length > 0 ? $" rev. {issue.Revision}" : "")} ({issue.Fingerprint.Code})";
    }

    private void AddGroup(string title, IEnumerable<PartComparison> parts)
    {
        var all = parts.ToList();
        if (all.Count == 0)
        {
            return;
        }

        _text.Append('\n').Append(title).Append(":\n");
        var same = all.Where(part => part.State == PartState.Same).Select(part => part.Part.Title).ToList();
        foreach (var alike in all.Where(part => part.State != PartState.Same).GroupBy(part => (Words: _words.Of(part), Causes: CauseText.Because(_comparison.CausesOf(part)))))
        {
            _text.Append("  ").AppendJoin("; ", alike.Select(part => part.Part.Title)).Append(": ").Append(alike.Key.Words).Append('\n');
            _text.Append(alike.Key.Causes.Length > 0 ? $"    {alike.Key.Causes}\n" : "");
        }

        _text.Append(same.Count > 0 ? $"  {string.Join("; ", same)}\n" : "");
    }

    private void AddSheets()
    {
        _text.Append("\nSheets:\n");
        Add("print", _comparison.Sheets.Where(sheet => sheet.Was is null).Select(sheet => Number(sheet.Sheet.Number)));
        foreach (var alike in _comparison.Sheets.GroupBy(sheet => CauseText.Because(_comparison.CausesOf(sheet))).Where(group => group.Key.Length > 0))
        {
            _text.Append("    ").AppendJoin(", ", alike.Select(sheet => Number(sheet.Sheet.Number))).Append($" {alike.Key}\n");
        }

        Add("keep", _comparison.Sheets.Where(sheet => sheet.Was is not null).Select(sheet => sheet.Was!.Number == sheet.Sheet.Number
            ? Number(sheet.Sheet.Number)
            : $"{Number(sheet.Was.Number)} (now {Number(sheet.Sheet.Number)})"));
        Add("throw away the old", _comparison.GoneSheets.Select(sheet => Number(sheet.Number)));

        void Add(string what, IEnumerable<string> sheets)
        {
            var all = string.Join(", ", sheets);
            _text.Append(all.Length > 0 ? $"  {what} {all}\n" : "");
        }

        static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);
    }

    private void AddFigures()
    {
        var rows = new List<(string Title, string Label, string Old, string New)>();
        rows.AddRange(_comparison.Parts.Figures.Select(figure => RowOf("", figure)));
        foreach (var part in _comparison.Parts.Parts)
        {
            rows.AddRange(part.Figures.Take(MostFiguresOfPart).Select(figure => RowOf(part.Part.Title, figure)));
            if (part.Figures.Length > MostFiguresOfPart)
            {
                rows.Add((part.Part.Title, $"and {Counts.Of(part.Figures.Length - MostFiguresOfPart, "other figure")}, which --json lists", "", ""));
            }
        }

        if (rows.Count == 0)
        {
            return;
        }

        var (labelWidth, oldWidth) = (rows.Max(row => row.Old.Length > 0 ? row.Label.Length : 0), rows.Max(row => row.Old.Length));
        _text.Append("\nFigures, before -> now:\n");
        var title = "";
        foreach (var row in rows)
        {
            _text.Append(row.Title != title ? $"  {row.Title}:\n" : "");
            title = row.Title;
            var indent = title.Length > 0 ? "    " : "  ";
            _text.Append(row.Old.Length == 0
                ? $"{indent}{row.Label}\n"
                : $"{indent}{row.Label.PadRight(labelWidth)}  {row.Old.PadLeft(oldWidth)} -> {row.New}\n");
        }
    }

    private (string Title, string Label, string Old, string New) RowOf(string title, FigureChange figure)
    {
        return (title, FigureText.LabelOf(figure.Label, title), Shown(figure.Old), Shown(figure.New));

        string Shown(double? value) => value is { } number ? _figures.ValueOf(figure.Quantity, number) + _figures.UnitOf(figure.Quantity) : "none";
    }
}
