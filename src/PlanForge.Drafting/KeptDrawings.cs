using System.Collections.Immutable;
using PlanForge.Airframe;
using PlanForge.Airframe.Diagnostics;
using PlanForge.Drafting.Model;
using PlanForge.Drafting.Nests;
using PlanForge.Drafting.PartDrawings;
using PlanForge.Drafting.Tiles;
using PlanForge.Geometry;
using PlanForge.Parts;
using PlanForge.Parts.Wording;

namespace PlanForge.Drafting;

/// <summary>
/// Drawings kept from one run to the next by the parts they show: parts that are the same must be the same objects
/// (<see cref="KeptParts"/>). A sheet with the same content as before is the very same object. Empty at first; for one run at a time.
/// </summary>
public sealed class KeptDrawings
{
    private Dictionary<int, Sheet> _earlier = [];
    private Dictionary<int, Sheet> _made = [];

    /// <summary>Parts with their texts, by part, units and whether it is turned.</summary>
    internal Kept<(Itself<Part> Part, ShownUnits Units, bool IsTurned), PartArrangements> Arrangements { get; } = new();

    /// <summary>Parts for the cutter with what was found, by part and all that is read of the cutter.</summary>
    internal Kept<CutKey, (CutDrawing? Drawing, ImmutableArray<Diagnostic> Findings)> Cuts { get; } = new();

    /// <summary>Parts on the cells of a stock, by part and cells.</summary>
    internal Kept<(Itself<Part> Part, CellGrid Grid), PartShape> Shapes { get; } = new();

    /// <summary>Sheets of stock with their parts.</summary>
    internal Kept<NestKey, LaidStock> Nests { get; } = new();

    /// <summary>Sheets of stock as drawn.</summary>
    internal Kept<NestDrawingKey, NestDrawing?> NestDrawings { get; } = new();

    /// <summary>Drawings moved to their place on a sheet, by the list of what is drawn and the way.</summary>
    internal Kept<(Itself<DrawingItem[]> Items, Vector2 Move), ImmutableArray<DrawingItem>> Moved { get; } = new();

    /// <summary>Fingerprints of drawings, by the list of what is drawn, its corner and its scale.</summary>
    internal Kept<(Itself<DrawingItem[]> Items, Point2 Corner, string Scale), Fingerprint> Fingerprints { get; } = new();

    /// <summary>Sheets cut into tiles, by sheet, page and overlap.</summary>
    internal Kept<(Itself<Sheet> Sheet, TileLayout Layout, double Overlap), TiledSheet> Tiled { get; } = new();

    /// <summary>The pages of sheets cut into tiles, by sheet, title of the set and count of its sheets.</summary>
    internal Kept<(Itself<TiledSheet> Sheet, string Title, int Count), ImmutableArray<Page>> TilePages { get; } = new();

    /// <summary>Large maps of sheets cut into tiles, by sheet and room.</summary>
    internal Kept<(Itself<TiledSheet> Sheet, Bounds2 Room), TileMap> Maps { get; } = new();

    /// <summary>The sheet, or its like of the run before.</summary>
    internal Sheet Known(Sheet sheet) =>
        _made[sheet.Number] = _earlier.TryGetValue(sheet.Number, out var known) && SheetContent.IsSame(known, sheet) ? known : sheet;

    /// <summary>Ends a run that came to its end; what it did not ask for is let go.</summary>
    public void EndRun()
    {
        Arrangements.EndRun();
        Cuts.EndRun();
        Shapes.EndRun();
        Nests.EndRun();
        NestDrawings.EndRun();
        Moved.EndRun();
        Fingerprints.EndRun();
        Tiled.EndRun();
        TilePages.EndRun();
        Maps.EndRun();
        (_earlier, _made) = (_made, []);
    }
}

/// <summary>A part and all that its drawing for the cutter, and what is said about it, depends on.</summary>
/// <param name="Part">The part.</param>
/// <param name="Kerf">The kerf of its sheet and where it was given, or null.</param>
/// <param name="HasKerfs">True when kerfs are given sheet by sheet.</param>
/// <param name="Tabs">The holding tabs, or null.</param>
/// <param name="Cutter">Where the cutter stands in the description.</param>
internal readonly record struct CutKey(
    Itself<Part> Part, (double Width, SourcePosition At)? Kerf, bool HasKerfs, HoldingTabsDescription? Tabs, SourcePosition Cutter);
