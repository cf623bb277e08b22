namespace PlanForge.Airframe.Sections;

/// <summary>A NACA mean line: one polynomial of x before the junction, another behind it; all in chords.</summary>
/// <param name="Junction">Where the formula changes; 1 for the straight mean line of a symmetrical section.</param>
/// <param name="Forward">Before the junction.</param>
/// <param name="Aft">Behind it; value and slope agree at the junction.</param>
internal readonly record struct MeanLine(double Junction, MeanLinePiece Forward, MeanLinePiece Aft)
{
    /// <summary>No camber.</summary>
    public static MeanLine Straight => new(1, default, default);

    /// <summary>The four-digit mean line: two parabolas meeting at the greatest camber.</summary>
    /// <remarks>Source: NACA Report 460 (1933).</remarks>
    /// <param name="camber">Greatest camber, in chords, over 0.</param>
    /// <param name="place">Its place, in chords, between 0 and 1.</param>
    public static MeanLine FourDigit(double camber, double place)
    {
        var forward = camber / (place * place);
        var aft = camber / ((1 - place) * (1 - place));
        return new(
            place,
            new(0, 2 * forward * place, -forward, 0),
            new(aft * (1 - (2 * place)), 2 * aft * place, -aft, 0));
    }

    /// <summary>The five-digit mean line: a cubic, then a straight line.</summary>
    /// <remarks>
    /// Source: NACA Reports 537 and 610. The junction is called r in NASA TM 4741 and m in Abbott and von Doenhoff, Theory of
    /// Wing Sections.
    /// </remarks>
    /// <param name="junction">Where the line becomes straight, in chords.</param>
    /// <param name="k1">The constant k1 at the section's own design lift coefficient.</param>
    public static MeanLine FiveDigit(double junction, double k1)
    {
        var sixth = k1 / 6;
        var end = sixth * junction * junction * junction;
        return new(
            junction,
            new(0, sixth * junction * junction * (3 - junction), -3 * sixth * junction, sixth),
            new(end, -end, 0, 0));
    }
}

/// <summary>One cubic piece of a mean line: height = C0 + C1 x + C2 x² + C3 x³.</summary>
internal readonly record struct MeanLinePiece(double C0, double C1, double C2, double C3)
{
    /// <summary>Height at x.</summary>
    public double Height(double x) => C0 + (x * (C1 + (x * (C2 + (x * C3)))));

    /// <summary>Slope at x.</summary>
    public double Slope(double x) => C1 + (x * ((2 * C2) + (x * 3 * C3)));

    /// <summary>Second derivative at x.</summary>
    public double Bend(double x) => (2 * C2) + (6 * C3 * x);

    /// <summary>Third derivative, the same everywhere.</summary>
    public double Third => 6 * C3;

    /// <summary>(Slope(x) − Slope(x0)) / (x − x0) without cancellation.</summary>
    public double SlopeDifference(double x, double x0) => (2 * C2) + (3 * C3 * (x + x0));
}
