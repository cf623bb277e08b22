using System.Text;
using PlanForge.Designs;
using PlanForge.Parts;

namespace PlanForge.Reports;

/// <summary>Writes every figure of a design for a person: the airframe first, then part by part, in the units of the description.</summary>
internal sealed class Summary
{
    private readonly StringBuilder _text = new();
    private readonly FigureText _figures;
    private int _labelWidth;
    private int _valueWidth;

    private Summary(Design design)
    {
        _figures = new(design.Airframe.DisplayUnit);
        Measure(design.AirframeFigures, "");
        foreach (var part in design.Parts)
        {
            Measure(part.Figures, part.Title);
        }
    }

    /// <summary>The summary; every line ends with LF.</summary>
    public static string Of(Design design)
    {
        var summary = new Summary(design);
        summary.AddTitle(design);
        summary._text.Append(AsBuiltSummary.Of(design, summary._figures));
        summary.AddFigures(design.AirframeFigures, "");
        foreach (var part in design.Parts)
        {
            summary.AddPart(part);
        }

        return summary._text.ToString();
    }

    private void AddTitle(Design design)
    {
        var revision = design.Airframe.Issue.Revision is { Length: > 0 } text ? $", revision {text}" : "";
        var templates = design.Parts.Count(part => part.Making == Making.Template);
        var cut = design.Parts.Length - templates;
        _text.Append(design.Airframe.Name).Append(revision).Append(": ")
            .Append(Counts.Of(cut, "cut part")).Append(", ").Append(Counts.Of(templates, "template")).Append(", ")
            .Append(Counts.Of(design.Sheets.Sheets.Length, "sheet")).Append('\n');
    }

    private void AddPart(Part part)
    {
        if (part.Figures.IsEmpty)
        {
            return;
        }

        _text.Append('\n').Append(part.Title).Append(" (").Append(part.Id).Append(')').Append('\n');
        AddFigures(part.Figures, part.Title);
    }

    private void Measure(IEnumerable<Figure> figures, string title)
    {
        foreach (var figure in figures)
        {
            _labelWidth = Math.Max(_labelWidth, LabelOf(figure, title).Length);
            _valueWidth = Math.Max(_valueWidth, _figures.ValueOf(figure.Quantity, figure.Value).Length);
        }
    }

    private void AddFigures(IEnumerable<Figure> figures, string title)
    {
        foreach (var figure in figures)
        {
            _text.Append("  ").Append(LabelOf(figure, title).PadRight(_labelWidth)).Append("  ").Append(_figures.ValueOf(figure.Quantity, figure.Value).PadLeft(_valueWidth));
            _text.Append(_figures.UnitOf(figure.Quantity)).Append('\n');
        }
    }

    private static string LabelOf(Figure figure, string title) => FigureText.LabelOf(figure.Label, title);
}
