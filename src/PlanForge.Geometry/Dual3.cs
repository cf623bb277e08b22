namespace PlanForge.Geometry;

/// <summary>A point of a surface with its two tangents: a function of two parameters u and v with values in space.</summary>
/// <param name="X">First coordinate, mm.</param>
/// <param name="Y">Second coordinate, mm.</param>
/// <param name="Z">Third coordinate, mm.</param>
public readonly record struct Dual3(Dual X, Dual Y, Dual Z)
{
    /// <summary>The point itself.</summary>
    public Point3 Point => new(X.Value, Y.Value, Z.Value);

    /// <summary>The derivative by u, not normalised.</summary>
    public Vector3 Du => new(X.Du, Y.Du, Z.Du);

    /// <summary>The derivative by v, not normalised.</summary>
    public Vector3 Dv => new(X.Dv, Y.Dv, Z.Dv);

    /// <summary>The unit normal Du × Dv. Not a number where the surface has no tangent plane.</summary>
    public Vector3 Normal => Du.Cross(Dv).Unit();
}
