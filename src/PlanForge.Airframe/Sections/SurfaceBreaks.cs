namespace PlanForge.Airframe.Sections;

/// <summary>Breaks of a surface that is made from two others.</summary>
internal static class SurfaceBreaks
{
    /// <summary>The values of two ascending lists, ascending, each once.</summary>
    public static double[] Merged(IReadOnlyList<double> one, IReadOnlyList<double> other)
    {
        var merged = new List<double>(one.Count + other.Count);
        int i = 0, j = 0;
        while (i < one.Count || j < other.Count)
        {
            var next = j == other.Count || (i < one.Count && one[i] <= other[j]) ? one[i++] : other[j++];
            if (merged.Count == 0 || next > merged[^1])
            {
                merged.Add(next);
            }
        }

        return [.. merged];
    }
}
