namespace PlanForge.Geometry.Regions;

/// <summary>Which points count as inside when contours overlap, by how often they run around a point.</summary>
public enum FillRule
{
    /// <summary>Inside wherever the contours' turns around the point, anticlockwise less clockwise, do not cancel.</summary>
    NonZero,

    /// <summary>Inside wherever an odd number of turns is made: an outline inside another one is an opening.</summary>
    EvenOdd,
}
