using PlanForge.Geometry.Fitting;
using PlanForge.Geometry.Regions;

namespace PlanForge.Geometry.Tests.Fitting;

public sealed class ArcFitterTests
{
    // The largest kink allowed inside a smooth piece, radians, as the fitter's contract states it.
    private const double GreatestKink = 1e-6;

    public static TheoryData<string, double> CurvesAndTolerances()
    {
        var data = new TheoryData<string, double>();
        foreach (var name in new[] { "clothoid", "ellipse", "parabola", "wave", "nose", "full ellipse" })
        {
            foreach (var tolerance in new[] { 0.1, 0.01, 0.001, 1e-4 })
            {
                data.Add(name, tolerance);
            }
        }

        return data;
    }

    private static TestCurve Named(string name) => name switch
    {
        "clothoid" => TestCurve.Clothoid(1e-4, -150, 220),
        "ellipse" => TestCurve.Ellipse(80, 30, 0.3, 3.9),
        "full ellipse" => TestCurve.Ellipse(60, 45, 0, 2 * Math.PI),
        "parabola" => TestCurve.Parabola,
        "wave" => TestCurve.Wave,
        _ => TestCurve.Nose,
    };

    [Theory]
    [MemberData(nameof(CurvesAndTolerances))]
    public void Fit_of_a_function_stays_within_the_tolerance_both_ways_and_has_no_kinks(string name, double tolerance)
    {
        var curve = Named(name);
        var path = ArcFitter.Fit(curve.At, curve.From, curve.To, [], tolerance);

        Assert.Equal(curve.At(curve.From).Point, path.Start);
        Assert.Equal(curve.At(curve.To).Point, path.End);
        AssertNear(curve, path, tolerance);
        AssertSmooth(path);
    }

    [Theory]
    [MemberData(nameof(CurvesAndTolerances))]
    public void Fit_of_dense_samples_stays_within_the_tolerance_both_ways_and_has_no_kinks(string name, double tolerance)
    {
        var curve = Named(name);
        var path = ArcFitter.Fit(curve.Samples(1001), tolerance);

        AssertNear(curve, path, tolerance);
        AssertSmooth(path);
    }

    // check-values 12.13: the error of a biarc goes with the cube of its length, so the number of segments goes with the
    // cube root of the tolerance: 10^(1/3) = 2.154 a decade.
    [Theory]
    [InlineData("clothoid")]
    [InlineData("ellipse")]
    [InlineData("parabola")]
    [InlineData("nose")]
    public void Segment_count_grows_with_the_cube_root_of_the_tolerance(string name)
    {
        var curve = Named(name);
        var coarse = ArcFitter.Fit(curve.At, curve.From, curve.To, [], 1e-3).SegmentCount;
        var fine = ArcFitter.Fit(curve.At, curve.From, curve.To, [], 1e-6).SegmentCount;

        Assert.InRange(fine / (double)coarse, 8.5, 11.5);
    }

    // check-values 12.13, inverted: a piece of length h has the error rate·h³/324, so a clothoid of length L takes at least
    // L/(324·tolerance/rate)^(1/3) biarcs of two arcs each. The fit may lose a quarter to its margins and its last piece.
    [Theory]
    [InlineData(1e-4, 0.01)]
    [InlineData(1e-4, 0.0001)]
    [InlineData(2e-5, 0.005)]
    public void Clothoid_takes_hardly_more_arcs_than_the_error_of_a_biarc_demands(double rate, double tolerance)
    {
        var curve = TestCurve.Clothoid(rate, 10, 250);
        var least = 240 / Math.Cbrt(324 * tolerance / rate);
        var path = ArcFitter.Fit(curve.At, curve.From, curve.To, [], tolerance);

        Assert.InRange(path.SegmentCount, 2 * least * 0.95, (2 * least * 1.25) + 2);
    }

    [Fact]
    public void Straight_line_is_one_line_however_it_is_given()
    {
        var line = TestCurve.Line(new(3, 7), new(211.25, -40.5));

        foreach (var path in new[]
        {
            ArcFitter.Fit(line.At, 0, 1, [], 0.01), ArcFitter.Fit(line.At, 0, 1, [0.25, 0.5], 0.01),
            ArcFitter.Fit(line.Samples(2), 0.01), ArcFitter.Fit(line.Samples(500), 0.01),
        })
        {
            Assert.Equal([new(new(3, 7)), new(new(211.25, -40.5))], path.Vertices);
        }
    }

    [Theory]
    [InlineData(25, 0, 1)]
    [InlineData(100, -2, 2.5)]
    [InlineData(8, 0.1, 6.1)]
    [InlineData(4000, 0, 0.05)]
    public void Circular_arc_is_one_arc(double radius, double from, double to)
    {
        var arc = TestCurve.Circle(new(-20, 35), radius, from, to);

        foreach (var path in new[] { ArcFitter.Fit(arc.At, from, to, [], 0.01), ArcFitter.Fit(arc.Samples(200), 0.01) })
        {
            AssertArc(Assert.Single(path.Segments), radius, to - from);
        }
    }

    [Fact]
    public void Closed_circle_becomes_a_circle()
    {
        var circle = TestCurve.Circle(new(12, -5), 31, 0.4, 0.4 + (2 * Math.PI));
        var samples = circle.Samples(101);

        foreach (var path in new[] { ArcFitter.FitClosed(samples[..^1], 0.01), ArcFitter.FitClosed([.. samples[..^1], samples[0]], 0.01) })
        {
            var (centre, radius) = Assert.NotNull(path.AsCircle());
            Assert.Equal(0, centre.DistanceTo(new(12, -5)), 1e-9);
            Assert.Equal(31, radius, 1e-9);
        }
    }

    [Fact]
    public void Closed_ellipse_is_closed_without_a_kink()
    {
        var ellipse = TestCurve.Ellipse(60, 40, 0, 2 * Math.PI);
        var path = ArcFitter.FitClosed(ellipse.Samples(721)[..^1], 0.01);

        Assert.True(path.IsClosed);
        AssertNear(ellipse, path, 0.01);
        AssertSmooth(path);

        // Between the ellipses that the tolerance allows.
        Assert.InRange(path.SignedArea, Math.PI * 59.99 * 39.99, Math.PI * 60.01 * 40.01);
    }

    // A drop: three quarters of an ellipse whose ends are joined by two lines that meet in a corner, which is the seam.
    [Fact]
    public void Closed_curve_may_have_its_seam_in_a_corner()
    {
        var ellipse = TestCurve.Ellipse(30, 20, 0.6, (2 * Math.PI) - 0.6);
        var (first, last) = (ellipse.At(0.6), ellipse.At((2 * Math.PI) - 0.6));
        var tip = new Point2(first.Point.X - (first.Direction.X * first.Point.Y / first.Direction.Y), 0);
        var path = ArcFitter.FitClosed([new(tip, first.Direction), .. ellipse.Samples(400), new(tip, last.Direction)], 0.01);

        Assert.Equal(tip, path.Start);
        Assert.Equal(1, KinksOver(path, GreatestKink));
        Assert.Equal(2, path.Segments.Count(segment => segment.IsLine));
        Assert.Empty(ContourAudit.Find(path));
    }

    [Fact]
    public void Straight_run_between_curves_is_one_exact_line()
    {
        // A clothoid into a straight line of 70 mm and another clothoid out of it; no break is given.
        static CurveSample At(double s)
        {
            const double Rate = 2e-4;
            var clothoid = TestCurve.Clothoid(Rate, 0, 100).At;
            switch (s)
            {
                case < 0:
                    var before = clothoid(-s);
                    return new(new(-before.Point.X, before.Point.Y), new(before.Direction.X, -before.Direction.Y));
                case <= 70:
                    return new(new(s, 0), new(1, 0));
                default:
                    var after = clothoid(s - 70);
                    return new(after.Point + new Vector2(70, 0), after.Direction);
            }
        }

        var curve = new TestCurve("line between clothoids", At, -90, 160);
        foreach (var path in new[]
        {
            ArcFitter.Fit(At, -90, 160, [0, 70], 0.01), ArcFitter.Fit(curve.Samples(2501), 0.01),
        })
        {
            AssertNear(curve, path, 0.01);
            AssertSmooth(path);
            var line = Assert.Single(path.Segments, segment => segment.IsLine && segment.Length > 20);
            Assert.Equal(70, line.Length, 0.15);
            Assert.Equal(0, line.Start.Y, 1e-9);
            Assert.Equal(0, line.End.Y, 1e-9);
        }
    }

    [Fact]
    public void Rounded_slot_given_with_its_breaks_comes_back_as_its_lines_and_arcs()
    {
        // Quarter arc, line, quarter arc of another radius.
        static CurveSample At(double s) => s switch
        {
            <= 10 * Math.PI => new(new(20 * Math.Sin(s / 20), 20 - (20 * Math.Cos(s / 20))), Vector2.FromAngle(s / 20)),
            <= (10 * Math.PI) + 50 => new(new(20, 20 + s - (10 * Math.PI)), new(0, 1)),
            _ => AtSecond(s - (10 * Math.PI) - 50),
        };

        static CurveSample AtSecond(double s) =>
            new(new(20 - 5 + (5 * Math.Cos(s / 5)), 70 + (5 * Math.Sin(s / 5))), new Vector2(-Math.Sin(s / 5), Math.Cos(s / 5)));

        var path = ArcFitter.Fit(At, 0, (10 * Math.PI) + 50 + (2.5 * Math.PI), [10 * Math.PI, (10 * Math.PI) + 50], 0.01);

        Assert.Equal(3, path.SegmentCount);
        AssertArc(path.SegmentAt(0), 20, Math.PI / 2);
        Assert.True(path.SegmentAt(1).IsLine);
        AssertArc(path.SegmentAt(2), 5, Math.PI / 2);
    }

    [Fact]
    public void Corner_marked_by_two_samples_is_a_vertex()
    {
        // Two parabola branches that meet at an angle of 2·atan(1).
        var left = TestCurve.Graph("left", x => x + (x * x / 200), x => 1 + (x / 100), -40, 0).Samples(100);
        var right = TestCurve.Graph("right", x => -x + (x * x / 200), x => -1 + (x / 100), 0, 40).Samples(100);
        var path = ArcFitter.Fit([.. left, .. right], 0.005);

        Assert.Contains(path.Vertices, vertex => vertex.Point == new Point2(0, 0));
        Assert.Equal(1, KinksOver(path, 0.1));
        Assert.Equal(1, KinksOver(path, GreatestKink));
    }

    [Fact]
    public void Corner_among_the_breaks_is_a_vertex_with_both_directions()
    {
        static CurveSample At(double x) => x < 0
            ? new(new(x, x * x / 100), new Vector2(1, x / 50).Unit())
            : new(new(x, (x * x / 100) + (x / 2)), new Vector2(1, (x / 50) + 0.5).Unit());

        var path = ArcFitter.Fit(At, -30, 30, [0], 0.005);

        Assert.Contains(path.Vertices, vertex => vertex.Point == new Point2(0, 0));
        Assert.Equal(1, KinksOver(path, GreatestKink));
        AssertNear(new("kinked", At, -30, 30), path, 0.005);
    }

    [Fact]
    public void Corner_that_is_not_among_the_breaks_is_refused()
    {
        static CurveSample At(double x) => new(new(x, Math.Abs(x)), new Vector2(1, x < 0 ? -1 : 1).Unit());

        Assert.Throws<ArgumentException>(() => ArcFitter.Fit(At, -29, 30, [], 0.01));
    }

    [Fact]
    public void Samples_that_turn_too_far_or_are_no_numbers_are_refused()
    {
        CurveSample[] corner = [new(new(0, 0), new(1, 0)), new(new(10, 0), new(-1, 0)), new(new(0, 5), new(-1, 0))];
        CurveSample[] broken = [new(new(0, 0), new(1, 0)), new(new(double.NaN, 0), new(1, 0))];
        CurveSample[] still = [new(new(0, 0), new(1, 0)), new(new(0, 0), new(0, 1))];

        Assert.Throws<CurveException>(() => ArcFitter.Fit(corner, 0.01));
        Assert.Throws<CurveException>(() => ArcFitter.Fit(broken, 0.01));
        Assert.Throws<CurveException>(() => ArcFitter.Fit(still, 0.01));
        Assert.Throws<ArgumentException>(() => ArcFitter.Fit([], 0.01));
        Assert.Throws<ArgumentOutOfRangeException>(() => ArcFitter.Fit(corner, 0));
    }

    private static void AssertArc(Segment2 arc, double radius, double sweep)
    {
        Assert.Equal(radius, arc.Radius, radius * 1e-9);
        Assert.Equal(sweep, arc.Sweep, 1e-9);
    }

    private static void AssertNear(TestCurve curve, Path2 path, double tolerance)
    {
        const int Count = 2000;
        var points = new Point2[Count + 1];
        var segment = 0;
        for (var i = 0; i <= Count; i++)
        {
            points[i] = curve.At(curve.From + ((curve.To - curve.From) * i / Count)).Point;
            while (segment + 1 < path.SegmentCount && path.SegmentAt(segment).DistanceTo(points[i]) > tolerance)
            {
                segment++;
            }

            Assert.True(
                path.SegmentAt(segment).DistanceTo(points[i]) <= tolerance, $"{curve.Name} strays by {path.DistanceTo(points[i])}");
        }

        // The other way: no point of the fit is further from the curve's chords than the tolerance and their sagitta, an
        // eighth of the chord times its turn.
        var sagitta = points.Zip(points.Skip(1)).Max(ends => ends.First.DistanceTo(ends.Second)) * 0.05 / 8;
        var chord = 0;
        foreach (var piece in path.Segments)
        {
            var point = piece.PointAt(0.37);
            while (chord + 1 < Count && new Segment2(points[chord], points[chord + 1], 0).NearestFraction(point) == 1)
            {
                chord++;
            }

            Assert.InRange(new Segment2(points[chord], points[chord + 1], 0).DistanceTo(point), 0, tolerance + sagitta);
        }
    }

    private static void AssertSmooth(Path2 path) => Assert.Equal(0, KinksOver(path, GreatestKink));

    private static int KinksOver(Path2 path, double angle)
    {
        var kinks = 0;
        for (var i = path.IsClosed ? 0 : 1; i < path.SegmentCount; i++)
        {
            var before = path.SegmentAt((i + path.SegmentCount - 1) % path.SegmentCount).DirectionAt(1);
            var after = path.SegmentAt(i).DirectionAt(0);
            kinks += Math.Abs(Math.Atan2(before.Cross(after), before.Dot(after))) > angle ? 1 : 0;
        }

        return kinks;
    }
}
