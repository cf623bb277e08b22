using CsCheck;
using PlanForge.Airframe.Sections;
using PlanForge.Geometry;

namespace PlanForge.Airframe.Tests.Sections;

/// <summary>Shapes that a smooth curve is apt to spoil: flats, thin tails, sharp noses, coarse tables.</summary>
public sealed class PointSectionShapeTests
{
    // Source of the points: data file clark-y.dat. Its chord, from (0, 3.5) to the middle of the trailing edge at (100, 0.06), is
    // brought on the x axis by a similarity, written out here.
    private static Point2 ClarkYInChords(double x, double y) =>
        new(((x * 100) - ((y - 3.5) * 3.44)) / 10011.8336, ((100 * (y - 3.5)) + (3.44 * x)) / 10011.8336);

    private static Section ClarkY()
    {
        var section = SectionFile.Read("clark-y.dat", TableFile.Text("clark-y.dat")).Section;
        Assert.NotNull(section);
        return section;
    }

    private static (Point2[] Upper, Point2[] Lower) ClarkYPoints()
    {
        var rows = TableFile.Text("clark-y.dat").Split('\n').Skip(3)
            .Select(line => line.Split(' ', StringSplitOptions.RemoveEmptyEntries)).Where(row => row.Length == 2)
            .Select(row => ClarkYInChords(Number(row[0]), Number(row[1]))).ToArray();
        return (rows[..17], rows[17..]);

        static double Number(string text) => double.Parse(text, System.Globalization.CultureInfo.InvariantCulture);
    }

    [Fact]
    public void Clark_Y_passes_through_its_published_ordinates()
    {
        var (section, (upper, lower)) = (ClarkY(), ClarkYPoints());
        Assert.Equal(17, lower.Length);
        Assert.All(upper[1..], point => Assert.Equal(point.Y, Naca.HeightAt(section.Upper, point.X), 1e-12));
        Assert.All(lower[1..], point => Assert.Equal(point.Y, Naca.HeightAt(section.Lower, point.X), 1e-12));
        Assert.InRange(Math.Min(Naca.DistanceTo(section.Upper, 0, 0), Naca.DistanceTo(section.Lower, 0, 0)), 0, 1e-12);
    }

    [Fact]
    public void Clark_Y_is_flat_from_thirty_percent_to_the_trailing_edge()
    {
        var section = ClarkY();
        Point2 front = ClarkYInChords(30, 0), rear = ClarkYInChords(100, 0);
        for (var i = 0; i <= 200; i++)
        {
            var on = front.Towards(rear, i / 200.0);
            Assert.Equal(on.Y, Naca.HeightAt(section.Lower, on.X), 1e-12);
        }

        // The flat begins at a break; so does the last interval before it, which has to land on it without dipping through.
        Assert.Equal([ClarkYInChords(20, 0.03).X, front.X], section.LowerBreaks.Select(w => section.Lower(w).X), Close);
        Assert.Empty(section.UpperBreaks);
    }

    [Fact]
    public void The_underside_of_Clark_Y_lies_nowhere_below_its_flat()
    {
        var section = ClarkY();
        Point2 front = ClarkYInChords(30, 0), rear = ClarkYInChords(100, 0);
        for (var i = 0; i <= 1000; i++)
        {
            var point = section.Lower(i / 1000.0);
            Assert.True((rear - front).Cross(new Point2(point.X, point.Y) - front) > -1e-14);
        }
    }

    // Convex data: between two points the curve lies outside their chord and inside the prolonged chords of the neighbours.
    [Fact]
    public void Clark_Y_bulges_nowhere() => AssertShaped(ClarkY().Upper, ClarkYPoints().Upper, 1, 1e-12);

    // From 10 % aft, where the rounding of the tables to 0.01 % is small against the curvature.
    [Theory]
    [InlineData("2412")]
    [InlineData("4412")]
    [InlineData("23012")]
    public void A_coarse_published_table_bulges_nowhere(string digits)
    {
        var rows = TableFile.Rows($"published-{digits}.txt").Where(row => row[0] > 0).ToArray();
        Point2[] upper = [default, .. rows.Select(row => new Point2(row[0] / 100, row[1] / 100))];
        Point2[] lower = [default, .. rows.Select(row => new Point2(row[0] / 100, row[2] / 100))];
        AssertShaped(DatText.Read(DatText.Lists(upper, lower)).Upper, upper, 5, 5e-5);
    }

    // A table whose last ordinate was forced to another thickness has a kink before it: the last interval must take it up
    // without leaving the triangle between its chord and the prolonged chord before it.
    [Fact]
    public void A_forced_trailing_edge_does_not_make_the_last_interval_bulge() =>
        Gen.Double[0, 0.02].Sample(
            end =>
            {
                var rows = TableFile.Rows("published-2412.txt").Where(row => row[0] > 0).ToArray();
                Point2[] upper = [default, .. rows.Select(row => new Point2(row[0] / 100, row[1] / 100))];
                Point2[] lower = [default, .. rows.Select(row => new Point2(row[0] / 100, row[2] / 100))];
                upper[^1] = new(1, end);
                lower[^1] = new(1, -end);
                var section = SectionFile.Read("forced.dat", DatText.Lists(upper, lower)).Section;
                Assert.NotNull(section);
                var before = (upper[^2].Y - upper[^3].Y) / (upper[^2].X - upper[^3].X);
                for (var x = 0.95; x <= 1; x += 0.001)
                {
                    var chord = upper[^2].Towards(upper[^1], (x - 0.95) / 0.05).Y;
                    var prolonged = upper[^2].Y + (before * (x - 0.95));
                    Assert.InRange(
                        Naca.HeightAt(section.Upper, x), Math.Min(chord, prolonged) - 5e-5, Math.Max(chord, prolonged) + 5e-5);
                }
            },
            iter: 300);

    // Points 0.5 % apart printed to 0.01 % tell their curvature badly; carried on over a last interval twenty times as long, it
    // would bulge by 0.5 %.
    [Theory]
    [InlineData("0012")]
    [InlineData("2412")]
    public void A_long_last_interval_behind_dense_rounded_points_does_not_bulge(string digits)
    {
        var naca = Naca.Section(digits);
        double[] stations = [0.0125, 0.025, 0.05, .. Enumerable.Range(0, 166).Select(i => 0.075 + (i * 0.005)), 1];
        Point2[] Table(Func<double, SectionPoint> surface) => [default, .. stations.Select(x => new Point2(x, Naca.HeightAt(surface, x)))];
        var section = DatText.Read(DatText.Lists(Table(naca.Upper), Table(naca.Lower), format: "0.0000"));
        for (var x = 0.9; x <= 1; x += 0.002)
        {
            Assert.Equal(Naca.HeightAt(naca.Upper, x), Naca.HeightAt(section.Upper, x), 4e-4);
            Assert.Equal(Naca.HeightAt(naca.Lower, x), Naca.HeightAt(section.Lower, x), 4e-4);
        }
    }

    [Fact]
    public void A_flat_printed_with_few_decimals_stays_flat_to_its_rounding()
    {
        // The flat of Clark Y turned, printed to six decimals: every point up to 5e-7 off the line.
        var (upper, lower) = ClarkYPoints();
        var section = DatText.Read(DatText.Lists(upper, lower, format: "0.000000"));
        Point2 front = ClarkYInChords(30, 0), rear = ClarkYInChords(100, 0);
        for (var i = 0; i <= 200; i++)
        {
            var on = front.Towards(rear, i / 200.0);
            Assert.Equal(on.Y, Naca.HeightAt(section.Lower, on.X), 1e-6);
        }
    }

    [Fact]
    public void A_wedge_keeps_its_corners_and_straight_sides()
    {
        Point2[] upper = [default, new(0.1, 0.02), new(0.2, 0.04), new(0.3, 0.06), new(0.5, 0.6 / 14), new(0.8, 0.24 / 14), new(1, 0)];
        Point2[] lower = [default, new(0.25, 0), new(0.6, 0), new(1, 0)];
        var section = DatText.Read(DatText.Loop(upper, lower, format: "R"));
        for (var x = 0.0; x <= 1; x += 1 / 256.0)
        {
            Assert.Equal(x < 0.3 ? 0.2 * x : 0.6 * (1 - x) / 7, Naca.HeightAt(section.Upper, x), 1e-14);
            Assert.Equal(0, Naca.HeightAt(section.Lower, x), 1e-14);
        }

        Assert.Equal(Math.Sqrt(0.3), Assert.Single(section.UpperBreaks), 1e-15);
        Assert.Empty(section.LowerBreaks);
    }

    [Fact]
    public void A_half_round_section_has_a_corner_at_the_end_of_its_flat()
    {
        // Invented: y = 0.2 sqrt(x) (1 − x) over a flat.
        Point2[] upper = [.. Enumerable.Range(0, 31).Select(i => i * i / 900.0).Select(x => new Point2(x, 0.2 * Math.Sqrt(x) * (1 - x)))];
        Point2[] lower = [default, new(0.2, 0), new(0.5, 0), new(0.7, 0), new(1, 0)];
        var section = DatText.Read(DatText.Lists(upper, lower, format: "R"));
        Assert.Equal(0, section.Lower(0).Dy);
        Assert.Equal(0.2, section.Upper(0).Dy, 1e-3);
        var line = Assert.NotNull(section.Underside);
        Assert.Equal(section.Lower(0).X, line.Front.X, 1e-12);
        Assert.Equal(section.Lower(1).X, line.Rear.X, 1e-12);
    }

    // Two points one above the other at the very front: the nose is round and lies before them.
    [Fact]
    public void Two_points_that_share_the_foremost_x_have_the_nose_between_them()
    {
        var naca = Naca.Section("0012");
        double[] w = [.. Enumerable.Range(0, 26).Select(i => (i + 0.5) / 25.5)];
        Point2[] upper = [.. w.Select(naca.Upper).Select(point => new Point2(point.X, point.Y))];
        Point2[] lower = [.. w.Select(naca.Lower).Select(point => new Point2(point.X, point.Y))];
        var section = DatText.Read(DatText.Lists(upper, lower, format: "R"));
        Assert.Equal(0, section.Upper(0).X, 1e-5);
        Assert.Equal(0, section.Upper(0).Y, 1e-6);
    }

    // Very sparse points of sections that are sharply bent at the nose, the two foremost with the same x but for a millionth. The
    // points do not tell the nose; the curve may be 2 % off there but not fly away.
    [Theory]
    [InlineData("41007", 12)]
    [InlineData("41011", 8)]
    [InlineData("42012", 8)]
    public void Foremost_points_that_all_but_share_their_x_do_not_throw_the_curve_out(string digits, int count)
    {
        var naca = Naca.Section(digits);
        double[] w = [.. Enumerable.Range(0, count).Select(i => (i + 0.5) / (count - 0.5))];
        Point2[] Table(Func<double, SectionPoint> surface) => [.. w.Select(surface).Select(point => new Point2(point.X, point.Y))];
        var section = DatText.Read(DatText.Lists(Table(naca.Upper), Table(naca.Lower), format: "0.000000"));
        for (var i = 0; i <= 400; i++)
        {
            var (upper, lower) = (naca.Upper(i / 400.0), naca.Lower(i / 400.0));
            Assert.InRange(Naca.DistanceTo(section.Upper, upper.X, upper.Y), 0, 0.02);
            Assert.InRange(Naca.DistanceTo(section.Lower, lower.X, lower.Y), 0, 0.02);
        }
    }

    private static bool Close(double a, double b) => Math.Abs(a - b) < 1e-12;

    private static void AssertShaped(Func<double, SectionPoint> surface, Point2[] points, int first, double slack)
    {
        for (var i = first; i + 1 < points.Length; i++)
        {
            Point2 a = points[i], b = points[i + 1];
            for (var part = 0.0; part <= 1; part += 1 / 16.0)
            {
                var chord = a.Towards(b, part);
                var y = Naca.HeightAt(surface, chord.X);
                var before = On(points[i - 1], a, chord.X);
                var behind = i + 2 < points.Length ? On(b, points[i + 2], chord.X) : double.PositiveInfinity;
                Assert.InRange(y, chord.Y - slack, Math.Min(before, behind) + slack);
            }
        }
    }

    private static double On(Point2 a, Point2 b, double x) => a.Y + ((b.Y - a.Y) * (x - a.X) / (b.X - a.X));
}
