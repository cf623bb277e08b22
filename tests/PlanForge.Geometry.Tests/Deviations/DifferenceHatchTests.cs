using CsCheck;
using PlanForge.Geometry.Deviations;
using PlanForge.Geometry.Regions;

namespace PlanForge.Geometry.Tests.Deviations;

public sealed class DifferenceHatchTests
{
    // Lines a spacing apart over an area have the area over the spacing as their length, near enough when they are close.
    [Fact]
    public void Lines_cover_what_one_of_both_shapes_has() =>
        Gen.Select(Gen.OneOf(Shapes.Circle, Shapes.Rectangle), Gen.OneOf(Shapes.Circle, Shapes.Rectangle), Shapes.Fine(0, 3)).Sample(
            (a, b, angle) =>
            {
                const double Spacing = 0.2;
                var lines = DifferenceHatch.Of([a], [b], Spacing, angle, 0).ToList();
                Region2 first = Region2.FromContours(FillRule.NonZero, a), second = Region2.FromContours(FillRule.NonZero, b);
                var area = first.Difference(second).Area + second.Difference(first).Area;

                Assert.Equal(area, lines.Sum(line => line.Length) * Spacing, 2 * Spacing * (a.Length + b.Length) / 4);
                Assert.All(lines, line => Assert.True(first.Contains(line.PointAt(0.5)) ^ second.Contains(line.PointAt(0.5))));
            },
            iter: 40);

    [Fact]
    public void Equal_shapes_have_none() =>
        Assert.Empty(DifferenceHatch.Of([Path2.Circle(new(1, 2), 30)], [Path2.Circle(new(1, 2), 30).Reversed()], 1.2, 0.7, 0.05));
}
