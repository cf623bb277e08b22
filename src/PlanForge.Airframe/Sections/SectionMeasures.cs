using PlanForge.Geometry;

namespace PlanForge.Airframe.Sections;

/// <summary>Greatest thickness and camber of a section, found on its surfaces.</summary>
internal static class SectionMeasures
{
    // Far finer than any hump of a section, so that the greatest sample stands beside the greatest value.
    private const int SampleCount = 64;

    // In w. The value is level there, so that its own error is of the square of this.
    private const double Tolerance = 1e-12;

    /// <summary>The greatest difference in height of the two surfaces at equal w.</summary>
    public static double Thickness(Section section) => Farthest(w =>
    {
        var (upper, lower) = (section.Upper(w), section.Lower(w));
        return (upper.Y - lower.Y, upper.Dy - lower.Dy);
    });

    /// <summary>The height farthest from 0 of the line half-way between the surfaces at equal w.</summary>
    public static double Camber(Section section) => Farthest(w =>
    {
        var (upper, lower) = (section.Upper(w), section.Lower(w));
        return ((upper.Y + lower.Y) / 2, (upper.Dy + lower.Dy) / 2);
    });

    // The value farthest from 0 of a function given with its derivative.
    private static double Farthest(Func<double, (double Value, double Slope)> function)
    {
        var farthest = 0;
        var value = function(0).Value;
        for (var i = 1; i <= SampleCount; i++)
        {
            var sample = function((double)i / SampleCount).Value;
            (farthest, value) = Math.Abs(sample) > Math.Abs(value) ? (i, sample) : (farthest, value);
        }

        var low = Math.Max(farthest - 1, 0) / (double)SampleCount;
        var high = Math.Min(farthest + 1, SampleCount) / (double)SampleCount;
        var top = RootFinder.Bracketed(w => function(w).Slope, low, high, Tolerance) is { } level ? function(level).Value : value;
        return Math.Abs(top) > Math.Abs(value) ? top : value;
    }
}
