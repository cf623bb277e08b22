using PlanForge.Geometry;
using PlanForge.Parts.Shapes;

namespace PlanForge.Parts.Rigging;

/// <summary>Areas and mean chord of a wing's plan, both halves.</summary>
/// <param name="Span">Tip to tip, mm.</param>
/// <param name="Area">Projected area, mm².</param>
/// <param name="MeanChord">Mean aerodynamic chord, mm: ∫c² dy / ∫c dy.</param>
/// <param name="MeanLeadingEdge">
/// Where the mean chord's leading edge lies on the starboard half, in the wing's own axes before incidence, mm from the root
/// leading edge: ∫c p dy / ∫c dy over the places p of the leading edge.
/// </param>
/// <remarks>
/// For a straight taper from a to b over a breadth h, with the leading edge going from p to p + d, the integrals are
/// h (a + b)/2, h (a² + ab + b²)/3 and h (p (a + b)/2 + d (a + 2b)/6); panels add up. Source: any text on wing geometry;
/// numbers in shared/check-values.md section 8.
/// </remarks>
public readonly record struct WingPlan(double Span, double Area, double MeanChord, Point3 MeanLeadingEdge)
{
    /// <summary>Span over the mean breadth: span² over area.</summary>
    public double AspectRatio => Span * Span / Area;

    /// <summary>The plan of the wing.</summary>
    public static WingPlan Of(WingShape wing)
    {
        double area = 0, squares = 0;
        Vector3 moments = default;
        foreach (var panel in wing.Panels)
        {
            var (a, b) = (panel.InnerChord, panel.OuterChord);
            var breadth = panel.Length * Math.Cos(panel.Dihedral);
            area += breadth * (a + b) / 2;
            squares += breadth * ((a * a) + (a * b) + (b * b)) / 3;
            moments += (((panel.Start - Point3.Origin) * ((a + b) / 2)) + ((panel.End - panel.Start) * ((a + (2 * b)) / 6))) * breadth;
        }

        return new(2 * wing.HalfSpan, 2 * area, squares / area, Point3.Origin + (moments * (1 / area)));
    }

    /// <summary>The quarter chord point of the mean chord in its place on the airframe; twist leaves it where it is.</summary>
    /// <param name="wing">The wing this is the plan of.</param>
    public Point3 QuarterChord(WingShape wing) => wing.InPlace(MeanLeadingEdge + new Vector3(MeanChord / 4, 0, 0));
}
