using System.Collections.Immutable;
using PlanForge.Geometry;
using PlanForge.Geometry.Regions;

namespace PlanForge.Parts.Formers;

/// <summary>One edge of a former's outline: the stretch that faces up, down or aside.</summary>
internal static class OutlineEdge
{
    // Half a quadrant and a little: a single corner arc, which faces 45 degrees at its middle, belongs to the upper or lower edge.
    private const double GreatestDeparture = 60 * Math.PI / 180;

    /// <summary>The longest run of segments whose outward side faces a direction within 60 degrees, as an open path; null if none does.</summary>
    /// <param name="contour">An anticlockwise outline.</param>
    /// <param name="facing">Unit direction, such as (0, 1) for the upper edge.</param>
    public static Path2? Facing(Path2 contour, Vector2 facing)
    {
        var count = contour.SegmentCount;
        var faces = new bool[count];
        var least = Math.Cos(GreatestDeparture);
        for (var i = 0; i < count; i++)
        {
            faces[i] = (-contour.SegmentAt(i).DirectionAt(0.5).Left).Dot(facing) >= least;
        }

        var start = Array.IndexOf(faces, false);
        if (start < 0)
        {
            return null;
        }

        (int First, int Count, double Length) best = default;
        for (int step = 1, run = 0; step <= count; step++)
        {
            var index = (start + step) % count;
            run = faces[index] ? run + 1 : 0;
            if (run == 0)
            {
                continue;
            }

            var first = (index - run + 1 + count) % count;
            var length = 0.0;
            for (var i = 0; i < run; i++)
            {
                length += contour.SegmentAt((first + i) % count).Length;
            }

            if (length > best.Length)
            {
                best = (first, run, length);
            }
        }

        if (best.Count == 0)
        {
            return null;
        }

        var vertices = ImmutableArray.CreateBuilder<PathVertex>(best.Count + 1);
        for (var i = 0; i <= best.Count; i++)
        {
            vertices.Add(contour.Vertices[(best.First + i) % count]);
        }

        return Path2.Open(vertices);
    }

    /// <summary>The region plus what its edge sweeps over when it moves by a displacement.</summary>
    public static Region2 Extended(Region2 region, Path2 edge, Vector2 by)
    {
        var moved = edge.Placed(Placement2.MovedBy(by)).Reversed();
        var vertices = ImmutableArray.CreateBuilder<PathVertex>();
        vertices.AddRange(edge.Vertices[..^1]);
        vertices.Add(new(edge.End));
        vertices.AddRange(moved.Vertices[..^1]);
        vertices.Add(new(moved.End));
        return region.Union(Region2.FromContours(FillRule.NonZero, [Path2.Closed(vertices)]));
    }
}
