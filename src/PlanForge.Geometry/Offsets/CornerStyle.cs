namespace PlanForge.Geometry.Offsets;

/// <summary>What an offset does around the corners that its line has to go round the outside of.</summary>
public enum CornerStyle
{
    /// <summary>An arc about the corner: every point of the new boundary is exactly the distance away.</summary>
    Round,

    /// <summary>
    /// The neighbours are carried on along their tangents until they meet: a square stays a square. Corners so sharp that the
    /// tip would lie further than <see cref="Offsetter.MitreLimit"/> distances from the corner are rounded.
    /// </summary>
    Sharp,
}
