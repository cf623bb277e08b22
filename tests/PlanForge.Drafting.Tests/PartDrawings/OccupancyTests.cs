using CsCheck;
using PlanForge.Drafting.PartDrawings;
using PlanForge.Geometry;

namespace PlanForge.Drafting.Tests.PartDrawings;

public class OccupancyTests
{
    private static readonly Gen<Point2> Points = from x in Gen.Double[0, 150] from y in Gen.Double[0, 100] select new Point2(x, y);

    [Fact]
    public void What_is_found_touches_nothing_that_was_marked() =>
        Gen.Select(Gen.Select(Points, Points, Gen.Int[-4, 4].Select(quarters => quarters / 4.0)).Array[1, 12], Gen.Double[2, 60], Gen.Double[2, 30]).Sample(
            (lines, width, height) =>
            {
                var occupancy = new Occupancy(new(0, 0, 150, 100));
                var paths = lines.Where(l => l.Item1.DistanceTo(l.Item2) > 1)
                    .Select(l => Path2.Open([new(l.Item1, l.Item3), new(l.Item2)])).ToList();
                paths.ForEach(occupancy.Mark);
                if (occupancy.Find(width, height, new(75, 50), _ => true) is not { } corner)
                {
                    return;
                }

                var found = new Bounds2(corner.X, corner.Y, corner.X + width, corner.Y + height);
                Assert.True(found.MinX >= 0 && found.MinY >= 0 && found.MaxX <= 151.5 && found.MaxY <= 101.5);
                foreach (var point in paths.SelectMany(path => path.Segments).SelectMany(
                    segment => Enumerable.Range(0, 500).Select(i => segment.PointAt(i / 499.0))))
                {
                    Assert.False(found.Contains(point));
                }
            },
            iter: 150,
            seed: "000000000000E");

    [Fact]
    public void An_empty_area_gives_the_wanted_place()
    {
        var corner = new Occupancy(new(0, 0, 100, 100)).Find(20, 10, new(50, 50), _ => true)!.Value;
        Assert.Equal(40, corner.X, 1.5);
        Assert.Equal(45, corner.Y, 1.5);
    }

    [Fact]
    public void A_full_area_gives_nothing()
    {
        var occupancy = new Occupancy(new(0, 0, 100, 100));
        occupancy.Mark(new Bounds2(0, 45, 100, 55));
        Assert.Null(occupancy.Find(90, 50, new(50, 50), _ => true));
        Assert.NotNull(occupancy.Find(90, 30, new(50, 50), _ => true));
    }

    [Fact]
    public void What_else_must_hold_is_held()
    {
        var corner = new Occupancy(new(0, 0, 100, 100)).Find(10, 10, new(50, 50), middle => middle.X > 80)!.Value;
        Assert.True(corner.X + 5 > 80);
    }
}
