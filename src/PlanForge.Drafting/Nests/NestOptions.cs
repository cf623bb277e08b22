namespace PlanForge.Drafting.Nests;

/// <summary>How parts are laid out on stock.</summary>
public sealed record NestOptions
{
    /// <summary>
    /// The effort when nobody asks for another: sixty formers take about a fifth of a second; ten times as much saves a few
    /// per cent of the last sheet.
    /// </summary>
    public const int UsualEffort = 8;

    private readonly int _effort = UsualEffort;
    private readonly double _kerf;

    /// <summary>
    /// How many arrangements are tried for each stock, 1 or more; the time grows with it. More is never worse: the same
    /// arrangements are tried first.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is under 1.</exception>
    public int Effort
    {
        get => _effort;
        init
        {
            ArgumentOutOfRangeException.ThrowIfLessThan(value, 1);
            _effort = value;
        }
    }

    /// <summary>
    /// Room kept between parts over and above the spacing of the stock, mm, 0 or more: contours that are moved outward by
    /// half a kerf each afterwards still keep the spacing.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is negative or not finite.</exception>
    public double Kerf
    {
        get => _kerf;
        init
        {
            ArgumentOutOfRangeException.ThrowIfNegative(value);
            ArgumentOutOfRangeException.ThrowIfEqual(double.IsFinite(value), false);
            _kerf = value;
        }
    }
}
