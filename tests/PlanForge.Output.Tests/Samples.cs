using CsCheck;
using PlanForge.Drafting.Cutting;
using PlanForge.Drafting.Model;
using PlanForge.Geometry;

namespace PlanForge.Output.Tests;

/// <summary>Drawings to write.</summary>
internal static class Samples
{
    public static readonly LineStyle Wide = new(LineType.Continuous, 0.5);

    public static readonly LineStyle Narrow = new(LineType.Continuous, 0.25);

    private static readonly double QuarterBulge = Math.Tan(Math.PI / 8);

    private static readonly Gen<Point2> Points =
        from x in Gen.Double[-200, 200]
        from y in Gen.Double[-200, 200]
        select new Point2(x, y);

    private static readonly Gen<PathVertex> Vertices =
        from point in Points
        from isLine in Gen.Bool
        from bulge in Gen.OneOf(Gen.Double[-3, 3], Gen.Double[-0.01, 0.01], Gen.Double[-1e-7, 1e-7], Gen.Const(1e-12), Gen.Const(-1e-80), Gen.Const(1.0), Gen.Const(-1.0))
        select new PathVertex(point, isLine ? 0 : bulge);

    /// <summary>Any path of lines and arcs, flat and nearly full ones among them, or a circle.</summary>
    public static readonly Gen<Path2> Paths = Gen.Frequency(
        (4, from vertices in Vertices.Array[2, 6] from isClosed in Gen.Bool select isClosed ? Path2.Closed(vertices) : Path2.Open(vertices)),
        (1, from centre in Points from radius in Gen.Double[0.01, 300] select Path2.Circle(centre, radius)));

    /// <summary>A former: every kind of contour a cut file holds.</summary>
    public static CutDrawing Former { get; } = new("F3", new(
    [
        Stroke(Layer.Cut, Path2.Closed(
        [
            new(new(20, 0)), new(new(72, 0), QuarterBulge), new(new(92, 20)), new(new(92, 104), 0.12), new(new(0, 104)), new(new(0, 20), QuarterBulge),
        ])),
        Stroke(Layer.Cut, Path2.Circle(new(30, 84), 4.05).Reversed()),
        Stroke(Layer.Cut, Path2.Closed([new(new(60, 80), -1), new(new(66, 80)), new(new(66, 90), -1), new(new(60, 90))])),
        Stroke(Layer.Score, Path2.Line(new(4, 50), new(88, 50))),
        Stroke(Layer.Score, Path2.Open([new(new(10, 60), 0.3), new(new(82, 60))])),
        Stroke(Layer.Score, Path2.Open([new(new(10, 40), 0.3), new(new(50, 40), -0.2), new(new(82, 40))])),
        Stroke(Layer.Score, Path2.Open([new(new(10, 30), 1e-5), new(new(82, 30))])),
    ]));

    /// <summary>A sheet of stock with the former twice, the second turned, and a note.</summary>
    public static CutSheet Stock { get; } = new("birch-ply-3", 300, 200,
    [
        new(Former with { Kerf = 0.2, Notes = ["F3: 2 off birch ply 3 mm", "Kerf 0.2 mm is compensated"] }, Placement2.MovedBy(new(5, 5))),
        new(Former with { Kerf = 0.2, Notes = ["F3: 2 off birch ply 3 mm", "Kerf 0.2 mm is compensated"] }, new(false, Math.PI / 2, new(280, 10))),
    ]);

    public static DrawingItem.Stroke Stroke(Layer layer, Path2 path) => new(layer, path, layer == Layer.Cut ? Wide : Narrow);

    public static DrawingItem.Text Text(string content, double x = 20, double y = 20, double height = 3.5, double angle = 0) =>
        new(Layer.Notes, content, new(x, y), height, angle);

    public static Sheet Sheet(params DrawingItem[] items) => new(1, "Former F3", 297, 210, new([.. items]), ["F3"]);

    public static SheetSet Set(params Sheet[] sheets) => new("Oxbow 1420 B", "en", [.. sheets]);

    public static SheetSet Set(params DrawingItem[] items) => Set(Sheet(items));
}
