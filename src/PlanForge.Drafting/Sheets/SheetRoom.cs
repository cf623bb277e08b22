using PlanForge.Parts;

namespace PlanForge.Drafting.Sheets;

/// <summary>The room that the sheets of a set have: the first one carries the revision table.</summary>
/// <param name="First">Where everything stands on the first sheet.</param>
/// <param name="Others">Where everything stands on the others.</param>
/// <param name="Notes">What stands below.</param>
internal sealed record SheetRoom(SheetLayout First, SheetLayout Others, FootNotes Notes)
{
    /// <summary>The room that options leave for parts.</summary>
    /// <exception cref="ArgumentException">The paper is unknown.</exception>
    public static SheetRoom Of(PlanOptions options, PartList list)
    {
        var paper = Paper.Of(options.Sheets.Paper);
        paper = options.Sheets.IsPortrait || paper.IsRoll ? paper : paper.Across();
        var notes = new FootNotes(options.Notes, LinesUsed.Of(list.Parts).And(LinesUsed.Of(list.Arrangement)));
        return new(
            SheetLayout.Of(paper, notes.HeightFor, RevisionTable.HeightOf(options.Issue.Revisions)),
            SheetLayout.Of(paper, notes.HeightFor),
            notes);
    }
}
