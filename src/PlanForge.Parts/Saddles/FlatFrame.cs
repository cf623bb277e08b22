using PlanForge.Geometry;

namespace PlanForge.Parts.Saddles;

/// <summary>A point of the flat line: place, direction of the line, and direction of the ruling upward.</summary>
internal readonly record struct FlatFrame(Point2 Place, Vector2 Along, Vector2 Up)
{
    /// <summary>The frame of a point, given its flat place and direction.</summary>
    public static FlatFrame At(SaddlePoint point, Point2 place, double angle)
    {
        var along = Vector2.FromAngle(angle);

        // The ruling: the direction within the outer face that keeps the station, upward.
        var n = point.SideNormal;
        var ruling = new Vector3(0, -n.Z, n.Y).Unit();
        var frame = new FlatFrame(place, along, default);
        return frame with { Up = (frame.Flat(point, ruling) - place).Unit() };
    }

    /// <summary>Flat place of a short displacement within the outer face.</summary>
    public Point2 Flat(SaddlePoint point, Vector3 displacement)
    {
        var across = point.Tangent.Cross(point.SideNormal);
        return Place + (Along * displacement.Dot(point.Tangent)) + (Along.Left * displacement.Dot(across));
    }
}
