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
