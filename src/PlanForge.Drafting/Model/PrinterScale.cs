namespace PlanForge.Drafting.Model;

/// <summary>How much a printer's pages must be stretched to come out at true size.</summary>
/// <param name="Printer">The printer's name.</param>
/// <param name="X">Factor across the page: true over printed length; 0.97 to 1.03.</param>
/// <param name="Y">Factor up the page.</param>
public sealed record PrinterScale(string Printer, double X, double Y);
