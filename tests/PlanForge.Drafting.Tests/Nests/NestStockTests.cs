using System.Collections.Immutable;
using PlanForge.Airframe;
using PlanForge.Drafting.Nests;
using PlanForge.Parts;
using static PlanForge.Drafting.Tests.Nests.NestSamples;

namespace PlanForge.Drafting.Tests.Nests;

public class NestStockTests
{
    [Fact]
    public void Remnants_are_used_before_whole_sheets()
    {
        var plan = Nest([Rectangle("P", 60, 40, 0, quantity: 3)], [Stock(100, 300, remnants: [(30, 30), (50, 70), (46, 66)])]);
        Assert.Equal(["balsa 3, remnant 2", "balsa 3, remnant 3", "balsa 3, sheet 1"], plan.Sheets.Select(sheet => sheet.Title));
        Assert.Equal([(50.0, 70.0), (46, 66), (100, 300)], plan.Sheets.Select(sheet => (sheet.Width, sheet.Length)));
    }

    [Fact]
    public void What_is_counted_is_used_up_first_and_what_falls_short_is_said()
    {
        var counted = Stock(100, 100, onHand: 1, name: "offcut");
        var others = Stock(100, 300, name: "balsa 3");
        var plan = Nest([Rectangle("P", 90, 90, 0, quantity: 3)], [others, counted]);
        Assert.Equal(["offcut, sheet 1", "balsa 3, sheet 1"], plan.Sheets.Select(sheet => sheet.Title));
        Assert.Empty(plan.Findings);

        plan = Nest([Rectangle("P", 90, 90, 0, quantity: 3)], [counted]);
        Assert.Equal(3, plan.Sheets.Length);
        Assert.Equal("demo.yaml:7:3: warning: 3 sheets of `offcut` are needed, and 1 on hand", Assert.Single(plan.Findings).ToString());
    }

    [Theory]
    [InlineData(0.0, "P fits no sheet of `balsa 3`: with margins it needs 40 x 306.1 mm with its grain along the sheet")]
    [InlineData(null, "P fits no sheet of `balsa 3`: with margins it needs 40 x 306.1 mm")]
    public void A_part_too_large_for_its_stock_is_an_error(double? grain, string expected)
    {
        var plan = Nest([Rectangle("P", 300.02, 34, grain), Rectangle("Q", 50, 20)], [Stock(100, 300)]);
        Assert.Equal("demo.yaml:7:3: error: " + expected, Assert.Single(plan.Findings).ToString());
        Assert.Equal("Q", Assert.Single(Assert.Single(plan.Sheets).Parts).Part.Id);
    }

    [Fact]
    public void The_nearest_thickness_is_taken_and_a_large_difference_said()
    {
        ImmutableArray<StockDescription> stocks =
            [Stock(100, 300, thickness: 2.8, name: "thin"), Stock(100, 300, thickness: 3.4, name: "thick")];
        var parts = ImmutableArray.Create(Part("A", 3), Part("B", 3.2), Part("C", 3.8), Part("D", 4.2));
        var plan = Nest(parts, stocks);
        Assert.Equal([("thin", "A"), ("thick", "B, C")], plan.Sheets.Select(sheet => (sheet.Stock.Name, string.Join(", ", sheet.Parts.Select(p => p.Part.Id).Order()))));
        Assert.Equal(
            [
                "`thick` is 3.4 mm thick and takes parts of 3.8 mm: C",
                "no stock is balsa of 4.2 mm within 0.5 mm; not laid out: D",
            ],
            plan.Findings.Select(finding => finding.Message));

        static Part Part(string id, double thickness) => Rectangle(id, 20, 20) with { Thickness = thickness };
    }

    [Fact]
    public void Stock_of_two_sizes_is_one_choice()
    {
        // The long part fits the long sheet alone, and the small ones go beside it.
        var plan = Nest(
            [Rectangle("long", 400, 20, 0), Rectangle("small", 30, 30, 0, quantity: 2)],
            [Stock(100, 300, name: "short"), Stock(80, 500, name: "long")]);
        Assert.Equal("long, sheet 1", Assert.Single(plan.Sheets).Title);
    }

    [Fact]
    public void Without_any_stock_nothing_is_said()
    {
        var plan = Nest([Rectangle("P", 20, 20)], []);
        Assert.True(plan.Sheets.IsEmpty && plan.Findings.IsEmpty);
    }

    [Fact]
    public void Printed_parts_are_left_out()
    {
        var plan = Nest([Rectangle("P", 20, 20) with { Making = Making.Template }], [Stock(100, 300)]);
        Assert.True(plan.Sheets.IsEmpty && plan.Findings.IsEmpty);
    }

    [Theory]
    [InlineData(0, 0)]
    [InlineData(1, -0.1)]
    [InlineData(1, double.PositiveInfinity)]
    public void Options_out_of_range_are_refused(int effort, double kerf) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => new NestOptions { Effort = effort, Kerf = kerf });
}
