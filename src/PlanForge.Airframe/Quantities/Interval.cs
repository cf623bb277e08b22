namespace PlanForge.Airframe.Quantities;

/// <summary>The values a key allows: lengths in mm, angles in degrees, proportions and numbers plain.</summary>
/// <param name="Least">The lower end, or negative infinity.</param>
/// <param name="HasLeast">True when the lower end itself is allowed.</param>
/// <param name="Greatest">The upper end, or infinity.</param>
/// <param name="HasGreatest">True when the upper end itself is allowed.</param>
internal sealed record Interval(double Least, bool HasLeast, double Greatest, bool HasGreatest)
{
    // Wide enough for the last bits that conversions between units leave, far too narrow to matter on wood.
    private const double Rounding = 1e-12;

    public static readonly Interval Any = new(double.NegativeInfinity, false, double.PositiveInfinity, false);

    public static readonly Interval Positive = new(0, false, double.PositiveInfinity, false);

    public static readonly Interval NotNegative = new(0, true, double.PositiveInfinity, false);

    public static Interval Between(double least, double greatest) => new(least, true, greatest, true);

    public static Interval PositiveUpTo(double greatest) => new(0, false, greatest, true);

    public static Interval PositiveUnder(double greatest) => new(0, false, greatest, false);

    /// <summary>True when a value lies in the interval; NaN, which stands for a value already reported, counts as inside.</summary>
    public bool Holds(double value)
    {
        var slack = Rounding * Math.Abs(value);
        var isBelow = HasLeast ? value < Least - slack : value <= Least + slack;
        var isAbove = HasGreatest ? value > Greatest + slack : value >= Greatest - slack;
        return !isBelow && !isAbove;
    }

    /// <summary>The interval in words, such as <c>over 0 mm</c> or <c>from 0 to 1</c>.</summary>
    public string Text(Func<double, string> format)
    {
        if (double.IsInfinity(Greatest))
        {
            return double.IsInfinity(Least) ? "any" : HasLeast ? $"{format(Least)} or more" : $"over {format(Least)}";
        }

        if (double.IsInfinity(Least))
        {
            return HasGreatest ? $"{format(Greatest)} or less" : $"under {format(Greatest)}";
        }

        return HasLeast && HasGreatest
            ? $"from {format(Least)} to {format(Greatest)}"
            : $"{(HasLeast ? "at least" : "over")} {format(Least)} and {(HasGreatest ? "at most" : "under")} {format(Greatest)}";
    }
}
