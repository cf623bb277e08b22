using System.Collections.Immutable;
using PlanForge.Geometry;
using PlanForge.Geometry.Fitting;

namespace PlanForge.Parts.Saddles;

/// <summary>A sampled line moved square to itself.</summary>
internal static class MovedLine
{
    // Corners that turn more than this are no corners of a saddle: their mitre would reach far.
    private const double LeastCosine = 0.5;

    // Nearer than this, mm, two moved points would show a direction of their own.
    private const double Apart = 1e-6;

    /// <summary>
    /// The moved points. Where the line is rounder than the move, points that would fold back are left out; at a corner both sides
    /// meet in its mitre, which stands twice, as corners do.
    /// </summary>
    /// <param name="line">The line; a corner is a place that stands twice.</param>
    /// <param name="by">How far to the left of its direction, mm.</param>
    public static ImmutableArray<Point2> Of(ImmutableArray<CurveSample> line, double by)
    {
        var moved = ImmutableArray.CreateBuilder<Point2>(line.Length);
        Point2? corner = null;
        for (var i = 0; i < line.Length; i++)
        {
            if (i + 1 < line.Length && line[i].Point == line[i + 1].Point && line[i].Direction.Dot(line[i + 1].Direction) > LeastCosine)
            {
                corner = Mitre(line[i], line[i + 1], by);
                DropBehind(corner.Value, line[i].Direction, moved);
                moved.Add(corner.Value);
                moved.Add(corner.Value);
                i++;
                continue;
            }

            var place = line[i].Point + (line[i].Direction.Left * by);
            var isPastCorner = corner is not { } mitre || (place - mitre).Dot(line[i].Direction) > Apart;
            if (isPastCorner && IsClear(place, line, by))
            {
                moved.Add(place);
                corner = null;
            }
        }

        return moved.ToImmutable();
    }

    private static Point2 Mitre(CurveSample a, CurveSample b, double by)
    {
        var across = a.Direction.Left + b.Direction.Left;
        return a.Point + (across * (by / (1 + a.Direction.Dot(b.Direction))));
    }

    // On the inside of a corner the last points before it would lie past the mitre.
    private static void DropBehind(Point2 mitre, Vector2 direction, ImmutableArray<Point2>.Builder moved)
    {
        while (moved.Count > 0 && (mitre - moved[^1]).Dot(direction) <= Apart)
        {
            moved.RemoveAt(moved.Count - 1);
        }
    }

    private static bool IsClear(Point2 place, ImmutableArray<CurveSample> line, double by)
    {
        const double Slack = 1e-6;
        foreach (var sample in line)
        {
            if (!(place.DistanceTo(sample.Point) > Math.Abs(by) - Slack))
            {
                return false;
            }
        }

        return true;
    }
}
