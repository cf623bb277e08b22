using System.Collections.Immutable;
using CsCheck;
using PlanForge.Airframe;
using PlanForge.Airframe.Diagnostics;
using PlanForge.Drafting.Nests;
using PlanForge.Geometry;
using PlanForge.Parts;

namespace PlanForge.Drafting.Tests.Nests;

/// <summary>Parts and stock for the tests of the nests.</summary>
internal static class NestSamples
{
    public static SourcePosition At => new("demo.yaml", 7, 3);

    public static StockDescription Stock(
        double width, double length, double margin = 3, double spacing = 3, int? onHand = null, double thickness = 3, string name = "balsa 3",
        params (double Width, double Length)[] remnants) =>
        new(name, "balsa", thickness, width, length, onHand, margin, spacing, [.. remnants.Select(r => new StockRemnant(r.Width, r.Length, At))], At);

    public static Part Part(string id, IEnumerable<Path2> contours, double? grain = null, int quantity = 1, double thickness = 3) => new(
        id, "Nested", id, Making.Cut, "balsa", thickness, quantity, grain,
        [.. contours.Select(contour => new PartLine(LineUse.Cut, contour))], [], [], [], [], []);

    public static Part Rectangle(string id, double width, double height, double? grain = null, int quantity = 1) =>
        Part(id, [Path2.Rectangle(new(0, 0, width, height))], grain, quantity);

    public static Part Disc(string id, double diameter, int quantity = 1) =>
        Part(id, [Path2.Circle(new(0, 0), diameter / 2)], null, quantity);

    /// <summary>A square frame with a round opening.</summary>
    public static Part Frame(string id, double side, double opening) =>
        Part(id, [Path2.Rectangle(new(-side / 2, -side / 2, side / 2, side / 2)), Path2.Circle(new(0, 0), opening / 2).Reversed()]);

    public static NestPlan Nest(ImmutableArray<Part> parts, ImmutableArray<StockDescription> stocks, int effort = 6, double kerf = 0) =>
        NestPlan.Of(parts, stocks, DisplayUnit.Millimetre, new() { Effort = effort, Kerf = kerf });

    /// <summary>The formers of all example designs, so many of them, in sizes from a third to the whole of 140 mm.</summary>
    public static ImmutableArray<Part> Formers(int count)
    {
        var formers = DemoDesigns.Names.SelectMany(name => DemoDesigns.Parts(name)).Where(part => part.Kind == "Formers").ToList();
        var parts = ImmutableArray.CreateBuilder<Part>(count);
        for (var i = 0; i < count; i++)
        {
            var former = formers[i % formers.Count];
            var contours = NestedPart.ContoursOf(former).ToList();
            var bounds = contours.Aggregate(Bounds2.Empty, (all, contour) => all.Joined(contour.Bounds));

            // The golden ratio spreads the sizes evenly without a pattern.
            var share = 0.35 + (0.65 * (i * 0.6180339887498949 % 1));
            var scale = 140 * share / Math.Max(bounds.Width, bounds.Height);
            parts.Add(Part($"{former.Title}/{i}", contours.Select(contour => contour.Scaled(scale)), former.GrainAngle));
        }

        return parts.MoveToImmutable();
    }

    /// <summary>Parts of chance: rectangles, angles, discs, frames and blobs; with a grain, or free.</summary>
    public static Gen<ImmutableArray<Part>> Parts { get; } =
        from shapes in Shape.Array[1, 12]
        select shapes.Select((shape, i) => Part($"P{i}", shape.Contours, shape.Grain, shape.Quantity)).ToImmutableArray();

    private static Gen<(Path2[] Contours, double? Grain, int Quantity)> Shape =>
        from kind in Gen.Int[0, 4]
        from a in Gen.Double[1, 120]
        from b in Gen.Double[1, 90]
        from bulge in Gen.Double[-0.6, 1]
        from grain in Gen.OneOf(Gen.Const((double?)null), Gen.Const((double?)0), Gen.Const((double?)(Math.PI / 2)), Gen.Const((double?)0.3))
        from quantity in Gen.Int[1, 3]
        select (Contours(kind, a, b, bulge), grain, quantity);

    private static Path2[] Contours(int kind, double a, double b, double bulge)
    {
        var (inner, rim) = (Math.Min(a, b) * 0.7, Math.Min(a, b));
        return kind switch
        {
            0 => [Path2.Rectangle(new(-a, 3, 0, b + 3))],
            1 => [Path2.Polygon(new Point2(0, 0), new(a, 0), new(a, b * 0.3), new(a * 0.2, b * 0.3), new(a * 0.2, b), new(0, b))],
            2 => [Path2.Circle(new(b, -a), rim / 2)],
            3 => [Path2.Rectangle(new(0, 0, rim, rim)), Path2.Rectangle(new(rim - inner, rim - inner, inner, inner)).Reversed()],

            // Sides that bulge outward up to half circles, or one inward by no more than 0.4 of the height.
            _ => [Path2.Closed([new(new(0, 0), Math.Max(bulge, -0.8 * b / a)), new(new(a, 0)), new(new(a, b)), new(new(0, b), Math.Max(0, bulge))])],
        };
    }
}
