namespace PlanForge.Drafting.Conventions;

/// <summary>
/// How the views of a drawing stand to each other (ISO 5456-2, from memory; the figure of its symbol is in
/// shared/check-values.md section 5).
/// </summary>
/// <remarks>
/// The side view from port, nose to the left, is the principal view. First angle: each view stands on the far side of the
/// principal one, so the view from above stands below it and the view from the nose, which is its left, on its right. Third
/// angle: each stands on the side it is seen from, so the view from above stands above and the view from the nose on the left.
/// In both, the plan keeps its nose to the left with starboard up: looked at from above, starboard is the far side of a model
/// whose nose points left.
/// </remarks>
public enum ProjectionAngle
{
    /// <summary>First angle projection: common in Europe.</summary>
    First,

    /// <summary>Third angle projection: common in America.</summary>
    Third,
}
