using CsCheck;
using PlanForge.Drafting.Conventions;
using PlanForge.Geometry;

namespace PlanForge.Drafting.Tests.Conventions;

public class HatchingTests
{
    [Fact]
    public void Level_lines_fill_a_square_from_edge_to_edge()
    {
        var lines = Hatching.Of([Path2.Rectangle(new(0, 0, 10, 10))], new([new(0, 2, 1)]));
        Assert.Equal([1, 3, 5, 7, 9], lines.Select(line => line.Start.Y), (a, b) => Math.Abs(a - b) < 1e-9);
        Assert.All(lines, line => Assert.Equal(10, line.Length, 1e-9));
    }

    [Fact]
    public void Lines_leave_an_opening_free()
    {
        // A ring of radii 20 and 10: the level line at height y has the length 2 (√(400 − y²) − √(100 − y²)) while y < 10.
        var lines = Hatching.Of([Path2.Circle(default, 20), Path2.Circle(default, 10)], new([new(0, 3)]));
        foreach (var level in lines.GroupBy(line => Math.Round(line.Start.Y, 6)))
        {
            var y = level.Key;
            var outer = Math.Sqrt(400 - (y * y));
            var inner = Math.Abs(y) < 10 ? Math.Sqrt(100 - (y * y)) : 0;
            Assert.Equal(2 * (outer - inner), level.Sum(line => line.Length), 0.2);
        }
    }

    [Fact]
    public void Length_of_the_lines_is_the_area_over_their_distance() =>
        // Cavalieri: the sum over levels times the distance tends to the area; for a convex shape the error is below one line.
        (from radius in Gen.Double[5, 40]
         from angle in Gen.Double[-2, 2]
         from spacing in Gen.Double[0.5, 2]
         select (radius, angle, spacing)).Sample(
            s =>
            {
                var circle = Path2.Circle(new(13, -8), s.radius);
                var total = Hatching.Of([circle], new([new(s.angle, s.spacing)])).Sum(line => line.Length);
                Assert.Equal(Math.PI * s.radius * s.radius, total * s.spacing, 2 * s.radius * s.spacing);
            },
            iter: 60,
            seed: "0000000000004");

    [Theory]
    [InlineData("birch ply", "Ply")]
    [InlineData("light plywood", "Ply")]
    [InlineData("balsa", "Balsa")]
    [InlineData("Spruce", "Hardwood")]
    [InlineData("polypropylene", null)]
    [InlineData("", null)]
    public void A_material_is_known_by_its_name(string material, string? pattern)
    {
        var expected = pattern switch
        {
            null => null,
            "Ply" => HatchPattern.Ply,
            "Balsa" => HatchPattern.Balsa,
            _ => HatchPattern.Hardwood,
        };
        Assert.Same(expected, HatchPattern.Find(material));
    }
}
