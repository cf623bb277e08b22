namespace PlanForge.Geometry;

/// <summary>A displacement in space, in millimetres (or a pure direction, when its length is 1).</summary>
/// <param name="X">First component, mm.</param>
/// <param name="Y">Second component, mm.</param>
/// <param name="Z">Third component, mm.</param>
public readonly record struct Vector3(double X, double Y, double Z)
{
    /// <summary>The length, mm.</summary>
    public double Length => Math.Sqrt(Dot(this));

    /// <summary>The sum.</summary>
    public static Vector3 operator +(Vector3 a, Vector3 b) => new(a.X + b.X, a.Y + b.Y, a.Z + b.Z);

    /// <summary>The difference.</summary>
    public static Vector3 operator -(Vector3 a, Vector3 b) => new(a.X - b.X, a.Y - b.Y, a.Z - b.Z);

    /// <summary>The opposite vector.</summary>
    public static Vector3 operator -(Vector3 a) => new(-a.X, -a.Y, -a.Z);

    /// <summary>The vector scaled by a factor.</summary>
    public static Vector3 operator *(Vector3 a, double factor) => new(a.X * factor, a.Y * factor, a.Z * factor);

    /// <summary>The vector divided by a number.</summary>
    public static Vector3 operator /(Vector3 a, double divisor) => new(a.X / divisor, a.Y / divisor, a.Z / divisor);

    /// <summary>The scalar product, mm².</summary>
    public double Dot(Vector3 other) => (X * other.X) + (Y * other.Y) + (Z * other.Z);

    /// <summary>The vector product, right-handed, mm².</summary>
    public Vector3 Cross(Vector3 other) =>
        new((Y * other.Z) - (Z * other.Y), (Z * other.X) - (X * other.Z), (X * other.Y) - (Y * other.X));

    /// <summary>The same direction with length 1. The zero vector has none and gives NaN components.</summary>
    public Vector3 Unit() => this / Length;
}
