using System.Collections.Immutable;
using PlanForge.Geometry;

namespace PlanForge.Drafting.Sheets;

/// <summary>A step in the floor of a sheet: between two abscissas nothing may stand lower.</summary>
/// <param name="MinX">Left end, mm.</param>
/// <param name="MaxX">Right end, mm.</param>
/// <param name="Y">Lowest height allowed, mm.</param>
internal readonly record struct FloorStep(double MinX, double MaxX, double Y);

/// <summary>Fills a space with rectangles from its upper left: each goes as high as it can, then as far left as it can.</summary>
/// <remarks>
/// Only the lower edge of what is placed is remembered (a skyline hanging from the top), so room behind a lower neighbour is
/// lost; in return the parts keep their order and the result does not depend on luck.
/// </remarks>
internal sealed class Skyline
{
    // What is as large as the space still fits, whatever the last digits say, mm.
    private const double Rounding = 1e-6;

    private readonly Bounds2 _space;
    private readonly double _gap;
    private readonly ImmutableArray<FloorStep> _floor;

    // Left to right without holes: from an abscissa to the next one's, everything above Y is taken.
    private readonly List<(double X, double Y)> _steps;

    /// <summary>Makes an empty space.</summary>
    /// <param name="space">The space to fill.</param>
    /// <param name="gap">Least distance between rectangles, mm.</param>
    /// <param name="floor">Where the floor is higher than the space's lower edge.</param>
    public Skyline(Bounds2 space, double gap, ImmutableArray<FloorStep> floor)
    {
        (_space, _gap, _floor) = (space, gap, floor);
        _steps = [(space.MinX, space.MaxY)];
    }

    /// <summary>Places a rectangle and returns it, or null when there is no room.</summary>
    public Bounds2? Place(double width, double height)
    {
        Bounds2? best = null;
        foreach (var (x, _) in _steps)
        {
            best = Higher(best, At(x, width, height));
        }

        foreach (var step in _floor)
        {
            best = Higher(best, At(step.MaxX, width, height));
        }

        if (best is { } taken)
        {
            Take(taken);
        }

        return best;
    }

    private static Bounds2? Higher(Bounds2? first, Bounds2? second)
    {
        if (first is not { } a || second is not { } b)
        {
            return first ?? second;
        }

        return b.MaxY > a.MaxY || (b.MaxY == a.MaxY && b.MinX < a.MinX) ? second : first;
    }

    private Bounds2? At(double left, double width, double height)
    {
        // Whatever stands left or hangs above took its gap with it; what comes right is given it here.
        var right = left + width;
        if (right > _space.MaxX + Rounding)
        {
            return null;
        }

        var top = double.PositiveInfinity;
        for (var i = 0; i < _steps.Count && _steps[i].X < right + _gap; i++)
        {
            if (i + 1 == _steps.Count || _steps[i + 1].X > left)
            {
                top = Math.Min(top, _steps[i].Y);
            }
        }

        var bottom = top - height;
        return bottom >= FloorBetween(left, right) - Rounding ? new(left, bottom, right, top) : null;
    }

    private double FloorBetween(double left, double right)
    {
        var floor = _space.MinY;
        foreach (var step in _floor)
        {
            if (step.MinX < right && left + Rounding < step.MaxX)
            {
                floor = Math.Max(floor, step.Y);
            }
        }

        return floor;
    }

    private void Take(Bounds2 place)
    {
        var (left, right) = (place.MinX, place.MaxX + _gap);
        var first = _steps.FindIndex(step => step.X >= left);
        first = first < 0 ? _steps.Count : first;
        var beyond = first > 0 ? _steps[first - 1].Y : _space.MaxY;
        var last = first;
        for (; last < _steps.Count && _steps[last].X <= right; last++)
        {
            beyond = _steps[last].Y;
        }

        _steps.RemoveRange(first, last - first);
        _steps.Insert(first, (left, place.MinY - _gap));
        if (right < _space.MaxX)
        {
            _steps.Insert(first + 1, (right, beyond));
        }
    }
}
