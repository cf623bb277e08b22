using CsCheck;
using PlanForge.Airframe.Sections;
using PlanForge.Geometry;

namespace PlanForge.Airframe.Tests.Sections;

public sealed class UndersideTests
{
    // A wedge on a flat, its sharp nose 3 % above the flat: the chord, from the nose to the trailing edge, falls towards the
    // tail by atan 0.03 when the flat is level. With the chord level the flat's front end is the lower one: the angle is
    // negative, and the chord's incidence is the flat's incidence less it, 1.718° more.
    [Fact]
    public void The_angle_of_a_flat_under_a_raised_nose_is_negative()
    {
        Point2[] upper = [new(0, 0.03), new(0.1, 0.05), new(0.2, 0.07), new(0.3, 0.09), new(0.5, 0.0642857142857143), new(0.8, 0.0257142857142857), new(1, 0)];
        Point2[] lower = [new(0, 0.03), new(0.02, 0.02), new(0.04, 0.01), new(0.06, 0), new(0.3, 0), new(0.6, 0), new(1, 0)];
        var section = SectionFile.Read("wedge.dat", DatText.Lists(upper, lower, format: "R")).Section;
        Assert.NotNull(section);
        var line = Assert.NotNull(section.Underside);
        Assert.Equal(-Math.Atan(0.03), line.Angle, 1e-12);

        // The distance between its ends is that from (0.06, 0) to (1, 0), over the chord sqrt(1 + 0.03²).
        Assert.Equal(0.94 / Math.Sqrt(1.0009), line.Front.DistanceTo(line.Rear), 1e-12);
        Assert.Equal(1, line.Rear.X, 1e-12);
        Assert.Equal(0, line.Rear.Y, 1e-12);
    }

    [Fact]
    public void A_level_flat_has_the_angle_0()
    {
        Point2[] upper = [default, new(0.1, 0.02), new(0.2, 0.04), new(0.3, 0.06), new(0.5, 0.0428571428571429), new(0.8, 0.0171428571428571), new(1, 0)];
        Point2[] lower = [default, new(0.25, 0), new(0.6, 0), new(1, 0)];
        Assert.Equal(new(0, new(0, 0), new(1, 0)), DatText.Read(DatText.Lists(upper, lower, format: "R")).Underside);
    }

    // Source: the ordinates in clark-y.dat: the flat runs from 30 % to the trailing edge, the chord from (0, 3.5) to (100, 0.06).
    [Fact]
    public void The_flat_of_Clark_Y_is_found_with_its_angle_to_the_chord()
    {
        var section = SectionFile.Read("clark-y.dat", TableFile.Text("clark-y.dat")).Section;
        Assert.NotNull(section);
        var line = Assert.NotNull(section.Underside);
        Assert.Equal(-Math.Atan(0.0344), line.Angle, 1e-10);
        Assert.Equal(70 / Math.Sqrt(10011.8336), line.Front.DistanceTo(line.Rear), 1e-10);
    }

    [Fact]
    public void A_flat_printed_with_five_decimals_is_found_to_its_rounding()
    {
        var exact = SectionFile.Read("clark-y.dat", TableFile.Text("clark-y.dat")).Section;
        Assert.NotNull(exact);
        var section = DatText.Read(DatText.Loop(DatText.Surface(exact.Upper, 40), DatText.Surface(exact.Lower, 40), format: "0.00000"));
        var line = Assert.NotNull(section.Underside);

        // Two points 5e-6 off over the distance between the touching places.
        var length = line.Rear.X - line.Front.X;
        Assert.InRange(length, 0.25, 0.75);
        Assert.Equal(-Math.Atan(0.0344), line.Angle, 1e-5 / length);
    }

    // Rounding may leave a flat a trace hollow or a trace round. Up to 2e-5 of the chord, 5 µm of 250 mm, it still is one.
    [Fact]
    public void A_flat_that_is_a_trace_round_is_still_a_flat()
    {
        var line = Assert.NotNull(new Bowed(1.9e-5).Underside);
        Assert.Equal(0, line.Angle, 1e-15);
        Assert.Equal((0.0, 1.0), (line.Front.X, line.Rear.X));
        Assert.Null(new Bowed(1e-3).Underside);
    }

    [Theory]
    [InlineData("0012")]
    [InlineData("2412")]
    [InlineData("23012")]
    public void A_convex_underside_has_no_line(string digits) => Assert.Null(Naca.Section(digits).Underside);

    // The definition itself: no point of the surface lies below the line, and it is tangent where it touches, but for the
    // trailing edge, where the surface ends.
    [Fact]
    public void The_line_under_a_hollow_section_touches_from_below_at_two_places() =>
        Gen.Select(Gen.Int[4, 7], Gen.Int[3, 6], Gen.Int[6, 12]).Sample(
            (camber, place, thickness) =>
            {
                var section = Naca.Section(FormattableString.Invariant($"{camber}{place}{thickness:00}"));
                if (section.Underside is not { } line)
                {
                    return;
                }

                var slope = (line.Rear.Y - line.Front.Y) / (line.Rear.X - line.Front.X);
                Assert.Equal(Math.Atan(-slope), line.Angle, 1e-14);
                for (var i = 0; i <= 2000; i++)
                {
                    var point = section.Lower(i / 2000.0);
                    Assert.True(point.Y - line.Front.Y - (slope * (point.X - line.Front.X)) > -1e-12);
                }

                foreach (var touch in (Point2[])[line.Front, line.Rear])
                {
                    var w = Naca.ParameterAt(section.Lower, touch.X);
                    var at = section.Lower(w);
                    Assert.Equal(touch.Y, at.Y, 1e-13);
                    Assert.True(w == 1 || Math.Abs((at.Dy / at.Dx) - slope) < 1e-10);
                }
            },
            iter: 60);

    [Fact]
    public void A_hollow_section_has_a_line() => Assert.True(Naca.Section("6409").Underside is { } line && line.Rear.X - line.Front.X > 0.25);

    // A triangle over an arc of so much sagitta, in chords: y = −4 sagitta x (1 − x).
    private sealed class Bowed(double sagitta) : Section
    {
        public override string Name => "Bowed";

        public override SectionPoint Upper(double w) => new(w * w, 0.1 * w * w * (1 - (w * w)), 2 * w, (0.2 * w) - (0.4 * w * w * w));

        public override SectionPoint Lower(double w) =>
            new(w * w, -4 * sagitta * w * w * (1 - (w * w)), 2 * w, -4 * sagitta * ((2 * w) - (4 * w * w * w)));
    }
}
