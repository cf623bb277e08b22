using System.Collections.Immutable;

namespace PlanForge.Geometry.Regions;

/// <summary>Gives each opening to the outline it lies in.</summary>
internal static class Nesting
{
    // A contour smaller than this, mm², is what snapping left over, no shape. Too large would drop shapes somebody drew, too
    // small keeps slivers.
    private const double LeastArea = 1e-9;

    // So is a contour narrower than this many snap distances on average: edges that ought to coincide may have been moved by
    // the snap distance in each of several steps. Much more would swallow real, if senseless, cuts.
    private const double NarrowestInSnaps = 10;

    /// <summary>Sorts contours into pieces: outlines run anticlockwise, openings clockwise.</summary>
    /// <exception cref="BoundaryException">An opening lies in no outline.</exception>
    public static ImmutableArray<RegionPart> Nest(List<Contour> contours, double snap)
    {
        var outlines = new List<(Path2 Path, double Area, Bounds2 Bounds)>();
        var openings = new List<Contour>();
        foreach (var contour in contours)
        {
            var area = contour.Path.SignedArea;
            if (area > 0)
            {
                outlines.Add((contour.Path, area, contour.Path.Bounds));
            }
            else if (!IsSliver(contour.Path, area, snap))
            {
                openings.Add(contour);
            }
        }

        var openingsOf = new ImmutableArray<Path2>.Builder[outlines.Count];
        foreach (var opening in openings)
        {
            var owner = Owner(outlines, opening.Apart);
            (openingsOf[owner] ??= ImmutableArray.CreateBuilder<Path2>()).Add(opening.Path);
        }

        var parts = ImmutableArray.CreateBuilder<RegionPart>(outlines.Count);
        for (var i = 0; i < outlines.Count; i++)
        {
            if (!IsSliver(outlines[i].Path, outlines[i].Area, snap))
            {
                parts.Add(new(outlines[i].Path, openingsOf[i] is { } found ? found.ToImmutable() : []));
            }
        }

        return parts.ToImmutable();
    }

    // A strip's perimeter is twice its length.
    private static bool IsSliver(Path2 contour, double area, double snap) =>
        Math.Abs(area) < Math.Max(LeastArea, contour.Length / 2 * NarrowestInSnaps * snap);

    // The smallest outline around a point of an opening.
    private static int Owner(List<(Path2 Path, double Area, Bounds2 Bounds)> outlines, Point2 point)
    {
        var owner = -1;
        for (var i = 0; i < outlines.Count; i++)
        {
            if (outlines[i].Bounds.Contains(point)
                && (owner < 0 || outlines[i].Area < outlines[owner].Area)
                && Winding.Around(outlines[i].Path, point) > 0)
            {
                owner = i;
            }
        }

        return owner >= 0 ? owner : throw new BoundaryException("An opening lies in no outline", point);
    }
}
