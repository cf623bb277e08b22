using PlanForge.Airframe;
using PlanForge.Geometry;
using PlanForge.Parts.Bench;
using PlanForge.Parts.Bench.Setup;
using static PlanForge.Parts.Tests.Build;

namespace PlanForge.Parts.Tests.Bench.Setup;

public class CradleTests
{
    private static readonly string[] Names = ["front", "rear"];

    public static TheoryData<string> All => Tests.Designs.All;

    // Closed form: a box 90 wide, from 40 below the datum line to 90 above it; clearance 50, so the datum line is 90 above the board.
    [Fact]
    public void A_box_body_lies_in_an_opening_of_its_width_at_its_height()
    {
        var parts = PartList.Of(Description.PlateOnBox(0, 0)).Parts;
        foreach (var name in Names)
        {
            var cradle = parts.Single(part => part.Id == $"cradle-{name}");
            Assert.Equal(90, cradle.Value($"cradles.{name}.datum"), 9);
            Assert.Equal(90, cradle.Value($"cradles.{name}.opening"), 9);
            Assert.Equal(50, cradle.Value($"cradles.{name}.seat"), 9);
            var wood = Assert.Single(cradle.Lines(LineUse.Cut));
            Assert.Equal(-90, wood.Bounds.MinY, 9);

            // The floor of the opening runs from side to side at the body's bottom.
            Assert.Contains(wood.Segments, segment => IsLine(segment, new(-45, -40), new(45, -40)));
        }
    }

    // Closed form: straight between stations, the body is 20 deeper and 10 wider a side over 500 of length.
    [Fact]
    public void The_opening_is_the_larger_of_both_faces_and_the_bevel_is_told()
    {
        var description = Description.PlateOnBox(0, 0);
        description = description with
        {
            Fuselage = description.Fuselage with { Stations = [Box(0, 45, 90, -40), Box(500, 55, 90, -60)] },
            Bench = description.Bench with { Cradles = new(100, 400, "ply", 5, 60, Nowhere) },
        };
        var front = Description.Single(description, "cradle-front");
        Assert.Equal(2 * (45 + (105.0 / 50)), front.Value("cradles.front.opening"), 9);
        Assert.Equal(110 - (40 + (105.0 / 25)), front.Value("cradles.front.seat"), 9);
        Assert.Equal(Math.Atan(20.0 / 500), front.Value("cradles.front.bevel_bottom"), 9);
        Assert.Equal(Math.Atan(10.0 / 500), front.Value("cradles.front.bevel_side"), 9);
    }

    // Common practice, no source: the cross-former is left 8 long; inside a bottom of 3 its wood hangs 5 below the body.
    [Fact]
    public void A_former_left_long_clears_the_board_as_well()
    {
        var former = Description.Former("F", 100) with { IsCrossFormer = true, Allowance = new(0, 8, 0) };
        var rigged = Description.Rigged(Description.PlateOnBox(0, 0, former));
        Assert.Equal(-40 + 3 - 8, BoardHeight.HangsTo(former, rigged)!.Value, 9);
        Assert.Equal(50 + 40 + 5, BoardHeight.OfDatum(rigged), 9);
        Assert.Equal(BoardHeight.OfDatum(rigged), PinPoints.Of(rigged).BoardBelowDatum);
    }

    [Fact]
    public void A_wing_that_hangs_lower_than_the_body_clears_the_board()
    {
        // Tips 600 out, 10 degrees down from a height of 60.
        var rigged = Description.Rigged(Description.PlateOnBox(-10, 0));
        Assert.Equal(50 - (60 - (600 * Math.Sin(Degrees(10)))), BoardHeight.OfDatum(rigged), 6);
    }

    [Theory]
    [MemberData(nameof(All))]
    public void Both_cradles_hold_the_datum_line_at_the_height_of_the_pins(string name)
    {
        var airframe = Tests.Designs.Rigged(name);
        var parts = PartList.Of(airframe.Description).Parts;
        var board = PinPoints.Of(airframe).BoardBelowDatum;
        var lowest = airframe.Description.Fuselage.Stations.Min(station => station.Lower);
        Assert.True(board >= airframe.Description.Bench.Clearance - lowest);
        foreach (var end in Names)
        {
            var cradle = parts.Single(part => part.Id == $"cradle-{end}");
            Assert.Equal(board, cradle.Value($"cradles.{end}.datum"));
            Assert.Equal(-board, cradle.Lines(LineUse.Cut).Min(line => line.Bounds.MinY), 9);
        }
    }

    // The body itself is the gauge: no point of its outline at either face lies in the wood, and some touch it.
    [Theory]
    [MemberData(nameof(All))]
    public void The_body_fits_into_the_cradles_and_touches_them(string name)
    {
        var airframe = Tests.Designs.Rigged(name);
        var stations = CradleStations.Of(airframe);
        foreach (var station in new[] { stations.Front, stations.Rear })
        {
            var outline = CradleOutline.Of(airframe, station, -BoardHeight.OfDatum(airframe))!;
            var least = double.PositiveInfinity;
            foreach (var at in new[] { station, station + airframe.Description.Bench.Cradles.Thickness })
            {
                var section = airframe.Body;
                for (var i = 1; i < 40; i++)
                {
                    var height = section.LowerAt(at) + ((outline.Top - section.LowerAt(at)) * i / 40);
                    var point = new Point2(section.HalfBreadthAt(at, height), height);
                    Assert.False(outline.Wood.Contains(point) && outline.Wood.DistanceToBoundary(point) > 0.01, $"{name}: the body at {point} is in the wood");
                    least = Math.Min(least, outline.Wood.DistanceToBoundary(point));
                }
            }

            Assert.InRange(least, 0, 0.01);
        }
    }

    // Closed form: an ellipse of semi-axes 40 and 50 is, 45 % of its depth up, 40 √(1 − 0.1²) wide to a side.
    [Fact]
    public void Between_the_arms_the_opening_is_as_wide_as_the_body_there()
    {
        var description = Description.PlateOnBox(0, 0);
        description = description with { Fuselage = description.Fuselage with { Stations = [Ellipse(0, 40, 70, -30), Ellipse(500, 40, 70, -30)] } };
        var cradle = Description.Single(description, "cradle-front");
        Assert.Equal(80 * Math.Sqrt(1 - (0.1 * 0.1)), cradle.Value("cradles.front.opening"), 0.02);
        var across = cradle.Dimensions.OfType<PartDimension.Linear>().Single(dimension => Math.Abs(dimension.From.Y - 15) < 1e-9);
        Assert.Contains(cradle.Lines(LineUse.Cut).Single().Vertices, vertex => vertex.Point.DistanceTo(across.To) < 1e-6);
    }

    [Fact]
    public void Cradles_stand_at_the_quarters_unless_a_former_is_near()
    {
        // A body from 0 to 500, cradles 4 thick: the quarters are 125 and 375.
        Assert.Equal(new(123, 373), Stations(Description.PlateOnBox(0, 0)));
        Assert.Equal(new(123, 380 + 1.5 - 2), Stations(Description.PlateOnBox(0, 0, Description.Former("F", 380))));
        Assert.Equal(new(123, 373), Stations(Description.PlateOnBox(0, 0, Description.Former("F", 405))));
        Assert.Equal(new(123, 373), Stations(Description.PlateOnBox(0, 0, Description.Former("F", 380) with { Allowance = new(0, 6, 0) })));
        var given = Description.PlateOnBox(0, 0, Description.Former("F", 380));
        Assert.Equal(new(60, 400), Stations(given with { Bench = given.Bench with { Cradles = new(60, 400, "ply", 4, 60, Nowhere) } }));
    }

    [Fact]
    public void No_cradle_stands_under_a_low_wing_by_itself_and_one_put_there_is_warned_of()
    {
        var low = Description.PlateOnBox(0, 0);
        low = low with { Wing = low.Wing with { Placement = WingPlacement.Low, LeadingEdge = new(100, -20) } };
        var stations = Stations(low);
        Assert.True(stations.Front + 4 < 100 && stations.Rear > 300, $"{stations}");
        Assert.DoesNotContain(PartList.Of(low).Findings, finding => finding.Message.Contains("cradle", StringComparison.Ordinal));
        var put = low with { Bench = low.Bench with { Cradles = new(200, 400, "ply", 4, 60, Nowhere) } };
        Assert.Contains(PartList.Of(put).Findings, finding => finding.Message.Contains("front cradle at station 200 mm stands under the wing", StringComparison.Ordinal));
    }

    [Fact]
    public void A_body_too_near_the_board_for_a_cradle_is_warned_of()
    {
        var flat = Description.PlateOnBox(0, 0);
        var list = PartList.Of(flat with { Bench = flat.Bench with { Clearance = 14 } });
        Assert.DoesNotContain(list.Parts, part => part.Kind == "Cradles");
        Assert.Equal(2, list.Findings.Count(finding => finding.Message.Contains("raise bench: clearance", StringComparison.Ordinal)));
    }

    // Half-lap: both slots are half the foot's height deep and as wide as the other's thickness, so that both edges meet the board.
    [Fact]
    public void Cradles_and_feet_interlock_in_half_laps()
    {
        var parts = PartList.Of(Description.PlateOnBox(0, 0)).Parts;
        var foot = parts.Single(part => part.Id == "cradle-foot");
        Assert.Equal(4, foot.Quantity);
        var edge = Assert.Single(foot.Lines(LineUse.Cut));
        Assert.Contains(edge.Segments, segment => IsLine(segment, new(2, 15), new(-2, 15)));
        Assert.Equal(30, edge.Bounds.Height, 9);
        foreach (var name in Names)
        {
            var wood = Assert.Single(parts.Single(part => part.Id == $"cradle-{name}").Lines(LineUse.Cut));
            Assert.Equal(2, wood.Segments.Count(segment =>
                Math.Abs(segment.Start.Y + 75) < 1e-9 && Math.Abs(segment.End.Y + 75) < 1e-9 && Math.Abs((segment.End - segment.Start).Length - 4) < 1e-9));
        }
    }

    private static CradleStations Stations(AirframeDescription description) => CradleStations.Of(Description.Rigged(description));

    private static bool IsLine(Segment2 segment, Point2 a, Point2 b) =>
        (segment.Start.DistanceTo(a) < 1e-6 && segment.End.DistanceTo(b) < 1e-6) || (segment.Start.DistanceTo(b) < 1e-6 && segment.End.DistanceTo(a) < 1e-6);
}
