namespace PlanForge.Geometry;

/// <summary>A place in space, in millimetres. The caller says what the axes mean.</summary>
/// <param name="X">First coordinate, mm.</param>
/// <param name="Y">Second coordinate, mm.</param>
/// <param name="Z">Third coordinate, mm.</param>
public readonly record struct Point3(double X, double Y, double Z)
{
    /// <summary>The point (0, 0, 0).</summary>
    public static Point3 Origin => default;

    /// <summary>The point moved by a vector.</summary>
    public static Point3 operator +(Point3 point, Vector3 by) => new(point.X + by.X, point.Y + by.Y, point.Z + by.Z);

    /// <summary>The point moved back by a vector.</summary>
    public static Point3 operator -(Point3 point, Vector3 by) => new(point.X - by.X, point.Y - by.Y, point.Z - by.Z);

    /// <summary>The vector from <paramref name="from"/> to <paramref name="to"/>.</summary>
    public static Vector3 operator -(Point3 to, Point3 from) => new(to.X - from.X, to.Y - from.Y, to.Z - from.Z);

    /// <summary>The straight distance to another point, mm.</summary>
    public double DistanceTo(Point3 other) => (other - this).Length;

    /// <summary>The point at <paramref name="fraction"/> of the way to another: 0 is here, 1 is there, others extrapolate.</summary>
    public Point3 Towards(Point3 other, double fraction) => this + ((other - this) * fraction);
}
