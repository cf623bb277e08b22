namespace PlanForge.Airframe.Sections;

/// <summary>How a NACA section ends.</summary>
public enum TrailingEdge
{
    /// <summary>As published: a gap of 2.1 % of the section's thickness is left between the surfaces.</summary>
    Open,

    /// <summary>The last coefficient of the thickness form is changed so that the surfaces meet.</summary>
    Closed,
}
