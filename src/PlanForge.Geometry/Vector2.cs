using System.Globalization;

namespace PlanForge.Geometry;

/// <summary>A displacement in a plane, in millimetres (or a pure direction, when its length is 1).</summary>
/// <param name="X">First component, mm.</param>
/// <param name="Y">Second component, mm.</param>
public readonly record struct Vector2(double X, double Y)
{
    /// <summary>The length, mm.</summary>
    public double Length => Math.Sqrt((X * X) + (Y * Y));

    /// <summary>The square of the length, mm².</summary>
    public double LengthSquared => (X * X) + (Y * Y);

    /// <summary>The vector turned a quarter anticlockwise: to the left of its own direction.</summary>
    public Vector2 Left => new(-Y, X);

    /// <summary>The direction angle from the x axis, radians in (−π, π]; 0 for the zero vector.</summary>
    public double Angle => Math.Atan2(Y, X);

    /// <summary>The unit vector at an angle from the x axis, radians, anticlockwise positive.</summary>
    public static Vector2 FromAngle(double radians) => new(Math.Cos(radians), Math.Sin(radians));

    /// <summary>The sum.</summary>
    public static Vector2 operator +(Vector2 a, Vector2 b) => new(a.X + b.X, a.Y + b.Y);

    /// <summary>The difference.</summary>
    public static Vector2 operator -(Vector2 a, Vector2 b) => new(a.X - b.X, a.Y - b.Y);

    /// <summary>The opposite vector.</summary>
    public static Vector2 operator -(Vector2 a) => new(-a.X, -a.Y);

    /// <summary>The vector scaled by a factor.</summary>
    public static Vector2 operator *(Vector2 a, double factor) => new(a.X * factor, a.Y * factor);

    /// <summary>The vector divided by a number.</summary>
    public static Vector2 operator /(Vector2 a, double divisor) => new(a.X / divisor, a.Y / divisor);

    /// <summary>The scalar product, mm².</summary>
    public double Dot(Vector2 other) => (X * other.X) + (Y * other.Y);

    /// <summary>The signed area of the parallelogram, mm²: positive when <paramref name="other"/> lies to the left.</summary>
    public double Cross(Vector2 other) => (X * other.Y) - (Y * other.X);

    /// <summary>The same direction with length 1. The zero vector has none and gives NaN components.</summary>
    public Vector2 Unit() => this / Length;

    /// <summary>The vector turned by an angle, radians, anticlockwise positive.</summary>
    public Vector2 Turned(double radians)
    {
        var (sin, cos) = Math.SinCos(radians);
        return new((X * cos) - (Y * sin), (X * sin) + (Y * cos));
    }

    /// <summary>The components. What a record prints by itself would hold <see cref="Left"/>, which prints its own, without end.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"Vector2 {{ X = {X}, Y = {Y} }}");
}
