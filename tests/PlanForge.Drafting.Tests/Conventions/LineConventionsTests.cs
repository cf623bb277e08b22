using PlanForge.Drafting.Conventions;
using PlanForge.Drafting.Model;
using PlanForge.Parts;

namespace PlanForge.Drafting.Tests.Conventions;

public class LineConventionsTests
{
    // ISO 128 widths, shared/check-values.md section 5 (C2: secondary source; 1.4 from memory).
    private static readonly double[] Widths = [0.13, 0.18, 0.25, 0.35, 0.5, 0.7, 1, 1.4, 2];

    [Fact]
    public void Every_line_has_a_width_of_ISO_128() =>
        Assert.All(Enum.GetValues<LineUse>(), use => Assert.Contains(LineConventions.StyleOf(use).Width, Widths));

    [Theory]
    [InlineData(LineUse.Cut, LineType.Continuous)]
    [InlineData(LineUse.Hidden, LineType.Dashed)]
    [InlineData(LineUse.Centre, LineType.LongDashedDotted)]
    [InlineData(LineUse.Datum, LineType.LongDashedDotted)]
    [InlineData(LineUse.Neighbour, LineType.LongDashedDoubleDotted)]
    public void Lines_have_the_types_of_ISO_128(LineUse use, LineType type) =>
        // Uses of the types: ISO 128-2, from memory.
        Assert.Equal(type, LineConventions.StyleOf(use).Type);

    [Fact]
    public void An_edge_is_about_twice_as_wide_as_a_hidden_line() =>
        // Wide to narrow 2 : 1 on mechanical drawings: from memory; the widths step by the root of 2, so 0.35 : 0.18.
        Assert.Equal(2, LineConventions.StyleOf(LineUse.Cut).Width / LineConventions.StyleOf(LineUse.Hidden).Width, 0.1);

    [Fact]
    public void No_two_meanings_look_alike_but_visible_edges()
    {
        // ISO 128-2 (from memory) has one line for visible edges: what is cut and what is only shown differ by their layers.
        // Hatching is known by its pattern, not by its line.
        var styles = Enum.GetValues<LineUse>().Where(use => use is not (LineUse.Edge or LineUse.Difference)).Select(LineConventions.StyleOf).ToList();
        Assert.Equal(styles.Count, styles.Distinct().Count());
        Assert.Equal(LineConventions.StyleOf(LineUse.Cut), LineConventions.StyleOf(LineUse.Edge));
        Assert.NotEqual(LineConventions.LayerOf(LineUse.Cut), LineConventions.LayerOf(LineUse.Edge));
    }

    [Fact]
    public void Only_cut_lines_lie_on_the_cut_layer() =>
        Assert.Equal([LineUse.Cut], Enum.GetValues<LineUse>().Where(use => LineConventions.LayerOf(use) == Layer.Cut));

    [Fact]
    public void The_legend_knows_every_line()
    {
        Assert.Equal(Enum.GetValues<LineUse>().Order(), LineConventions.Uses.ToArray().Order());
        Assert.All(Enum.GetValues<LineUse>(), use => Assert.NotEmpty(LineConventions.NameOf(use)));
    }
}
