namespace PlanForge.Parts;

/// <summary>How exactly curves are drawn.</summary>
internal static class Drawn
{
    /// <summary>
    /// Greatest distance between a fitted line and the exact curve, mm: less than half of the 0.01 mm that is promised, so that
    /// two approximations in a row (a fit, then an offset or a union) still keep it.
    /// </summary>
    public const double Tolerance = 0.004;
}
