namespace PlanForge.Geometry;

/// <summary>A point that two paths share, and where along each it lies.</summary>
/// <param name="Point">The shared point.</param>
/// <param name="Segment">Index of the segment of the first path; at a vertex, of the segment that leaves it.</param>
/// <param name="Fraction">Fraction of that segment's length, 0 to 1; 1 only at the end of an open path.</param>
/// <param name="OtherSegment">Index of the segment of the other path, likewise.</param>
/// <param name="OtherFraction">Fraction of that segment's length, likewise.</param>
public readonly record struct PathCrossing(Point2 Point, int Segment, double Fraction, int OtherSegment, double OtherFraction);
