using PlanForge.Drafting.Conventions;
using PlanForge.Drafting.Measures;
using PlanForge.Drafting.Model;
using PlanForge.Drafting.PartDrawings;
using PlanForge.Geometry;

namespace PlanForge.Drafting.Sheets;

/// <summary>
/// The title strip: what the sheet is, whose, which of how many, and how to read it. Fields after ISO 7200, without a date.
/// </summary>
internal static class TitleStrip
{
    public const double Height = 24;

    /// <summary>ISO 7200: 180 mm, which is the width of an A4 sheet inside its frame (from memory).</summary>
    public const double GreatestWidth = 180;

    private const double TopRow = 9;
    private const double MiddleRow = 8;
    private const double MiddleColumn = 28;
    private const double RightColumn = 37;
    private const double Inset = 2;

    // The views are flat patterns, not projections of a body: this says from where the formers are seen.
    private const string Views = "Formers seen from aft";
    private const double ViewsColumn = 45;

    /// <summary>Draws the strip.</summary>
    /// <param name="sketch">Where it is drawn.</param>
    /// <param name="strip">The room for it.</param>
    /// <param name="options">What it says of the design.</param>
    /// <param name="title">What the sheet shows.</param>
    /// <param name="number">Number of the sheet, from 1.</param>
    /// <param name="count">How many sheets there are.</param>
    public static void Draw(Sketch sketch, Bounds2 strip, PlanOptions options, string title, int number, int count)
    {
        sketch.Stroke(Layer.Frame, Path2.Rectangle(strip), LineConventions.Field);
        var (left, right) = (strip.MinX, strip.MaxX);
        var (middle, last) = (right - RightColumn - MiddleColumn, right - RightColumn);
        var top = new Row(sketch, strip.MaxY - TopRow, TopRow);
        var centre = new Row(sketch, top.Bottom - MiddleRow, MiddleRow);
        var bottom = new Row(sketch, strip.MinY, centre.Bottom - strip.MinY);
        top.Rule(left, right);
        centre.Rule(left, right);

        top.Field(left, middle, options.Name, [5, 3.5, LetteringSizes.Least]);
        top.Field(middle, last, options.Revision.Length > 0 ? "Rev. " + options.Revision : "", [3.5, LetteringSizes.Least]);
        top.Field(last, right, $"Sheet {Measure.Number(number, 0)} of {Measure.Number(count, 0)}", [3.5, LetteringSizes.Least]);
        centre.Field(left, middle, title, [3.5, LetteringSizes.Least]);
        centre.Field(middle, last, "Scale 1:1", [3.5, LetteringSizes.Least]);
        centre.Field(last, right, "Units: " + Measure.NameOf(options.Unit), [LetteringSizes.Least]);
        bottom.Field(left, last - ViewsColumn, options.Owner, [LetteringSizes.Least]);
        bottom.Field(last - ViewsColumn, last, Views, [LetteringSizes.Least]);
        bottom.Field(last, right, options.Version, [LetteringSizes.Least]);
    }

    private readonly record struct Row(Sketch Sketch, double Bottom, double Height)
    {
        public void Rule(double left, double right) =>
            Sketch.Line(Layer.Frame, new(left, Bottom), new(right, Bottom), LineConventions.Thin);

        public void Field(double left, double right, string text, ReadOnlySpan<double> heights)
        {
            Sketch.Line(Layer.Frame, new(left, Bottom), new(left, Bottom + Height), LineConventions.Thin);
            var (shown, height) = TextWrap.Fitted(text, right - left - (2 * Inset), heights);
            if (shown.Length > 0)
            {
                Sketch.Text(Layer.Frame, shown, new(left + Inset, Bottom + ((Height - height) / 2)), height);
            }
        }
    }
}
