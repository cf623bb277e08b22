using System.Collections.Immutable;
using BenchmarkDotNet.Attributes;
using PlanForge.Airframe;
using PlanForge.Airframe.Reading;
using PlanForge.Drafting.Nests;
using PlanForge.Geometry;
using PlanForge.Parts;

namespace PlanForge.Benchmarks;

/// <summary>How the cost of nesting grows with the parts and with the effort, on formers of mixed size; prints the yields.</summary>
[InProcess]
public class NestBenchmarks
{
    private ImmutableArray<Part> _parts;
    private ImmutableArray<StockDescription> _stock;

    [Params(10, 60, 200)]
    public int Formers { get; set; }

    [Params(1, NestOptions.UsualEffort, 200)]
    public int Effort { get; set; }

    [GlobalSetup]
    public void Prepare()
    {
        _parts = MixedFormers(Formers);
        _stock = [new("ply 3", "ply", 3, 300, 600, null, 3, 3, [], default)];
    }

    [Benchmark]
    public NestPlan Nest() => NestPlan.Of(_parts, _stock, DisplayUnit.Millimetre, new() { Effort = Effort });

    [GlobalCleanup]
    public void PrintYields()
    {
        foreach (var figure in NestFigures.Of(Nest()))
        {
            Console.WriteLine(FormattableString.Invariant($"// {Formers} formers, effort {Effort}: {figure.Label} {figure.Value:0.###}"));
        }
    }

    /// <summary>The formers of the example designs over and over, their longest side from 49 to 140 mm.</summary>
    private static ImmutableArray<Part> MixedFormers(int count)
    {
        var formers = DescriptionText.Examples()
            .SelectMany(text => PartList.Of(AirframeReader.Read(text.Name, text.Text, text.ReadSection).Airframe!).Parts)
            .Where(part => part.Kind == "Formers")
            .ToList();
        var parts = ImmutableArray.CreateBuilder<Part>(count);
        for (var i = 0; i < count; i++)
        {
            var former = formers[i % formers.Count];
            var cut = former.Lines.Where(line => line.Use == LineUse.Cut).ToList();
            var bounds = cut.Aggregate(Bounds2.Empty, (all, line) => all.Joined(line.Path.Bounds));

            // Multiples of the golden ratio spread the sizes evenly without a pattern.
            var share = 0.35 + (0.65 * (i * 0.6180339887498949 % 1));
            var scale = 140 * share / Math.Max(bounds.Width, bounds.Height);
            parts.Add(former with
            {
                Id = FormattableString.Invariant($"{former.Id}-{i}"),
                Material = "ply",
                Thickness = 3,
                Lines = [.. cut.Select(line => line with { Path = Scaled(line.Path, scale) })],
            });
        }

        return parts.MoveToImmutable();
    }

    private static Path2 Scaled(Path2 path, double scale) => Path2.Closed(
        path.Vertices.Select(vertex => vertex with { Point = new(vertex.Point.X * scale, vertex.Point.Y * scale) }));
}
