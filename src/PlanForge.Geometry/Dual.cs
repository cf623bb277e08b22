namespace PlanForge.Geometry;

/// <summary>A value together with its exact derivatives by two parameters, carried through arithmetic by the chain rule.</summary>
/// <remarks>
/// Forward automatic differentiation with two directions: surfaces are written once, as a formula of their two parameters
/// u and v, and yield their tangents and normals without a second formula that could disagree. Mutable state: none.
/// </remarks>
/// <param name="Value">The value itself.</param>
/// <param name="Du">Derivative by u.</param>
/// <param name="Dv">Derivative by v.</param>
public readonly record struct Dual(double Value, double Du, double Dv)
{
    /// <summary>The first parameter itself, at a value.</summary>
    public static Dual U(double value) => new(value, 1, 0);

    /// <summary>The second parameter itself, at a value.</summary>
    public static Dual V(double value) => new(value, 0, 1);

    /// <summary>A constant has derivatives 0.</summary>
    public static implicit operator Dual(double constant) => new(constant, 0, 0);

    /// <summary>The sum.</summary>
    public static Dual operator +(Dual a, Dual b) => new(a.Value + b.Value, a.Du + b.Du, a.Dv + b.Dv);

    /// <summary>The difference.</summary>
    public static Dual operator -(Dual a, Dual b) => new(a.Value - b.Value, a.Du - b.Du, a.Dv - b.Dv);

    /// <summary>The opposite.</summary>
    public static Dual operator -(Dual a) => new(-a.Value, -a.Du, -a.Dv);

    /// <summary>The product.</summary>
    public static Dual operator *(Dual a, Dual b) =>
        new(a.Value * b.Value, (a.Du * b.Value) + (a.Value * b.Du), (a.Dv * b.Value) + (a.Value * b.Dv));

    /// <summary>The quotient; not finite where the divisor is 0.</summary>
    public static Dual operator /(Dual a, Dual b)
    {
        var value = a.Value / b.Value;
        return new(value, (a.Du - (value * b.Du)) / b.Value, (a.Dv - (value * b.Dv)) / b.Value);
    }

    /// <summary>The square root; its derivatives are infinite at 0.</summary>
    public static Dual Sqrt(Dual a)
    {
        var root = Math.Sqrt(a.Value);
        return a.Through(root, 0.5 / root);
    }

    /// <summary>The sine of an angle in radians.</summary>
    public static Dual Sin(Dual a) => a.Through(Math.Sin(a.Value), Math.Cos(a.Value));

    /// <summary>The cosine of an angle in radians.</summary>
    public static Dual Cos(Dual a) => a.Through(Math.Cos(a.Value), -Math.Sin(a.Value));

    /// <summary>A function of this value, given its value and its derivative there (the chain rule).</summary>
    public Dual Through(double value, double derivative) => new(value, derivative * Du, derivative * Dv);
}
