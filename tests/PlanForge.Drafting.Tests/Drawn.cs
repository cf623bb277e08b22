using System.Collections.Immutable;
using System.Globalization;
using PlanForge.Airframe;
using PlanForge.Airframe.Diagnostics;
using PlanForge.Drafting.Model;
using PlanForge.Drafting.Sheets;
using PlanForge.Geometry;
using PlanForge.Parts;

namespace PlanForge.Drafting.Tests;

/// <summary>Draws sheets for the tests and writes them down so that they can be compared.</summary>
internal static class Drawn
{
    public static PlanOptions Options(string paper = "A3", bool isPortrait = false, DisplayUnit unit = DisplayUnit.Millimetre) =>
        new(
            "Oxbow 1420",
            Issue,
            new(new(paper, null, null), isPortrait, false, false, [], At),
            unit,
            ["Check every part against the wood."],
            "PlanForge 0.1.0");

    /// <summary>Draws parts without an airframe.</summary>
    public static PlanSheetsResult Sheets(PlanOptions options, IReadOnlyList<Part> parts) =>
        PlanSheets.Draw(options, new([.. parts], [], []));

    /// <summary>What the title blocks say.</summary>
    public static IssueDescription Issue { get; } = new(
        "B", "A. Builder", "C. Draught", "D. Checker", "2026-11-25", [], new Fingerprint([0x08, 0x86, 0x42, 0x98]), [At, At, At, At, At, At]);

    private static SourcePosition At => new("demo.yaml", 7, 3);

    private static readonly Lazy<ImmutableArray<(PlanOptions Options, PlanSheetsResult Result)>> OnAllPapers =
        new(() => [.. DrawOnAllPapers()]);

    /// <summary>
    /// All papers both ways round, in mm and inches, with the sheets of the sample parts on them; drawn once for all tests.
    /// </summary>
    public static ImmutableArray<(PlanOptions Options, PlanSheetsResult Result)> Everywhere => OnAllPapers.Value;

    private static IEnumerable<(PlanOptions Options, PlanSheetsResult Result)> DrawOnAllPapers()
    {
        foreach (var paper in Paper.All.Concat(Paper.Rolls))
        {
            foreach (var isPortrait in new[] { true, false })
            {
                foreach (var unit in new[] { DisplayUnit.Millimetre, DisplayUnit.Inch })
                {
                    var options = Options(paper.Name, isPortrait, unit);
                    yield return (options, Sheets(options, SampleParts.All));
                }
            }
        }
    }

    /// <summary>A drawing as text, all digits kept.</summary>
    public static string Written(IEnumerable<DrawingItem> items) => string.Join('\n', items.Select(item => item switch
    {
        DrawingItem.Stroke stroke => $"{stroke.Layer} {stroke.Style} {Written(stroke.Path)}",
        DrawingItem.Fill fill => $"{fill.Layer} fill {fill.Grey:R} {string.Join(" / ", fill.Paths.Select(Written))}",
        DrawingItem.Text text => $"{text.Layer} '{text.Content}' {text.At} {text.Height:R} {text.Angle:R}",
        _ => throw new InvalidOperationException(),
    }));

    public static string Written(SheetSet set) => string.Join(
        '\n',
        set.Sheets.Select(s => string.Create(
            CultureInfo.InvariantCulture,
            $"{s.Number} {s.Title} {s.Width:R} {s.Height:R} {string.Join(' ', s.Parts)}\n{Written(s.Drawing.Items)}")));

    /// <summary>A plain rectangular part with nothing but an outline.</summary>
    public static Part Plain(int number, double width, double height) => new(
        $"plain-{number}", "Plain", $"P{number}", Making.Template, "", 0, 1, null,
        [new(LineUse.Cut, Path2.Rectangle(new(0, 0, width, height)))], [], [], [], [], ImmutableArray<Figure>.Empty);

    private static string Written(Path2 path) => $"{path.IsClosed} {string.Join(' ', path.Vertices)}";
}
