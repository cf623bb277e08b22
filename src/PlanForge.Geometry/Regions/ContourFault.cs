namespace PlanForge.Geometry.Regions;

/// <summary>What can be wrong with a contour that is to be cut.</summary>
public enum ContourFaultKind
{
    /// <summary>The path is open: it cuts nothing out.</summary>
    Open,

    /// <summary>A segment without length.</summary>
    ZeroLengthSegment,

    /// <summary>Two segments share a stretch, which would be cut twice.</summary>
    DuplicateEdge,

    /// <summary>The contour crosses or touches itself in a point.</summary>
    SelfCrossing,
}

/// <summary>A fault of a contour and where it is.</summary>
/// <param name="Kind">What is wrong.</param>
/// <param name="At">Where: the end of an open path, the crossing, the middle of a shared stretch.</param>
/// <param name="Segment">Index of the segment concerned, of two the lower one.</param>
/// <param name="OtherSegment">Index of the other segment when two are concerned.</param>
public sealed record ContourFault(ContourFaultKind Kind, Point2 At, int Segment, int? OtherSegment = null);
