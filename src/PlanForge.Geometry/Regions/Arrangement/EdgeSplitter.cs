namespace PlanForge.Geometry.Regions;

/// <summary>Splits pieces at their crossings and at every vertex they pass, into edges.</summary>
internal static class EdgeSplitter
{
    public static List<Edge> Split(PieceCutter cutter, VertexTable vertices, List<Split> splits)
    {
        var splitsByPiece = ByPiece(splits, cutter.Pieces.Count, out var firstSplit);
        var edges = new List<Edge>(cutter.Pieces.Count + splits.Count);
        var (stops, places) = (new List<int>(), new List<double>());
        for (var i = 0; i < cutter.Pieces.Count; i++)
        {
            stops.Clear();
            places.Clear();
            var piece = cutter.Pieces[i];
            var (start, end) = (vertices.VertexOf(piece.StartPoint), vertices.VertexOf(piece.EndPoint));
            var chord = vertices.Positions[end] - vertices.Positions[start];
            for (var j = firstSplit[i]; j < firstSplit[i + 1]; j++)
            {
                AddStop(vertices.VertexOf(splitsByPiece[j]));
            }

            AddPassedVertices(piece);
            var from = start;
            foreach (var stop in stops)
            {
                AddEdge(piece, from, stop);
                from = stop;
            }

            AddEdge(piece, from, end);

            // Along the chord a piece runs one way only, so the place along the chord orders the stops.
            void AddStop(int vertex)
            {
                var place = (vertices.Positions[vertex] - vertices.Positions[start]).Dot(chord);
                if (vertex == start || vertex == end || place <= 0 || place >= chord.LengthSquared || stops.Contains(vertex))
                {
                    return;
                }

                var index = places.Count;
                while (index > 0 && places[index - 1] > place)
                {
                    index--;
                }

                places.Insert(index, place);
                stops.Insert(index, vertex);
            }

            void AddPassedVertices(in Piece passing)
            {
                var bounds = passing.Bounds.Grown(cutter.Snap);
                var carrier = cutter.Carriers[passing.Source];
                for (var v = vertices.FirstFrom(bounds.MinX);
                    v < vertices.Positions.Length && !vertices.IsBeyond(v, bounds.MaxX);
                    v++)
                {
                    var position = vertices.Positions[v];
                    if (bounds.Contains(position) && Math.Abs(carrier.Value(position)) <= cutter.Snap)
                    {
                        AddStop(v);
                    }
                }
            }
        }

        return edges;

        void AddEdge(in Piece piece, int from, int to)
        {
            if (from != to)
            {
                var bulge = Bulge(cutter.Carriers[piece.Source].Curvature, vertices.Positions[from].DistanceTo(vertices.Positions[to]));
                edges.Add(new(from, to, bulge, piece.Source, edges.Count, piece.IsFirstSet ? 1 : 0, piece.IsFirstSet ? 0 : 1));
            }
        }
    }

    // Half the sweep has the sine κc/2; the bulge is the tangent of half of that, for sweeps up to a half turn.
    private static double Bulge(double curvature, double chord)
    {
        var sine = Math.Clamp(curvature * chord / 2, -1, 1);
        return sine / (1 + Math.Sqrt(1 - (sine * sine)));
    }

    private static int[] ByPiece(List<Split> splits, int pieceCount, out int[] first)
    {
        first = new int[pieceCount + 1];
        foreach (var split in splits)
        {
            first[split.Piece + 1]++;
        }

        for (var i = 0; i < pieceCount; i++)
        {
            first[i + 1] += first[i];
        }

        var points = new int[splits.Count];
        var next = (int[])first.Clone();
        foreach (var split in splits)
        {
            points[next[split.Piece]++] = split.Point;
        }

        return points;
    }
}
