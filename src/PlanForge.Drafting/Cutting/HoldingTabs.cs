using System.Collections.Immutable;
using PlanForge.Geometry;

namespace PlanForge.Drafting.Cutting;

/// <summary>Leaves gaps in an outline so that bridges of wood hold the part in its sheet until it is broken out.</summary>
public static class HoldingTabs
{
    // A bend that strays from straight by no more than this, mm, over gap and both clearances is straight to the hand that
    // cleans the stub away.
    private const double Straight = 0.05;

    // Where nothing is straight, as on a round former: bends of this radius and more, in gaps. Less would be a rounded corner.
    private const double LeastRadius = 10;

    // From the middle of a gap to the nearest vertex, in gaps: half of it, its own width, and a trace for the chords of bends.
    private const double Clear = 1.55;

    // From the middle of a gap to the nearest opening, in gaps: less would break through the wall with the bridge.
    private const double OffOpenings = 2;

    // Places tried along an outline: fine enough to be evenly spread, coarse enough to cost nothing.
    private const int Places = 200;

    // Turns of the even spread that are tried.
    private const int Phases = 12;

    /// <summary>
    /// The outline in stretches between its gaps, in order of travel; null when there is no room for so many.
    /// </summary>
    /// <remarks>
    /// Gaps lie on straight runs (or wide bends where there are none), not nearer than a gap's width to a vertex, and twice that from any
    /// opening; among those places they are spread as evenly as can be.
    /// </remarks>
    /// <param name="outline">A closed outline.</param>
    /// <param name="openings">The part's openings.</param>
    /// <param name="gap">Length of a gap along the outline, mm, over 0.</param>
    /// <param name="count">How many, 1 or more.</param>
    public static ImmutableArray<Path2>? Cut(Path2 outline, IReadOnlyList<Path2> openings, double gap, int count)
    {
        ArgumentNullException.ThrowIfNull(outline);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(gap);
        ArgumentOutOfRangeException.ThrowIfLessThan(count, 1);
        var gaps = Spread(PlacesOn(outline, openings, gap, radius => 9 * gap * gap / (8 * radius) <= Straight), outline.Length, gap, count)
            ?? Spread(PlacesOn(outline, openings, gap, radius => radius >= LeastRadius * gap), outline.Length, gap, count);
        return gaps is null ? null : Stretches(outline, gaps, gap);
    }

    private static List<Place> PlacesOn(Path2 outline, IReadOnlyList<Path2> openings, double gap, Func<double, bool> isStraight)
    {
        var places = new List<Place>();
        var rooms = openings.Select(opening => (Path: opening, Room: opening.Bounds.Grown(OffOpenings * gap))).ToArray();
        var step = Math.Max(gap / 2, outline.Length / Places);
        var before = 0.0;
        for (var i = 0; i < outline.SegmentCount; i++)
        {
            var segment = outline.SegmentAt(i);
            var (length, clear) = (segment.Length, Clear * gap);
            if (length >= 2 * clear && (segment.IsLine || isStraight(segment.Radius)))
            {
                var room = length - (2 * clear);
                var steps = (int)Math.Ceiling(room / step);
                for (var k = 0; k <= steps; k++)
                {
                    var along = clear + (steps == 0 ? 0 : room * k / steps);
                    var at = segment.PointAt(along / length);
                    if (outline.Vertices.All(vertex => vertex.Point.DistanceTo(at) >= 1.5 * gap)
                        && rooms.All(opening => !opening.Room.Contains(at) || opening.Path.DistanceTo(at) >= OffOpenings * gap))
                    {
                        places.Add(new(i, along, before + along));
                    }
                }
            }

            before += length;
        }

        return places;
    }

    private static List<Place>? Spread(List<Place> places, double length, double gap, int count)
    {
        List<Place>? best = null;
        var least = double.PositiveInfinity;
        for (var phase = 0; phase < Phases; phase++)
        {
            var chosen = new List<Place>(count);
            var cost = 0.0;
            for (var i = 0; i < count; i++)
            {
                var wanted = length * (i + ((phase + 0.5) / Phases)) / count;
                if (Nearest(places, chosen, wanted, length, 3 * gap) is not { } place)
                {
                    return null;
                }

                chosen.Add(place);
                var off = Apart(place.Along, wanted, length);
                cost += off * off;
            }

            if (cost < least)
            {
                (best, least) = (chosen, cost);
            }
        }

        best?.Sort((a, b) => a.Along.CompareTo(b.Along));
        return best;
    }

    private static Place? Nearest(List<Place> places, List<Place> chosen, double wanted, double length, double apart)
    {
        Place? nearest = null;
        var least = double.PositiveInfinity;
        foreach (var place in places)
        {
            var off = Apart(place.Along, wanted, length);
            if (off < least && chosen.TrueForAll(other => Apart(other.Along, place.Along, length) >= apart))
            {
                (nearest, least) = (place, off);
            }
        }

        return nearest;
    }

    private static double Apart(double a, double b, double length)
    {
        var direct = Math.Abs(a - b);
        return Math.Min(direct, length - direct);
    }

    private static ImmutableArray<Path2> Stretches(Path2 outline, List<Place> gaps, double gap)
    {
        var stretches = ImmutableArray.CreateBuilder<Path2>(gaps.Count);
        for (var i = 0; i < gaps.Count; i++)
        {
            var (from, to) = (gaps[i], gaps[(i + 1) % gaps.Count]);
            stretches.Add(Between(outline, from, from.InSegment + (gap / 2), to, to.InSegment - (gap / 2)));
        }

        return stretches.MoveToImmutable();
    }

    private static Path2 Between(Path2 outline, Place from, double start, Place to, double end)
    {
        var vertices = new List<PathVertex>();
        var first = outline.SegmentAt(from.Segment);
        if (from.Segment == to.Segment && start < end)
        {
            var only = first.Part(start / first.Length, end / first.Length);
            return Path2.Open([new(only.Start, only.Bulge), new(only.End)]);
        }

        var rest = first.Part(start / first.Length, 1);
        vertices.Add(new(rest.Start, rest.Bulge));
        for (var i = (from.Segment + 1) % outline.SegmentCount; i != to.Segment; i = (i + 1) % outline.SegmentCount)
        {
            vertices.Add(outline.Vertices[i]);
        }

        var last = outline.SegmentAt(to.Segment);
        var part = last.Part(0, end / last.Length);
        vertices.Add(new(part.Start, part.Bulge));
        vertices.Add(new(part.End));
        return Path2.Open(vertices);
    }

    /// <summary>The middle of a gap: its segment, how far along that and how far along the whole outline it lies, mm.</summary>
    private sealed record Place(int Segment, double InSegment, double Along);
}
