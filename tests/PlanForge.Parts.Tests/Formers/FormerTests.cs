using PlanForge.Airframe;
using PlanForge.Airframe.Diagnostics;
using PlanForge.Geometry;
using PlanForge.Geometry.Regions;
using static PlanForge.Parts.Tests.Build;

namespace PlanForge.Parts.Tests.Formers;

public class FormerTests
{
    [Fact]
    public void Bevel_of_a_linear_taper_is_its_angle_and_the_skin_is_wider_than_its_thickness()
    {
        // shared/check-values.md 12.10: half-width 60 to 54 in 100 mm: 3.433630 degrees; planking 2.5 narrows by 2.504496; step 0.18 over 3.
        var description = Tapered(2.5, Description.Former("F", 60));
        var part = Description.Single(description, "former-F");
        Assert.Equal(3.433630, part.Value("former.F.bevel.side.50") * 180 / Math.PI, 6);

        var front = 60 - (0.06 * 60) - 2.504496;
        var widest = part.Lines(LineUse.Cut).First().Bounds;
        Assert.Equal(front, widest.MaxX, tolerance: 1e-6);
        Assert.Equal(-front, widest.MinX, tolerance: 1e-6);
        Assert.Equal(0.18, 3 * Math.Tan(part.Value("former.F.bevel.side.50")), 9);
    }

    [Fact]
    public void A_wing_with_dihedral_cuts_a_v_of_the_supplement_of_twice_its_angle()
    {
        // Elementary: two planes tilted by G to both sides meet at 180° − 2G; at half-breadth y each is y tan G up.
        const double g = 5;
        var part = Description.Single(Description.PlateOnBox(g, 0, Description.Former("F", 180)), "former-F");
        var outline = part.Lines(LineUse.Cut).First();
        var (centre, side) = (PointOn(outline, 0), PointOn(outline, 42));
        Assert.Equal(60, centre, tolerance: 1e-6);
        Assert.Equal(60 + (42 * Math.Tan(Degrees(g))), side, tolerance: 1e-6);
        var flank = Math.Atan2(side - centre, 42) * 180 / Math.PI;
        Assert.Equal(180 - (2 * g), 180 - (2 * flank), tolerance: 1e-6);
    }

    [Fact]
    public void A_former_clear_of_the_wing_keeps_its_whole_height()
    {
        var part = Description.Single(Description.PlateOnBox(5, 0, Description.Former("F", 30)), "former-F");
        var bounds = part.Lines(LineUse.Cut).First().Bounds;
        Assert.Equal([-42, -37, 42, 87], new[] { bounds.MinX, bounds.MinY, bounds.MaxX, bounds.MaxY }.Select(value => Math.Round(value, 9)));
    }

    [Fact]
    public void An_inclined_wing_gives_both_faces_their_own_cut_line()
    {
        var part = Description.Single(Description.PlateOnBox(0, 4, Description.Former("F", 180, 6)), "former-F");
        var (front, rear) = (part.Value("former.F.cut.front.centre"), part.Value("former.F.cut.rear.centre"));
        Assert.Equal(6 * Math.Tan(Degrees(4)), front - rear, 9);

        // The higher face is what is cut; the lower one is bevelled to.
        Assert.Equal(front, part.Lines(LineUse.Cut).First().Bounds.MaxY, tolerance: 1e-6);
    }

    [Fact]
    public void Allowance_adds_its_depth_and_draws_the_trim_line_where_the_edge_was()
    {
        var plain = Description.Single(Description.PlateOnBox(0, 0, Description.Former("F", 30)), "former-F");
        var long_ = Description.Single(
            Description.PlateOnBox(0, 0, Description.Former("F", 30) with { Allowance = new(0, 8, 0) }), "former-F");
        Assert.Equal(plain.Lines(LineUse.Cut).First().Bounds.MinY - 8, long_.Lines(LineUse.Cut).First().Bounds.MinY, 9);
        Assert.Equal(plain.Value("former.F.area") + (84 * 8), long_.Value("former.F.area"), 6);
        var trim = Assert.Single(long_.Lines(LineUse.Trim));
        Assert.Equal(new Bounds2(-42, -37, 42, -37), trim.Bounds);
    }

    [Fact]
    public void Longerons_notch_both_corners_by_their_size()
    {
        var description = Description.PlateOnBox(0, 0, Description.Former("F", 30));
        description = description with
        {
            Fuselage = description.Fuselage with
            {
                Longerons = [new("l", LongeronPlace.LowerCorner, 0, 6, 8, Nowhere), new("s", LongeronPlace.Side, 20, 5, 4, Nowhere), new("k", LongeronPlace.Keel, 0, 6, 10, Nowhere)],
            },
        };
        var part = Description.Single(description, "former-F");
        Assert.Equal((84 * 124) - (2 * 6 * 8) - (2 * 5 * 4) - (6 * 10), part.Value("former.F.area"), 6);
    }

    [Fact]
    public void Openings_slots_and_tabs_change_the_area_by_theirs_and_circles_stay_circles()
    {
        var former = Description.Former("F", 30) with
        {
            Openings = [new(0, 20, 30, 20, 4, Nowhere), new(20, -15, 10, 10, 5, Nowhere)],
            Slots = [new(0, 50, 3, 12, Nowhere)],
            Tabs = [new(TabEdge.Side, 10, 12, 3, Nowhere), new(TabEdge.Lower, 0, 10, 4, Nowhere)],
        };
        var part = Description.Single(Description.PlateOnBox(0, 0, former), "former-F");

        // A rounded rectangle lacks (4 − π) r² at its corners.
        var rounded = (30 * 20) - ((4 - Math.PI) * 16);
        var expected = (84 * 124) - rounded - (2 * Math.PI * 25) - (3 * 12) + (2 * 12 * 3) + (10 * 4);
        Assert.Equal(expected, part.Value("former.F.area"), 6);
        Assert.Equal(2, part.Lines(LineUse.Cut).Count(path => path.AsCircle() is { Radius: 5 }));
    }

    [Fact]
    public void Lightening_leaves_exactly_its_rim_and_rounds_its_corners()
    {
        var former = Description.Former("F", 30) with { Lightening = new(10, 6, Nowhere) };
        var part = Description.Single(Description.PlateOnBox(0, 0, former), "former-F");

        // An inner rectangle 64 × 104 whose four corners have the radius 6.
        Assert.Equal((84 * 124) - ((64 * 104) - ((4 - Math.PI) * 36)), part.Value("former.F.area"), 6);
    }

    [Fact]
    public void A_bevelled_edge_drops_by_the_thickness_times_the_tangent()
    {
        var former = Description.Former("F", 30, 4) with { Bevel = new(FormerEdge.Upper, FormerFace.Rear, Degrees(30), Nowhere) };
        var part = Description.Single(Description.PlateOnBox(0, 0, former), "former-F");
        Assert.Contains(part.Lines(LineUse.Score), path => Math.Abs(path.Bounds.MinY - (87 - (4 * Math.Tan(Degrees(30))))) < 1e-9);
    }

    [Fact]
    public void Port_and_starboard_mirror_each_other_to_the_last_digit()
    {
        FuselageStation[] stations =
        [
            new(0, 40, 34, 60, -50, new(20, 24, 12, 16), Run.Fair, Nowhere),
            new(250, 55, 48, 90, -60, new(30, 30, 14, 14), Run.Fair, Nowhere),
            new(500, 30, 28, 50, -40, new(20, 20, 20, 20), Run.Fair, Nowhere),
        ];
        var description = Description.PlateOnBox(3, 1, Description.Former("F", 80), Description.Former("G", 200));
        description = description with { Fuselage = description.Fuselage with { Stations = [.. stations] } };
        foreach (var id in new[] { "former-F", "former-G" })
        {
            var outline = Description.Single(description, id).Lines(LineUse.Cut).First();
            var mirrored = Region2.FromContours(FillRule.NonZero, outline.Placed(Placement2.Mirror));
            Assert.Equal(0, mirrored.Difference(Region2.FromContours(FillRule.NonZero, outline)).Area, 6);
        }
    }

    [Fact]
    public void Walls_under_three_millimetres_and_dowel_holes_near_an_edge_are_warned_of()
    {
        // Common practice, no source: 3 mm walls; 1.5 diameters from a dowel's axis to an edge.
        var thin = Description.Former("F", 30) with { Openings = [new(30, 0, 20, 20, 2, Nowhere)] };
        var near = Description.Former("G", 92, 4) with { IsCrossFormer = true };
        var description = Description.PlateOnBox(0, 0, thin, near) with { Dowels = new(8, 64, -2, 14, 0.1, Nowhere) };
        var findings = PartList.Of(description).Findings;
        Assert.Contains(findings, f => f.Severity == Severity.Warning && f.Message.Contains("former F has a wall of 2 mm", StringComparison.Ordinal));
        Assert.Contains(findings, f => f.Severity == Severity.Warning && f.Message.Contains("the dowel axis is 10 mm from an edge of former G", StringComparison.Ordinal));
    }

    [Fact]
    public void A_former_across_the_trailing_edge_is_warned_of()
    {
        var findings = PartList.Of(Description.PlateOnBox(0, 0, Description.Former("F", 299, 4))).Findings;
        Assert.Contains(findings, f => f.Message.Contains("leading or trailing edge passes former F", StringComparison.Ordinal));
    }

    [Fact]
    public void A_former_with_nothing_left_inside_the_skins_is_an_error()
    {
        var description = Description.PlateOnBox(0, 0, Description.Former("F", 30));
        description = description with { Fuselage = description.Fuselage with { Skin = new(50, 50, 50) } };
        var list = PartList.Of(description);
        Assert.Empty(list.Parts);
        Assert.Contains(list.Findings, f => f.Severity == Severity.Error && f.Message.StartsWith("nothing of former F remains at station 30 mm", StringComparison.Ordinal));
    }

    private static AirframeDescription Tapered(double skin, FormerDescription former)
    {
        var description = Description.PlateOnBox(0, 0, former);
        return description with
        {
            Fuselage = description.Fuselage with
            {
                Skin = new(skin, skin, skin),
                Stations = [Box(0, 60, 90, -40), Box(100, 54, 90, -40), Box(300, 42, 90, -40)],
            },
        };
    }

    // Height of the upper edge at a half-breadth.
    private static double PointOn(Path2 outline, double x)
    {
        // The cut line bounds the wood from above: the highest crossing of an upright line.
        var upright = Path2.Line(new(x == 42 ? 42 - 1e-9 : x, -1000), new(x == 42 ? 42 - 1e-9 : x, 1000));
        return upright.IntersectionsWith(outline, 1e-9).Max(crossing => crossing.Point.Y);
    }
}
