using System.Collections.Immutable;
using PlanForge.Geometry;
using PlanForge.Geometry.Deviations;

namespace PlanForge.Parts.Comparison;

/// <summary>How the lines of one meaning differ between two versions of a part.</summary>
/// <param name="Use">Their meaning.</param>
/// <param name="Largest">The greatest distance between them and where; null when only one version has such lines.</param>
internal readonly record struct LineChange(LineUse Use, Deviation? Largest)
{
    /// <summary>Lines nearer to each other than this are the same to a builder, mm.</summary>
    public const double Same = 0.01;

    /// <summary>How exactly deviations are found, mm.</summary>
    public const double Tolerance = 0.001;

    /// <summary>The meanings whose lines differ by more than <see cref="Same"/>.</summary>
    /// <param name="old">The old lines.</param>
    /// <param name="now">The new ones.</param>
    /// <param name="uses">The meanings to look at.</param>
    public static IEnumerable<LineChange> Between(ImmutableArray<PartLine> old, ImmutableArray<PartLine> now, IEnumerable<LineUse> uses)
    {
        foreach (var use in uses)
        {
            IReadOnlyList<Path2> before = PathsOf(old, use), after = PathsOf(now, use);
            if (AreEqual(before, after))
            {
                continue;
            }

            if (before.Count == 0 || after.Count == 0)
            {
                yield return new(use, null);
            }
            else if (Deviation.Between(before, after, Tolerance) is { Distance: > Same } deviation)
            {
                yield return new(use, deviation);
            }
        }
    }

    /// <summary>The lines of a meaning that have a length.</summary>
    public static ImmutableArray<Path2> PathsOf(ImmutableArray<PartLine> lines, LineUse use) =>
        [.. lines.Where(line => line.Use == use && line.Path.Length > 0).Select(line => line.Path)];

    private static bool AreEqual(IReadOnlyList<Path2> a, IReadOnlyList<Path2> b) =>
        a.Count == b.Count && a.Zip(b).All(pair => pair.First.IsClosed == pair.Second.IsClosed && pair.First.Vertices.SequenceEqual(pair.Second.Vertices));
}
