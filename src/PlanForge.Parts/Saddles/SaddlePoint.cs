using PlanForge.Geometry;

namespace PlanForge.Parts.Saddles;

/// <summary>A point of the saddle line on the starboard side, solved on both faces of the side.</summary>
/// <param name="W">The section parameter of the wing's surface there.</param>
/// <param name="Panel">Which panel of the wing.</param>
/// <param name="Bay">Which bay of the fuselage.</param>
/// <param name="Outer">The point on the outer face.</param>
/// <param name="Tangent">Unit direction of the line on the outer face, towards the trailing edge.</param>
/// <param name="WingNormal">Unit normal out of the wing.</param>
/// <param name="SideNormal">Unit normal out of the body.</param>
/// <param name="Inner">The point on the inner face at the same w.</param>
/// <param name="InnerFoot">Where the normal through <paramref name="Inner"/> leaves the outer face.</param>
internal sealed record SaddlePoint(
    double W,
    int Panel,
    int Bay,
    Point3 Outer,
    Vector3 Tangent,
    Vector3 WingNormal,
    Vector3 SideNormal,
    Point3 Inner,
    Point3 InnerFoot)
{
    /// <summary>
    /// Angle by which the seat departs from square to the outer face, measured square to the edge, radians; positive where
    /// the seat falls towards the inside of the body.
    /// </summary>
    public double Bevel
    {
        get
        {
            var sine = Math.Clamp(WingNormal.Dot(SideNormal), -1, 1);
            return WingNormal.Z <= 0 ? Math.Asin(sine) : -Math.Asin(sine);
        }
    }
}
