using CsCheck;
using PlanForge.Geometry.Regions;

namespace PlanForge.Geometry.Tests;

/// <summary>
/// Random regions. Half of their measures lie on a coarse grid, so that edges and corners often coincide, and the others on a
/// fine one, so that none nearly coincide.
/// </summary>
internal static class Shapes
{
    private static readonly Gen<double> Measure = Gen.OneOf(Fine(0, 100), Gen.Int[0, 8].Select(i => i * 12.5));

    private static readonly Gen<double> Size = Gen.OneOf(Fine(1, 60), Gen.Int[1, 5].Select(i => i * 12.5));

    private static readonly double[] Bulges = [0, 0, 0, 1, -1, 0.2, -0.2];

    private static readonly Gen<Point2> Place = Gen.Select(Measure, Measure, (x, y) => new Point2(x, y));

    public static Gen<Path2> Circle { get; } = Gen.Select(Place, Size, Path2.Circle);

    public static Gen<Path2> Rectangle { get; } =
        Gen.Select(Place, Size, Size, (corner, width, height) => Path2.Rectangle(new(corner.X, corner.Y, corner.X + width, corner.Y + height)));

    public static Gen<Path2> RoundedRectangle { get; } = Gen.Select(
        Place,
        Size,
        Size,
        Fine(0.02, 0.45),
        (corner, width, height, share) =>
            Rounded(new(corner.X, corner.Y, corner.X + width, corner.Y + height), share * Math.Min(width, height)));

    /// <summary>Polygons around a centre, with no crossings.</summary>
    public static Gen<Path2> Star { get; } = Gen.Select(
        Place, Fine(5, 60).Array[3, 24], (centre, radii) => Path2.Polygon(Around(centre, radii)));

    /// <summary>Stars whose sides are arcs; these may cross.</summary>
    public static Gen<Path2> ArcStar { get; } = Gen.Select(
        Place,
        Gen.Select(Fine(10, 60), Gen.OneOf(Gen.Const(0.0), Fine(-1.2, 1.2))).Array[3, 16],
        (centre, sides) => Path2.Closed(
            Around(centre, [.. sides.Select(side => side.Item1)]).Select((point, i) => new PathVertex(point, sides[i].Item2))));

    /// <summary>Closed chains between grid points, crossing and running along themselves.</summary>
    public static Gen<Path2> Tangle { get; } = Gen.Select(
        Gen.Int[0, 8], Gen.Int[0, 8], Gen.Int[0, 6].Select(i => Bulges[i]), (x, y, b) => new PathVertex(new(x * 12.5, y * 12.5), b))
        .Array[3, 12].Select(vertices => Path2.Closed(vertices));

    public static Gen<Region2> Region { get; } = Gen.OneOf(
        Gen.OneOf(Circle, Rectangle, RoundedRectangle, Star).Select(path => Region2.FromContours(FillRule.NonZero, path)),
        Gen.Select(Gen.OneOf(ArcStar, Tangle), Gen.Enum<FillRule>(), (path, rule) => Region2.FromContours(rule, path)),
        Gen.OneOf(Circle, Rectangle, RoundedRectangle).Array[2, 5].Select(paths => Region2.FromContours(FillRule.EvenOdd, paths)));

    /// <summary>Numbers with three decimals.</summary>
    public static Gen<double> Fine(double low, double high) =>
        Gen.Int[(int)(low * 1000), (int)(high * 1000)].Select(thousandths => thousandths / 1000.0);

    public static Path2 Rounded(Bounds2 bounds, double radius)
    {
        // The bulge of a quarter circle.
        var quarter = Math.Tan(Math.PI / 8);
        var (left, lower, right, upper) = (bounds.MinX, bounds.MinY, bounds.MaxX, bounds.MaxY);
        return Path2.Closed(
        [
            new(new(left + radius, lower)), new(new(right - radius, lower), quarter),
            new(new(right, lower + radius)), new(new(right, upper - radius), quarter),
            new(new(right - radius, upper)), new(new(left + radius, upper), quarter),
            new(new(left, upper - radius)), new(new(left, lower + radius), quarter),
        ]);
    }

    private static IEnumerable<Point2> Around(Point2 centre, double[] radii) =>
        radii.Select((radius, i) => centre + (Vector2.FromAngle(2 * Math.PI * i / radii.Length) * radius));
}
