using CsCheck;
using PlanForge.Airframe;
using PlanForge.Airframe.Diagnostics;
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
        var sheets = Drawn.Sheets(Drawn.Options("A1"), SampleParts.All).Sheets.Sheets;
        var expected = SampleParts.All.GroupBy(part => part.Kind).SelectMany(kind => kind).Select(part => part.Id);
        Assert.Equal(expected, sheets.SelectMany(sheet => sheet.Parts));
        Assert.All(Drawn.Everywhere, each => Assert.Equal(
            expected.Order(), each.Result.Sheets.Sheets.SelectMany(sheet => sheet.Parts).Distinct().Order()));
    }

    [Fact]
    public void Nothing_but_the_grid_lies_outside_the_frame_and_that_within_5_mm()
    {
        foreach (var (options, result) in Drawn.Everywhere)
        {
            foreach (var sheet in result.Sheets.Sheets)
            {
                var frame = new Bounds2(20, 10, sheet.Width - 10, sheet.Height - 10);
                var ink = ItemExtents.OfAll(sheet.Drawing.Items);
                Assert.True(Holds(frame.Grown(5 + 0.35 + Touching), ink), $"{options.Sheets.Paper.Name} {sheet.Number}: {ink}");
                var inside = ItemExtents.OfAll(sheet.Drawing.Items.Where(item => item.Layer != Layer.Frame));
                Assert.True(inside.IsEmpty || Holds(frame, inside), $"{options.Sheets.Paper.Name} {sheet.Number}: {inside}");
            }
        }
    }

    [Fact]
    public void Parts_keep_8_mm_from_each_other_and_clear_of_everything_else_on_the_sheet()
    {
        foreach (var (options, result) in Drawn.Everywhere)
        {
            if (Paper.Of(options.Sheets.Paper).IsRoll)
            {
                // The foot of a roll finds its place only when the parts have theirs; see the tests of rolls.
                continue;
            }

            var placing = Placed(options, SampleParts.All);
            Assert.Equal(result.Sheets.Sheets.Length, placing.Count);
            foreach (var (layout, parts) in placing)
            {
                for (var i = 0; i < parts.Count; i++)
                {
                    Assert.All(parts.Take(i), other => Assert.False(other.Grown(8 - Touching).Touches(parts[i])));
                    foreach (var taken in new[] { layout.TitleBlock, layout.CheckPanel, layout.CheckColumn, layout.FootNotes })
                    {
                        Assert.False(taken.Grown(-Touching).Touches(parts[i]), $"{options.Sheets.Paper.Name}: {taken} {parts[i]}");
                    }
                }
            }
        }
    }

    [Fact]
    public void What_stands_at_the_foot_of_a_sheet_does_not_overlap()
    {
        foreach (var paper in Paper.All.SelectMany(p => new[] { p, p.Across() }).Concat(Paper.Rolls))
        {
            var layout = SheetLayout.Of(paper, _ => 25, 12);
            Bounds2[] fields = [layout.TitleBlock, layout.Revisions, layout.CheckPanel, layout.CheckColumn, layout.FootNotes];
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
                        other.Room.Touches(texts[i].Room), $"{options.Sheets.Paper.Name}: '{other.Content}' '{texts[i].Content}'"));
                }
            }
        }
    }

    [Fact]
    public void No_text_of_a_part_touches_the_ink_of_another()
    {
        var sheets = Drawings(Drawn.Options("A2"), SampleParts.All);
        Assert.Contains(sheets, sheet => sheet.Drawings.Count > 3);
        foreach (var sheet in sheets)
        {
            var inks = sheet.Drawings
                .Select(drawing => drawing.Item.Items.Select(item => ItemExtents.Of(item).MovedBy(drawing.Move)).ToList()).ToList();
            for (var i = 0; i < inks.Count; i++)
            {
                var texts = inks[i].Where((_, item) => sheet.Drawings[i].Item.Items[item] is DrawingItem.Text);
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
    public void The_title_block_says_what_the_sheet_is()
    {
        var sheets = Drawn.Sheets(Drawn.Options(), SampleParts.All).Sheets;
        Assert.Equal("Oxbow 1420 rev. B", sheets.Title);
        foreach (var sheet in sheets.Sheets)
        {
            var texts = sheet.Drawing.Items.OfType<DrawingItem.Text>().Where(t => t.Layer == Layer.Frame).Select(t => t.Content).ToList();
            foreach (var expected in new[]
            {
                "Oxbow 1420", "B", sheet.Title, $"{sheet.Number} of {sheets.Sheets.Length}", "1:1", "mm", "A. Builder", "C. Draught", "D. Checker",
                "2026-11-25", "PlanForge 0.1.0", sheet.Fingerprint!.Value.Code,
            })
            {
                Assert.Contains(expected, texts);
            }
        }
    }

    [Fact]
    public void The_revision_table_stands_on_the_first_sheet_alone_above_the_title_block()
    {
        var options = Drawn.Options("A4", true) with
        {
            Issue = Drawn.Issue with
            {
                Revisions = [new("A", "first issue", "2026-01-05", "AB", default), new("B", string.Join(' ', Enumerable.Repeat("dowels", 40)), "", "", default)],
            },
        };
        var sheets = Drawn.Sheets(options, SampleParts.All).Sheets.Sheets;
        Assert.True(sheets.Length > 1);
        var texts = sheets[0].Drawing.Items.OfType<DrawingItem.Text>().ToList();
        var (first, second) = (texts.Find(text => text.Content == "first issue")!, texts.Find(text => text.Content.StartsWith("dowels", StringComparison.Ordinal))!);
        Assert.True(second.At.Y > first.At.Y && first.At.Y > 10 + TitleBlock.Height);
        Assert.DoesNotContain(sheets[1..].SelectMany(sheet => sheet.Drawing.Items).OfType<DrawingItem.Text>(), text => text.Content == "first issue");
        var rooms = texts.Where(text => text.Layer == Layer.Frame).Select(text => ItemExtents.Of(text)).ToList();
        Assert.All(rooms, (room, i) => Assert.DoesNotContain(rooms.Take(i), room.Touches));
    }

    [Fact]
    public void An_entry_that_is_too_long_for_its_field_is_an_error_at_its_place()
    {
        var long40 = new string('M', 40);
        var options = Drawn.Options() with { Name = long40, Issue = Drawn.Issue with { Owner = long40, Date = long40, Revision = "C" } };
        var result = Drawn.Sheets(options, SampleParts.All);
        Assert.Empty(result.Sheets.Sheets);
        Assert.Equal(["owner", "date_of_issue", "name"], result.Findings.Select(finding => finding.Message.Split('`')[1]));
        Assert.All(result.Findings, finding => Assert.Equal((Severity.Error, 7, 3), (finding.Severity, finding.At.Line, finding.At.Column)));
    }

    [Fact]
    public void Paper_that_holds_no_sheet_is_an_error_that_says_what_would()
    {
        var options = Drawn.Options();
        var small = options with { Sheets = options.Sheets with { Paper = new("150 x 200 mm", 150, 200) } };
        var error = Assert.Single(Drawn.Sheets(small, SampleParts.All).Findings);
        Assert.StartsWith("paper of 200 x 150 mm is too small for its margins, title block, check bars and notes; at least ", error.Message, StringComparison.Ordinal);
        Assert.Equal(Severity.Error, error.Severity);
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
            Drawn.Sheets(Drawn.Options("A2"), [part]).Sheets.Sheets[0].Drawing.Items.OfType<DrawingItem.Text>()
                .Any(text => text.Content.Contains(words, StringComparison.Ordinal));
    }

    [Fact]
    public void No_lettering_is_under_2_5_mm_but_captions_of_fields()
    {
        foreach (var (_, result) in Drawn.Everywhere)
        {
            Assert.All(result.Sheets.Sheets.SelectMany(s => s.Drawing.Items).OfType<DrawingItem.Text>(), t => Assert.True(t.Height >= 2.5 || (t.Height == 1.8 && t.Layer == Layer.Frame)));
        }
    }

    [Fact]
    public void The_same_parts_give_the_same_sheets()
    {
        string Draw() => Drawn.Written(Drawn.Sheets(Drawn.Options("A4", true, DisplayUnit.Inch), SampleParts.All).Sheets);
        Assert.Equal(Draw(), Draw());
    }

    [Fact]
    public void A_roll_is_cut_to_the_length_that_the_parts_need()
    {
        var sheet = Assert.Single(Drawn.Sheets(Drawn.Options("roll 594"), SampleParts.All).Sheets.Sheets);
        Assert.Equal(594, sheet.Height);
        Assert.Equal(0, sheet.Width % 10);
        var ink = ItemExtents.OfAll(sheet.Drawing.Items.Where(item => item.Layer != Layer.Frame));
        Assert.InRange(sheet.Width - ink.MaxX, 10, 230);
    }

    [Fact]
    public void A_roll_is_split_where_it_would_be_longer_than_5_m()
    {
        var parts = Enumerable.Range(0, 30).Select(i => Drawn.Plain(i, 400, 500)).ToList();
        var sheets = Drawn.Sheets(Drawn.Options("roll 594"), parts).Sheets.Sheets;
        Assert.All(sheets, sheet => Assert.True(sheet.Width <= 5000));
        Assert.Equal(parts.Select(part => part.Id), sheets.SelectMany(sheet => sheet.Parts));

        // (5000 - 33 - 9 - 180 ...) / 408 mm = 11 a sheet by arithmetic.
        Assert.Equal([11, 11, 8], sheets.Select(sheet => sheet.Parts.Length));
    }

    [Fact]
    public void A_part_is_turned_only_when_it_does_not_fit_upright()
    {
        // 190 mm high: more than A4 across leaves above title block and bars, less than it leaves from side to side.
        Assert.True(IsTurned(60, 190, isPortrait: false));
        Assert.False(IsTurned(190, 60, isPortrait: false));
        Assert.False(IsTurned(60, 150, isPortrait: true));

        static bool IsTurned(double width, double height, bool isPortrait)
        {
            var place = Drawings(Drawn.Options("A4", isPortrait), [Drawn.Plain(1, width, height)]).Single().Drawings.Single().Place;
            return place.Width > place.Height == width < height;
        }
    }

    [Fact]
    public void Plain_parts_of_any_size_all_find_a_place() =>
        Gen.Select(Gen.Double[3, 900], Gen.Double[3, 600]).Array[1, 12].Sample(
            sizes =>
            {
                var parts = sizes.Select((size, i) => Drawn.Plain(i, size.Item1, size.Item2)).ToList();
                var result = Drawn.Sheets(Drawn.Options("A3"), parts);
                Assert.Equal(
                    parts.Select(part => part.Id).Order(), result.Sheets.Sheets.SelectMany(sheet => sheet.Parts).Distinct().Order());
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
    public void No_parts_make_no_sheets() => Assert.Empty(Drawn.Sheets(Drawn.Options(), []).Sheets.Sheets);

    [Fact]
    public void An_unknown_paper_is_refused_by_name()
    {
        var error = Assert.Throws<ArgumentException>(() => Drawn.Sheets(Drawn.Options("B9"), []));
        Assert.Contains("B9", error.Message, StringComparison.Ordinal);
    }

    private static bool Holds(Bounds2 outer, Bounds2 inner) =>
        inner.MinX >= outer.MinX && inner.MinY >= outer.MinY && inner.MaxX <= outer.MaxX && inner.MaxY <= outer.MaxY;

    private static List<(SheetLayout Layout, List<Bounds2> Parts)> Placed(PlanOptions options, IReadOnlyList<Part> parts) =>
        [.. Drawings(options, parts).Select(sheet => (sheet.Layout, sheet.Drawings.Select(drawing => drawing.Place).ToList()))];

    private static IReadOnlyList<OpenSheet> Drawings(PlanOptions options, IReadOnlyList<Part> parts)
    {
        var paper = Paper.Of(options.Sheets.Paper);
        var layout = SheetLayout.Of(options.Sheets.IsPortrait || paper.IsRoll ? paper : paper.Across(), new FootNotes(options.Notes, LinesUsed.Of(parts)).HeightFor);
        var placing = new PartPlacing(layout, layout, new(options.Unit));
        foreach (var part in parts.GroupBy(part => part.Kind).SelectMany(kind => kind))
        {
            placing.Add(part);
        }

        return placing.Sheets;
    }
}
