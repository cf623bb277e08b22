namespace PlanForge.Geometry;

/// <summary>A place in a plane, in millimetres. Finite coordinates only make sense; <c>default</c> is the origin.</summary>
/// <remarks>Points and vectors are different types: the sum of two points means nothing and does not compile.</remarks>
/// <param name="X">First coordinate, mm.</param>
/// <param name="Y">Second coordinate, mm; up on every drawing.</param>
public readonly record struct Point2(double X, double Y)
{
    /// <summary>The point (0, 0).</summary>
    public static Point2 Origin => default;

    /// <summary>The point moved by a vector.</summary>
    public static Point2 operator +(Point2 point, Vector2 by) => new(point.X + by.X, point.Y + by.Y);

    /// <summary>The point moved back by a vector.</summary>
    public static Point2 operator -(Point2 point, Vector2 by) => new(point.X - by.X, point.Y - by.Y);

    /// <summary>The vector from <paramref name="from"/> to <paramref name="to"/>.</summary>
    public static Vector2 operator -(Point2 to, Point2 from) => new(to.X - from.X, to.Y - from.Y);

    /// <summary>The straight distance to another point, mm.</summary>
    public double DistanceTo(Point2 other) => (other - this).Length;

    /// <summary>The point at <paramref name="fraction"/> of the way to another: 0 is here, 1 is there, others extrapolate.</summary>
    public Point2 Towards(Point2 other, double fraction) => this + ((other - this) * fraction);
}
