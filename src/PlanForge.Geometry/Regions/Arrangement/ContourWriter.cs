using System.Collections.Immutable;

namespace PlanForge.Geometry.Regions;

/// <summary>A loop written as a path.</summary>
/// <param name="Path">The closed path.</param>
/// <param name="Apart">A point on it that no other contour touches.</param>
internal readonly record struct Contour(Path2 Path, Point2 Apart);

/// <summary>Writes a loop of boundary edges as a closed path, edges of one source joined to the segment they came from.</summary>
internal sealed class ContourWriter(List<Edge> edges, Point2[] positions, List<Segment2> sources, double snap)
{
    /// <summary>The contour, or null when it runs to and fro on one source and encloses nothing.</summary>
    public Contour? Write(BoundaryEdge[] loop)
    {
        var vertices = ImmutableArray.CreateBuilder<PathVertex>(loop.Length);
        var first = FirstRun(loop);
        for (var i = 0; i < loop.Length;)
        {
            var from = i;
            do
            {
                i++;
            }
            while (i < loop.Length && Continues(loop[(first + i - 1) % loop.Length], loop[(first + i) % loop.Length]));

            vertices.Add(Run(loop, first + from, i - from));
        }

        return vertices.Count < 2 ? null : new(Path2.Closed(vertices).Merged(snap), Apart(loop));
    }

    // Contours touch in vertices only, so the middle of an edge is free; of the longest one, by a good margin.
    private Point2 Apart(BoundaryEdge[] loop)
    {
        var longest = edges[loop[0].Edge];
        foreach (var member in loop)
        {
            var edge = edges[member.Edge];
            longest = Chord(edge) > Chord(longest) ? edge : longest;
        }

        return new Segment2(positions[longest.Start], positions[longest.End], longest.Bulge).PointAt(0.5);
    }

    private double Chord(in Edge edge) => positions[edge.Start].DistanceTo(positions[edge.End]);

    // Where a run of one source begins; of several the earliest in order of the input, so that contours begin as they did there.
    private int FirstRun(BoundaryEdge[] loop)
    {
        var first = -1;
        for (var i = 0; i < loop.Length; i++)
        {
            if (!Continues(loop[(i + loop.Length - 1) % loop.Length], loop[i])
                && (first < 0 || edges[loop[i].Edge].Sequence < edges[loop[first].Edge].Sequence))
            {
                first = i;
            }
        }

        return Math.Max(first, 0);
    }

    private bool Continues(BoundaryEdge a, BoundaryEdge b) =>
        a.IsForward == b.IsForward
        && edges[a.Edge].Source == edges[b.Edge].Source
        && edges[b.Edge].Sequence - edges[a.Edge].Sequence == (a.IsForward ? 1 : -1);

    private PathVertex Run(BoundaryEdge[] loop, int first, int length)
    {
        var (head, tail) = (loop[first % loop.Length], loop[(first + length - 1) % loop.Length]);
        var start = positions[head.IsForward ? edges[head.Edge].Start : edges[head.Edge].End];
        var end = positions[tail.IsForward ? edges[tail.Edge].End : edges[tail.Edge].Start];
        var source = head.IsForward ? sources[edges[head.Edge].Source] : sources[edges[head.Edge].Source].Reversed();
        if (source.IsLine || (start == source.Start && end == source.End))
        {
            return new(start, source.Bulge);
        }

        var bulge = 0.0;
        for (var i = 0; i < length; i++)
        {
            // Bulges add like tangents of the quarter sweeps they are.
            var added = edges[loop[(first + i) % loop.Length].Edge].Bulge;
            bulge = (bulge + added) / (1 - (bulge * added));
        }

        return new(start, head.IsForward ? bulge : 0 - bulge);
    }
}
