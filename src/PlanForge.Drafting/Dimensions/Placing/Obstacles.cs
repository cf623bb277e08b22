using PlanForge.Geometry;

namespace PlanForge.Drafting.Dimensions.Placing;

/// <summary>What texts must keep clear of: other texts and arrow heads always, lines where they can.</summary>
internal sealed class Obstacles
{
    /// <summary>Clear space between two texts, mm: less and they read as one.</summary>
    public const double TextClear = 1.4;

    /// <summary>Clear space between a text and an arrow head, mm.</summary>
    public const double ArrowClear = 0.4;

    /// <summary>Clear space between a text and a line, mm: just less than a dimension line keeps from its own text.</summary>
    public const double LineClear = 0.6;

    /// <summary>A text nearer than this to a line, mm, is legible but looks squeezed.</summary>
    public const double LineComfort = 1.8;

    // Chords of curves may miss a text by this, mm.
    private const double Tolerance = 0.1;

    private readonly CellIndex _boxCells;
    private readonly CellIndex _lineCells;
    private readonly List<(TextBox Box, bool IsText, int Owner)> _boxes = [];
    private readonly List<(Point2 Start, Point2 End, bool IsDimension)> _lines = [];

    // When a line was last looked at, so that one that passes several cells is counted once.
    private readonly List<int> _seen = [];
    private int _round;

    public Obstacles(Bounds2 area) => (_boxCells, _lineCells) = (new(area), new(area));

    /// <summary>Takes the room of a text.</summary>
    public void AddText(TextBox box) => AddBox(box, isText: true, owner: -1);

    /// <summary>Takes the room of an arrow head, or keeps it free for one.</summary>
    /// <param name="box">The room.</param>
    /// <param name="owner">Whose arrow it is: its own text may be tried against everything else.</param>
    public void AddArrow(TextBox box, int owner = -1) => AddBox(box, isText: false, owner);

    /// <summary>Takes the lines of a part.</summary>
    public void AddPath(Path2 path)
    {
        var points = path.Flattened(Tolerance);
        for (var i = 0; i < points.Length - (path.IsClosed ? 0 : 1); i++)
        {
            AddLine(points[i], points[(i + 1) % points.Length], isDimension: false);
        }
    }

    /// <summary>Takes a straight line.</summary>
    public void AddLine(Point2 start, Point2 end, bool isDimension)
    {
        _lineCells.Put(_lines.Count, start, end);
        _lines.Add((start, end, isDimension));
        _seen.Add(0);
    }

    /// <summary>True when a text keeps clear of all texts and arrow heads (but those of its owner).</summary>
    public bool IsFree(TextBox box, int owner = -1)
    {
        foreach (var cell in _boxCells.Near(box.Bounds.Grown(TextClear)))
        {
            foreach (var number in cell)
            {
                var other = _boxes[number];
                if ((owner < 0 || other.Owner != owner) && box.Overlaps(other.Box, other.IsText ? TextClear : ArrowClear))
                {
                    return false;
                }
            }
        }

        return true;
    }

    /// <summary>How many lines strike through a text or nearly so, and how many more leave it less than a comfortable distance.</summary>
    public (int Through, int Near) LinesAt(TextBox box)
    {
        _round++;
        var (through, near) = (0, 0);
        foreach (var cell in _lineCells.Near(box.Bounds.Grown(LineComfort)))
        {
            foreach (var number in cell)
            {
                if (_seen[number] != _round)
                {
                    _seen[number] = _round;
                    var (start, end, _) = _lines[number];
                    if (box.Meets(start, end, LineComfort))
                    {
                        (through, near) = box.Meets(start, end, LineClear) ? (through + 1, near) : (through, near + 1);
                    }
                }
            }
        }

        return (through, near);
    }

    /// <summary>How many texts a straight line would strike through.</summary>
    public int TextsOn(Point2 start, Point2 end)
    {
        var count = 0;
        foreach (var cell in _boxCells.Near(Bounds2.Around(start, end)))
        {
            foreach (var number in cell)
            {
                count += _boxes[number].IsText && _boxes[number].Box.Meets(start, end, LineClear) ? 1 : 0;
            }
        }

        return count;
    }

    /// <summary>How many lines a straight line would cross: lines of the part, and dimension lines and leaders.</summary>
    public (int OfPart, int OfDimensions) LinesOn(Point2 start, Point2 end)
    {
        _round++;
        var (part, dimensions) = (0, 0);
        foreach (var cell in _lineCells.Near(Bounds2.Around(start, end)))
        {
            foreach (var number in cell)
            {
                if (_seen[number] == _round)
                {
                    continue;
                }

                _seen[number] = _round;
                var line = _lines[number];
                if (Crosses(start, end, line.Start, line.End))
                {
                    (part, dimensions) = line.IsDimension ? (part, dimensions + 1) : (part + 1, dimensions);
                }
            }
        }

        return (part, dimensions);
    }

    private void AddBox(TextBox box, bool isText, int owner)
    {
        _boxCells.Put(_boxes.Count, box.Bounds);
        _boxes.Add((box, isText, owner));
    }

    private static bool Crosses(Point2 a, Point2 b, Point2 c, Point2 d) =>
        AreApart(a, b, c, d) && AreApart(c, d, a, b);

    // On different sides of the line through a and b; one that only touches it does not cross.
    private static bool AreApart(Point2 a, Point2 b, Point2 c, Point2 d) => (b - a).Cross(c - a) * (b - a).Cross(d - a) < 0;
}
