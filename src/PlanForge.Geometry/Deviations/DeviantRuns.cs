namespace PlanForge.Geometry.Deviations;

/// <summary>Finds the runs along a path that are farther from other lines than a threshold.</summary>
internal static class DeviantRuns
{
    /// <summary>The runs, in order of travel; their ends are known to about the threshold. A closed one is the whole contour.</summary>
    public static IEnumerable<Path2> Find(Path2 path, LineIndex to, double threshold)
    {
        var runs = new List<List<Segment2>>();
        var isRunning = false;
        foreach (var piece in Stretch.Pieces(path.Segments))
        {
            Look(new(piece, to.Nearest(piece.Start), to.Nearest(piece.End)));
        }

        if (runs is [var only] && path.IsClosed && only[0].Start == only[^1].End)
        {
            return [path];
        }

        // One that runs over a closed path's start is one run.
        if (path.IsClosed && runs.Count > 1 && isRunning && runs[0][0].Start == path.Start)
        {
            runs[^1].AddRange(runs[0]);
            runs.RemoveAt(0);
        }

        return runs.Select(run => Path2.Open([.. run.Select(it => new PathVertex(it.Start, it.Bulge)), new(run[^1].End)]));

        void Look(in Stretch stretch)
        {
            if (stretch.Greatest <= threshold)
            {
                isRunning = false;
            }
            else if (stretch.Least > threshold)
            {
                Add(stretch.Line);
            }
            else if (stretch.Line.Length > threshold)
            {
                var (first, second) = stretch.Halved(to.Nearest(stretch.Line.PointAt(0.5)));
                Look(first);
                Look(second);
            }
            else if (Math.Min(stretch.AtStart.Distance, stretch.AtEnd.Distance) > threshold)
            {
                Add(stretch.Line);
            }
            else
            {
                isRunning = false;
            }
        }

        void Add(in Segment2 segment)
        {
            if (!isRunning)
            {
                runs.Add([]);
            }

            isRunning = true;
            runs[^1].Add(segment);
        }
    }
}
