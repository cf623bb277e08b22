namespace PlanForge.Geometry.Regions;

/// <summary>A part of a contour between two neighbouring vertices; parts that coincide are one edge.</summary>
/// <param name="Start">Index of the vertex where it starts, in its source's direction of travel.</param>
/// <param name="End">Index of the vertex where it ends.</param>
/// <param name="Bulge">Its bulge.</param>
/// <param name="Source">Index of the segment it is part of.</param>
/// <param name="Sequence">Its number in order of travel; neighbours on the same source have neighbouring numbers.</param>
/// <param name="First">How often the first set's contours run along it, less how often against it.</param>
/// <param name="Second">How often the second set's do.</param>
internal readonly record struct Edge(int Start, int End, double Bulge, int Source, int Sequence, int First, int Second)
{
    /// <summary>True when its contours cancel, so that nothing changes across it.</summary>
    public bool IsCancelled => First == 0 && Second == 0;
}
