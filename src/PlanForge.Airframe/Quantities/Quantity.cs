namespace PlanForge.Airframe.Quantities;

/// <summary>A number with its dimension, in millimetres, radians and grams and their powers.</summary>
internal readonly record struct Quantity(double Value, Powers Powers);
