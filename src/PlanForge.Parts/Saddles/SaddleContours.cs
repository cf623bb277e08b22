using System.Collections.Immutable;
using PlanForge.Geometry;
using PlanForge.Geometry.Fitting;
using PlanForge.Parts.Shapes;

namespace PlanForge.Parts.Saddles;

/// <summary>The fitted lines of a saddle template, laid out as seen from outside the port side.</summary>
/// <param name="Outline">The template's edge, the sanding allowance included.</param>
/// <param name="Fitted">The stretch of the outline that the side is cut to; the rest is the paper's edge.</param>
/// <param name="Finished">The finished saddle line inside an allowance; null when the outline is that line itself.</param>
/// <param name="Inner">The line on the inner face; null where the side has no thickness.</param>
internal sealed record SaddleContours(Path2 Outline, Path2 Fitted, Path2? Finished, Path2? Inner)
{
    /// <summary>Paper ahead of the leading edge, where the side goes on: it holds the saddle's round front, mm.</summary>
    public const double Ahead = 12;

    private const double CornerTrace = 1e-3;

    /// <summary>Fits the lines.</summary>
    /// <exception cref="CurveException">The saddle line folds.</exception>
    public static SaddleContours Of(RiggedAirframe airframe, SaddleDevelopment flat)
    {
        var count = flat.Line.Points.Length;
        var outer = ImmutableArray.CreateBuilder<CurveSample>(count);
        var inner = new Point2[count];
        for (var i = 0; i < count; i++)
        {
            var frame = flat.OuterAt(i);
            outer.Add(new(frame.Place, frame.Along));
            inner[i] = flat.InnerAt(i);
        }

        JoinCorners(outer, inner);

        var samples = outer.MoveToImmutable();
        var finished = ArcFitter.Fit(samples, Drawn.Tolerance);
        var sanding = airframe.Description.Saddle.Sanding;
        var into = airframe.WingSide == WingSide.Lower ? 1 : -1;
        var top = sanding > 0
            ? ArcFitter.Fit(SampledCurve.Through(MovedLine.Of(samples, into * sanding)), Drawn.Tolerance)
            : finished;
        return new(
            Outlined(airframe, flat, finished, top),
            top,
            sanding > 0 ? finished : null,
            airframe.Body.Skin.Side > 0 ? ArcFitter.Fit(SampledCurve.Through(inner), Drawn.Tolerance) : null);
    }

    /// <summary>Draws the lines in place: as they are for port, mirrored for starboard.</summary>
    public void AddTo(PartSketch sketch, Placement2 placement)
    {
        if (Finished is { } finished)
        {
            sketch.Line(LineUse.Trim, finished.Placed(placement));
        }

        var outline = Outline.Placed(placement);
        sketch.Line(LineUse.Cut, outline.SignedArea < 0 ? outline.Reversed() : outline);
        if (Inner is { } inner)
        {
            sketch.Line(LineUse.Hidden, inner.Placed(placement));
        }
    }

    // At a corner of the line both frames see the foot on the inner face, but each through its own face: they miss by a trace, and a
    // point next to them may lie past them by as much. All of these are one place.
    private static void JoinCorners(ImmutableArray<CurveSample>.Builder outer, Point2[] inner)
    {
        for (var i = 1; i < inner.Length; i++)
        {
            if (outer[i - 1].Point != outer[i].Point || inner[i - 1].DistanceTo(inner[i]) >= CornerTrace)
            {
                continue;
            }

            var place = inner[i - 1].Towards(inner[i], 0.5);
            for (var before = i - 1; before >= 0 && inner[before].DistanceTo(place) < CornerTrace; before--)
            {
                inner[before] = place;
            }

            for (var after = i; after < inner.Length && inner[after].DistanceTo(place) < CornerTrace; after++)
            {
                inner[after] = place;
            }
        }
    }

    // Along the straight edge to the rear, from the rear end of the line back to its front, then straight ahead into the side.
    private static Path2 Outlined(RiggedAirframe airframe, SaddleDevelopment flat, Path2 finished, Path2 top)
    {
        var ahead = Math.Max(flat.Line.From - Ahead, airframe.Body.From);
        var corner = flat.At(ahead, flat.EdgeHeight);
        var edge = ArcFitter.Fit(SampledCurve.Through(Spread([corner, .. flat.Edge])), Drawn.Tolerance);
        var back = top.Reversed();
        var vertices = ImmutableArray.CreateBuilder<PathVertex>();
        vertices.AddRange(edge.Vertices[..^1]);
        vertices.Add(new(edge.End));
        var hasAllowance = !ReferenceEquals(finished, top);
        if (hasAllowance)
        {
            vertices.Add(new(finished.End));
        }

        vertices.AddRange(back.Vertices[..^1]);
        vertices.Add(new(back.End));
        if (hasAllowance)
        {
            vertices.Add(new(finished.Start));
        }

        vertices.Add(new(flat.At(ahead, flat.Line.Points[0].Outer.Z)));
        return Path2.Closed(vertices);
    }

    // The edge below the round nose repeats nearly the same place many times: keep points a little apart.
    private static ImmutableArray<Point2> Spread(ImmutableArray<Point2> points)
    {
        const double Apart = 0.2;
        var kept = ImmutableArray.CreateBuilder<Point2>();
        foreach (var point in points)
        {
            if (kept.Count == 0 || kept[^1].DistanceTo(point) >= Apart)
            {
                kept.Add(point);
            }
        }

        if (kept.Count > 1 && kept[^1] != points[^1])
        {
            kept[^1] = points[^1];
        }

        return kept.ToImmutable();
    }
}
