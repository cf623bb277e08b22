using System.Collections.Immutable;
using PlanForge.Geometry;
using PlanForge.Geometry.Fitting;

namespace PlanForge.Parts.Arrangement;

/// <summary>Collects the lines of one view.</summary>
internal sealed class ViewLines
{
    private readonly ImmutableArray<PartLine>.Builder _lines = ImmutableArray.CreateBuilder<PartLine>();

    public ImmutableArray<PartLine> Lines => _lines.ToImmutable();

    /// <summary>The line through exact samples; where it cannot be fitted, chords: a view to look at is drawn all the same.</summary>
    public static Path2 Through(IReadOnlyList<CurveSample> samples)
    {
        try
        {
            return ArcFitter.Fit(samples, Drawn.Tolerance);
        }
        catch (CurveException)
        {
            return Path2.Polyline(samples.Select(sample => sample.Point));
        }
    }

    /// <summary>The closed outline along one open path and back along another that runs the same way.</summary>
    public static Path2 Between(Path2 there, Path2 back) =>
        Path2.Closed([.. there.Vertices[..^1], new(there.End), .. back.Reversed().Vertices[..^1], new(back.Start)]);

    /// <summary>Adds lines as they are.</summary>
    public void Add(ImmutableArray<PartLine> lines) => _lines.AddRange(lines);

    /// <summary>Adds a line as it is.</summary>
    public void Add(LineUse use, Path2 path) => _lines.Add(new(use, path));

    public void Add(LineUse use, Point2 start, Point2 end) => Add(use, Path2.Line(start, end));

    /// <summary>An edge, hidden where it lies inside one of some silhouettes.</summary>
    public void Edge(Path2 path, params IReadOnlyCollection<Silhouette> inFront)
    {
        foreach (var (piece, middle) in Silhouette.Pieces(path, inFront))
        {
            Add(inFront.Any(silhouette => silhouette.Contains(middle)) ? LineUse.Hidden : LineUse.Edge, piece);
        }
    }
}
