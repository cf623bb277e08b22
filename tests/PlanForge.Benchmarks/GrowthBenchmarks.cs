using BenchmarkDotNet.Attributes;

namespace PlanForge.Benchmarks;

/// <summary>How the cost grows with the description: ten times the formers should take about ten times as long.</summary>
[InProcess]
public class GrowthBenchmarks
{
    private DescriptionText _description = null!;

    [Params(10, 100, 1000)]
    public int Formers { get; set; }

    [GlobalSetup]
    public void Prepare() => _description = DescriptionText.WithFormers(Formers);

    [Benchmark]
    public int Whole() => Stages.Whole(_description);
}
