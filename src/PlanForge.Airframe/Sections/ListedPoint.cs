using PlanForge.Airframe.Diagnostics;
using PlanForge.Geometry;

namespace PlanForge.Airframe.Sections;

/// <summary>A pair of numbers in a coordinate file.</summary>
/// <param name="Point">The numbers as they stand there.</param>
/// <param name="At">Where they stand.</param>
internal readonly record struct ListedPoint(Point2 Point, SourcePosition At);
