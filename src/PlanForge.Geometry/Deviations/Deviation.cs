namespace PlanForge.Geometry.Deviations;

/// <summary>How far lines stray from other lines at most, and where.</summary>
/// <param name="Distance">The distance, mm.</param>
/// <param name="At">A place on the one set of lines that is that far from the other.</param>
/// <param name="Nearest">The place on the other that is nearest to it.</param>
public readonly record struct Deviation(double Distance, Point2 At, Point2 Nearest)
{
    /// <summary>The greatest distance from a place on some lines to others, one way: places of the others do not count.</summary>
    /// <param name="from">Lines; at least one of some length.</param>
    /// <param name="to">The others; at least one of some length.</param>
    /// <param name="tolerance">How much less than the greatest distance the result may be at most, mm, over 0; it is never more.</param>
    /// <exception cref="ArgumentException">There is no line of some length on one side.</exception>
    public static Deviation OneWay(IReadOnlyList<Path2> from, IReadOnlyList<Path2> to, double tolerance)
    {
        ArgumentNullException.ThrowIfNull(from);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(tolerance);
        return FarthestPlace.Find(from.SelectMany(path => path.Segments), new(to), tolerance);
    }

    /// <summary>The Hausdorff distance: the greater of both ways.</summary>
    /// <inheritdoc cref="OneWay"/>
    /// <param name="a">Lines; at least one of some length.</param>
    /// <param name="b">The others; at least one of some length.</param>
    /// <param name="tolerance">How much less than the greatest distance the result may be at most, mm, over 0; it is never more.</param>
    public static Deviation Between(IReadOnlyList<Path2> a, IReadOnlyList<Path2> b, double tolerance)
    {
        var (there, back) = (OneWay(a, b, tolerance), OneWay(b, a, tolerance));
        return there.Distance >= back.Distance ? there : new(back.Distance, back.Nearest, back.At);
    }
}
