using System.Collections.Immutable;
using PlanForge.Geometry;
using PlanForge.Geometry.Fitting;
using PlanForge.Parts.Arrangement;
using PlanForge.Parts.Saddles;

namespace PlanForge.Parts.Joints;

/// <summary>The body's side over the length of the wing, as seen from port: (x, z).</summary>
/// <param name="From">Station where the view begins, mm.</param>
/// <param name="To">Station where it ends, mm.</param>
/// <param name="Far">The outline away from the wing.</param>
/// <param name="Near">The outline on the wing's side: down into the seat, along the saddle line of the outer face, and out again.</param>
/// <param name="Uncut">That outline across the seat, where the wing takes it away.</param>
/// <param name="InnerFace">The saddle line on the inner face; null where the side has no thickness.</param>
internal sealed record JointBody(double From, double To, Path2 Far, Path2 Near, Path2 Uncut, Path2? InnerFace)
{
    /// <summary>All of the side that is seen: what lies behind it is hidden.</summary>
    public Silhouette Side => new(ViewLines.Between(Far, Near));

    /// <summary>Builds it.</summary>
    /// <exception cref="CurveException">An outline folds.</exception>
    public static JointBody Of(RiggedAirframe airframe, double from, double to)
    {
        var body = airframe.Body;
        var line = airframe.SaddleLine!;
        var isHigh = airframe.WingSide == Shapes.WingSide.Lower;
        Path2 Wingward(double a, double b) => Fitted(isHigh ? BodyCurves.Upper(body, a, b) : BodyCurves.Lower(body, a, b));
        Path2 Away(double a, double b) => Fitted(isHigh ? BodyCurves.Lower(body, a, b) : BodyCurves.Upper(body, a, b));

        // Below a round nose the saddle line lies a trace ahead of its own front end: the seat is as long as the line reaches.
        double seatFrom = line.Points.Min(point => point.Outer.X), seatTo = line.Points.Max(point => point.Outer.X);
        var saddle = Fitted(SaddleSamples(line));
        var vertices = ImmutableArray.CreateBuilder<PathVertex>();
        if (seatFrom > from)
        {
            Append(vertices, Wingward(from, seatFrom));
        }

        Append(vertices, saddle);
        if (seatTo < to)
        {
            Append(vertices, Wingward(seatTo, to));
        }

        return new(from, to, Away(from, to), Path2.Open(vertices), Wingward(seatFrom, seatTo), InnerLine(airframe, line));
    }

    private static void Append(ImmutableArray<PathVertex>.Builder vertices, Path2 path)
    {
        vertices.AddRange(path.Vertices[..^1]);
        vertices.Add(new(path.End));
    }

    private static Path2? InnerLine(RiggedAirframe airframe, SaddleLine line) => airframe.Body.Skin.Side > 0
        ? Fitted(Shapes.SampledCurve.Through([.. line.Points.Select(point => new Point2(point.Inner.X, point.Inner.Z))]))
        : null;

    private static ImmutableArray<CurveSample> SaddleSamples(SaddleLine line)
    {
        var samples = ImmutableArray.CreateBuilder<CurveSample>(line.Points.Length);
        foreach (var point in line.Points)
        {
            Shapes.SampledCurve.Append(samples, new(new(point.Outer.X, point.Outer.Z), new Vector2(point.Tangent.X, point.Tangent.Z).Unit()));
        }

        return samples.ToImmutable();
    }

    private static Path2 Fitted(IReadOnlyList<CurveSample> samples) => ArcFitter.Fit(samples, Drawn.Tolerance);
}
