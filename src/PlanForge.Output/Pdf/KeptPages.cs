using PlanForge.Drafting.Model;
using PlanForge.Geometry;

namespace PlanForge.Output.Pdf;

/// <summary>
/// Packed content streams kept from one run to the next by the sheet or page they show, which must be the very same object as before
/// (<see cref="PlanForge.Drafting.KeptDrawings"/>). Empty at first.
/// </summary>
public sealed class KeptPages
{
    /// <summary>Sheets, by sheet and the signs that its fonts hold.</summary>
    internal Kept<(Itself<Sheet> Sheet, string Signs), PackedStream> Sheets { get; } = new();

    /// <summary>Pages, by page, its place on the paper, the names of the forms it shows, and the signs that its fonts hold.</summary>
    internal Kept<(Itself<Page> Page, PageFrame Frame, string Forms, string Signs), PackedStream> Pages { get; } = new();

    /// <summary>Ends a run that came to its end; what it did not ask for is let go.</summary>
    public void EndRun()
    {
        Sheets.EndRun();
        Pages.EndRun();
    }
}
