using PlanForge.Geometry;
using PlanForge.Parts.Comparison;
using PlanForge.Parts.Wording;

namespace PlanForge.Parts.Tests.Comparison;

public sealed class PartComparerTests
{
    private static readonly ComparisonTexts Words = new(new MeasureText(Airframe.DisplayUnit.Millimetre));

    [Fact]
    public void A_part_is_the_same_as_itself()
    {
        var found = PartComparer.Compare(Plate(), Plate());

        Assert.Equal((PartState.Same, PartAdvice.Keep), (found.State, found.Advice));
        Assert.Null(found.Largest);
    }

    [Fact]
    public void A_shape_that_moved_as_a_whole_is_moved_by_that()
    {
        var found = PartComparer.Compare(Plate(), Plate(new(3, -1)));

        Assert.Equal((PartState.Moved, PartAdvice.PutElsewhere), (found.State, found.Advice));
        Assert.Equal(3, found.Move.X, 1e-9);
        Assert.Equal("the same shape, 3 mm to the right and 1 mm down against the lines marked on it", Words.Of(found));
    }

    [Fact]
    public void The_same_shape_with_other_marks_or_figures_is_moved()
    {
        Assert.Equal(PartState.Moved, PartComparer.Compare(Plate(), Plate(sketch: it => it.Line(LineUse.Datum, new(-20, 4), new(20, 4)))).State);
        Assert.Equal(PartState.Moved, PartComparer.Compare(Plate(), Plate(sketch: it => it.Figure("plate.station", "Station", 7, FigureQuantity.Length))).State);
    }

    [Fact]
    public void Other_words_alone_are_a_change_without_a_deviation()
    {
        var found = PartComparer.Compare(Plate(), Plate(sketch: it => it.Note("Sand the edge.")));

        Assert.Equal((PartState.Changed, PartAdvice.Keep), (found.State, found.Advice));
        Assert.Null(found.Largest);
        Assert.Equal("figures on it changed", Words.Of(found));
    }

    [Fact]
    public void Wider_is_short_and_narrower_comes_off()
    {
        var wider = PartComparer.Compare(Plate(), Plate(halfWidth: 21));
        var narrower = PartComparer.Compare(Plate(), Plate(halfWidth: 18.8));

        Assert.Equal((PartState.Changed, PartAdvice.Make), (wider.State, wider.Advice));
        Assert.Equal(1, wider.Lack!.Largest.Distance, 1e-3);
        Assert.Null(wider.Surplus);
        Assert.StartsWith("short by 1 mm: make new (", Words.Of(wider), StringComparison.Ordinal);
        Assert.Equal((PartState.Changed, PartAdvice.TakeOff), (narrower.State, narrower.Advice));
        Assert.StartsWith("take off up to 1.2 mm (", Words.Of(narrower), StringComparison.Ordinal);
    }

    [Fact]
    public void Less_than_a_stroke_of_the_block_keeps_the_part()
    {
        var found = PartComparer.Compare(Plate(), Plate(halfWidth: 20.03));

        Assert.Equal((PartState.Changed, PartAdvice.Keep), (found.State, found.Advice));
        Assert.Equal(0.03, found.Largest!.Value.Distance, 1e-3);
        Assert.EndsWith(", fits as it is", Words.Of(found), StringComparison.Ordinal);
        Assert.False(ChangeParts.IsDrawn(found));
    }

    [Fact]
    public void Noise_under_a_hundredth_is_nothing() =>
        Assert.Equal(PartState.Same, PartComparer.Compare(Plate(), Plate(halfWidth: 20.004)).State);

    [Fact]
    public void Other_wood_is_made_anew_whatever_its_shape()
    {
        var found = PartComparer.Compare(Plate(), Plate() with { Thickness = 4 });

        Assert.Equal((PartState.Changed, PartAdvice.Make), (found.State, found.Advice));
        Assert.Equal("3 mm thick before, 4 mm now", Words.Of(found));
    }

    [Fact]
    public void A_new_opening_is_cut_and_one_that_is_gone_needs_a_new_part()
    {
        var holed = Plate(sketch: it => it.Line(LineUse.Cut, Path2.Circle(new(0, 0), 5).Reversed()));

        Assert.Equal("cut this opening (middle)", Words.Of(PartComparer.Compare(Plate(), holed)));
        Assert.Equal("no opening here now: make new (middle)", Words.Of(PartComparer.Compare(holed, Plate())));
    }

    [Fact]
    public void Wood_whose_drawn_lines_moved_is_marked_anew()
    {
        var found = PartComparer.Compare(Scored(2), Scored(5));

        Assert.Equal((PartState.Changed, PartAdvice.MarkAnew), (found.State, found.Advice));
        Assert.Equal(3, found.Largest!.Value.Distance, 1e-3);

        static Part Scored(double y) => Plate(sketch: it => it.Line(LineUse.Score, new(-10, y), new(10, y)));
    }

    [Fact]
    public void Lines_of_a_template_that_is_not_cut_are_measured_too()
    {
        var found = PartComparer.Compare(Template(0), Template(0.7));

        Assert.Equal((PartState.Changed, PartAdvice.PrintAgain), (found.State, found.Advice));
        Assert.Equal(0.7, found.Largest!.Value.Distance, 1e-3);

        static Part Template(double rise)
        {
            var sketch = new PartSketch();
            sketch.Line(LineUse.Edge, new(0, 0), new(80, 0));
            sketch.Line(LineUse.Trim, Path2.Open([new(new(0, 10), -0.1), new(new(80, 10 + rise))]));
            return sketch.AsTemplate("saddle", "Saddles", "Saddle");
        }
    }

    // The paper below a line that wood is cut to: where the paper ends is nothing.
    [Fact]
    public void The_edge_of_a_templates_paper_is_no_wood()
    {
        Assert.Equal(PartState.Same, PartComparer.Compare(Saddle(), Saddle(paper: -30.44)).State);

        var raised = PartComparer.Compare(Saddle(), Saddle(paper: -30.44, line: 0.3));
        Assert.Equal(0.3, raised.Largest!.Value.Distance, 1e-3);
        Assert.Equal(0.3, Assert.Single(raised.Wood!.Zones).Largest.Distance, 1e-3);
        Assert.Equal("wood cut by it: short by 0.3 mm: make new (upper edge)", Words.Of(raised));
        Assert.StartsWith("wood cut by it: take off up to 0.3 mm (", Words.Of(PartComparer.Compare(Saddle(line: 0.3), Saddle())), StringComparison.Ordinal);
    }

    [Fact]
    public void A_fitted_line_that_goes_on_says_nothing_of_wood()
    {
        var longer = PartComparer.Compare(Saddle(), Saddle(length: 102));
        Assert.Null(longer.Surplus ?? longer.Lack);
        Assert.Equal("the line goes on 2 mm further (upper right)", Words.Of(longer));
        Assert.Equal("wood cut by it: short by 0.3 mm: make new (upper edge); the line goes on 2.02 mm further (upper right)", Words.Of(PartComparer.Compare(Saddle(), Saddle(line: 0.3, length: 102))));
        Assert.Equal("the line ends 2 mm earlier (upper right)", Words.Of(PartComparer.Compare(Saddle(length: 102), Saddle())));
    }

    [Fact]
    public void The_hatching_of_a_template_leaves_the_papers_edge_out()
    {
        var comparison = PartListComparison.Of(new([Saddle()], [], []), new([Saddle(paper: -33, line: 2)], [], []));
        var drawing = Assert.Single(ChangeParts.Of(comparison, new(Airframe.DisplayUnit.Millimetre), _ => []));
        var hatching = drawing.Lines.Where(line => line.Use == LineUse.Difference).ToList();
        Assert.NotEmpty(hatching);
        Assert.All(hatching, line => Assert.InRange(line.Path.Bounds.MinY, -1e-6, 2));
        Assert.All(drawing.Lines.Where(line => line.Use == LineUse.Before), line => Assert.Equal(0, line.Path.Bounds.MinY));
    }

    private static Part Saddle(double paper = -30, double line = 0, double length = 100)
    {
        var fitted = Path2.Line(new(length, line), new(0, line));
        var sketch = new PartSketch();
        sketch.Line(LineUse.Cut, Path2.Polygon(new(-12, paper), new(length, paper), fitted.Start, fitted.End, new(-12, line)));
        return sketch.AsTemplate("saddle", "Saddles", "Saddle") with { Fitted = [fitted] };
    }

    [Fact]
    public void The_pieces_of_a_set_are_compared_by_what_each_is()
    {
        // One more step below the others moves all of them on the paper.
        var found = PartComparer.Compare(Set(("-1°", 2), ("+1°", 2)), Set(("-1°", 2), ("-0.5°", 1), ("+1°", 2.5)));

        Assert.Equal((PartState.Changed, PartAdvice.PrintAgain), (found.State, found.Advice));
        Assert.Equal([("-1°", PartState.Same), ("-0.5°", PartState.New), ("+1°", PartState.Changed)], found.Pieces.Select(piece => (piece.Name, piece.Comparison.State)));
        Assert.Equal("-0.5°: new; +1°: wood cut by it: short by 0.5 mm: make new (upper edge)", Words.Of(found));
        Assert.Equal("-0.5°: no longer part of the design", Words.Of(PartComparer.Compare(Set(("-1°", 2), ("-0.5°", 1)), Set(("-1°", 2)))));
        Assert.Equal(PartState.Same, PartComparer.Compare(Set(("-1°", 2), ("+1°", 2)), Set(("+1°", 2), ("-1°", 2))).State);
    }

    [Fact]
    public void A_drawing_of_a_set_has_each_piece_over_what_it_was()
    {
        var comparison = PartListComparison.Of(new([Set(("-1°", 2), ("+1°", 2))], [], []), new([Set(("-0.5°", 1), ("-1°", 2), ("+1°", 2.5))], [], []));
        var drawing = Assert.Single(ChangeParts.Of(comparison, new(Airframe.DisplayUnit.Millimetre), _ => []));
        var before = Assert.Single(drawing.Lines, line => line.Use == LineUse.Before).Path.Bounds;
        var now = drawing.Lines.Last(line => line.Use == LineUse.Cut).Path.Bounds;
        Assert.Equal((now.MinX, now.MinY, now.MaxX, now.MaxY - 0.5), (before.MinX, before.MinY, before.MaxX, before.MaxY));
        Assert.Equal(["-0.5°: new", "+1°: short by 0.5 mm: make new"], drawing.Dimensions.OfType<PartDimension.Leader>().Select(leader => leader.Text));
        Assert.All(drawing.Lines.Where(line => line.Use == LineUse.Difference), line => Assert.InRange(line.Path.Bounds.MinY, now.MaxY - 0.5 - 1e-6, now.MaxY));
    }

    private static Part Set(params (string Name, double Height)[] pieces)
    {
        var sketch = new PartSketch();
        var below = 0.0;
        var set = new List<SetPiece>();
        foreach (var (name, height) in pieces)
        {
            below -= height + 9;
            set.Add(new(name, Path2.Rectangle(new(0, below, 60, below + height))));
            sketch.Line(LineUse.Cut, set[^1].Outline);
        }

        return sketch.AsTemplate("shims", "Shims", "Shims") with { Pieces = [.. set] };
    }

    [Fact]
    public void Parts_are_known_by_their_ids_in_the_new_order_with_the_gone_ones_last()
    {
        PartList old = new([Plate(), Plate() with { Id = "a" }], [], []), now = new([Plate() with { Id = "b" }, Plate()], [], []);

        Assert.Equal([("b", PartState.New), ("plate", PartState.Same), ("a", PartState.Gone)], PartListComparison.Of(old, now).Parts.Select(part => (part.Part.Id, part.State)));
    }

    [Fact]
    public void A_drawing_shows_old_and_new_with_the_wood_that_differs_hatched_and_named()
    {
        var comparison = PartListComparison.Of(new([Plate()], [], []), new([Plate(halfWidth: 21)], [], []));
        var drawing = Assert.Single(ChangeParts.Of(comparison, new(Airframe.DisplayUnit.Millimetre), _ => ["Because of width."]));

        Assert.Contains(drawing.Lines, line => line.Use == LineUse.Before && Math.Abs(line.Path.Bounds.MaxX - 20) < 1e-9);
        Assert.Contains(drawing.Lines, line => line.Use == LineUse.Cut && Math.Abs(line.Path.Bounds.MaxX - 21) < 1e-9);
        var hatching = drawing.Lines.Where(line => line.Use == LineUse.Difference).ToList();
        Assert.NotEmpty(hatching);
        Assert.All(hatching, line => Assert.InRange(Math.Abs(line.Path.Start.Towards(line.Path.End, 0.5).X), 20, 21));
        Assert.Equal(["short by 1 mm: make new", "short by 1 mm: make new"], drawing.Dimensions.OfType<PartDimension.Leader>().Select(leader => leader.Text));
        Assert.Contains("Because of width.", drawing.Notes);
    }

    private static Part Plate(Vector2 move = default, double halfWidth = 20, Action<PartSketch>? sketch = null)
    {
        var made = new PartSketch();
        made.Line(LineUse.Cut, Path2.Rectangle(new(-halfWidth, -15, halfWidth, 15)).Placed(Placement2.MovedBy(move)));
        made.Line(LineUse.Datum, new(-20, 0), new(20, 0));
        sketch?.Invoke(made);
        return made.AsCut("plate", "Plates", "Plate", "birch ply", 3, null);
    }
}
