using System.Collections.Immutable;
using PlanForge.Airframe;
using PlanForge.Drafting.Model;

namespace PlanForge.Drafting.Sheets;

/// <summary>What the sheets of a design say and are drawn on.</summary>
/// <param name="Name">The design's name.</param>
/// <param name="Revision">Its revision, or empty.</param>
/// <param name="Owner">Legal owner, or empty.</param>
/// <param name="Version">Name and version of the tool.</param>
/// <param name="Paper">Name of the paper: A4 to A0, Letter, Legal or Tabloid.</param>
/// <param name="IsPortrait">True for upright sheets.</param>
/// <param name="Unit">The unit lengths are shown in.</param>
/// <param name="Notes">Lines of the owner's own for every sheet.</param>
public sealed record PlanOptions(
    string Name,
    string Revision,
    string Owner,
    string Version,
    string Paper,
    bool IsPortrait,
    DisplayUnit Unit,
    ImmutableArray<string> Notes);

/// <summary>The sheets of a design.</summary>
/// <param name="Sheets">The sheets.</param>
/// <param name="Warnings">What the builder should know: parts that did not fit the wanted paper, and where they went.</param>
public sealed record PlanSheetsResult(SheetSet Sheets, ImmutableArray<string> Warnings);
