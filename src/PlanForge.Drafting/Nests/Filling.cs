namespace PlanForge.Drafting.Nests;

/// <summary>What is laid out when: a copy of a shape, and the one turn it is given, or −1 for the best.</summary>
internal readonly record struct Turn(int Item, int Angle);

/// <summary>Where a copy of a shape was put.</summary>
/// <param name="Item">Which one.</param>
/// <param name="Sheet">The sheet, by the order of opening.</param>
/// <param name="Angle">The turn, by its place among the shape's.</param>
/// <param name="Column">The column of its lower left corner.</param>
/// <param name="Row">The row of its lower left corner.</param>
internal readonly record struct Spot(int Item, int Sheet, int Angle, int Column, int Row);

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
        for (var i = 0; i < order.Length; i++)
        {
            var spot = i < known ? Again(like!, i) : Lay(order[i]);
            var sheet = _open[spot.Sheet];
            var turn = _items[spot.Item].Turns[spot.Angle];
            sheet.Cells.Take(turn.Kept, spot.Column, spot.Row);
            sheet.End = Math.Max(sheet.End, (spot.Column * _grid.Cell) + turn.Width);
            spots[i] = spot;
        }

        return Layout.Of(spots, _open);
    }

    /// <summary>True for a layout that none can beat: on one sheet, as short as its longest part or, at its width, the parts' area.</summary>
    public bool IsBest(Layout layout) =>
        layout.Spots.All(spot => spot.Sheet == layout.Spots[0].Sheet) && layout.End <= LeastEnd(layout.Sheets[layout.Spots[0].Sheet]) + _grid.Cell;

    // A remnant that holds everything is left for a smaller one only by chance: that is no aim of the search.
    private double LeastEnd(Blank blank)
    {
        var longest = 0.0;
        foreach (var item in _items)
        {
            longest = Math.Max(longest, item.Turns.Where(turn => turn.Height <= blank.RoomAcross + Rasterizer.Slack).Min(turn => turn.Width));
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
            ref var from = ref sheet.FromFor(turned);
            var before = best is null ? int.MaxValue : leastEnd - turned.Columns + 1;
            if (sheet.Cells.Find(turned.Runs, columns, rows, from, before) is not var (column, row))
            {
                from = Math.Max(from, Math.Min(before, columns));
                continue;
            }

            from = column;
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

/// <summary>A sheet while it is filled.</summary>
internal sealed class OpenBlank(Blank blank, SheetCells cells)
{
    private readonly Dictionary<TurnedShape, int> _from = [];

    public Blank Blank => blank;

    public SheetCells Cells => cells;

    /// <summary>Where the last of its parts ends, from the left margin, mm.</summary>
    public double End { get; set; }

    /// <summary>The first column at which a shape may find room.</summary>
    public ref int FromFor(TurnedShape shape) =>
        ref System.Runtime.InteropServices.CollectionsMarshal.GetValueRefOrAddDefault(_from, shape, out _);
}

/// <summary>All items laid out.</summary>
/// <param name="Spots">Where each went, in their order.</param>
/// <param name="Sheets">The sheets in the order of opening; remnants may be empty.</param>
/// <param name="Area">Area of the whole sheets, mm²: what is taken from the shelf.</param>
/// <param name="End">How far the last sheet that holds a part is filled, mm.</param>
internal sealed record Layout(Spot[] Spots, Blank[] Sheets, double Area, double End)
{
    public static Layout Of(Spot[] spots, List<OpenBlank> open)
    {
        var (area, end) = (0.0, 0.0);
        foreach (var sheet in open)
        {
            area += sheet.Blank.IsRemnant ? 0 : sheet.Blank.Width * sheet.Blank.Length;
            end = sheet.End > 0 ? sheet.End : end;
        }

        return new(spots, [.. open.Select(sheet => sheet.Blank)], area, end);
    }

    /// <summary>Under 0 when it uses less than another: less area from the shelf, then less of the last sheet.</summary>
    public int CompareTo(Layout other) => Area != other.Area ? Area.CompareTo(other.Area) : End.CompareTo(other.End);
}
