namespace PlanForge.Output.Curves;

/// <summary>How exactly the writers draw, in millimetres; one place, because the files must agree with each other.</summary>
internal static class CurveTolerance
{
    /// <summary>
    /// Farthest a Bézier curve may stray from the arc it stands for. With the rounding of coordinates it stays under 1e-4 mm;
    /// larger would show when files are compared, smaller adds curves that nobody can measure.
    /// </summary>
    public const double Bezier = 5e-5;

    /// <summary>Arcs that leave their chord by less are written as lines: less than the last decimal shows.</summary>
    public const double Flat = 1e-6;
}
