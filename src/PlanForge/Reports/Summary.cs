using System.Text;
using PlanForge.Airframe;
using PlanForge.Designs;
using PlanForge.Parts;
using PlanForge.Parts.Wording;

namespace PlanForge.Reports;

/// <summary>Writes every figure of a design for a person: the airframe first, then part by part, in the units of the description.</summary>
internal sealed class Summary
{
    private const double MillimetresPerInch = MeasureText.MillimetresPerInch;
    private const double MillimetresPerCentimetre = 10;
    private const int NumberDecimals = 3;
    private const int AreaDecimals = 1;

    private readonly StringBuilder _text = new();
    private readonly MeasureText _measure;
    private readonly DisplayUnit _unit;
    private int _labelWidth;
    private int _valueWidth;

    private Summary(Design design)
    {
        _unit = design.Airframe.DisplayUnit;
        _measure = new(_unit);
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
            _valueWidth = Math.Max(_valueWidth, ValueOf(figure).Length);
        }
    }

    private void AddFigures(IEnumerable<Figure> figures, string title)
    {
        foreach (var figure in figures)
        {
            _text.Append("  ").Append(LabelOf(figure, title).PadRight(_labelWidth)).Append("  ").Append(ValueOf(figure).PadLeft(_valueWidth));
            _text.Append(UnitOf(figure.Quantity)).Append('\n');
        }
    }

    // Under the title of a part its figures need not begin with that title again.
    private static string LabelOf(Figure figure, string title) =>
        title.Length > 0 && figure.Label.StartsWith(title + ", ", StringComparison.Ordinal) ? figure.Label[(title.Length + 2)..] : figure.Label;

    private string ValueOf(Figure figure) => figure.Quantity switch
    {
        FigureQuantity.Length => _measure.Fine(figure.Value),
        FigureQuantity.Area => MeasureText.Rounded(figure.Value / (AreaUnit * AreaUnit), AreaDecimals),
        FigureQuantity.Angle => MeasureText.Angle(figure.Value).TrimEnd('°'),
        _ => MeasureText.Rounded(figure.Value, NumberDecimals),
    };

    // The degree sign alone follows its number without a space (SI brochure, 5.4.3; from memory).
    private string UnitOf(FigureQuantity quantity) => quantity switch
    {
        FigureQuantity.Length => $" {_measure.UnitName}",
        FigureQuantity.Area => _unit == DisplayUnit.Inch ? " in²" : " cm²",
        FigureQuantity.Angle => "°",
        _ => "",
    };

    // Areas of wings are spoken of in square centimetres also where lengths are in millimetres.
    private double AreaUnit => _unit == DisplayUnit.Inch ? MillimetresPerInch : MillimetresPerCentimetre;
}
