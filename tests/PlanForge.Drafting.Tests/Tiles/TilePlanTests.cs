using CsCheck;
using PlanForge.Drafting.Conventions;
using PlanForge.Drafting.Model;
using PlanForge.Drafting.Sheets;
using PlanForge.Drafting.Tiles;
using PlanForge.Geometry;

namespace PlanForge.Drafting.Tests.Tiles;

public sealed class TilePlanTests
{
    private static readonly Paper A4 = Paper.Find("A4")!;

    [Theory]
    [InlineData("A4", 10, 10)]
    [InlineData("Letter", 6, 0)]
    [InlineData("Legal", 12.7, 15)]
    [InlineData("A3", 4.2, 25)]
    public void Everything_of_a_tile_lies_inside_the_margin_and_no_lettering_on_another(string name, double margin, double overlap)
    {
        var options = new TileOptions(Paper.Find(name)!, margin, overlap);
        foreach (var set in Sets())
        {
            foreach (var page in Tiled(set, options).CorrectedFor(new("the one in the attic", 1.0022, 0.9987)).Pages)
            {
                var printable = new Bounds2(0, 0, page.Width, page.Height).Grown(-margin + 1e-6);
                var ink = page.Drawing.Items.Select(item => (Item: item, Bounds: ItemExtents.Of(item))).ToArray();
                if (page.Windows is [{ Shown: var shown }] && shown.Width == page.Windows[0].Sheet.Width && shown.Height == page.Windows[0].Sheet.Height)
                {
                    continue;
                }

                Assert.All(ink.Where(one => one.Item is DrawingItem.Text), one => Assert.True(
                    Holds(printable, one.Bounds), $"{page.Label}: '{((DrawingItem.Text)one.Item).Content}' {one.Bounds}"));
                Assert.All(ink, one => Assert.True(Holds(printable.Grown(0.2), one.Bounds), $"{page.Label}: {one.Item}"));
                Assert.All(page.Windows, window => Assert.True(Holds(printable, window.Place)));
                AssertApart(page.Label, ink.Where(one => one.Item is DrawingItem.Text && one.Item.Layer == Layer.Frame && page.Windows.Length > 0)
                    .Select(one => one.Bounds), page.Windows.Select(window => window.Place));
            }
        }
    }

    [Fact]
    public void Marks_of_a_tile_never_lie_over_its_drawing()
    {
        foreach (var page in Sets().SelectMany(set => Tiled(set, new(A4)).Pages).Where(page => page.Chapter.Length > 0))
        {
            var window = page.Windows.Single().Place;
            Assert.All(page.Drawing.Items, item => Assert.False(window.Touches(ItemExtents.Of(item)), $"{page.Label}: {item}"));
        }
    }

    // Truth: every point of the ink of a sheet, its frame aside, is on paper: looked for window by window.
    [Fact]
    public void No_ink_is_lost_with_the_tiles_that_are_left_out() =>
        (from x in Gen.Double[25, 575]
         from y in Gen.Double[15, 405]
         from ex in Gen.Double[25, 575]
         from ey in Gen.Double[15, 405]
         from bulge in Gen.Double[-0.2, 0.2]
         select Path2.Open([new(new(x, y), bulge), new(new(ex, ey))])).Sample(
            path =>
            {
                var sheet = Empty(594, 420, new DrawingItem.Stroke(Layer.Cut, path, LineConventions.Thin));
                var windows = Tiled(Set(sheet), new(A4)).Pages.SelectMany(page => page.Windows).ToArray();
                for (var i = 0; i <= 50; i++)
                {
                    var point = path.SegmentAt(0).PointAt(i / 50.0);
                    Assert.True(point.Y is < 0 or > 420 || windows.Any(window => window.Shown.Contains(point)), $"{point}");
                }
            },
            seed: "0000PlanForge", iter: 300);

    [Fact]
    public void Tiles_with_nothing_but_frame_and_border_marks_are_left_out_and_crossed_out()
    {
        var mark = new DrawingItem.Text(Layer.Frame, "A", new(12, 300), 2.5, 0);
        var part = new DrawingItem.Stroke(Layer.Cut, Path2.Circle(new(80, 60), 20), LineConventions.Thin);
        var pages = Tiled(Set(Empty(594, 420, mark, part)), new(A4)).Pages;
        var lowest = pages.Where(page => page.Chapter.Length > 0).ToArray();
        Assert.Single(lowest);
        Assert.EndsWith("1", lowest[0].Label, StringComparison.Ordinal);
        Assert.Contains(lowest[0].Drawing.Items, item => item is DrawingItem.Text text && text.Content.EndsWith("left out", StringComparison.Ordinal));
        Assert.Contains(pages[0].Drawing.Items, item => item is DrawingItem.Text text && text.Content.Contains("crosses out", StringComparison.Ordinal));
    }

    [Fact]
    public void Paper_lies_the_way_that_takes_the_fewest_pages()
    {
        // Worked by hand: 420 x 297 in windows of 260 x 156 takes 2 x 2, in windows of 173 x 243 it takes 3 x 2.
        var part = new DrawingItem.Stroke(Layer.Cut, Path2.Line(new(22, 12), new(408, 285)), LineConventions.Thin);
        var other = new DrawingItem.Stroke(Layer.Cut, Path2.Line(new(22, 285), new(408, 12)), LineConventions.Thin);
        var tiles = Tiled(Set(Empty(420, 297, part, other)), new(A4)).Pages.Where(page => page.Chapter.Length > 0).ToArray();
        Assert.Equal(["1-A1", "1-A2", "1-B1", "1-B2"], tiles.Select(page => page.Label));
        Assert.All(tiles, page => Assert.Equal((297.0, 210.0), (page.Width, page.Height)));
    }

    [Theory]
    [InlineData(210, 297, 210, 297)]
    [InlineData(297, 210, 297, 210)]
    [InlineData(150, 100, 210, 297)]
    [InlineData(250, 100, 297, 210)]
    public void Sheet_that_the_paper_holds_stays_whole(double width, double height, double pageWidth, double pageHeight)
    {
        var page = Tiled(Set(Empty(width, height)), new(A4)).Pages[^1];
        Assert.Equal((pageWidth, pageHeight, "1"), (page.Width, page.Height, page.Label));
        Assert.Equal(new(0, 0, width, height), page.Windows.Single().Shown);
        Assert.Equal(pageWidth / 2, page.Windows[0].Place.Centre.X, 1e-9);
    }

    // Truth: Pythagoras, from the crosses that are drawn, taken back to the sheet.
    [Fact]
    public void Diagonal_is_the_distance_between_the_crosses()
    {
        var sheet = Empty(420, 297, new DrawingItem.Stroke(Layer.Cut, Path2.Rectangle(new Bounds2(25, 15, 405, 280)), LineConventions.Thin));
        var pages = Tiled(Set(sheet), new(A4)).Pages;
        var crosses = pages.Where(page => page.Chapter.Length > 0).Select(page => CrossOf(page) - page.Windows[0].Move).ToArray();
        Assert.Equal(crosses[0].DistanceTo(crosses[3]), crosses[1].DistanceTo(crosses[2]), 1e-9);
        var millimetres = Math.Sqrt((428.0 * 428) + (305 * 305));
        Assert.Equal(millimetres, crosses[0].DistanceTo(crosses[3]), 1e-9);

        // 525.556 mm are 20.6912 in; the nearest sixty-fourth is 20 44/64 (20.6875).
        Assert.Contains(pages[0].Drawing.Items, item => item is DrawingItem.Text { Content: "525.6 mm = 20 11⁄16 in" });
    }

    [Fact]
    public void Bars_are_100_mm_both_ways_on_every_tile()
    {
        foreach (var page in Tiled(Set(Empty(900, 600, new DrawingItem.Stroke(Layer.Cut, Path2.Line(new(30, 30), new(850, 550)), LineConventions.Thin))), new(A4)).Pages)
        {
            var lines = page.Drawing.Items.OfType<DrawingItem.Stroke>().Where(stroke => !stroke.Path.IsClosed)
                .Select(stroke => stroke.Path.End - stroke.Path.Start).ToArray();
            Assert.Contains(lines, line => line == new Vector2(100, 0));
            Assert.Contains(lines, line => Math.Abs(line.Y - 100) < 1e-9 && line.X == 0);
        }
    }

    [Fact]
    public void Bar_that_must_be_shorter_says_how_long_it_is()
    {
        var page = Tiled(Set(Empty(420, 297)), new(new("card", 148, 105), 5, 10)).Pages[^1];

        // 148 x 105 mm upright leaves a strip of 95 mm: less than a bar of 100 mm and its label.
        Assert.Contains(page.Drawing.Items, item => item is DrawingItem.Text { Content: "60 mm", Angle: 0 });
        Assert.Contains(page.Drawing.Items, item => item is DrawingItem.Stroke stroke && stroke.Path.End - stroke.Path.Start == new Vector2(60, 0));
    }

    [Fact]
    public void Paper_that_is_too_small_is_told_from_the_least_that_would_do()
    {
        var result = TilePlan.Of(Set(Empty(420, 297)), new(A4, 80, 10));
        Assert.Null(result.Pages);
        Assert.Equal("A4 is too small for tiles with a margin of 80 mm and an overlap of 10 mm; they need paper of 250 × 234 mm or more", result.Fault);
        Assert.Null(TilePlan.Of(Set(Empty(420, 297)), new(new("just enough", 250, 234), 80, 10)).Fault);
        Assert.NotNull(TilePlan.Of(Set(Empty(420, 297)), new(new("just not", 249.9, 234), 80, 10)).Fault);
        Assert.NotNull(TilePlan.Of(Set(Empty(420, 297)), new(A4, -1, 10)).Fault);
        Assert.NotNull(TilePlan.Of(Set(Empty(420, 297)), new(A4, 10, double.NaN)).Fault);
    }

    [Fact]
    public void Views_to_a_scale_stay_views_to_a_scale_on_their_tiles()
    {
        var sheet = Empty(420, 297, new DrawingItem.Stroke(Layer.Cut, Path2.Rectangle(new Bounds2(25, 15, 405, 280)), LineConventions.Thin)) with
        {
            ScaledViews = [new("Arrangement", new(30, 20, 400, 100), 0.2)],
        };
        var tiles = Tiled(Set(sheet), new(A4)).Pages.Where(page => page.Chapter.Length > 0 && page.ScaledViews.Length > 0).ToArray();
        Assert.Equal(["1-B1", "1-B2"], tiles.Select(page => page.Label));
        Assert.All(tiles, page => Assert.True(Holds(page.Windows[0].Place.Grown(1e-9), page.ScaledViews[0].Place)));
        Assert.Equal(370 + 10, tiles.Sum(page => page.ScaledViews[0].Place.Width), 1e-9);
    }

    private static Point2 CrossOf(Page page)
    {
        var lines = page.Drawing.Items.OfType<DrawingItem.Stroke>().Where(stroke => !stroke.Path.IsClosed)
            .Select(stroke => (Middle: stroke.Path.Start.Towards(stroke.Path.End, 0.5), stroke.Path.End)).ToArray();
        return lines.GroupBy(line => line.Middle).Single(group => group.Count() == 2 && group.All(line => Math.Abs(line.End.DistanceTo(line.Middle) - 2) < 1e-9)).Key;
    }

    private static IEnumerable<SheetSet> Sets() =>
        Drawn.Everywhere.Where(drawn => drawn.Options.Sheets.Paper.Name is "A2" or "A3" or "Tabloid").Select(drawn => drawn.Result.Sheets);

    private static PageSet Tiled(SheetSet set, TileOptions options) => TilePlan.Of(set, options).Pages!;

    private static SheetSet Set(params Sheet[] sheets) => new("Oxbow 1420 rev. B", "en", [.. sheets]);

    private static Sheet Empty(double width, double height, params DrawingItem[] items)
    {
        var frame = new DrawingItem.Stroke(Layer.Frame, Path2.Rectangle(new Bounds2(20, 10, width - 10, height - 10)), LineConventions.Frame);
        return new(1, "Formers", width, height, new([frame, .. items]), []);
    }

    private static bool Holds(Bounds2 outer, Bounds2 inner) =>
        inner.MinX >= outer.MinX && inner.MinY >= outer.MinY && inner.MaxX <= outer.MaxX && inner.MaxY <= outer.MaxY;

    private static void AssertApart(string label, IEnumerable<Bounds2> texts, IEnumerable<Bounds2> windows)
    {
        var all = texts.Concat(windows).ToArray();
        for (var i = 0; i < all.Length; i++)
        {
            for (var j = 0; j < i; j++)
            {
                Assert.False(all[i].Touches(all[j]), $"{label}: {all[i]} lies on {all[j]}");
            }
        }
    }
}
