using System.Collections.Immutable;
using PlanForge.Airframe;
using PlanForge.Geometry;
using PlanForge.Geometry.Fitting;
using PlanForge.Geometry.Regions;
using PlanForge.Parts.Shapes;

namespace PlanForge.Parts.Formers;

/// <summary>The net shape of a former: what each of its faces is inside the skins and clear of the wing, and both together.</summary>
/// <param name="Front">The front face.</param>
/// <param name="Rear">The rear face.</param>
/// <param name="Net">Wood that either face needs: the outline to cut before bevelling.</param>
/// <param name="FrontCut">The starboard half of the cut line at the wing on the front face, running out past the side; null clear of the wing.</param>
/// <param name="RearCut">The same on the rear face.</param>
internal sealed record FormerOutline(
    Region2 Front, Region2 Rear, Region2 Net, ImmutableArray<CurveSample>? FrontCut, ImmutableArray<CurveSample>? RearCut)
{
    // The cut line runs this far past the side, and the wing's region past the outline, mm: no sliver is left at an edge.
    private const double Clear = 10;

    /// <summary>Builds the net shape; null where the skins or the wing leave nothing of a face.</summary>
    public static FormerOutline? Of(FormerDescription former, RiggedAirframe airframe)
    {
        if (FaceAt(former.Station, airframe) is not { } front || FaceAt(former.Station + former.Thickness, airframe) is not { } rear)
        {
            return null;
        }

        return new(front.Shape, rear.Shape, front.Shape.Union(rear.Shape), front.Cut, rear.Cut);
    }

    private static (Region2 Shape, ImmutableArray<CurveSample>? Cut)? FaceAt(double station, RiggedAirframe airframe)
    {
        if (BodyOutline.Inside(airframe.Body, station, Drawn.Tolerance) is not { } outline)
        {
            return null;
        }

        var face = Region2.FromContours(FillRule.NonZero, [outline]);
        var cut = airframe.WingCutAt(station, outline.Bounds.MaxX + Clear);
        if (cut is { } half)
        {
            face = face.Difference(WingRegion(half, outline.Bounds, airframe.WingSide));
        }

        return face.IsEmpty ? null : (face, cut);
    }

    // All that the wing takes away on its side of the cut line: upward of a high wing, downward of a low one.
    private static Region2 WingRegion(ImmutableArray<CurveSample> half, Bounds2 outline, WingSide side)
    {
        var starboard = ArcFitter.Fit(half, Drawn.Tolerance);
        var port = starboard.Placed(Placement2.Mirror).Reversed();
        var far = side == WingSide.Lower
            ? Math.Max(outline.MaxY, starboard.Bounds.MaxY) + Clear
            : Math.Min(outline.MinY, starboard.Bounds.MinY) - Clear;
        var vertices = ImmutableArray.CreateBuilder<PathVertex>();
        vertices.AddRange(port.Vertices[..^1]);
        vertices.AddRange(starboard.Vertices[..^1]);
        vertices.Add(new(starboard.End));
        vertices.Add(new(new(starboard.End.X, far)));
        vertices.Add(new(new(port.Start.X, far)));
        return Region2.FromContours(FillRule.NonZero, [Path2.Closed(vertices)]);
    }
}
