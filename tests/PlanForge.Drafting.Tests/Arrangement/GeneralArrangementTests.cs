using System.Collections.Immutable;
using PlanForge.Airframe;
using PlanForge.Drafting.Arrangement;
using PlanForge.Drafting.Conventions;
using PlanForge.Drafting.Lettering;
using PlanForge.Drafting.Measures;
using PlanForge.Drafting.Model;
using PlanForge.Geometry;
using PlanForge.Parts;

namespace PlanForge.Drafting.Tests.Arrangement;

public class GeneralArrangementTests
{
    // Free space of an A3 sheet across, of an upright A4 sheet, and of an A1 sheet.
    private static readonly Bounds2[] Spaces = [new(23, 40, 407, 270), new(20, 50, 194, 240), new(20, 40, 800, 540)];

    public static TheoryData<string, int, ProjectionAngle> Everywhere
    {
        get
        {
            var data = new TheoryData<string, int, ProjectionAngle>();
            foreach (var design in Designs.Names)
            {
                for (var space = 0; space < Spaces.Length; space++)
                {
                    data.Add(design, space, ProjectionAngle.First);
                    data.Add(design, space, ProjectionAngle.Third);
                }
            }

            return data;
        }
    }

    [Theory]
    [MemberData(nameof(Everywhere))]
    public void It_fits_its_space_at_a_standard_scale_and_no_text_meets_a_text_or_a_line(string design, int space, ProjectionAngle projection)
    {
        var (views, figures, unit) = Designs.Read(design);
        var drawn = GeneralArrangement.Draw(views, figures, Spaces[space], projection, unit)!;
        var ink = ItemExtents.OfAll(drawn.Items);
        var room = Spaces[space].Grown(0.5);
        Assert.True(room.Contains(new(ink.MinX, ink.MinY)) && room.Contains(new(ink.MaxX, ink.MaxY)), $"{ink}");

        // ISO 5455 (from memory): 1:1 and the reductions 1:2, 1:5, 1:10, 1:20, 1:50, 1:100.
        Assert.Contains(1 / drawn.Scale, new[] { 1.0, 2, 5, 10, 20, 50, 100 });
        Assert.Equal($"1:{1 / drawn.Scale:0}", drawn.ScaleName);

        var texts = drawn.Items.OfType<DrawingItem.Text>().Select(text => (text.Content, Room: TextExtents.Of(text))).ToArray();
        for (var i = 0; i < texts.Length; i++)
        {
            for (var j = 0; j < i; j++)
            {
                Assert.False(texts[i].Room.Touches(texts[j].Room), $"'{texts[i].Content}' over '{texts[j].Content}'");
            }
        }

        // Lines through texts, walked along in steps of a fifth of a millimetre: no use is made of the drawing's own search.
        foreach (var stroke in drawn.Items.OfType<DrawingItem.Stroke>())
        {
            foreach (var (content, roomOfText) in texts)
            {
                var inner = roomOfText.Grown(-0.3);
                Assert.False(stroke.Path.Bounds.Touches(inner) && Steps(stroke.Path).Any(inner.Contains), $"a line through '{content}'");
            }
        }
    }

    [Theory]
    [MemberData(nameof(Everywhere))]
    public void Views_stand_in_line_and_on_the_side_their_projection_wants(string design, int space, ProjectionAngle projection)
    {
        // ISO 5456-2 (from memory): in first angle the view from above stands below and the view from the left on the right; in
        // third angle above and on the left.
        var (views, figures, unit) = Designs.Read(design);
        var drawn = GeneralArrangement.Draw(views, figures, Spaces[space], projection, unit)!;
        var rooms = drawn.Views.ToDictionary(view => view.Name, view => view.Place);
        var (side, plan, front) = (rooms["Side view"], rooms["Plan view"], rooms["Front view"]);
        Assert.True(projection == ProjectionAngle.First ? plan.MaxY < side.MinY : plan.MinY > side.MaxY);
        Assert.True(projection == ProjectionAngle.First ? front.MinX > side.MaxX : front.MaxX < side.MinX);
        Assert.All(drawn.Views, view => Assert.Equal(drawn.Scale, view.Scale));

        // The datum line runs level through side and front view; the root's leading edge stands at one station in side and plan.
        var datums = drawn.Items.OfType<DrawingItem.Stroke>()
            .Where(stroke => stroke.Style == LineConventions.StyleOf(LineUse.Datum) && stroke.Path.Start.Y == stroke.Path.End.Y)
            .ToArray();
        Assert.Equal(2, datums.Length);
        Assert.Equal(datums[0].Path.Start.Y, datums[1].Path.Start.Y, 9);

        // Its left end stands 3 % of the body's length ahead of the nose, as the plan's centre line does.
        var centre = drawn.Items.OfType<DrawingItem.Stroke>().Where(stroke =>
            stroke.Style == LineConventions.StyleOf(LineUse.Centre) && plan.Contains(stroke.Path.Start) && stroke.Path.Start.Y == stroke.Path.End.Y);
        var sideDatum = datums.Single(datum => side.Contains(datum.Path.Start));
        Assert.Contains(centre, line => Math.Abs(line.Path.Start.X - sideDatum.Path.Start.X) < 1e-9 && Math.Abs(line.Path.End.X - sideDatum.Path.End.X) < 1e-9);
    }

    [Theory]
    [InlineData("oxbow-1420")]
    [InlineData("fellside-2800")]
    [InlineData("saltmarsh-1600")]
    [InlineData("thimble-36")]
    public void Every_key_figure_stands_in_the_table_and_main_lengths_on_the_views(string design)
    {
        var (views, figures, unit) = Designs.Read(design);
        var drawn = GeneralArrangement.Draw(views, figures, Spaces[0], ProjectionAngle.First, unit)!;
        var texts = drawn.Items.OfType<DrawingItem.Text>().Select(text => text.Content).ToHashSet();
        Assert.All(figures, figure => Assert.Contains(figure.Label, texts));
        Assert.Contains(texts, text => text.StartsWith("Scale 1:", StringComparison.Ordinal));
        foreach (var key in new[] { "wing.span", "length", "tailplane.span", "tailplane.moment_distance", "wing.tip_chord" })
        {
            var length = Measure.Length(figures.Single(figure => figure.Key == key).Value, unit);
            Assert.Contains(texts, text => text.EndsWith(length, StringComparison.Ordinal));
        }
    }

    [Fact]
    public void Areas_are_shown_in_square_decimetres_or_square_inches()
    {
        // 1 dm² = 10 000 mm²; 1 in² = 25.4² mm² exactly.
        var (views, _, _) = Designs.Read("oxbow-1420");
        ImmutableArray<Figure> figures = [new("a", "Area", 64_516, FigureQuantity.Area)];
        Assert.Contains(TextsOf(DisplayUnit.Inch), text => text == "100 in²");
        Assert.Contains(TextsOf(DisplayUnit.Millimetre), text => text == "6.45 dm²");

        IEnumerable<string> TextsOf(DisplayUnit unit) => GeneralArrangement.Draw(views, figures, Spaces[0], ProjectionAngle.First, unit)!
            .Items.OfType<DrawingItem.Text>().Select(text => text.Content);
    }

    [Fact]
    public void The_scale_is_the_largest_whose_views_fit_and_without_room_there_is_no_drawing()
    {
        // One figure and much room: span 1430 and length 1060 side by side need 2490 mm and the span's height at full size.
        var (views, figures, unit) = Designs.Read("oxbow-1420");
        Assert.Equal("1:1", Drawn(3000, 2000).ScaleName);
        Assert.Equal("1:2", Drawn(1600, 1000).ScaleName);
        Assert.Null(GeneralArrangement.Draw(views, figures, new(0, 0, 60, 60), ProjectionAngle.First, unit));

        GeneralArrangementDrawing Drawn(double width, double height) =>
            GeneralArrangement.Draw(views, figures, new(0, 0, width, height), ProjectionAngle.First, unit)!;
    }

    [Fact]
    public void The_drawing_at_full_size_has_the_true_lines_of_the_views()
    {
        var (views, figures, unit) = Designs.Read("thimble-36");
        var drawn = GeneralArrangement.Draw(views, figures, new(0, 0, 3000, 2000), ProjectionAngle.First, unit)!;
        Assert.Equal(1, drawn.Scale);
        var lengths = drawn.Items.OfType<DrawingItem.Stroke>().Where(stroke => stroke.Style == LineConventions.StyleOf(LineUse.Edge)).Sum(stroke => stroke.Path.Length);
        var wanted = views.Side.Concat(views.Plan).Concat(views.Front).Where(line => line.Use == LineUse.Edge).Sum(line => line.Path.Length);
        Assert.Equal(wanted, lengths, 6);
    }

    private static IEnumerable<Point2> Steps(Path2 path)
    {
        var points = path.Flattened(0.02);
        for (var i = 0; i < points.Length - (path.IsClosed ? 0 : 1); i++)
        {
            var (a, b) = (points[i], points[(i + 1) % points.Length]);
            var count = Math.Max(1, (int)(a.DistanceTo(b) / 0.2));
            for (var step = 0; step <= count; step++)
            {
                yield return a.Towards(b, (double)step / count);
            }
        }
    }
}
