using PlanForge.Geometry;

namespace PlanForge.Drafting.Clipping;

/// <summary>Where a line or arc crosses a straight edge.</summary>
internal static class Crossings
{
    /// <summary>Adds the fractions of the segment's length, strictly between 0 and 1, at which it crosses the edge.</summary>
    public static void Add(Segment2 segment, Segment2 edge, List<double> fractions)
    {
        if (segment.IsLine)
        {
            AddOfLine(segment, edge, fractions);
        }
        else
        {
            AddOfArc(segment, edge, fractions);
        }
    }

    private static void AddOfLine(Segment2 line, Segment2 edge, List<double> fractions)
    {
        // An end on the line counts as right of it, so that a line through a shared corner crosses one of its two edges.
        var direction = line.End - line.Start;
        var startSide = direction.Cross(edge.Start - line.Start);
        var endSide = direction.Cross(edge.End - line.Start);
        if (startSide > 0 == endSide > 0)
        {
            return;
        }

        var crossing = edge.Start.Towards(edge.End, startSide / (startSide - endSide));
        AddInside((crossing - line.Start).Dot(direction) / direction.LengthSquared, fractions);
    }

    private static void AddOfArc(Segment2 arc, Segment2 edge, List<double> fractions)
    {
        // |edge.Start + t·d − centre|² = r², solved for t.
        var direction = edge.End - edge.Start;
        var toStart = edge.Start - arc.Centre;
        var a = direction.LengthSquared;
        var halfB = direction.Dot(toStart);
        var c = toStart.LengthSquared - (arc.Radius * arc.Radius);
        var discriminant = (halfB * halfB) - (a * c);
        if (a == 0 || discriminant <= 0)
        {
            return;
        }

        var root = Math.Sqrt(discriminant);
        AddOnArc(arc, edge, (-halfB - root) / a, fractions);
        AddOnArc(arc, edge, (-halfB + root) / a, fractions);
    }

    private static void AddOnArc(Segment2 arc, Segment2 edge, double t, List<double> fractions)
    {
        if (t is < 0 or > 1)
        {
            return;
        }

        var point = edge.Start.Towards(edge.End, t);
        if (arc.IsWithinSweep(point))
        {
            AddInside(arc.NearestFraction(point), fractions);
        }
    }

    private static void AddInside(double fraction, List<double> fractions)
    {
        if (fraction is > 0 and < 1)
        {
            fractions.Add(fraction);
        }
    }
}
