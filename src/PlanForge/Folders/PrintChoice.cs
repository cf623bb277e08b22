using PlanForge.Drafting.Model;
using PlanForge.Drafting.Sheets;

namespace PlanForge.Folders;

/// <summary>What the plan is printed with, as far as the command line says so.</summary>
/// <param name="Tiles">The paper of the tiled plan, or null for those that the design asks for.</param>
/// <param name="Printer">The printer that the pages are stretched for, or null for none.</param>
internal sealed record PrintChoice(Paper? Tiles, PrinterScale? Printer)
{
    /// <summary>Nothing was said.</summary>
    public static PrintChoice None { get; } = new(null, null);
}
