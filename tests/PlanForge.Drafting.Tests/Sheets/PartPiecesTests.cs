using CsCheck;
using PlanForge.Airframe;
using PlanForge.Airframe.Diagnostics;
using PlanForge.Drafting.Model;
using PlanForge.Drafting.PartDrawings;
using PlanForge.Drafting.Sheets;
using PlanForge.Geometry;

namespace PlanForge.Drafting.Tests.Sheets;

public class PartPiecesTests
{
    [Fact]
    public void A_part_larger_than_the_paper_continues_at_match_lines_and_is_reported()
    {
        var result = Drawn.Sheets(Drawn.Options("A4"), [SampleParts.Shim(1), SampleParts.LevelRest(500), SampleParts.Shim(2)]);
        Assert.All(result.Sheets.Sheets, sheet => Assert.Equal((297, 210), (sheet.Width, sheet.Height)));
        Assert.Equal(["level-rest", "shim-10", "shim-20"], result.Sheets.Sheets.SelectMany(sheet => sheet.Parts).Distinct().Order());
        var finding = Assert.Single(result.Findings);
        Assert.Equal(Severity.Warning, finding.Severity);
        Assert.Equal(
            "`Level rest` is larger than the drawing space of A4 (297 x 210 mm); it is drawn in 3 pieces that join at match lines", finding.Message);
        var texts = result.Sheets.Sheets.SelectMany(sheet => sheet.Drawing.Items).OfType<DrawingItem.Text>().Select(text => text.Content).ToList();
        Assert.Equal(
            ["match line A: joins piece 1", "match line A: joins piece 2", "match line B: joins piece 2", "match line B: joins piece 3"],
            texts.Where(text => text.StartsWith("match line", StringComparison.Ordinal)).Order());
        Assert.Contains("Level rest, piece 2 of 3", texts);
    }

    [Fact]
    public void Without_its_text_block_a_part_may_fit_whole()
    {
        var result = Drawn.Sheets(Drawn.Options("A4", true), [SampleParts.Former("F2", 90, 130)]);
        Assert.Empty(result.Findings);
        Assert.DoesNotContain(
            result.Sheets.Sheets.SelectMany(sheet => sheet.Drawing.Items).OfType<DrawingItem.Text>(),
            text => text.Content.StartsWith("match line", StringComparison.Ordinal));
    }

    [Fact]
    public void Pieces_laid_on_each_other_at_their_match_lines_are_the_part() =>
        Gen.Select(Gen.Double[300, 1500], Gen.Double[30, 500], Gen.Double[160, 300], Gen.Double[120, 250]).Sample(
            (width, height, roomWidth, roomHeight) =>
            {
                var part = Drawn.Plain(1, width, height);
                var (parts, blocks) = PartPieces.Of(part, new(DisplayUnit.Millimetre), [new(0, 0, roomWidth, roomHeight)]);
                var pieces = parts.AddRange(blocks);
                Assert.All(pieces, piece => Assert.True(piece.Bounds.Width <= roomWidth && piece.Bounds.Height <= roomHeight));

                // Pieces keep the part's coordinates. Along the outline of the part each point is on some piece, and none is off it.
                var whole = DetachedPart.Upright(part, new(DisplayUnit.Millimetre)).Flat.Bounds;
                var turned = DetachedPart.Turned(part, new(DisplayUnit.Millimetre)).Flat.Bounds;
                var lines = pieces.SelectMany(piece => piece.Items).OfType<DrawingItem.Stroke>().Where(stroke => stroke.Layer == Layer.Cut)
                    .Select(stroke => stroke.Path).ToList();
                var outline = Covered(lines, Path2.Rectangle(new(0, 0, width, height)))
                    ? whole
                    : Covered(lines, Path2.Rectangle(new(-height, 0, 0, width))) ? turned : Bounds2.Empty;
                Assert.False(outline.IsEmpty);
            },
            iter: 30);

    private static bool Covered(List<Path2> lines, Path2 outline)
    {
        var all = Bounds2.Empty;
        foreach (var line in lines)
        {
            for (var i = 0; i < line.SegmentCount; i++)
            {
                var middle = line.SegmentAt(i).PointAt(0.5);
                if (Distance(outline, middle) > 1e-9)
                {
                    return false;
                }

                all = all.Joined(line.SegmentAt(i).Bounds);
            }
        }

        foreach (var point in outline.Flattened(0.01).Zip(outline.Flattened(0.01).Skip(1)))
        {
            for (var t = 0.0; t <= 1; t += 0.02)
            {
                if (lines.TrueForAll(line => Distance(line, point.First.Towards(point.Second, t)) > 1e-9))
                {
                    return false;
                }
            }
        }

        return true;
    }

    private static double Distance(Path2 path, Point2 point)
    {
        var least = double.PositiveInfinity;
        for (var i = 0; i < path.SegmentCount; i++)
        {
            least = Math.Min(least, path.SegmentAt(i).DistanceTo(point));
        }

        return least;
    }
}
