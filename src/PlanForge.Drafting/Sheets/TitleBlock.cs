using System.Collections.Immutable;
using PlanForge.Airframe.Diagnostics;
using PlanForge.Drafting.Conventions;
using PlanForge.Drafting.Lettering;
using PlanForge.Drafting.Measures;
using PlanForge.Drafting.Model;
using PlanForge.Drafting.PartDrawings;
using PlanForge.Geometry;

namespace PlanForge.Drafting.Sheets;

/// <summary>
/// The title block: what the sheet is, whose, which of how many, and how to read it. Fields after ISO 7200 (shared/check-values.md
/// section 4); what the description does not give stays blank, the date too. What several sheets have alike is drawn once.
/// </summary>
/// <param name="options">What it says of the design.</param>
internal sealed class TitleBlock(PlanOptions options)
{
    /// <summary>Height, mm: four rows.</summary>
    public const double Height = 4 * Row;

    /// <summary>Width, mm. ISO 7200: that of an A4 sheet inside its frame (from memory).</summary>
    public const double Width = 180;

    private const double Row = 9.5;
    private const double Inset = 1.5;
    private const double Baseline = 1.6;

    // Left edges of the columns. The first holds names, the others short entries.
    private const double Second = 82;
    private const double Third = 112;
    private const double Fourth = 146;
    private const double Half = 41;

    private readonly Dictionary<(Bounds2 Block, Field Field), Sketch> _drawn = [];
    private readonly Dictionary<(Bounds2 Block, ProjectionAngle Projection), Sketch> _symbols = [];

    private static ReadOnlySpan<double> Heights => [3.5, LetteringSizes.Least];

    /// <summary>Draws the block.</summary>
    /// <param name="sketch">Where it is drawn.</param>
    /// <param name="block">The room for it.</param>
    /// <param name="sheet">What it says of the sheet.</param>
    public void Draw(Sketch sketch, Bounds2 block, SheetTitle sheet)
    {
        sketch.Stroke(Layer.Frame, Path2.Rectangle(block), LineConventions.Field);
        foreach (var field in Fields(options, sheet))
        {
            if (!_drawn.TryGetValue((block, field), out var drawn))
            {
                _drawn[(block, field)] = drawn = new();
                Draw(drawn, block, field);
            }

            sketch.Add(drawn);
        }

        var projection = options.Sheets.IsThirdAngle ? ProjectionAngle.Third : ProjectionAngle.First;
        if (!_symbols.TryGetValue((block, projection), out var symbol))
        {
            _symbols[(block, projection)] = symbol = Symbol(block, projection);
        }

        sketch.Add(symbol);
    }

    /// <summary>An error for every entry of the description that is too long for its field.</summary>
    public static IEnumerable<Diagnostic> Faults(PlanOptions options)
    {
        foreach (var field in Fields(options, new("", 1, 1, "1:1", "")))
        {
            var width = StrokeAlphabet.WidthOf(field.Text, LetteringSizes.Least);
            var room = field.Right - field.Left - (2 * Inset);
            if (field.Key is { } key && width > room)
            {
                var letters = (int)(field.Text.Length * room / width);
                yield return Diagnostic.Error(
                    field.At,
                    $"`{key}` is too long for its field in the title block: {Measure.Number(width, 0)} mm in the smallest lettering, "
                        + $"and there are {Measure.Number(room, 0)} mm; about {Measure.Number(letters, 0)} letters would fit");
            }
        }
    }

    private static ImmutableArray<Field> Fields(PlanOptions options, SheetTitle sheet)
    {
        var (issue, at) = (options.Issue, options.Issue.Fields);
        return
        [
            new("Legal owner", issue.Owner, 0, Second, 3, "owner", at[2]),
            new("Revision", issue.Revision, Second, Third, 3, "revision", at[1]),
            new("Date of issue", issue.Date, Third, Fourth, 3, "date_of_issue", at[5]),
            new("Sheet", $"{Measure.Number(sheet.Number, 0)} of {Measure.Number(sheet.Count, 0)}", Fourth, Width, 3),
            new("Title", options.Name, 0, Second, 2, "name", at[0]),
            new("Scale", sheet.Scale, Second, Third, 2),
            new("Lengths in", Measure.NameOf(options.Unit), Third, Fourth, 2),
            new("Sheet title", sheet.Title, 0, Second, 1),
            new("Creator", issue.Creator, Second, Fourth, 1, "creator", at[3]),
            new("Fingerprint of the sheet", sheet.Fingerprint, 0, Half, 0),
            new("Drawn by", options.Version, Half, Second, 0),
            new("Approved by", issue.Approver, Second, Fourth, 0, "approver", at[4]),
            new("Document type", "Plan", Fourth, Width, 0),
        ];
    }

    private static Sketch Symbol(Bounds2 block, ProjectionAngle projection)
    {
        var sketch = new Sketch();
        var room = new Bounds2(block.MinX + Fourth, block.MinY + Row, block.MaxX, block.MinY + (3 * Row));
        sketch.Line(Layer.Frame, new(room.MinX, room.MinY), new(room.MinX, room.MaxY), LineConventions.Thin);
        ProjectionSymbol.Draw(sketch, room.Centre, 8, projection);
        return sketch;
    }

    private static void Draw(Sketch sketch, Bounds2 block, Field field)
    {
        var bottom = block.MinY + (field.Row * Row);
        var (left, right) = (block.MinX + field.Left, block.MinX + field.Right);
        if (field.Left > 0)
        {
            sketch.Line(Layer.Frame, new(left, bottom), new(left, bottom + Row), LineConventions.Thin);
        }

        if (field.Row > 0)
        {
            sketch.Line(Layer.Frame, new(left, bottom), new(right, bottom), LineConventions.Thin);
        }

        sketch.Text(Layer.Frame, field.Caption, new(left + Inset, bottom + Row - 0.9 - LetteringSizes.Caption), LetteringSizes.Caption);
        var (text, height) = TextWrap.Fitted(field.Text, right - left - (2 * Inset), Heights);
        if (text.Length > 0)
        {
            sketch.Text(Layer.Frame, text, new(left + Inset, bottom + Baseline), height);
        }
    }

    private readonly record struct Field(
        string Caption, string Text, double Left, double Right, int Row, string? Key = null, SourcePosition At = default);
}

/// <summary>What the title block says of one sheet.</summary>
/// <param name="Title">What the sheet shows.</param>
/// <param name="Number">Its number, from 1.</param>
/// <param name="Count">How many sheets there are.</param>
/// <param name="Scale">Its scale, such as <c>1:1</c>.</param>
/// <param name="Fingerprint">The short form of its fingerprint.</param>
internal readonly record struct SheetTitle(string Title, int Number, int Count, string Scale, string Fingerprint);
