namespace PlanForge.Geometry.Tests;

public sealed class BoxTreeTests
{
    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(9)]
    [InlineData(1000)]
    public void Finds_the_boxes_that_a_look_at_each_finds(int count)
    {
        var random = new Random(count);
        Bounds2[] boxes = [.. Enumerable.Range(0, count).Select(_ => Any(random))];
        var tree = new BoxTree(boxes);
        for (var i = 0; i < 200; i++)
        {
            var query = Any(random);
            var found = new List<int>();
            tree.Find(query, box =>
            {
                found.Add(box);
                return true;
            });

            Assert.Equal(Enumerable.Range(0, count).Where(box => boxes[box].Touches(query)), found.Order());
        }
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(9)]
    [InlineData(1000)]
    public void Nearest_is_what_a_look_at_each_finds(int count)
    {
        var random = new Random(count);
        Bounds2[] boxes = [.. Enumerable.Range(0, count).Select(_ => Any(random))];
        var tree = new BoxTree(boxes);
        for (var i = 0; i < 200; i++)
        {
            var point = new Point2((random.NextDouble() * 140) - 20, (random.NextDouble() * 140) - 20);
            var (number, distance) = tree.Nearest(point, box => boxes[box].Centre.DistanceTo(point));

            Assert.Equal(boxes.Select(box => box.Centre.DistanceTo(point)).DefaultIfEmpty(double.PositiveInfinity).Min(), distance);
            Assert.Equal(count > 0, number >= 0);
        }
    }

    [Fact]
    public void Search_ends_when_told()
    {
        var tree = new BoxTree([.. Enumerable.Repeat(new Bounds2(0, 0, 1, 1), 100)]);
        var count = 0;
        tree.Find(new(0, 0, 1, 1), _ => ++count < 7);

        Assert.Equal(7, count);
    }

    private static Bounds2 Any(Random random)
    {
        var corner = new Point2(random.NextDouble() * 100, random.NextDouble() * 100);
        return Bounds2.Around(corner, corner + new Vector2(random.NextDouble() * 10, random.Next(2) * random.NextDouble() * 30));
    }
}
