namespace PlanForge.Drafting.Conventions;

/// <summary>How views are set out around the side view (ISO 5456-2).</summary>
public enum ProjectionAngle
{
    /// <summary>First angle: a view stands on the side opposite to the one it is seen from.</summary>
    First,

    /// <summary>Third angle: a view stands on the side it is seen from.</summary>
    Third,
}
