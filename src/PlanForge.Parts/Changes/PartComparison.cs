using PlanForge.Geometry;

namespace PlanForge.Parts.Changes;

/// <summary>Tells whether two states of a part are the same wood with the same texts.</summary>
internal static class PartComparison
{
    // Curves are drawn within 0.01 mm, so that the same curve may be two sets of arcs that far apart, mm.
    private const double Drawn = 0.01;

    // Each point of a flattened arc is on it; between them the chord is this near, mm.
    private const double Flattening = 0.002;

    // Apart from rounding, mm.
    private const double Rounding = 1e-5;

    /// <summary>True when lines, texts, sizes and material agree.</summary>
    public static bool AreAlike(Part a, Part b) =>
        (a.Kind, a.Title, a.Making, a.Material, a.Quantity, a.GrainAngle) == (b.Kind, b.Title, b.Making, b.Material, b.Quantity, b.GrainAngle)
        && Math.Abs(a.Thickness - b.Thickness) <= Rounding
        && a.Notes.SequenceEqual(b.Notes)
        && All(a.Lines, b.Lines, AreAlike)
        && All(a.Labels, b.Labels, AreAlike)
        && All(a.Dimensions, b.Dimensions, AreAlike)
        && All(a.Tables, b.Tables, AreAlike);

    private static bool All<T>(IReadOnlyList<T> a, IReadOnlyList<T> b, Func<T, T, bool> areAlike) =>
        a.Count == b.Count && a.Zip(b).All(pair => areAlike(pair.First, pair.Second));

    private static bool AreAlike(PartLine a, PartLine b) =>
        a.Use == b.Use && a.Path.IsClosed == b.Path.IsClosed && (HaveSameVertices(a.Path, b.Path) || (RunsAlong(a.Path, b.Path) && RunsAlong(b.Path, a.Path)));

    private static bool HaveSameVertices(Path2 a, Path2 b) => All(
        a.Vertices, b.Vertices, (one, other) => one.Point.DistanceTo(other.Point) <= Rounding && Math.Abs(one.Bulge - other.Bulge) <= Rounding);

    private static bool RunsAlong(Path2 path, Path2 other) => path.Flattened(Flattening).All(point => other.DistanceTo(point) <= Drawn);

    private static bool AreAlike(PartLabel a, PartLabel b) =>
        AreNear(a.At, b.At) && Math.Abs(a.Angle - b.Angle) <= Rounding && a with { At = b.At, Angle = b.Angle } == b;

    private static bool AreAlike(PartDimension a, PartDimension b) => (a, b) switch
    {
        (PartDimension.Linear one, PartDimension.Linear other) =>
            AreNear(one.From, other.From) && AreNear(one.To, other.To) && one.Text == other.Text,
        (PartDimension.Leader one, PartDimension.Leader other) =>
            AreNear(one.At, other.At) && Math.Abs(one.Radius - other.Radius) <= Drawn && one.Text == other.Text,
        _ => false,
    };

    private static bool AreAlike(PartTable a, PartTable b) =>
        a.Title == b.Title && a.Header.SequenceEqual(b.Header) && All(a.Rows, b.Rows, (one, other) => one.SequenceEqual(other));

    private static bool AreNear(Point2 a, Point2 b) => a.DistanceTo(b) <= Drawn;
}
