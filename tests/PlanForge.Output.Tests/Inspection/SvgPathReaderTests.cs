using PlanForge.Output.Inspection;

namespace PlanForge.Output.Tests.Inspection;

/// <summary>Every command of a path, judged by the length of what it draws (closed forms; the grammar is SVG 1.1, 8.3: from memory).</summary>
public sealed class SvgPathReaderTests
{
    // A Bézier of a quarter circle is off by 2.7e-4 of the radius at most, so its length by less (shared facts of geometry, 13).
    private const double BezierError = 3e-4;

    [Theory]
    [InlineData("M10 10L70 10L70 50L10 50Z", 200)]
    [InlineData("m10 10l60 0l0 40l-60 0z", 200)]
    [InlineData("M10 10H70V50H10Z", 200)]
    [InlineData("m10 10h60v40h-60z", 200)]
    [InlineData("M10 10 70 10 70 50 10 50Z", 200)]
    [InlineData("m10,10 60,0,0,40-60,0z", 200)]
    [InlineData("M1e1 .1e2H7.E1V+50H10Z", 200)]
    [InlineData("M10 10H70V50H10Zm5 5h4v4h-4z", 216)]
    public void Lines(string data, double length) => Assert.Equal(length, LengthOf(data), 1e-9);

    [Theory]
    [InlineData("M30 10A10 10 0 0 1 30 30A10 10 0 0 1 30 10Z", 20)]
    [InlineData("M30 10a10 10 0 1 1-20 0a10 10 0 1 1 20 0Z", 20)]
    [InlineData("M30 10a10,10,0,01,0,20a10 10 45 010-20z", 20)]
    [InlineData("M40 20A10 10 0 1 1 30 10A10 10 0 0 1 40 20Z", 20)]
    [InlineData("M40 20A10 10 0 1 0 30 30A10 10 0 0 0 40 20Z", 20)]
    [InlineData("M30 10A1 1 0 0 1 30 30A1 1 0 0 1 30 10Z", 20)]
    public void Arcs_of_circles(string data, double diameter) => Assert.Equal(Math.PI * diameter, LengthOf(data), 1e-6);

    // Ramanujan's second approximation of the perimeter of an ellipse, good to 1e-6 here (from memory).
    [Fact]
    public void Arcs_of_ellipses()
    {
        var (a, b) = (20.0, 12.0);
        var h = (a - b) * (a - b) / ((a + b) * (a + b));
        var perimeter = Math.PI * (a + b) * (1 + (3 * h / (10 + Math.Sqrt(4 - (3 * h)))));

        Assert.Equal(perimeter, LengthOf("M60 40A20 12 0 0 1 20 40A20 12 0 0 1 60 40Z"), 0.05);
        Assert.Equal(perimeter, LengthOf("M40 60A20 12 90 0 1 40 20A20 12 90 0 1 40 60Z"), 0.05);
    }

    [Theory]
    [InlineData("M60 40C60 51.045695 51.045695 60 40 60C28.954305 60 20 51.045695 20 40C20 28.954305 28.954305 20 40 20C51.045695 20 60 28.954305 60 40Z")]
    [InlineData("M60 40C60 51.045695 51.045695 60 40 60S20 51.045695 20 40S28.954305 20 40 20S60 28.954305 60 40Z")]
    [InlineData("m60 40c0 11.045695-8.954305 20-20 20s-20-8.954305-20-20s8.954305-20 20-20s20 8.954305 20 20z")]
    public void Cubics(string data) => Assert.InRange(LengthOf(data), 40 * Math.PI * (1 - BezierError), 40 * Math.PI * (1 + BezierError));

    // The parabola y = x²/2p from 0 to x has the length p/2 (t sqrt(1 + t²) + asinh t), t = x/p; here p = 20 and x = 40.
    [Theory]
    [InlineData("M20 20Q40 20 60 60L20 60Z")]
    [InlineData("m20 20q20 0 40 40l-40 0z")]
    [InlineData("M20 20Q30 20 40 30T60 60L20 60Z")]
    [InlineData("m20 20q10 0 20 10t20 30l-40 0z")]
    public void Quadratics(string data)
    {
        var parabola = 20 / 2.0 * ((2 * Math.Sqrt(5)) + Math.Asinh(2));

        Assert.Equal(parabola + 80, LengthOf(data), 0.01);
    }

    [Theory]
    [InlineData("translate(10)", 200)]
    [InlineData("translate(5 , 5) rotate(30)", 200)]
    [InlineData("rotate(90 40 30)", 200)]
    [InlineData("scale(0.5)", 100)]
    [InlineData("scale(1,-1)", 200)]
    [InlineData("matrix(0 2 -2 0 10 10)", 400)]
    [InlineData("skewX(45)", 120 + 113.13708498984761)]
    [InlineData("skewY(45)", 80 + 169.70562748477141)]
    public void Transforms(string transform, double length) => Assert.Equal(length, LengthOf("M10 10H70V50H10Z", transform), 1e-9);

    private static double LengthOf(string data, string? transform = null)
    {
        var attribute = transform is null ? "" : $" transform=\"{transform}\"";
        var result = CutFileInspector.Inspect("a.svg", CutFileText.Svg([$"<path d=\"{data}\"{attribute}/>"]), new());
        Assert.DoesNotContain(result.Findings, finding => finding.Code == FindingCode.Syntax);
        var layer = Assert.Single(result.Summary.Layers);
        Assert.Equal(0, layer.OpenCount);
        return layer.Length;
    }
}
