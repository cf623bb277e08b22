namespace PlanForge.Drafting.Nests;

/// <summary>Lays shapes out one after the other, each in the first sheet that has room, there as far left and low as it goes.</summary>
/// <remarks>Used again for every order that is tried, so that the sheets' cells are made once.</remarks>
internal sealed class Filling
{
    private readonly Blank[] _blanks;
    private readonly CellGrid _grid;
    private readonly PartShape[] _items;
    private readonly int[] _left;
    private readonly List<OpenBlank> _open = [];
    private readonly Dictionary<Blank, Stack<SheetCells>> _spare = [];

    /// <summary>Prepares to lay out.</summary>
    /// <param name="blanks">The sheets, in the order they are used; whole ones among them fit each item.</param>
    /// <param name="grid">The cells.</param>
    /// <param name="items">The shape of every copy.</param>
    public Filling(Blank[] blanks, CellGrid grid, PartShape[] items)
    {
        (_blanks, _grid, _items) = (blanks, grid, items);
        _left = new int[blanks.Length];
    }

    /// <summary>Lays out all items.</summary>
    /// <param name="order">Every item once.</param>
    /// <param name="known">How many at the start of the order are laid out as in <paramref name="like"/>.</param>
    /// <param name="like">An earlier layout of an order that starts alike; ignored where nothing is known.</param>
    public Layout Lay(ReadOnlySpan<Turn> order, int known, Layout? like)
    {
        Begin();
        var spots = new Spot[order.Length];
        var moment = 0.0;
        for (var i = 0; i < order.Length; i++)
        {
            var spot = i < known ? Again(like!, i) : Lay(order[i]);
            var sheet = _open[spot.Sheet];
            var turn = _items[spot.Item].Turns[spot.Angle];
            sheet.Cells.Take(turn.Kept, spot.Column, spot.Row);
            sheet.End = Math.Max(sheet.End, (spot.Column * _grid.Cell) + turn.Width);
            moment += _items[spot.Item].Area * (Before(spot.Sheet) + (spot.Column * _grid.Cell) + (turn.Width / 2));
            spots[i] = spot;
        }

        return Layout.Of(spots, _open, moment);
    }

    // Length of the sheets opened before one, mm.
    private double Before(int sheet)
    {
        var length = 0.0;
        for (var i = 0; i < sheet; i++)
        {
            length += _open[i].Blank.Length;
        }

        return length;
    }

    /// <summary>True for a layout that none can beat: all on one sheet, and no longer than the longest of its parts must be.</summary>
    public bool IsBest(Layout layout)
    {
        var sheet = layout.Spots[0].Sheet;
        foreach (var spot in layout.Spots)
        {
            if (spot.Sheet != sheet)
            {
                return false;
            }
        }

        return layout.End <= LeastEnd(layout.Sheets[sheet]) + _grid.Cell;
    }

    private double LeastEnd(Blank blank)
    {
        var longest = 0.0;
        foreach (var item in _items)
        {
            var least = double.MaxValue;
            foreach (var turn in item.Turns)
            {
                least = turn.Height <= blank.RoomAcross + Rasterizer.Slack ? Math.Min(least, turn.Width) : least;
            }

            longest = Math.Max(longest, least);
        }

        return longest;
    }

    private void Begin()
    {
        foreach (var sheet in _open)
        {
            if (!_spare.TryGetValue(sheet.Blank, out var spare))
            {
                _spare[sheet.Blank] = spare = new();
            }

            spare.Push(sheet.Cells);
        }

        _open.Clear();
        for (var i = 0; i < _blanks.Length; i++)
        {
            _left[i] = _blanks[i].Count ?? int.MaxValue;
            if (_blanks[i].IsRemnant)
            {
                Open(i);
            }
        }
    }

    private Spot Again(Layout like, int index)
    {
        var spot = like.Spots[index];
        while (_open.Count <= spot.Sheet)
        {
            Open(Array.IndexOf(_blanks, like.Sheets[_open.Count]));
        }

        return spot;
    }

    private Spot Lay(Turn turn)
    {
        for (var sheet = 0; sheet < _open.Count; sheet++)
        {
            if (Place(turn, sheet) is { } spot)
            {
                return spot;
            }
        }

        Open(NextBlankFor(_items[turn.Item]));
        return Place(turn, _open.Count - 1) ?? Place(turn with { Angle = -1 }, _open.Count - 1)
            ?? throw new InvalidOperationException("A part that fits its sheet found no room on an empty one.");
    }

    /// <summary>The best place on a sheet: where the part ends furthest left, then begins furthest left, then lies lowest.</summary>
    private Spot? Place(Turn turn, int index)
    {
        var (sheet, shape) = (_open[index], _items[turn.Item]);
        Spot? best = null;
        var (leastEnd, leastColumn) = (int.MaxValue, int.MaxValue);
        for (var angle = 0; angle < shape.Turns.Length; angle++)
        {
            var turned = shape.Turns[angle];
            var columns = _grid.Places(sheet.Blank.RoomAlong, turned.Width);
            var rows = _grid.Places(sheet.Blank.RoomAcross, turned.Height);
            if ((turn.Angle >= 0 && turn.Angle != angle) || columns == 0 || rows == 0)
            {
                continue;
            }

            // Once a shape finds no place before a column it never will: sheets only fill up.
            var from = sheet.From.GetValueOrDefault(turned);
            var before = best is null ? int.MaxValue : leastEnd - turned.Columns + 1;
            if (sheet.Cells.Find(turned.Runs, columns, rows, from, before) is not var (column, row))
            {
                sheet.From[turned] = Math.Max(from, Math.Min(before, columns));
                continue;
            }

            sheet.From[turned] = column;
            var end = column + turned.Columns;
            if (end < leastEnd || column < leastColumn || (column == leastColumn && row < best!.Value.Row))
            {
                (leastEnd, leastColumn) = (end, column);
                best = new(turn.Item, index, angle, column, row);
            }
        }

        return best;
    }

    private int NextBlankFor(PartShape shape)
    {
        for (var i = 0; i < _blanks.Length; i++)
        {
            if (_left[i] > 0 && _blanks[i].Fits(shape))
            {
                return i;
            }
        }

        // More than there are: the rest has to be bought.
        return Array.FindLastIndex(_blanks, blank => !blank.IsRemnant && blank.Fits(shape));
    }

    private void Open(int blank)
    {
        _left[blank]--;
        var kind = _blanks[blank];
        SheetCells cells;
        if (_spare.TryGetValue(kind, out var spare) && spare.Count > 0)
        {
            cells = spare.Pop();
            cells.Clear();
        }
        else
        {
            cells = new(Rasterizer.CellsOver(kind.RoomAlong, _grid.Cell), Rasterizer.CellsOver(kind.RoomAcross, _grid.Cell));
        }

        _open.Add(new(kind, cells));
    }
}
