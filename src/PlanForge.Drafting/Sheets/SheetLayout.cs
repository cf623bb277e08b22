using PlanForge.Geometry;

namespace PlanForge.Drafting.Sheets;

/// <summary>Where everything on a sheet stands: frame, title block, check bars, foot notes and the space for parts.</summary>
/// <param name="Paper">The paper as it lies.</param>
/// <param name="Frame">Middle line of the frame.</param>
/// <param name="TitleBlock">The title block, at the lower right of the frame.</param>
/// <param name="Revisions">The revision table above it; empty where there is none.</param>
/// <param name="CheckPanel">The level check bars.</param>
/// <param name="FootNotes">Legend, cautions and notes.</param>
/// <param name="CheckColumn">The upright check bar.</param>
/// <param name="PartSpace">The space inside the frame; what stands there already is cut out of it by <see cref="NewSpace"/>.</param>
internal sealed record SheetLayout(
    Paper Paper,
    Bounds2 Frame,
    Bounds2 TitleBlock,
    Bounds2 Revisions,
    Bounds2 CheckPanel,
    Bounds2 FootNotes,
    Bounds2 CheckColumn,
    Bounds2 PartSpace)
{
    // ISO 5457: 20 mm on the filing edge, 10 mm on the other three (secondary source: shared/check-values.md section 4).
    private const double FilingEdge = 20;
    private const double Edge = 10;

    // Between the frame (half its 0.7 mm line included) and what stands inside.
    private const double Inset = 3;

    // With less room beside the check bars the notes would break into too many lines: then they stand above them.
    private const double LeastNotesWidth = 120;

    // What must be left for parts, both ways, or the paper is too small.
    private const double LeastPartSpace = 60;

    /// <summary>The least paper that holds title block, check bars and something to look at, mm.</summary>
    public static (double Width, double Height) Least(double notesHeight) => (
        FilingEdge + Edge + Sheets.TitleBlock.Width,
        (2 * Edge) + Sheets.TitleBlock.Height + CheckBars.PanelHeight + notesHeight + LeastPartSpace + (3 * Inset));

    /// <summary>True when there is paper enough for a sheet.</summary>
    public bool IsLargeEnough => CheckColumn.MaxY <= Frame.MaxY && TitleBlock.MinX >= Frame.MinX - 1e-6 && CheckPanel.MaxX <= Frame.MaxX
        && NewSpace(0).HasRoom(LeastPartSpace, LeastPartSpace);

    /// <summary>Lays out a sheet.</summary>
    /// <param name="paper">The paper as it lies; a roll at the greatest length.</param>
    /// <param name="notesHeight">Height of the foot notes for the width they have, mm.</param>
    /// <param name="revisionsHeight">Height of the revision table, mm; 0 for none.</param>
    public static SheetLayout Of(Paper paper, Func<double, double> notesHeight, double revisionsHeight = 0)
    {
        var frame = new Bounds2(FilingEdge, Edge, paper.Width - Edge, paper.Height - Edge);
        var block = new Bounds2(frame.MaxX - Sheets.TitleBlock.Width, frame.MinY, frame.MaxX, frame.MinY + Sheets.TitleBlock.Height);
        var revisions = revisionsHeight > 0 ? block with { MinY = block.MaxY, MaxY = block.MaxY + revisionsHeight } : Bounds2.Empty;
        var space = frame.Grown(-Inset);
        return paper.IsRoll
            ? AtTheEnd(paper, frame, block, revisions, space, notesHeight)
            : AtTheFoot(paper, frame, block, revisions, space, notesHeight);
    }

    /// <summary>A roll cut to the length that what is placed needs.</summary>
    /// <param name="placed">What is placed.</param>
    /// <param name="gap">Least distance of the foot from it, mm.</param>
    /// <param name="notesHeight">Height of the foot notes for the width they have, mm.</param>
    public SheetLayout CutToLength(IReadOnlyList<Bounds2> placed, double gap, Func<double, double> notesHeight)
    {
        var column = Frame.MaxX - FootLeft;
        var top = FootTop;
        var end = Frame.MinX + column;
        foreach (var part in placed)
        {
            end = Math.Max(end, part.MaxX + Inset);
            if (part.MinY < top + gap)
            {
                end = Math.Max(end, part.MaxX + gap + column);
            }
        }

        // Whole 10 mm: nobody cuts paper to less.
        var length = Math.Min(Paper.LongestSheet, Math.Ceiling((end + Edge) / 10) * 10);
        var revisions = Revisions.IsEmpty ? 0 : Revisions.Height;
        return Of(Paper with { Width = length }, notesHeight, revisions);
    }

    /// <summary>The space for parts, ready to be filled.</summary>
    /// <param name="gap">Least distance between parts, mm.</param>
    public FreeRectangles NewSpace(double gap)
    {
        if (Paper.IsRoll)
        {
            // The foot moves to wherever the parts end; until then it keeps the far end free.
            return new(PartSpace with { MaxX = FootLeft - gap }, [], gap, fillsFromLeft: true);
        }

        return new(
            PartSpace,
            [.. Fields.Select(field => field.Grown(Inset)), .. SheetFrame.MarkRooms(this)],
            gap);
    }

    /// <summary>True when something of the sheet's own stands in a place.</summary>
    public bool IsTaken(Bounds2 place) => Fields.Any(field => field.Touches(place));

    private IEnumerable<Bounds2> Fields => [TitleBlock, Revisions, CheckPanel, FootNotes, CheckColumn];

    private double FootLeft => Math.Min(CheckColumn.MinX, TitleBlock.MinX);

    private double FootTop => Math.Max(CheckColumn.MaxY, Revisions.IsEmpty ? 0 : Revisions.MaxY);

    /// <summary>
    /// Title block at the lower right; upright bar at the left, from as low as the block leaves room; level bars beside it; notes
    /// to their right or above them.
    /// </summary>
    private static SheetLayout AtTheFoot(
        Paper paper, Bounds2 frame, Bounds2 block, Bounds2 revisions, Bounds2 space, Func<double, double> notesHeight)
    {
        var room = block.MinX - frame.MinX;
        var top = revisions.IsEmpty ? block.MaxY : revisions.MaxY;
        var column = Raised(frame.MinX, room >= CheckBars.ColumnWidth ? frame.MinY : top, CheckBars.ColumnWidth, CheckBars.ColumnHeight);
        var isBeside = room >= CheckBars.ColumnWidth + CheckBars.PanelWidth;
        var panel = Raised(column.MaxX, isBeside ? frame.MinY : top, CheckBars.PanelWidth, CheckBars.PanelHeight);
        var right = (isBeside ? block.MinX : frame.MaxX) - Inset;
        var isRightOfPanel = right - panel.MaxX - Inset >= LeastNotesWidth;
        var left = (isRightOfPanel ? panel.MaxX : column.MaxX) + Inset;
        var notes = Raised(left, isRightOfPanel ? panel.MinY : panel.MaxY, right - left, notesHeight(right - left));
        return new(paper, frame, block, revisions, panel, notes, column, space);
    }

    private static Bounds2 Raised(double left, double bottom, double width, double height) => new(left, bottom, left + width, bottom + height);

    /// <summary>All of it in a column at the right end, as wide as the title block, with the upright bar on top.</summary>
    private static SheetLayout AtTheEnd(
        Paper paper, Bounds2 frame, Bounds2 block, Bounds2 revisions, Bounds2 space, Func<double, double> notesHeight)
    {
        var bottom = revisions.IsEmpty ? block.MaxY : revisions.MaxY;
        var panel = new Bounds2(block.MinX, bottom, block.MinX + CheckBars.PanelWidth, bottom + CheckBars.PanelHeight);
        var left = block.MinX + Inset;
        var notes = new Bounds2(left, panel.MaxY, block.MaxX - Inset, panel.MaxY + notesHeight(block.Width - (2 * Inset)));
        var column = new Bounds2(block.MinX, notes.MaxY, block.MinX + CheckBars.ColumnWidth, notes.MaxY + CheckBars.ColumnHeight);
        return new(paper, frame, block, revisions, panel, notes, column, space);
    }
}
