using System.Collections.Immutable;
using PlanForge.Airframe.Building;
using PlanForge.Airframe.Reading;
using PlanForge.Airframe.Tests.Reading;

namespace PlanForge.Airframe.Tests.Building;

/// <summary>What becomes of a description when measurements are taken over.</summary>
public class AsBuiltTests
{
    private const string Workshop = """
        formers:
          - {name: F1, station: 200, thickness: 3, material: " Balsa"}
          - {name: F2, station: 300, thickness: 3.1, material: balsa, slots: [{sheet: B3, length: 12, height: 0}, {sheet: B3, length: 10, runs: across, height: 9}, {width: 3, depth: 9, height: -9}], tabs: [{edge: upper, position: 0, width: 9, through: B3}]}
          - {name: F3, station: 400, thickness: 3, material: light ply}
          - {name: F4, station: 500, thickness: 3, material: balsa}
        stock: [{name: B3, material: balsa, thickness: 3, size: 100 x 1000}]
        bench: {cradles: {material: balsa, thickness: 3}}
        retention: {bolts: {thread: M4, ahead_of_trailing_edge: 20, plate: {material: balsa, thickness: 3}}}
        cutter: {fit: 0.1}

        """;

    [Fact]
    public void Nothing_measured_leaves_no_trace()
    {
        Assert.Null(Read("").AsBuilt);
        Assert.Null(Read("as_built: {}").AsBuilt);
    }

    [Fact]
    public void A_sheet_takes_with_it_what_is_cut_from_it_and_what_it_goes_through()
    {
        var built = Read(Workshop + "as_built: {stock: [{name: B3, thickness: 3.2}], formers: [{name: F4, thickness: 2.9}]}");
        Assert.Equal(3.2, built.Stock[0].Thickness);

        // Of its material and thickness; measured by itself otherwise; other material; measured as built.
        Assert.Equal([3.2, 3.1, 3, 2.9], built.Formers.Select(former => Math.Round(former.Thickness, 12)));

        // Upright: the width follows, with the fit of 0.1; across: the depth does; a plain one stays.
        Assert.Equal([(3.3, 12), (10, 3.3), (3, 9)], built.Formers[1].Slots.Select(slot => (Math.Round(slot.Width, 12), Math.Round(slot.Depth, 12))));
        Assert.Equal(3.2, built.Formers[1].Tabs[0].Depth, 1e-12);
        Assert.Equal(3.2, built.Bench.Cradles.Thickness, 1e-12);
        Assert.Equal(3.2, built.Bolts!.Plate.Thickness, 1e-12);
        Assert.Equal(3, built.AsBuilt!.Designed.Stock[0].Thickness);
    }

    [Fact]
    public void Sheets_alike_that_measure_alike_take_their_parts_with_them()
    {
        var text = Workshop.Replace("1000}]", "1000}, {name: B3b, material: balsa, thickness: 3, size: 80 x 1000}]", StringComparison.Ordinal);
        var built = Read(text + "as_built: {stock: [{name: B3, thickness: 3.2}, {name: B3b, thickness: 3.2}]}");
        Assert.Equal(3.2, built.Formers[0].Thickness, 1e-12);
    }

    [Fact]
    public void A_thicker_root_is_as_thick_as_measured_and_the_tip_that_takes_its_section_follows()
    {
        // The sound wing's only panel gives no tip: it is the root's.
        var built = Read("as_built: {wing: {root: {thickness: 25, chord: 201}}}").Wing;
        Assert.Equal(25, built.Root.Section.Thickness * built.Root.Chord, 1e-9);
        Assert.Equal((201, 201), (built.Root.Chord, built.Panels[0].Tip.Chord));
        Assert.Same(built.Root.Section, built.Panels[0].Tip.Section);
    }

    [Fact]
    public void A_measured_thickness_scales_the_highest_ordinate_about_the_mean_line()
    {
        var (designed, built) = (Read("").Wing.Root.Section, Read("as_built: {wing: {root: {thickness: 25}}}").Wing.Root.Section);
        var factor = 25 / (200 * designed.Thickness);
        for (var w = 0.05; w < 1; w += 0.05)
        {
            var (upper, lower) = (designed.Upper(w).Y, designed.Lower(w).Y);
            var mean = (upper + lower) / 2;
            Assert.Equal(mean + (factor * (upper - mean)), built.Upper(w).Y, 1e-12);
            Assert.Equal(mean + (factor * (lower - mean)), built.Lower(w).Y, 1e-12);
        }
    }

    [Fact]
    public void A_tip_with_a_section_of_its_own_keeps_it()
    {
        var text = BrokenDescription.Sound.Replace("[{length: 500}]", "[{length: 500, tip: {section: naca 2410, chord: 150}}]", StringComparison.Ordinal);
        var built = Description.ReadSound(text + "as_built: {wing: {root: {thickness: 25}}}\n");
        Assert.Equal(("NACA 2410", 150), (built.Wing.Panels[0].Tip.Section.Name, built.Wing.Panels[0].Tip.Chord));
        built = Description.ReadSound(text + "as_built: {wing: {tips: [{panel: 1, thickness: 15.4}]}}\n");
        Assert.Equal("NACA 2412", built.Wing.Root.Section.Name);
        Assert.Equal(15.4, built.Wing.Panels[0].Tip.Section.Thickness * 150, 1e-9);
    }

    [Fact]
    public void A_listed_station_is_replaced_and_another_put_in_between()
    {
        var built = Read("as_built: {fuselage: [{station: 600, breadth: 82, lower: -41}, {station: 300, breadth: 81}]}").Fuselage;
        Assert.Equal(
            [(0, 40, 40, 40, -40), (300, 40.5, 40.5, 40, -40), (600, 41, 41, 40, -41)],
            built.Stations.Select(s => (s.Station, s.UpperHalfBreadth, s.LowerHalfBreadth, s.Upper, s.Lower)));
    }

    [Fact]
    public void A_station_put_into_a_fair_run_leaves_all_that_was_not_measured_where_it_was()
    {
        const string Stations = """
              run: fair
              stations:
                - {station: 0, half_breadth: 30, upper: 30, lower: -30, shape: ellipse}
                - {station: 150, half_breadth: 45, upper: 44, lower: -52, shape: ellipse}
                - {station: 380, half_breadth: 38, upper: 50, lower: -35, shape: ellipse}
                - {station: 600, half_breadth: 9, upper: 20, lower: 2, shape: ellipse}

            """;
        var text = BrokenDescription.Sound[..BrokenDescription.Sound.IndexOf("  stations:", StringComparison.Ordinal)] + Stations;
        var built = Description.ReadSound(text + "as_built: {fuselage: [{station: 250, breadth: 91.5}]}\n");
        FuselageDescription before = built.AsBuilt!.Designed.Fuselage, after = built.Fuselage;
        Assert.Equal(5, after.Stations.Length);
        Assert.Equal(91.5, 2 * after.Stations[2].UpperHalfBreadth, 1e-9);
        for (var x = 0.0; x <= 600; x += 7.5)
        {
            foreach (var value in new Func<FuselageStation, double>[] { s => s.Upper, s => s.Lower, s => s.Shape.UpperUp, s => s.Shape.LowerUp })
            {
                Assert.Equal(At(before, value, x), At(after, value, x), 1e-9);
            }
        }

        static double At(FuselageDescription body, Func<FuselageStation, double> value, double x)
        {
            var span = body.Stations.Take(body.Stations.Length - 1).Count(station => station.Station <= x) - 1;
            return body.Along(value).At(span, x).Value;
        }
    }

    [Fact]
    public void Applying_is_a_function_of_design_and_measurements_alone()
    {
        var built = Description.ReadSound(Description.Complete);
        var again = AsBuiltDescription.Apply(built.AsBuilt!.Designed, built.AsBuilt.Measurements);
        Assert.Equal(Description.Canonical(built), Description.Canonical(again));
        Assert.Same(built.AsBuilt.Designed, AsBuiltDescription.Apply(built.AsBuilt.Designed, ImmutableArray<Measurement>.Empty));
    }

    private static AirframeDescription Read(string more)
    {
        var result = AirframeReader.Read("test.yaml", BrokenDescription.Sound + more + "\n", _ => null);
        Assert.DoesNotContain(result.Diagnostics, finding => finding.Severity == Airframe.Diagnostics.Severity.Error);
        return result.Airframe!;
    }
}
