using PlanForge.Geometry.Regions;

namespace PlanForge.Geometry.Tests.Regions;

public sealed class BoundaryTests
{
    [Fact]
    public void Boundary_that_does_not_close_is_reported_with_its_place()
    {
        Point2[] positions = [new(0, 0), new(10.5, 0), new(10.5, 10)];
        List<Edge> edges = [new(0, 1, 0, 0, 0, 1, 0), new(1, 2, 0, 1, 1, 1, 0)];

        var failure = Assert.Throws<BoundaryException>(() => BoundaryWalk.Loops(edges, positions, [new(0, true), new(1, true)]));

        Assert.Equal(new(0, 0), failure.At);
        Assert.Contains("(0, 0) mm", failure.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Opening_without_an_outline_is_reported_with_its_place()
    {
        var hole = Path2.Rectangle(new(1, 1, 3, 2)).Reversed();

        var failure = Assert.Throws<BoundaryException>(() => Nesting.Nest([new(hole, new(2.5, 1))], Region2.SnapDistance));

        Assert.Equal(new(2.5, 1), failure.At);
    }

    [Fact]
    public void Opening_belongs_to_the_smallest_outline_around_it()
    {
        Contour Outline(double margin) => new(Path2.Rectangle(new Bounds2(0, 0, 1, 1).Grown(margin)), new(-margin, -margin));
        Contour hole = new(Path2.Rectangle(new(0.2, 0.2, 0.8, 0.8)).Reversed(), new(0.2, 0.5));

        var parts = Nesting.Nest([Outline(5), Outline(1), Outline(3), hole], Region2.SnapDistance);

        Assert.Empty(parts[0].Openings);
        Assert.Single(parts[1].Openings);
        Assert.Empty(parts[2].Openings);
    }

    [Fact]
    public void Points_within_the_snap_distance_are_one_vertex_at_the_first_of_them()
    {
        var table = VertexTable.Of([new(5, 5), new(1, 1), new(1, 1 + 8e-8), new(5 - 9e-8, 5), new(1, 2)], 1e-7);

        Assert.Equal(table.VertexOf(1), table.VertexOf(2));
        Assert.Equal(table.VertexOf(0), table.VertexOf(3));
        Assert.Equal(3, table.Positions.Length);
        Assert.Equal(new(5, 5), table.Positions[table.VertexOf(3)]);
        Assert.Equal(new(1, 1), table.Positions[table.VertexOf(2)]);
    }

    [Fact]
    public void Indices_of_equal_keys_stay_in_their_order()
    {
        double[] keys = [2, 1, 2, 0.5, 1, 2, 1];

        Assert.Equal([3, 1, 4, 6, 0, 2, 5], Ascending.Order(keys));
        Assert.Equal([0.5, 1, 1, 1, 2, 2, 2], keys);
    }
}
