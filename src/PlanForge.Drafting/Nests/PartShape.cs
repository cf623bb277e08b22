using PlanForge.Geometry;
using PlanForge.Parts;

namespace PlanForge.Drafting.Nests;

/// <summary>A part in every turn it may be laid out in.</summary>
internal sealed class PartShape
{
    private PartShape(Part part, double area, TurnedShape[] turns) => (Part, Area, Turns) = (part, area, turns);

    public Part Part { get; }

    /// <summary>Area inside its outlines, mm².</summary>
    public double Area { get; }

    /// <summary>The turns in the order of their angles; at least one.</summary>
    public TurnedShape[] Turns { get; }

    /// <summary>The shape of a part.</summary>
    /// <param name="part">A part that is cut.</param>
    /// <param name="grid">The cells it is laid out on.</param>
    /// <exception cref="ArgumentException">The part has no closed cut line.</exception>
    public static PartShape Of(Part part, CellGrid grid)
    {
        var contours = NestedPart.ContoursOf(part).ToArray();
        if (contours.Length == 0)
        {
            throw new ArgumentException($"{part.Id} has no outline to cut.", nameof(part));
        }

        var area = 0.0;
        foreach (var contour in contours)
        {
            area += Math.Max(0, contour.SignedArea);
        }

        var chords = Chord.Of(contours);
        var turns = new List<TurnedShape>();
        foreach (var angle in TurnAngles.Of(part.GrainAngle, chords))
        {
            turns.Add(new(contours, chords, angle, grid));
        }

        return new(part, area, [.. turns]);
    }
}

/// <summary>A part turned by an angle, its lower left corner at the origin. The cells are found when first asked for.</summary>
internal sealed class TurnedShape
{
    private readonly Chord[] _chords;
    private readonly CellGrid _grid;
    private readonly Placement2 _toOrigin;
    private ShapeRuns? _runs;
    private ShapeCells? _kept;

    public TurnedShape(Path2[] contours, Chord[] chords, double angle, CellGrid grid)
    {
        (_chords, _grid) = (chords, grid);
        var turned = Placement2.TurnedBy(angle);
        var bounds = Bounds2.Empty;
        foreach (var contour in contours)
        {
            bounds = bounds.Joined(contour.Placed(turned).Bounds);
        }

        _toOrigin = turned.Then(Placement2.MovedBy(new(-bounds.MinX, -bounds.MinY)));
        (Width, Height) = (bounds.Width, bounds.Height);
    }

    /// <summary>Extent along the sheet's length, mm.</summary>
    public double Width { get; }

    /// <summary>Extent across the sheet, mm.</summary>
    public double Height { get; }

    /// <summary>The columns of cells it takes.</summary>
    public int Columns => Rasterizer.CellsOver(Width, _grid.Cell);

    /// <summary>What the shape itself needs to be free.</summary>
    public ShapeRuns Runs => _runs ??= new(Rasterize(0));

    /// <summary>What is no longer free for others when it is there: all within the clearance.</summary>
    public ShapeCells Kept => _kept ??= Rasterize(_grid.Clearance);

    /// <summary>From the part's coordinates to a sheet's.</summary>
    public Placement2 At(double x, double y) => _toOrigin.Then(Placement2.MovedBy(new(x, y)));

    private ShapeCells Rasterize(double reach)
    {
        var placed = new Chord[_chords.Length];
        for (var i = 0; i < placed.Length; i++)
        {
            placed[i] = _chords[i].Placed(_toOrigin);
        }

        return Rasterizer.Cells(placed, Width, Height, _grid.Cell, reach);
    }
}

/// <summary>The cells that the sheets of one stock are divided into.</summary>
/// <param name="Cell">Edge of a cell, mm, over 0.</param>
/// <param name="Clearance">Least distance of two parts, mm, 0 or more.</param>
internal readonly record struct CellGrid(double Cell, double Clearance)
{
    // Rows across a sheet: half as many lose 1 % of the sheet, twice as many take four times as long.
    private const double UsualRows = 400;

    // Finer than what a knife or beam keeps to is of no use; coarser leaves gaps that can be seen.
    private const double Finest = 0.5;
    private const double Coarsest = 2;

    /// <summary>The grid for sheets of a width.</summary>
    public static CellGrid For(double width, double clearance)
    {
        var wanted = Math.Clamp(width / UsualRows, Finest, Coarsest);

        // A whole number of cells to the clearance: upright edges then stand exactly that far apart.
        var cell = clearance < wanted ? wanted : clearance / Math.Round(clearance / wanted);
        return new(cell, clearance);
    }

    /// <summary>At how many cells along an extent a shape may begin.</summary>
    public int Places(double space, double extent) =>
        extent > space + Rasterizer.Slack ? 0 : (int)Math.Floor((space - extent + Rasterizer.Slack) / Cell) + 1;
}
