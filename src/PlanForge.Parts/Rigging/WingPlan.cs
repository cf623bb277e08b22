using PlanForge.Parts.Shapes;

namespace PlanForge.Parts.Rigging;

/// <summary>Areas and mean chord of a wing's plan, both halves.</summary>
/// <param name="Span">Tip to tip, mm.</param>
/// <param name="Area">Projected area, mm².</param>
/// <param name="MeanChord">Mean aerodynamic chord, mm: ∫c² dy / ∫c dy.</param>
/// <remarks>
/// For a straight taper from a to b over a length h the integrals are h (a + b)/2 and h (a² + ab + b²)/3; panels add up.
/// Source: any text on wing geometry; numbers in shared/check-values.md section 8.
/// </remarks>
public readonly record struct WingPlan(double Span, double Area, double MeanChord)
{
    /// <summary>The plan of the wing.</summary>
    public static WingPlan Of(WingShape wing)
    {
        double area = 0, squares = 0;
        foreach (var panel in wing.Panels)
        {
            var (a, b) = (panel.InnerChord, panel.OuterChord);
            var breadth = panel.Length * Math.Cos(panel.Dihedral);
            area += breadth * (a + b) / 2;
            squares += breadth * ((a * a) + (a * b) + (b * b)) / 3;
        }

        return new(2 * wing.HalfSpan, 2 * area, squares / area);
    }

    /// <summary>The plan of two straight-tapered halves.</summary>
    public static WingPlan Of(double span, double rootChord, double tipChord)
    {
        var squares = ((rootChord * rootChord) + (rootChord * tipChord) + (tipChord * tipChord)) / 3;
        var mean = (rootChord + tipChord) / 2;
        return new(span, span * mean, squares / mean);
    }
}
