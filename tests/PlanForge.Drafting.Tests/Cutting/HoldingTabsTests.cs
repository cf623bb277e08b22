using PlanForge.Airframe;
using PlanForge.Airframe.Diagnostics;
using PlanForge.Drafting.Cutting;
using PlanForge.Drafting.PartDrawings;
using PlanForge.Geometry;
using PlanForge.Parts;

namespace PlanForge.Drafting.Tests.Cutting;

// What bridges must be: shared/practice.md, "holding tabs"; on straight runs, clear of corners: common practice, no source.
public sealed class HoldingTabsTests
{
    [Theory]
    [InlineData(1, 3)]
    [InlineData(0.5, 4)]
    [InlineData(1.2, 2)]
    public void Gaps_add_up_and_keep_clear_of_vertices_on_every_design(double width, int count)
    {
        var cutter = new CutterDescription(null, new("test", 1, 1)) { HoldingTabs = new(width, count, new("test", 1, 1)) };
        foreach (var (part, drawing) in Cuts.OfDesigns(cutter))
        {
            var outlines = CutDrawings.Of(part).Contours().Where(path => path.SignedArea > 0).ToList();
            var stretches = drawing.Contours().Where(path => !path.IsClosed).ToList();
            Assert.Equal(count * outlines.Count, stretches.Count);
            Assert.Equal(outlines.Length() - (width * count * outlines.Count), stretches.Length(), 1e-6);
            Assert.Equal(part.Lines.Count(line => line.Use == LineUse.Cut) - outlines.Count, drawing.Contours().Count(path => path.IsClosed));
            foreach (var end in stretches.SelectMany(path => (Point2[])[path.Start, path.End]))
            {
                Assert.All(outlines.SelectMany(outline => outline.Vertices), vertex => Assert.True(vertex.Point.DistanceTo(end) > width - 1e-6));
            }

            Assert.Contains(drawing.Notes, note => note.StartsWith("Open on purpose", StringComparison.Ordinal));
        }
    }

    [Fact]
    public void Gaps_are_spread_evenly_where_nothing_is_in_the_way()
    {
        // A square of 100: four gaps a quarter of the way round apart, so each stretch is 100 − 1 long.
        var stretches = HoldingTabs.Cut(Path2.Rectangle(new(0, 0, 100, 100)), [], 1, 4)!.Value;
        Assert.All(stretches, stretch => Assert.Equal(99, stretch.Length, 1.5));
        Assert.Equal(396, stretches.Length(), 1e-9);
    }

    [Fact]
    public void With_a_kerf_the_gap_is_longer_by_it_so_that_the_wood_has_the_width()
    {
        var cutter = new CutterDescription(0.2, new("test", 1, 1)) { HoldingTabs = new(1, 2, new("test", 1, 1)) };
        var drawing = CutParts.Of(SampleParts.Shim(1), cutter, [])!;
        var closed = CutParts.Of(SampleParts.Shim(1), cutter with { HoldingTabs = null }, [])!;
        Assert.Equal(closed.Contours().Length() - 2.4, drawing.Contours().Length(), 1e-9);
    }

    [Fact]
    public void No_gap_lies_near_an_opening()
    {
        // Along the lower edge a hole nearly touches it: the only straight run long enough besides is the upper edge.
        var outline = Path2.Rectangle(new(0, 0, 30, 4));
        var hole = Path2.Circle(new(15, 2), 1.5).Reversed();
        var stretches = HoldingTabs.Cut(outline, [hole], 2, 2)!.Value;
        foreach (var end in stretches.SelectMany(path => (Point2[])[path.Start, path.End]))
        {
            Assert.True(hole.DistanceTo(end) > 2);
        }
    }

    [Theory]
    [InlineData(4, 1)]
    [InlineData(1, 30)]
    public void Too_many_or_too_wide_ones_are_refused(double gap, int count) =>
        Assert.Null(HoldingTabs.Cut(Path2.Rectangle(new(0, 0, 10, 10)), [], gap, count));

    [Fact]
    public void A_part_without_room_is_cut_free_and_warned_of()
    {
        var cutter = new CutterDescription(null, new("test", 1, 1)) { HoldingTabs = new(50, 3, new("test", 7, 12)) };
        var result = CutParts.Of([SampleParts.Shim(1)], cutter);
        Assert.All(Assert.Single(result.Drawings).Contours(), contour => Assert.True(contour.IsClosed));
        Assert.DoesNotContain(result.Drawings[0].Notes, note => note.StartsWith("Open", StringComparison.Ordinal));
        var finding = Assert.Single(result.Findings);
        Assert.Equal((Severity.Warning, new SourcePosition("test", 7, 12)), (finding.Severity, finding.At));
        Assert.StartsWith("Shim 1° has no room for 3 holding tabs of 50 mm", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_round_former_is_held_on_its_bends()
    {
        var stretches = HoldingTabs.Cut(Path2.Circle(new(0, 0), 12), [], 1, 3)!.Value;
        Assert.Equal((24 * Math.PI) - 3, stretches.Length(), 1e-9);
        Assert.Null(HoldingTabs.Cut(Path2.Circle(new(0, 0), 9), [], 1, 3));
    }
}
