using System.Collections.Immutable;
using PlanForge.Drafting.Cutting;
using PlanForge.Drafting.Model;
using PlanForge.Drafting.Nests;

namespace PlanForge.Designs;

/// <summary>What of a design goes to the cutter; known before the sheets are drawn.</summary>
/// <param name="Drawings">The drawings for the cutter, in the order of the parts.</param>
/// <param name="Nests">The parts laid out on sheets of stock.</param>
/// <param name="Profile">How the shop wants its cut files.</param>
/// <param name="AreHeld">True when parts are held in their sheet by tabs: then contours are open on purpose.</param>
internal sealed record DesignCuts(ImmutableArray<CutDrawing> Drawings, NestPlan Nests, CutProfile Profile, bool AreHeld);
