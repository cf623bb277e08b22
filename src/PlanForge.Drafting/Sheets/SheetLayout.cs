using PlanForge.Geometry;

namespace PlanForge.Drafting.Sheets;

/// <summary>Where everything on a sheet stands: frame, title strip, check bars, foot notes and the space for parts.</summary>
/// <param name="Paper">The paper as it lies.</param>
/// <param name="Frame">Middle line of the frame.</param>
/// <param name="TitleStrip">The title strip, at the lower right of the frame.</param>
/// <param name="CheckPanel">The level check bars, at the lower left of the frame.</param>
/// <param name="FootNotes">Legend, cautions and notes, above both.</param>
/// <param name="CheckColumn">The upright check bar, at the left of the frame.</param>
/// <param name="PartSpace">The space for parts; the check column is cut out of its lower left corner.</param>
internal sealed record SheetLayout(
    Paper Paper, Bounds2 Frame, Bounds2 TitleStrip, Bounds2 CheckPanel, Bounds2 FootNotes, Bounds2 CheckColumn, Bounds2 PartSpace)
{
    // ISO 5457: 20 mm on the filing edge, 10 mm on the other three (secondary source: shared/check-values.md section 4).
    private const double FilingEdge = 20;
    private const double Edge = 10;

    // Between the frame (half its 0.7 mm line included) and what stands inside.
    private const double Inset = 3;

    // With less room beside the check bars the strip would break its fields: then it stands under them.
    private const double LeastStripBesidePanel = 125;

    // Least space a part may count on when the paper is lengthened for it.
    private const double LeastHeight = 160;

    /// <summary>Lays out a sheet.</summary>
    /// <param name="paper">The paper as it lies.</param>
    /// <param name="notesHeight">Height of the foot notes for the width they have, mm.</param>
    public static SheetLayout Of(Paper paper, Func<double, double> notesHeight)
    {
        var frame = new Bounds2(FilingEdge, Edge, paper.Width - Edge, paper.Height - Edge);
        var isBeside = frame.Width >= CheckBars.PanelWidth + LeastStripBesidePanel;
        var strip = new Bounds2(
            Math.Max(frame.MinX + (isBeside ? CheckBars.PanelWidth : 0), frame.MaxX - Sheets.TitleStrip.GreatestWidth),
            frame.MinY,
            frame.MaxX,
            frame.MinY + Sheets.TitleStrip.Height);
        var panelBottom = isBeside ? frame.MinY : strip.MaxY;
        var panel = new Bounds2(frame.MinX, panelBottom, frame.MinX + CheckBars.PanelWidth, panelBottom + CheckBars.PanelHeight);
        var foot = Math.Max(strip.MaxY, panel.MaxY);
        var notes = new Bounds2(frame.MinX + Inset, foot, frame.MaxX - Inset, foot + notesHeight(frame.Width - (2 * Inset)));
        var column = new Bounds2(
            frame.MinX, notes.MaxY, frame.MinX + CheckBars.ColumnWidth, notes.MaxY + CheckBars.ColumnHeight);
        var space = new Bounds2(frame.MinX + Inset, notes.MaxY + Inset, frame.MaxX - Inset, frame.MaxY - Inset);
        return new(paper, frame, strip, panel, notes, column, space);
    }

    /// <summary>
    /// Paper made just large enough for a part of some size, on which no ISO sheet could hold it; rounded up to whole 10 mm.
    /// </summary>
    public static Paper LargeEnough(double width, double height, Func<double, double> notesHeight)
    {
        var paper = new Paper("roll paper", 0, 0);
        var frameWidth = Up(width + CheckBars.ColumnWidth + (2 * Inset) + FilingEdge + Edge);
        var foot = Sheets.TitleStrip.Height + CheckBars.PanelHeight + notesHeight(frameWidth - FilingEdge - Edge - (2 * Inset));
        return paper with { Width = frameWidth, Height = Up(Math.Max(LeastHeight, height) + foot + (2 * Inset) + (2 * Edge)) };
    }

    /// <summary>True when the empty sheet holds a rectangle: beside the upright check bar, or across the sheet above it.</summary>
    public bool HasRoom(double width, double height) =>
        (width <= PartSpace.MaxX - CheckColumn.MaxX && height <= PartSpace.Height)
        || (width <= PartSpace.Width && height <= PartSpace.MaxY - CheckColumn.MaxY);

    /// <summary>The space for parts, ready to be filled from the upper left.</summary>
    public Skyline NewSkyline(double gap) => new(
        PartSpace,
        gap,
        [new(PartSpace.MinX, Math.Max(PartSpace.MinX, CheckColumn.MaxX), Math.Max(PartSpace.MinY, CheckColumn.MaxY))]);

    private static double Up(double millimetres) => Math.Ceiling(millimetres / 10) * 10;
}
