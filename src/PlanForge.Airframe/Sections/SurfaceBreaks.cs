namespace PlanForge.Airframe.Sections;

/// <summary>Breaks of a surface that is made from two others.</summary>
internal static class SurfaceBreaks
{
    /// <summary>The values of both lists, ascending, each once.</summary>
    public static double[] Merged(IReadOnlyList<double> one, IReadOnlyList<double> other)
    {
        var both = new SortedSet<double>(one);
        both.UnionWith(other);
        return [.. both];
    }
}
