using PlanForge.Drafting.Conventions;
using PlanForge.Drafting.Lettering;
using PlanForge.Drafting.Measures;
using PlanForge.Drafting.Model;
using PlanForge.Drafting.PartDrawings;
using PlanForge.Drafting.Sheets;
using PlanForge.Geometry;

namespace PlanForge.Drafting.Printing;

/// <summary>A page with long bars across and up, from which a printer's own errors are measured.</summary>
public static class CalibrationPage
{
    /// <summary>Printers lose 4 to 6 mm; the bars keep clear of more.</summary>
    private const double Margin = 10;

    private const double CrossArm = 4;
    private const double LeastBar = 100;
    private const double Inset = 12;
    private const double Body = LetteringSizes.Least;
    private static readonly LineStyle Fine = new(LineType.Continuous, 0.13);

    /// <summary>The lengths of the bars across and up on a paper, mm: whole centimetres, as long as the paper allows.</summary>
    public static (double Across, double Up) BarsOn(Paper paper)
    {
        ArgumentNullException.ThrowIfNull(paper);
        return (Bar(paper.Width), Bar(paper.Height));

        static double Bar(double edge) => Math.Floor((edge - (2 * (Margin + CrossArm))) / 10) * 10;
    }

    /// <summary>What is wrong with a paper, or null: one sentence without a full stop.</summary>
    public static string? Fault(Paper paper)
    {
        var (across, up) = BarsOn(paper);
        return Math.Min(across, up) < LeastBar
            ? $"{paper.Name} is too small to measure a printer by; take paper of 130 × 130 mm or more"
            : null;
    }

    /// <summary>Draws the page, upright.</summary>
    /// <param name="paper">The paper; <see cref="Fault"/> tells which will do.</param>
    public static PageSet Draw(Paper paper)
    {
        var (across, up) = BarsOn(paper);
        var corner = new Point2((paper.Width - across) / 2, (paper.Height - up) / 2);
        var box = new Bounds2(corner.X, corner.Y, corner.X + across, corner.Y + up);
        var sketch = new Sketch();
        DrawBars(sketch, box);
        DrawText(sketch, paper, box);
        var page = new Page("1", $"Calibration page {paper.Name}", paper.Width, paper.Height, new(sketch.Items), [], [], [])
        {
            FreeLine = new(Margin, Margin - 4, paper.Width - Margin, Margin - 0.5),
        };
        return new(page.Title, "en", [page]);
    }

    private static void DrawBars(Sketch sketch, Bounds2 box)
    {
        foreach (var end in (ReadOnlySpan<Point2>)
            [new(box.MinX, box.MinY), new(box.MaxX, box.MinY), new(box.MinX, box.MaxY), new(box.MaxX, box.MaxY)])
        {
            sketch.Line(Layer.Frame, end - new Vector2(CrossArm, 0), end + new Vector2(CrossArm, 0), Fine);
            sketch.Line(Layer.Frame, end - new Vector2(0, CrossArm), end + new Vector2(0, CrossArm), Fine);
        }

        sketch.Line(Layer.Frame, new(box.MinX + CrossArm, box.MinY), new(box.MaxX - CrossArm, box.MinY), Fine);
        sketch.Line(Layer.Frame, new(box.MinX, box.MinY + CrossArm), new(box.MinX, box.MaxY - CrossArm), Fine);
        Label($"across {Measure.Number(box.Width, 0)} mm", new(box.Centre.X, box.MinY + 1.5), 0);
        Label($"up {Measure.Number(box.Height, 0)} mm", new(box.MinX - 1.5, box.Centre.Y), Math.PI / 2);

        void Label(string text, Point2 middle, double angle)
        {
            var along = new Vector2(Math.Cos(angle), Math.Sin(angle));
            sketch.Text(Layer.Frame, text, middle - (along * (StrokeAlphabet.WidthOf(text, Body) / 2)), Body, angle);
        }
    }

    private static void DrawText(Sketch sketch, Paper paper, Bounds2 box)
    {
        var (left, width) = (box.MinX + Inset, box.Width - (2 * Inset));
        var top = box.MaxY - Inset;
        var (title, height) = TextWrap.Fitted($"Calibration page, {paper.Name}", width, [5, 3.5, Body]);
        sketch.Text(Layer.Notes, title, new(left, top - height), height);
        top -= height + 5;
        var number = 0;
        foreach (var step in StepsFor(paper, box))
        {
            Add(NumberedStep.Draw(++number, step, width, out var below), below + NumberedStep.Gap);
        }

        top -= 4;
        Add(TableDrawing.Draw(ShrinkCause.TableFor(paper), Body), 0);

        void Add(Sketch block, double gap)
        {
            sketch.Add(block, new(left - block.Bounds.MinX, top - block.Bounds.MaxY));
            top -= block.Bounds.Height + gap;
        }
    }

    private static string[] StepsFor(Paper paper, Bounds2 box) =>
    [
        "Print this page at 100 % (dialogs also say actual size), from the tray and on the paper that plans are printed on.",
        "Let it rest until it is cool and flat. Measure with a steel rule from cross to cross: "
            + $"across {Measure.Number(box.Width, 0)} mm, up {Measure.Number(box.Height, 0)} mm, to 0.1 mm if you can.",
        $"Measure both diagonals: each is {Measure.Number(new Vector2(box.Width, box.Height).Length, 1)} mm. "
            + "If they differ by more than 0.5 mm, the printer draws the paper in askew, which no factor repairs.",
        "If a length is wrong by more than 1 %, look at the table first: the print dialog has scaled the page.",
        $"Keep what you measured, with a name of your own for the printer: planforge calibrate --printer attic --across 179.6 --up 259.1 --paper {paper.Name}",
        "Then draw for it: planforge draw DESIGN.yaml --printer attic. Such a plan is right on this printer only.",
    ];
}
