using PlanForge.Geometry;

namespace PlanForge.Drafting.Sheets;

/// <summary>Where a sheet is still free: all largest free upright rectangles, however they overlap.</summary>
/// <remarks>
/// Each rectangle that is placed takes itself and its gap out of every free one, which leaves up to four smaller; those that lie
/// within another are dropped. Parts keep their order and the result does not depend on luck.
/// </remarks>
internal sealed class FreeRectangles
{
    // What is as large as the space still fits, whatever the last digits say, mm.
    private const double Rounding = 1e-6;

    // A free strip narrower than this holds nothing that is ever placed, mm.
    private const double LeastUseful = 4;

    private readonly double _gap;
    private readonly bool _fillsFromLeft;
    private List<Bounds2> _free;

    /// <summary>Makes an empty space.</summary>
    /// <param name="space">The space to fill.</param>
    /// <param name="taken">What stands in it already, its own clearance included.</param>
    /// <param name="gap">Least distance between rectangles, mm.</param>
    /// <param name="fillsFromLeft">True to go as far left as can be before as high as can be; else the other way round.</param>
    public FreeRectangles(Bounds2 space, ReadOnlySpan<Bounds2> taken, double gap, bool fillsFromLeft = false)
    {
        (_gap, _fillsFromLeft) = (gap, fillsFromLeft);
        _free = [space];
        foreach (var rectangle in taken)
        {
            Take(rectangle);
        }
    }

    /// <summary>The largest free rectangle by its area; null when nothing is free.</summary>
    public Bounds2? Largest
    {
        get
        {
            Bounds2? largest = null;
            foreach (var free in _free)
            {
                if (largest is not { } known || free.Width * free.Height > known.Width * known.Height)
                {
                    largest = free;
                }
            }

            return largest;
        }
    }

    /// <summary>All free rectangles.</summary>
    public IReadOnlyList<Bounds2> All => _free;

    /// <summary>True when there is room for a rectangle.</summary>
    public bool HasRoom(double width, double height) => Find(width, height) is not null;

    /// <summary>Places a rectangle and returns it, or null when there is no room.</summary>
    public Bounds2? Place(double width, double height)
    {
        if (Find(width, height) is not { } place)
        {
            return null;
        }

        Take(place.Grown(_gap));
        return place;
    }

    /// <summary>The place a rectangle would get: in the upper left corner of a free one.</summary>
    private Bounds2? Find(double width, double height)
    {
        Bounds2? best = null;
        foreach (var free in _free)
        {
            if (free.Width + Rounding >= width && free.Height + Rounding >= height)
            {
                var place = new Bounds2(free.MinX, free.MaxY - height, free.MinX + width, free.MaxY);
                best = best is not { } known || IsBefore(place, known) ? place : best;
            }
        }

        return best;
    }

    private bool IsBefore(Bounds2 place, Bounds2 other) => _fillsFromLeft
        ? place.MinX < other.MinX || (place.MinX == other.MinX && place.MaxY > other.MaxY)
        : place.MaxY > other.MaxY || (place.MaxY == other.MaxY && place.MinX < other.MinX);

    private void Take(Bounds2 taken)
    {
        var left = new List<Bounds2>(_free.Count + 4);
        foreach (var free in _free)
        {
            if (!Overlap(free, taken))
            {
                left.Add(free);
                continue;
            }

            AddUseful(left, free with { MaxX = Math.Min(free.MaxX, taken.MinX) });
            AddUseful(left, free with { MinX = Math.Max(free.MinX, taken.MaxX) });
            AddUseful(left, free with { MaxY = Math.Min(free.MaxY, taken.MinY) });
            AddUseful(left, free with { MinY = Math.Max(free.MinY, taken.MaxY) });
        }

        _free = WithoutContained(left);
    }

    private static void AddUseful(List<Bounds2> list, Bounds2 free)
    {
        if (free.Width >= LeastUseful && free.Height >= LeastUseful)
        {
            list.Add(free);
        }
    }

    private static bool Overlap(Bounds2 a, Bounds2 b) =>
        a.MinX < b.MaxX && b.MinX < a.MaxX && a.MinY < b.MaxY && b.MinY < a.MaxY;

    private static List<Bounds2> WithoutContained(List<Bounds2> rectangles)
    {
        var kept = new List<Bounds2>(rectangles.Count);
        for (var i = 0; i < rectangles.Count; i++)
        {
            var isContained = false;
            for (var j = 0; j < rectangles.Count && !isContained; j++)
            {
                // Of two equal ones the first stays.
                isContained = i != j && rectangles[j].Encloses(rectangles[i]) && (j < i || rectangles[i] != rectangles[j]);
            }

            if (!isContained)
            {
                kept.Add(rectangles[i]);
            }
        }

        return kept;
    }
}
