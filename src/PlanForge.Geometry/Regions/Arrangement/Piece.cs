namespace PlanForge.Geometry.Regions;

/// <summary>A part of a contour's segment that runs in one quadrant of directions, so that its end points span its bounds.</summary>
/// <param name="Source">Index of the segment among all segments of all contours.</param>
/// <param name="IsFirstSet">True for a contour of the first set.</param>
/// <param name="StartPoint">Index of its start among all points.</param>
/// <param name="EndPoint">Index of its end.</param>
/// <param name="Bounds">The smallest upright rectangle around it.</param>
internal readonly record struct Piece(int Source, bool IsFirstSet, int StartPoint, int EndPoint, Bounds2 Bounds);
