using System.Collections.Immutable;
using CsCheck;
using PlanForge.Drafting.Nests;
using PlanForge.Geometry;
using PlanForge.Parts;
using static PlanForge.Drafting.Tests.Nests.NestSamples;

namespace PlanForge.Drafting.Tests.Nests;

public class NestPlanTests
{
    public static TheoryData<string> Designs => [.. DemoDesigns.Names];

    [Fact]
    public void Parts_of_chance_keep_their_distance_on_any_stock() => Gen.Select(
            NestSamples.Parts, Gen.Double[40, 150], Gen.Double[60, 400], Gen.Double[0, 8], Gen.Double[0, 6], Gen.Double[0, 0.3], Gen.Int[1, 12])
        .Sample(
            (parts, width, length, margin, spacing, kerf, effort) =>
            {
                var stock = Stock(width, length, margin, spacing, remnants: [(width * 0.6, length * 0.7), (width * 1.2, 45)]);
                var plan = Nest(parts, [stock], effort, kerf);
                var tooLarge = parts.Where(part => plan.Findings.Any(finding => finding.Message.StartsWith($"{part.Title} fits", StringComparison.Ordinal)));
                Assert.Equal(plan.Findings.Length, tooLarge.Count());
                NestProof.HasEveryCopyOnce(plan, parts.Except(tooLarge));
                foreach (var sheet in plan.Sheets)
                {
                    NestProof.HoldsFor(sheet, spacing + kerf);
                }
            },
            iter: 60);

    [Theory]
    [MemberData(nameof(Designs))]
    public void Parts_of_the_examples_keep_their_distance(string name)
    {
        var parts = DemoDesigns.Parts(name).Where(part => part.Making == Making.Cut).ToImmutableArray();
        var stocks = parts.Select(part => (part.Material, part.Thickness)).Distinct()
            .Select((kind, i) => Stock(300, 600, thickness: kind.Thickness, name: $"S{i}") with { Material = kind.Material.ToUpperInvariant() + " " })
            .ToImmutableArray();
        var plan = Nest(parts, stocks, NestOptions.UsualEffort);
        Assert.Empty(plan.Findings);
        NestProof.HasEveryCopyOnce(plan, parts);
        Assert.All(plan.Sheets, sheet => NestProof.HoldsFor(sheet, 3));
    }

    [Fact]
    public void Sixty_formers_fill_their_sheets()
    {
        var plan = Nest(Formers(60), [Stock(300, 600)], NestOptions.UsualEffort);
        Assert.All(plan.Sheets, sheet => NestProof.HoldsFor(sheet, 3));

        // The aim set for mixed formers: four fifths of the wood up to the end of the last part lie inside an outline.
        var figures = NestFigures.Of(plan).ToDictionary(figure => figure.Key, figure => figure.Value);
        Assert.InRange(figures["nests.balsa_3.yield.outlines"], 0.8, 1);
        Assert.True(figures["nests.balsa_3.sheets.least"] <= figures["nests.balsa_3.sheets"]);
    }

    [Fact]
    public void The_same_parts_give_the_same_nest_on_any_thread()
    {
        var formers = Formers(25);
        var expected = NestProof.Written(Nest(formers, [Stock(300, 600)]));
        Parallel.For(0, 8, _ => Assert.Equal(expected, NestProof.Written(Nest(formers, [Stock(300, 600)]))));
    }

    [Fact]
    public void More_effort_is_never_worse()
    {
        var formers = Formers(30);
        var last = (Sheets: int.MaxValue, Used: double.MaxValue);
        foreach (var effort in new[] { 1, 2, 3, 4, 8, 16, 40 })
        {
            var plan = Nest(formers, [Stock(220, 500)], effort);
            var now = (Sheets: plan.Sheets.Length, Used: plan.Sheets[^1].UsedLength);
            Assert.True(now.CompareTo(last) <= 0, $"{now} at effort {effort}, {last} before");
            last = now;
        }
    }

    [Fact]
    public void Squares_that_tile_a_sheet_take_one()
    {
        // Four squares of 50 on a square of 100: the area bound itself is reached.
        var plan = Nest([Rectangle("P", 50, 50, 0, quantity: 4)], [Stock(100, 100, margin: 0, spacing: 0)]);
        var sheet = Assert.Single(plan.Sheets);
        Assert.Equal((4, 1.0), (sheet.Parts.Length, sheet.Yield));
    }

    [Fact]
    public void A_disc_lies_in_the_opening_of_a_frame()
    {
        // The sheet has room for the frame alone; the disc is smaller than the opening by the spacing and two cells on all sides.
        var plan = Nest([Frame("frame", 100, 60), Disc("disc", 52)], [Stock(106, 106)]);
        var sheet = Assert.Single(plan.Sheets);
        NestProof.HoldsFor(sheet, 3);
        Assert.Equal(2, sheet.Parts.Length);

        Assert.Equal(2, Nest([Frame("frame", 100, 60), Disc("disc", 54.1)], [Stock(106, 106)]).Sheets.Length);
    }

    [Theory]
    [InlineData(null)]
    [InlineData(0.0)]
    [InlineData(Math.PI / 2)]
    public void A_part_as_large_as_the_room_fits(double? grain)
    {
        var (along, across) = grain == Math.PI / 2 ? (94.0, 294.0) : (294, 94);
        var plan = Nest([Rectangle("P", along, across, grain)], [Stock(100, 300)]);
        Assert.Empty(plan.Findings);
        var bounds = Assert.Single(Assert.Single(plan.Sheets).Parts).Bounds;
        Assert.Equal((3, 3, 297, 97), (bounds.MinX, bounds.MinY, bounds.MaxX, bounds.MaxY), new Near(1e-9));
    }

    [Fact]
    public void A_slanting_strip_is_laid_along_the_sheet()
    {
        // A strip of 200 by 20 turned by 30° fits a sheet of 26 only when turned back.
        var strip = Path2.Rectangle(new(0, 0, 200, 20)).Placed(Placement2.TurnedBy(Math.PI / 6));
        var sheet = Assert.Single(Nest([Part("strip", [strip])], [Stock(26, 300)]).Sheets);
        Assert.Equal(20, Assert.Single(sheet.Parts).Bounds.Height, 1e-9);
    }

    [Fact]
    public void A_part_of_next_to_nothing_is_placed()
    {
        var plan = Nest([Rectangle("speck", 1e-3, 1e-3, quantity: 3), Rectangle("hair", 80, 1e-3)], [Stock(100, 300)]);
        Assert.All(plan.Sheets, sheet => NestProof.HoldsFor(sheet, 3));
        Assert.Equal(4, Assert.Single(plan.Sheets).Parts.Length);
    }

    [Fact]
    public void A_part_without_an_outline_is_refused() =>
        Assert.Throws<ArgumentException>(() => Nest([Part("open", [Path2.Line(new(0, 0), new(10, 0))])], [Stock(100, 300)]));

    private sealed class Near(double tolerance) : IEqualityComparer<(double, double, double, double)>
    {
        public bool Equals((double, double, double, double) x, (double, double, double, double) y) =>
            Math.Abs(x.Item1 - y.Item1) <= tolerance && Math.Abs(x.Item2 - y.Item2) <= tolerance
                && Math.Abs(x.Item3 - y.Item3) <= tolerance && Math.Abs(x.Item4 - y.Item4) <= tolerance;

        public int GetHashCode((double, double, double, double) obj) => 0;
    }
}
