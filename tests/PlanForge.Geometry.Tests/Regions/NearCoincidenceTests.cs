using PlanForge.Geometry.Regions;

namespace PlanForge.Geometry.Tests.Regions;

/// <summary>Shapes off a grid by about the snap distance, found by search, for which the first snap distance contradicts itself.</summary>
public sealed class NearCoincidenceTests
{
    public static TheoryData<double[], double[]> Pairs => new()
    {
        { [1.9999999, 2.99999995, 0.99999995, 1, 0.99999995, 2.0000001, 0, 0.9999999], [1.9999999, 2, -1E-07, 2, 5E-08, 3] },
        {
            [2.0000001, 3.00000005, 2.9999999, 3, 3, 1.9999999],
            [2.99999995, 1.99999995, 2, 0, -5E-08, 0.99999995, 2, 2.00000005]
        },
        {
            [-5E-08, -1E-07, 3, 1E-07, 0.99999995, 2, 0.99999995, 5E-08],
            [2.9999999, 2, 2.9999999, 3.00000005, 2.00000005, -5E-08, 0.99999995, -1E-07]
        },
        { [1, 2, 3.00000005, 2.00000005, 0.9999999, 0.9999999, 3, -5E-08], [5E-08, 1E-07, 2, 1.99999995, 2, 2.0000001] },
    };

    [Theory]
    [MemberData(nameof(Pairs))]
    public void Contradiction_is_seen_and_a_coarser_snap_distance_resolves_it(double[] first, double[] second)
    {
        var (a, b) = (Polygon(first), Polygon(second));

        var failure = Assert.Throws<BoundaryException>(() => RegionBuilder.Build(InsideRule.Either, [a], [b], Region2.SnapDistance));
        Assert.InRange(Math.Max(Math.Abs(failure.At.X), Math.Abs(failure.At.Y)), 0, 3.1);
        Assert.Equal(AreaOfBoth(OnGrid(first), OnGrid(second)), AreaOfBoth(a, b), 1e-5);
    }

    private static double AreaOfBoth(Path2 a, Path2 b) => Region2.Bounded(InsideRule.Either, [a], [b]).Area;

    // The same shape where nothing nearly coincides.
    private static Path2 OnGrid(double[] coordinates) => Polygon([.. coordinates.Select(value => Math.Round(value))]);

    private static Path2 Polygon(double[] coordinates) => Path2.Polygon(coordinates.Chunk(2).Select(pair => new Point2(pair[0], pair[1])));
}
