using CsCheck;
using PlanForge.Airframe;
using PlanForge.Airframe.Sections;
using PlanForge.Parts.Saddles;
using PlanForge.Parts.Shapes;
using static PlanForge.Parts.Tests.Build;

namespace PlanForge.Parts.Tests.Saddles;

public class SaddleAgainstMeshTests
{
    private const double Agreement = 0.01;
    private const int CaseCount = 1000;

    private static readonly Gen<RandomAirframe> Airframes =
        from seed in Gen.Int[0, int.MaxValue]
        select Random(new Random(seed));

    [Fact]
    public void A_thousand_random_saddles_agree_with_rays_cast_at_triangle_meshes()
    {
        int solved = 0, compared = 0;
        Airframes.Sample(
            frame =>
            {
                if (Solve(frame) is not { } line)
                {
                    return;
                }

                Interlocked.Increment(ref solved);
                var oracle = new MeshOracle(frame);
                for (var i = 2; i < line.Points.Length; i += 20)
                {
                    var point = line.Points[i];
                    if (point.W > 0.999)
                    {
                        // The very edge of the mesh: a ray there may pass beside it by rounding.
                        continue;
                    }

                    Assert.Equal(oracle.BodyAt(point.Outer.X, point.Outer.Z), point.Outer.Y, Agreement);

                    if (oracle.IsAtJoint(point.Outer))
                    {
                        continue;
                    }

                    // A ray along the axis the surface faces; where it faces neither, the miss is larger than the distance.
                    var axis = Math.Abs(point.WingNormal.Z) > Math.Abs(point.WingNormal.X) ? 2 : 0;
                    var miss = oracle.DistanceToWing(point.Outer, axis);
                    Assert.True(miss is { } found && Math.Abs(found) < Agreement, $"w {point.W}, panel {point.Panel}: {miss} mm beside the mesh");
                    Interlocked.Increment(ref compared);
                }
            },
            iter: CaseCount,
            seed: "0N0XIzNsQ0O2");

        // Random wings may miss their bodies; most must not, or the test would prove little.
        Assert.True(solved > CaseCount * 3 / 4, $"only {solved} of {CaseCount} airframes have a saddle");
        Assert.True(compared > solved * 5);
    }

    private static SaddleLine? Solve(RandomAirframe frame)
    {
        Section Naca((int Camber, int Place, int Thickness) d) =>
            NacaSection.TryCreate(FormattableString.Invariant($"{d.Camber}{(d.Camber == 0 ? 0 : d.Place)}{d.Thickness:00}"), TrailingEdge.Open, out _)!;
        var (root, tip) = (Naca(frame.Root), Naca(frame.Tip));
        var chord = frame.Chord;
        var panels = new List<PanelDescription>();
        for (var k = 0; k < frame.PanelLengths.Length; k++)
        {
            chord *= frame.Tapers[k];
            var section = k == frame.PanelLengths.Length - 1 ? tip : root;
            panels.Add(new(frame.PanelLengths[k], frame.Dihedrals[k], new(section, chord, Nowhere), frame.Sweeps[k], frame.Twists[k], Nowhere));
        }

        var wing = Wing(
            [.. panels],
            root,
            frame.Chord,
            frame.Incidence * 180 / Math.PI,
            RandomAirframe.LeadingEdgeStation,
            0,
            frame.IsHigh ? WingPlacement.High : WingPlacement.Low);
        var stations = frame.Stations.Select((x, i) =>
        {
            double b = frame.Breadths[i], lower = b * frame.Lean, half = (frame.Uppers[i] - frame.Lowers[i]) / 2;
            var shape = frame.Shape switch
            {
                2 => new SectionShape(b, half, lower, half),
                1 => new SectionShape(9, 9, 9, 9),
                _ => default,
            };
            return new FuselageStation(x, b, lower, frame.Uppers[i], frame.Lowers[i], shape, frame.IsFair ? Run.Fair : Run.Straight, Nowhere);
        });
        return SaddleLine.Solve(wing, Body(frame.Skin, [.. stations]), frame.IsHigh ? WingSide.Lower : WingSide.Upper, frame.SeatTape, null, null);
    }

    private static RandomAirframe Random(Random random)
    {
        double Between(double a, double b) => a + ((b - a) * random.NextDouble());
        (int, int, int) Digits() => (random.Next(0, 5), random.Next(3, 6), random.Next(8, 19));
        var count = random.Next(1, 4);
        double[] Each(Func<double> make) => [.. Enumerable.Range(0, count).Select(_ => make())];
        var isHigh = random.Next(2) == 0;
        var shape = random.Next(3);

        // The body is deep on the wing's side of its datum, so that the wing's surface meets the flanks.
        double[] deep = [Between(30, 40), Between(38, 50), Between(42, 55), Between(38, 50), Between(12, 20)];
        double[] other = [Between(30, 45), Between(45, 65), Between(45, 65), Between(40, 55), Between(12, 20)];
        return new(
            Digits(),
            Digits(),
            Between(160, 340),
            [.. Enumerable.Range(0, count).Select(i => i == 0 && count > 1 ? Between(30, 60) : Between(250, 500))],
            Each(() => Between(0, 0.14)),
            Each(() => Between(0.8, 1)),
            Each(() => Between(-10, 25)),
            Each(() => Between(-0.05, 0.01)),
            Between(-0.02, 0.07),
            random.Next(2) == 0 ? 0 : Between(0.3, 1.5),
            isHigh,
            random.Next(2) == 0,
            shape,
            [Between(25, 40), Between(38, 52), Between(40, 55), Between(36, 50), Between(14, 22)],
            random.Next(2) == 0 ? 1 : Between(0.8, 1.1),
            isHigh ? deep : other,
            [.. (isHigh ? other : deep).Select(value => -value)],
            random.Next(4) == 0 ? 0 : Between(1, 4));
    }
}
