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

/// <summary>A sheet while it is filled.</summary>
internal sealed class OpenBlank(Blank blank, SheetCells cells)
{
    public Blank Blank => blank;

    public SheetCells Cells => cells;

    /// <summary>Where the last of its parts ends, from the left margin, mm.</summary>
    public double End { get; set; }

    /// <summary>The first column at which a shape may find room; 0 for one that was not tried.</summary>
    public Dictionary<TurnedShape, int> From { get; } = [];
}

/// <summary>All items laid out.</summary>
/// <param name="Spots">Where each went, in their order.</param>
/// <param name="Sheets">The sheets in the order of opening; remnants may be empty.</param>
/// <param name="Area">Area of the whole sheets, mm²: what is taken from the shelf.</param>
/// <param name="End">How far the last sheet that holds a part is filled, mm.</param>
/// <param name="Moment">How far from the start the parts lie, all sheets end to end: area times distance, mm³.</param>
internal sealed record Layout(Spot[] Spots, Blank[] Sheets, double Area, double End, double Moment)
{
    public static Layout Of(Spot[] spots, List<OpenBlank> open, double moment)
    {
        var (area, end) = (0.0, 0.0);
        foreach (var sheet in open)
        {
            area += sheet.Blank.IsRemnant ? 0 : sheet.Blank.Width * sheet.Blank.Length;
            end = sheet.End > 0 ? sheet.End : end;
        }

        return new(spots, [.. open.Select(sheet => sheet.Blank)], area, end, moment);
    }

    /// <summary>Under 0 when it uses less than another: less area from the shelf, then less of the last sheet.</summary>
    public int CompareTo(Layout other) => Area != other.Area ? Area.CompareTo(other.Area) : End.CompareTo(other.End);
}
