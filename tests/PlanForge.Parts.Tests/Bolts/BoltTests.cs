using PlanForge.Parts.Bolts;
using static PlanForge.Parts.Tests.Build;

namespace PlanForge.Parts.Tests.Bolts;

public class BoltTests
{
    // Clearance: ISO 273 medium series. Tapping: ISO 2306 (D − P). Inch: tap and clearance chart, free fit, 75 % thread.
    // All through shared/check-values.md section 6 with the status given there; M2 and M2.5 tapping from memory.
    [Theory]
    [InlineData("M2", 2.4, 1.6)]
    [InlineData("M2.5", 2.9, 2.05)]
    [InlineData("M3", 3.4, 2.5)]
    [InlineData("M4", 4.5, 3.3)]
    [InlineData("M5", 5.5, 4.2)]
    [InlineData("M6", 6.6, 5.0)]
    [InlineData("M8", 9.0, 6.8)]
    [InlineData("4-40", 0.1285 * 25.4, 0.0890 * 25.4)]
    [InlineData("6-32", 0.1495 * 25.4, 0.1065 * 25.4)]
    [InlineData("8-32", 0.1770 * 25.4, 3.454)]
    [InlineData("10-24", 5.105, 3.797)]
    [InlineData("10-32", 5.105, 4.039)]
    [InlineData("1/4-20", 6.756, 5.105)]
    public void Holes_are_those_of_the_published_tables(string thread, double clearance, double tapping)
    {
        var fastener = Fastener.Find(thread)!;
        Assert.Equal(clearance, fastener.Clearance, tolerance: 0.0006);
        Assert.Equal(tapping, fastener.Tapping, tolerance: 0.0006);
    }

    [Fact]
    public void An_unknown_thread_is_not_found() => Assert.Null(Fastener.Find("M7.5"));

    [Fact]
    public void Bolts_square_to_the_chord_meet_wing_and_plate_on_one_line()
    {
        // Plate wing at incidence i, root leading edge at (100, 60): the bolt leaves the chord 176 mm aft of it.
        const double i = 4;
        var description = Description.PlateOnBox(0, i) with { Bolts = new("M6", 50, 24, new("ply", 4, 40, 2, Nowhere), Nowhere) };
        var axis = BoltAxis.Of(Description.Rigged(description))!;
        var (sin, cos) = Math.SinCos(Degrees(i));
        Assert.Equal(100 + (176 * cos), axis.Seat.X, 9);
        Assert.Equal(60 - (176 * sin), axis.Seat.Z, 9);
        Assert.Equal(axis.Seat.Z - 2, axis.NearFace, 9);
        Assert.Equal(axis.Seat.Z - 6, axis.FarFace, 9);

        // Downward along the axis the station moves forward by the drop times tan i.
        Assert.Equal(axis.Seat.X - (4 * Math.Tan(Degrees(i))), axis.StationAt(axis.Seat.Z - 4), 9);
        Assert.Equal(Degrees(i), axis.Lean, 12);
    }

    [Fact]
    public void The_plate_fills_the_body_between_the_skins()
    {
        var description = Description.PlateOnBox(0, 2) with { Bolts = new("M6", 50, 24, new("ply", 4, 40, 0, Nowhere), Nowhere) };
        var plate = Description.Single(description, "bolt-plate");
        var outline = plate.Lines(LineUse.Cut).First();
        Assert.Equal(40 * 84, outline.SignedArea, 6);
        Assert.Equal(2, plate.Lines(LineUse.Cut).Skip(1).Count());
    }

    [Fact]
    public void Holes_of_plate_and_wing_template_stand_where_the_description_puts_them()
    {
        var description = Description.PlateOnBox(0, 0) with { Bolts = new("M6", 50, 24, new("ply", 4, 40, 0, Nowhere), Nowhere) };

        // The plate's origin is midway between the bolts; M6: tapping drill 5.0 (ISO 2306), clearance 6.6 (ISO 273 medium).
        var plate = Description.Single(description, "bolt-plate").Lines(LineUse.Cut).Skip(1).Select(path => path.AsCircle()!.Value).ToArray();
        Assert.Equal([(0.0, -25.0, 2.5), (0.0, 25.0, 2.5)], plate.Select(hole => (hole.Centre.X, hole.Centre.Y, Math.Round(hole.Radius, 12))));

        // The wing template's origin is the trailing edge on the centre line.
        var wing = Description.Single(description, "bolts-wing").Lines(LineUse.Cut).Skip(1).Select(path => path.AsCircle()!.Value).ToArray();
        Assert.Equal([(-24.0, -25.0, 3.3), (-24.0, 25.0, 3.3)], wing.Select(hole => (hole.Centre.X, hole.Centre.Y, Math.Round(hole.Radius, 12))));
        Assert.Equal(276, Description.Single(description, "bolt-plate").Value("bolts.station"), 9);
    }

    [Fact]
    public void A_plate_outside_the_body_is_an_error()
    {
        var description = Description.PlateOnBox(0, 2) with { Bolts = new("M6", 50, 24, new("ply", 4, 40, 200, Nowhere), Nowhere) };
        var list = PartList.Of(description);
        Assert.Empty(list.Parts);
        Assert.Contains(list.Findings, f => f.Message.StartsWith("the bolt plate does not lie inside the body", StringComparison.Ordinal));
    }
}
