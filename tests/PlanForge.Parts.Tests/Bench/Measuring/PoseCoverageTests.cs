using System.Collections.Immutable;
using PlanForge.Airframe.Measuring;
using PlanForge.Parts.Bench.Measuring;

namespace PlanForge.Parts.Tests.Bench.Measuring;

/// <summary>The stated intervals hold what they promise: 10 000 misplaced wings, read with the errors of a rule and of a hand.</summary>
public sealed class PoseCoverageTests
{
    private const int CaseCount = 10_000;

    private static readonly RiggedAirframe Oxbow = Designs.Rigged("oxbow-1420");

    // Read to a quarter millimetre: common practice, no source.
    [Fact]
    public void Single_readings_of_a_rule() => AssertCovered(
        seed: 1, (value, random) => [Rounded(value)], scatter: null);

    [Fact]
    public void Three_readings_by_an_unsteady_hand() => AssertCovered(
        seed: 2, (value, random) => [.. Enumerable.Range(0, 3).Select(_ => Rounded(value + (0.4 * Normal(random))))], scatter: null);

    [Fact]
    public void Single_readings_of_known_scatter() => AssertCovered(
        seed: 3, (value, random) => [Rounded(value + (0.3 * Normal(random)))], scatter: 0.3);

    private static void AssertCovered(int seed, Func<double, Random, ImmutableArray<double>> read, double? scatter)
    {
        var random = new Random(seed);
        var covered = new int[6];
        for (var i = 0; i < CaseCount; i++)
        {
            double Within(double greatest) => greatest * ((2 * random.NextDouble()) - 1);
            var pose = new WingPose(Within(0.02), Within(0.02), Within(0.005), Within(3), Within(0.01), Within(2));
            var exact = Readings.Exactly(Oxbow, pose, 115 + random.NextDouble(), new(1060, 20));
            ImmutableArray<MeasuredLength> Read(ImmutableArray<MeasuredLength> from) =>
                [.. read(from[0].Value, random).Select(value => new MeasuredLength(value, Build.Nowhere))];
            var board = read(exact.Board.Measured, random)[0];
            var result = RoundOf(exact with
            {
                Pins = [.. exact.Pins.Select(pin => pin with { Heights = Read(pin.Heights) })],
                Cords = [.. exact.Cords.Select(cord => cord with { Lengths = Read(cord.Lengths) })],
                Board = new(BoardKnowledge.Measured, board),
                Scatter = scatter,
            });
            foreach (var estimate in result.Estimates)
            {
                covered[(int)estimate.Unknown] += Math.Abs(estimate.Value - pose[estimate.Unknown]) <= estimate.HalfWidth ? 1 : 0;
            }
        }

        Assert.All(covered, count => Assert.InRange(count, 0.93 * CaseCount, 0.97 * CaseCount));
    }

    private static RoundResult RoundOf(MeasuringRound round) => Readings.Result(Oxbow, round).Last;

    private static double Rounded(double value) => Math.Round(value / 0.25) * 0.25;

    // Box and Muller's transform.
    private static double Normal(Random random) =>
        Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
}
