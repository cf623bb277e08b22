using System.Collections.Immutable;
using PlanForge.Drafting.Clipping;
using PlanForge.Drafting.Conventions;
using PlanForge.Drafting.Measures;
using PlanForge.Drafting.Model;
using PlanForge.Drafting.PartDrawings;
using PlanForge.Geometry;
using PlanForge.Parts;
using PlanForge.Parts.Wording;

namespace PlanForge.Drafting.Sheets;

/// <summary>
/// A part that is larger than a sheet, in pieces: equal shares of it, each with a strip of its neighbours, joined at match lines.
/// </summary>
/// <remarks>
/// Two sheets are laid over each other so that the same match line lies on itself; what lies beyond it is there twice. A text goes
/// whole to the piece that holds its middle; the text block of the part is a piece of its own.
/// </remarks>
internal sealed class PartPieces
{
    // How much of the neighbour a piece shows beyond a match line, mm: enough to see that lines run on.
    private const double Overlap = 10;

    // Between a piece and its title above it, mm.
    private const double TitleGap = 2;

    // More pieces than this mean a sheet on which nothing can be built.
    private const int MostPieces = 400;

    private readonly Part _part;
    private readonly Sketch _flat;
    private readonly int _columns;
    private readonly int _rows;

    private PartPieces(Part part, Sketch flat, int columns, int rows) => (_part, _flat, _columns, _rows) = (part, flat, columns, rows);

    /// <summary>
    /// The pieces in reading order, and the text block in every arrangement that fits, or in pieces; each fits one of the free
    /// rectangles of an empty sheet. A part that fits without its text block is one piece; it is turned where that makes fewer.
    /// </summary>
    /// <param name="part">The part.</param>
    /// <param name="units">The units lengths are shown in.</param>
    /// <param name="free">The free rectangles of an empty sheet.</param>
    public static (ImmutableArray<SheetItem> Pieces, ImmutableArray<SheetItem> Blocks) Of(Part part, ShownUnits units, IReadOnlyList<Bounds2> free)
    {
        var (flat, blocks) = DetachedPart.Upright(part, units);
        var items = flat.Bounds.IsEmpty ? [] : Fewest(part, flat, free);
        if (items.Length > 1 && DetachedPart.Turned(part, units) is var turned && Fewest(part, turned.Flat, free) is var fewer && fewer.Length < items.Length)
        {
            (items, blocks) = (fewer, turned.Blocks);
        }

        var fitting = blocks.Where(block => Fits(free, block.Bounds)).Select(block => ItemOf(part, part.Title, block)).ToImmutableArray();
        return fitting.IsEmpty ? (items.AddRange(Fewest(part, blocks[0], free)), []) : (items, fitting);
    }

    /// <summary>The pieces for the free rectangle that needs the fewest.</summary>
    private static ImmutableArray<SheetItem> Fewest(Part part, Sketch flat, IReadOnlyList<Bounds2> free)
    {
        if (Fits(free, flat.Bounds))
        {
            return [ItemOf(part, part.Title, flat)];
        }

        for (var count = 2; count <= MostPieces; count++)
        {
            for (var columns = 1; columns <= count; columns++)
            {
                if (count % columns == 0 && new PartPieces(part, flat, columns, count / columns).Cut(free) is { } pieces)
                {
                    return pieces;
                }
            }
        }

        throw new InvalidOperationException($"{part.Id} does not fit any number of sheets.");
    }

    private static bool Fits(IReadOnlyList<Bounds2> free, Bounds2 bounds) =>
        free.Any(room => room.Width >= bounds.Width && room.Height >= bounds.Height);

    private static SheetItem ItemOf(Part part, string title, Sketch sketch) => new(title, part.Kind, part, sketch.Items, sketch.Bounds);

    /// <summary>All pieces, or null when one is larger than every free rectangle.</summary>
    private ImmutableArray<SheetItem>? Cut(IReadOnlyList<Bounds2> free)
    {
        // Without looking at every line: the shares alone must fit.
        if (!free.Any(room => room.Width >= _flat.Bounds.Width / _columns && room.Height >= _flat.Bounds.Height / _rows))
        {
            return null;
        }

        var pieces = ImmutableArray.CreateBuilder<SheetItem>(_columns * _rows);
        for (var row = 0; row < _rows; row++)
        {
            for (var column = 0; column < _columns; column++)
            {
                var piece = Piece(column, row);
                if (!Fits(free, piece.Bounds))
                {
                    return null;
                }

                pieces.Add(piece);
            }
        }

        return pieces.ToImmutable();
    }

    private SheetItem Piece(int column, int row)
    {
        var share = Share(column, row);
        var window = new Bounds2(
            share.MinX - (column > 0 ? Overlap : 0),
            share.MinY - (row < _rows - 1 ? Overlap : 0),
            share.MaxX + (column < _columns - 1 ? Overlap : 0),
            share.MaxY + (row > 0 ? Overlap : 0));
        var sketch = new Sketch();
        var area = new EvenOddArea([Path2.Rectangle(window)], Overlap);
        foreach (var item in _flat.Items)
        {
            ClippedItem.Add(sketch, item, window, share, area);
        }

        if (column > 0)
        {
            MatchLine.Draw(sketch, new(share.MinX, window.MinY), new(share.MinX, window.MaxY), NameOf(column, row, isUpright: true), Number(column - 1, row));
        }

        if (column < _columns - 1)
        {
            MatchLine.Draw(sketch, new(share.MaxX, window.MinY), new(share.MaxX, window.MaxY), NameOf(column + 1, row, isUpright: true), Number(column + 1, row));
        }

        if (row > 0)
        {
            MatchLine.Draw(sketch, new(window.MinX, share.MaxY), new(window.MaxX, share.MaxY), NameOf(column, row, isUpright: false), Number(column, row - 1));
        }

        if (row < _rows - 1)
        {
            MatchLine.Draw(sketch, new(window.MinX, share.MinY), new(window.MaxX, share.MinY), NameOf(column, row + 1, isUpright: false), Number(column, row + 1));
        }

        var title = $"{_part.Title}, piece {Measure.Number(Number(column, row), 0)} of {Measure.Number(_columns * _rows, 0)}";
        var top = sketch.Bounds.IsEmpty ? window.MaxY : sketch.Bounds.MaxY;
        sketch.Text(Layer.Notes, title, new(window.MinX, top + TitleGap), LetteringSizes.Least);
        return ItemOf(_part, title, sketch);
    }

    private Bounds2 Share(int column, int row)
    {
        var all = _flat.Bounds;
        var (width, height) = (all.Width / _columns, all.Height / _rows);
        var top = all.MaxY - (row * height);
        return new(all.MinX + (column * width), top - height, all.MinX + ((column + 1) * width), top);
    }

    private int Number(int column, int row) => (row * _columns) + column + 1;

    /// <summary>The name of the match line before a piece: letters along a row, then on through the rows.</summary>
    private string NameOf(int column, int row, bool isUpright)
    {
        var index = isUpright ? (row * (_columns - 1)) + column - 1 : (_rows * (_columns - 1)) + ((row - 1) * _columns) + column;
        var letter = ReferenceLetters.All[index % ReferenceLetters.All.Length].ToString();
        return index < ReferenceLetters.All.Length ? letter : letter + Measure.Number((index / ReferenceLetters.All.Length) + 1, 0);
    }
}
