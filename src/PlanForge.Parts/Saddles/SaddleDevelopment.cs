using System.Collections.Immutable;
using PlanForge.Geometry;
using PlanForge.Parts.Shapes;

namespace PlanForge.Parts.Saddles;

/// <summary>The saddle line of a side unrolled flat, seen from outside the port side: x aft, y up, heights kept at the lower edge.</summary>
/// <param name="body">The fuselage.</param>
/// <param name="line">Its saddle line.</param>
/// <param name="unrolled">The line unrolled.</param>
internal sealed class SaddleDevelopment(FuselageShape body, SaddleLine line, UnrolledSide unrolled)
{
    private readonly SideLengths _lengths = new(body);

    /// <summary>The solved line.</summary>
    public SaddleLine Line => line;

    /// <summary>Height above the datum line of the template's straight edge, mm.</summary>
    public double EdgeHeight => unrolled.EdgeHeight;

    /// <summary>Flat places of that edge below (or above) each point of the line.</summary>
    public ImmutableArray<Point2> Edge => unrolled.Edge;

    /// <summary>
    /// The greatest accumulated difference between the edge's length on the body and on the flat template, mm. 0 within
    /// rounding where the side can be unrolled.
    /// </summary>
    public double LeftoverError => unrolled.LeftoverError;

    /// <summary>Unrolls a line.</summary>
    /// <param name="body">The fuselage.</param>
    /// <param name="line">Its saddle line.</param>
    /// <param name="edgeHeight">Height of the template's other edge above the datum line, mm.</param>
    public static SaddleDevelopment Of(FuselageShape body, SaddleLine line, double edgeHeight) => new(body, line, UnrolledSide.Of(body, line, edgeHeight));

    /// <summary>Flat place of a point of the line on the outer face, with the flat direction of the line.</summary>
    public CurveFrame OuterAt(int index)
    {
        var frame = unrolled.Frames[index];
        return new(unrolled.Placement.Apply(frame.Place), unrolled.Placement.Apply(frame.Along));
    }

    /// <summary>Flat place on the outer face opposite the line's point on the inner face.</summary>
    public Point2 InnerAt(int index)
    {
        var point = line.Points[index];
        return unrolled.Placement.Apply(unrolled.Frames[index].Flat(point, point.InnerFoot - point.Outer));
    }

    /// <summary>Flat place at a station and height on the outer face; a station beyond the ends of the line is carried along the edge.</summary>
    public Point2 At(double station, double height)
    {
        var points = line.Points;
        if (station < line.From || station > line.To)
        {
            return Beyond(station, height);
        }

        var index = 1;
        while (index < points.Length - 1 && points[index].Outer.X < station)
        {
            index++;
        }

        var (a, b) = (points[index - 1], points[index]);
        var width = b.Outer.X - a.Outer.X;
        var fraction = width > 1e-9 ? (station - a.Outer.X) / width : 0;
        var edge = Edge[index - 1].Towards(Edge[index], fraction);
        var up = UpAt(index - 1).Towards(UpAt(index), Math.Clamp(fraction, 0, 1));
        return edge + ((up - Point2.Origin).Unit() * _lengths.Girth(station, EdgeHeight, height));
    }

    // Ahead of and behind the line the edge runs straight on with its length on the body. The base for its direction is the
    // whole edge: the points at the round nose stand too close to show one.
    private Point2 Beyond(double station, double height)
    {
        var isAhead = station < line.From;
        var (end, index) = isAhead ? (Edge[0], 0) : (Edge[^1], Edge.Length - 1);
        var direction = (Edge[^1] - Edge[0]).Unit() * (isAhead ? -1 : 1);
        var length = _lengths.Waterline(EdgeHeight, Math.Min(station, isAhead ? line.From : line.To), Math.Max(station, isAhead ? line.From : line.To));
        var up = (UpAt(index) - Point2.Origin).Unit();
        return end + (direction * length) + (up * _lengths.Girth(station, EdgeHeight, height));
    }

    // Unit flat direction of the ruling, as a point so that two can be mixed.
    private Point2 UpAt(int index) => Point2.Origin + unrolled.Placement.Apply(unrolled.Frames[index].Up);
}

/// <summary>A place on a flat line and its unit direction there.</summary>
/// <param name="Place">The place, mm.</param>
/// <param name="Along">The unit direction of travel.</param>
internal readonly record struct CurveFrame(Point2 Place, Vector2 Along);
