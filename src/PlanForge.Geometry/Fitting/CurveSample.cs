namespace PlanForge.Geometry.Fitting;

/// <summary>A point of a curve and the direction in which the curve runs there.</summary>
/// <param name="Point">The point, exact.</param>
/// <param name="Direction">The unit direction of travel, exact.</param>
public readonly record struct CurveSample(Point2 Point, Vector2 Direction);
