namespace PlanForge.Output.Inspection;

/// <summary>What is known about the sheet a file is to be cut from.</summary>
/// <param name="Thickness">Thickness of the sheet, mm, over 0; null when it is not known.</param>
/// <param name="Sheet">Size of the sheet, mm, its lower left corner at the origin; null when it is not known.</param>
public sealed record InspectionOptions(double? Thickness = null, SheetSize? Sheet = null);

/// <summary>Size of a sheet of material.</summary>
/// <param name="Width">Along x, mm, over 0.</param>
/// <param name="Height">Along y, mm, over 0.</param>
public readonly record struct SheetSize(double Width, double Height);
