namespace PlanForge.Output.Pdf;

/// <summary>What a PDF says about its making. No date: the same sheets give the same bytes on any day.</summary>
/// <param name="Producer">Program and version, such as <c>PlanForge 0.1.0</c>.</param>
public sealed record PdfInfo(string Producer);
