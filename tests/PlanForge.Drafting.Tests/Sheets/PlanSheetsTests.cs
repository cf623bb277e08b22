using CsCheck;
using PlanForge.Airframe;
using PlanForge.Drafting.Model;
using PlanForge.Drafting.Sheets;
using PlanForge.Geometry;
using PlanForge.Parts;

namespace PlanForge.Drafting.Tests.Sheets;

public class PlanSheetsTests
{
    private const double Touching = 1e-6;

    [Fact]
    public void Every_part_is_on_one_sheet_kinds_together_in_their_order()
    {
        var sheets = PlanSheets.Draw(Drawn.Options("A1"), SampleParts.All).Sheets.Sheets;
        var expected = SampleParts.All.GroupBy(part => part.Kind).SelectMany(kind => kind).Select(part => part.Id);
        Assert.Equal(expected, sheets.SelectMany(sheet => sheet.Parts));
        Assert.All(Drawn.Everywhere, each => Assert.Equal(
            expected.Order(), each.Result.Sheets.Sheets.SelectMany(sheet => sheet.Parts).Order()));
    }

    [Fact]
    public void Nothing_lies_outside_the_frame()
    {
        foreach (var (options, result) in Drawn.Everywhere)
        {
            foreach (var sheet in result.Sheets.Sheets)
            {
                var frame = new Bounds2(20, 10, sheet.Width - 10, sheet.Height - 10).Grown(0.35 + Touching);
                var ink = ItemExtents.OfAll(sheet.Drawing.Items);
                Assert.True(
                    ink.MinX >= frame.MinX && ink.MinY >= frame.MinY && ink.MaxX <= frame.MaxX && ink.MaxY <= frame.MaxY,
                    $"{options.Paper} {sheet.Number}: {ink}");
            }
        }
    }

    [Fact]
    public void Parts_keep_8_mm_from_each_other_and_clear_of_everything_else_on_the_sheet()
    {
        foreach (var (options, result) in Drawn.Everywhere)
        {
            var placing = Placed(options, SampleParts.All);
            Assert.Equal(result.Sheets.Sheets.Length, placing.Count);
            foreach (var (layout, parts) in placing)
            {
                for (var i = 0; i < parts.Count; i++)
                {
                    Assert.All(parts.Take(i), other => Assert.False(other.Grown(8 - Touching).Touches(parts[i])));
                    foreach (var taken in new[] { layout.TitleStrip, layout.CheckPanel, layout.CheckColumn, layout.FootNotes })
                    {
                        Assert.False(taken.Grown(-Touching).Touches(parts[i]), $"{options.Paper}: {taken} {parts[i]}");
                    }
                }
            }
        }
    }

    [Fact]
    public void What_stands_at_the_foot_of_a_sheet_does_not_overlap()
    {
        foreach (var paper in Paper.All.SelectMany(p => new[] { p, p.Across() }))
        {
            var layout = SheetLayout.Of(paper, _ => 25);
            Bounds2[] fields = [layout.TitleStrip, layout.CheckPanel, layout.CheckColumn, layout.FootNotes];
            for (var i = 0; i < fields.Length; i++)
            {
                Assert.All(fields.Take(i), other => Assert.False(other.Grown(-Touching).Touches(fields[i]), paper.ToString()));
            }
        }
    }

    [Fact]
    public void Texts_outside_the_parts_overlap_nothing_of_their_own_kind()
    {
        foreach (var (options, result) in Drawn.Everywhere)
        {
            foreach (var sheet in result.Sheets.Sheets)
            {
                var texts = sheet.Drawing.Items.OfType<DrawingItem.Text>().Where(text => text.Layer == Layer.Frame)
                    .Select(text => (text.Content, Room: ItemExtents.Of(text))).ToList();
                for (var i = 0; i < texts.Count; i++)
                {
                    Assert.All(texts.Take(i), other => Assert.False(
                        other.Room.Touches(texts[i].Room), $"{options.Paper}: '{other.Content}' '{texts[i].Content}'"));
                }
            }
        }
    }

    [Fact]
    public void No_text_of_a_part_touches_the_ink_of_another()
    {
        foreach (var sheet in Drawings(Drawn.Options("A2"), SampleParts.All))
        {
            Assert.True(sheet.Parts.Count > 1);
            var inks = sheet.Parts
                .Select(part => part.Drawing.Items.Select(item => Moved(ItemExtents.Of(item), part.Move)).ToList()).ToList();
            for (var i = 0; i < inks.Count; i++)
            {
                var texts = inks[i].Where((_, item) => sheet.Parts[i].Drawing.Items[item] is DrawingItem.Text);
                Assert.All(texts, text => Assert.DoesNotContain(inks.Where((_, other) => other != i).SelectMany(ink => ink), text.Touches));
            }
        }
    }

    [Fact]
    public void Every_sheet_has_bars_of_exactly_100_mm_both_ways_and_of_4_inches()
    {
        foreach (var (_, result) in Drawn.Everywhere)
        {
            foreach (var sheet in result.Sheets.Sheets)
            {
                var lines = sheet.Drawing.Items.OfType<DrawingItem.Stroke>().Where(s => s.Layer == Layer.Frame && s.Path.SegmentCount == 1)
                    .Select(s => s.Path.End - s.Path.Start).ToList();
                Assert.Contains(lines, line => Math.Abs(line.X - 100) < 1e-12 && line.Y == 0);
                Assert.Contains(lines, line => Math.Abs(line.Y - 100) < 1e-12 && line.X == 0);
                Assert.Contains(lines, line => Math.Abs(line.X - (4 * 25.4)) < 1e-12 && line.Y == 0);
                var texts = sheet.Drawing.Items.OfType<DrawingItem.Text>().Select(text => text.Content).ToList();
                Assert.Equal(2, texts.Count(text => text == "100 mm"));
                Assert.Contains("Print at 100 %: the bars must measure 100 mm", texts);
            }
        }
    }

    [Fact]
    public void Outermost_ticks_of_the_level_bar_stand_100_mm_apart_and_the_others_every_10()
    {
        var sketch = new Sketch();
        CheckBars.DrawPanel(sketch, new(20, 10, 138, 34));
        var bar = sketch.Items.OfType<DrawingItem.Stroke>().First(s => s.Path.Start.Y == s.Path.End.Y).Path;
        var ticks = sketch.Items.OfType<DrawingItem.Stroke>().Where(s => s.Path.Start.X == s.Path.End.X && s.Path.Start.Y == bar.Start.Y)
            .Select(s => s.Path.Start.X).Order().ToList();
        Assert.Equal(11, ticks.Count);
        Assert.Equal(100, ticks[^1] - ticks[0], 1e-12);
        Assert.All(ticks.Zip(ticks.Skip(1)), pair => Assert.Equal(10, pair.Second - pair.First, 1e-9));
    }

    [Fact]
    public void The_title_strip_says_what_the_sheet_is()
    {
        var sheets = PlanSheets.Draw(Drawn.Options(), SampleParts.All).Sheets;
        Assert.Equal("Oxbow 1420 rev. B", sheets.Title);
        foreach (var sheet in sheets.Sheets)
        {
            var texts = sheet.Drawing.Items.OfType<DrawingItem.Text>().Where(t => t.Layer == Layer.Frame).Select(t => t.Content).ToList();
            foreach (var expected in new[]
            {
                "Oxbow 1420", "Rev. B", sheet.Title, $"Sheet {sheet.Number} of {sheets.Sheets.Length}", "Scale 1:1", "Units: mm",
                "A. Builder", "PlanForge 0.1.0", "Formers seen from aft",
            })
            {
                Assert.Contains(expected, texts);
            }
        }
    }

    [Fact]
    public void Cautions_stand_on_the_sheets_that_call_for_them()
    {
        const string OfMachines = "never leave the machine";
        const string OfDust = "Sanding dust";
        Assert.True(Says(SampleParts.Shim(1), OfMachines));
        Assert.True(Says(SampleParts.Shim(1), OfDust));
        Assert.True(Says(SampleParts.Saddle("Left"), OfDust));
        Assert.False(Says(SampleParts.Saddle("Left"), OfMachines));
        Assert.False(Says(SampleParts.BenchFigures(4), OfDust));

        static bool Says(Part part, string words) =>
            PlanSheets.Draw(Drawn.Options("A2"), [part]).Sheets.Sheets[0].Drawing.Items.OfType<DrawingItem.Text>()
                .Any(text => text.Content.Contains(words, StringComparison.Ordinal));
    }

    [Fact]
    public void No_lettering_is_under_2_5_mm()
    {
        foreach (var (_, result) in Drawn.Everywhere)
        {
            Assert.All(result.Sheets.Sheets.SelectMany(s => s.Drawing.Items).OfType<DrawingItem.Text>(), t => Assert.True(t.Height >= 2.5));
        }
    }

    [Fact]
    public void The_same_parts_give_the_same_sheets()
    {
        string Draw() => Drawn.Written(PlanSheets.Draw(Drawn.Options("A4", true, DisplayUnit.Inch), SampleParts.All).Sheets);
        Assert.Equal(Draw(), Draw());
    }

    [Fact]
    public void A_part_larger_than_the_paper_goes_on_the_smallest_larger_sheet_and_is_reported()
    {
        var result = PlanSheets.Draw(Drawn.Options("A4"), [SampleParts.Shim(1), SampleParts.LevelRest(500), SampleParts.Shim(2)]);
        Assert.Equal([(297, 210), (594, 420)], result.Sheets.Sheets.Select(sheet => (sheet.Width, sheet.Height)));
        Assert.Equal(["shim-10", "shim-20"], result.Sheets.Sheets[0].Parts);
        Assert.Equal("Level rest does not fit A4 (297 x 210 mm); it is drawn on A2 (594 x 420 mm).", Assert.Single(result.Warnings));
    }

    [Fact]
    public void A_part_larger_than_A0_gets_paper_of_its_own_length()
    {
        var result = PlanSheets.Draw(Drawn.Options("A4"), [SampleParts.LevelRest(1600)]);
        var sheet = Assert.Single(result.Sheets.Sheets);
        Assert.InRange(sheet.Width, 1600, 1750);
        Assert.Contains("roll paper", Assert.Single(result.Warnings), StringComparison.Ordinal);
    }

    [Fact]
    public void A_part_is_turned_only_when_it_does_not_fit_upright()
    {
        // 215 mm high: more than A4 across leaves above the title strip, less than it leaves from side to side.
        var tall = Placed(Drawn.Options("A4"), [Drawn.Plain(1, 60, 215)]);
        Assert.True(Drawings(Drawn.Options("A4"), [Drawn.Plain(1, 60, 215)]).Single().Parts.Single().Drawing.IsTurned);
        Assert.Single(tall);
        Assert.False(Drawings(Drawn.Options("A4"), [Drawn.Plain(1, 215, 60)]).Single().Parts.Single().Drawing.IsTurned);
        Assert.False(Drawings(Drawn.Options("A4", true), [Drawn.Plain(1, 60, 190)]).Single().Parts.Single().Drawing.IsTurned);
    }

    [Fact]
    public void Plain_parts_of_any_size_all_find_a_place() =>
        Gen.Select(Gen.Double[3, 900], Gen.Double[3, 600]).Array[1, 12].Sample(
            sizes =>
            {
                var parts = sizes.Select((size, i) => Drawn.Plain(i, size.Item1, size.Item2)).ToList();
                var result = PlanSheets.Draw(Drawn.Options("A3"), parts);
                Assert.Equal(parts.Select(part => part.Id).Order(), result.Sheets.Sheets.SelectMany(sheet => sheet.Parts).Order());
                foreach (var (layout, placed) in Placed(Drawn.Options("A3"), parts))
                {
                    for (var i = 0; i < placed.Count; i++)
                    {
                        Assert.All(placed.Take(i), other => Assert.False(other.Grown(8 - Touching).Touches(placed[i])));
                        Assert.True(Holds(layout.Frame, placed[i]));
                    }
                }
            },
            iter: 40,
            seed: "000000000000G");

    [Fact]
    public void No_parts_make_no_sheets() => Assert.Empty(PlanSheets.Draw(Drawn.Options(), []).Sheets.Sheets);

    [Fact]
    public void An_unknown_paper_is_refused_by_name()
    {
        var error = Assert.Throws<ArgumentException>(() => PlanSheets.Draw(Drawn.Options("B9"), []));
        Assert.Contains("B9", error.Message, StringComparison.Ordinal);
    }

    private static bool Holds(Bounds2 outer, Bounds2 inner) =>
        inner.MinX >= outer.MinX && inner.MinY >= outer.MinY && inner.MaxX <= outer.MaxX && inner.MaxY <= outer.MaxY;

    private static List<(SheetLayout Layout, List<Bounds2> Parts)> Placed(PlanOptions options, IReadOnlyList<Part> parts) =>
        [.. Drawings(options, parts).Select(sheet => (sheet.Layout, sheet.Parts.Select(BoundsOf).ToList()))];

    private static Bounds2 BoundsOf(PlacedPart part) => Moved(part.Drawing.Bounds, part.Move);

    private static Bounds2 Moved(Bounds2 bounds, Vector2 move) =>
        new(bounds.MinX + move.X, bounds.MinY + move.Y, bounds.MaxX + move.X, bounds.MaxY + move.Y);

    private static IReadOnlyList<OpenSheet> Drawings(PlanOptions options, IReadOnlyList<Part> parts)
    {
        var paper = Paper.Find(options.Paper)!;
        var placing = new PartPlacing(options.IsPortrait ? paper : paper.Across(), new FootNotes(options.Notes, parts), options.Unit);
        foreach (var part in parts.GroupBy(part => part.Kind).SelectMany(kind => kind))
        {
            placing.Add(part);
        }

        return placing.Sheets;
    }
}
