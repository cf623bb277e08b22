using PlanForge.Drafting.Nests;
using PlanForge.Output.Dxf;

namespace PlanForge.Folders;

/// <summary>How a design is to be written, as far as the command line says so.</summary>
/// <param name="Print">What the plan is printed with.</param>
/// <param name="Dxf">The version of DXF.</param>
/// <param name="Effort">How many arrangements of each stock's parts are tried, 1 or more.</param>
internal sealed record DrawChoice(PrintChoice Print, DxfVersion Dxf = DxfVersion.R2000, int Effort = NestOptions.UsualEffort);
