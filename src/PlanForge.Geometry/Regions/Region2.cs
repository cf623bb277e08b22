using System.Collections.Immutable;

namespace PlanForge.Geometry.Regions;

/// <summary>A set of points of the plane bounded by closed chains of lines and arcs: pieces with openings. Immutable.</summary>
/// <remarks>
/// Contours do not cross; they may touch in single points. Operations are exact on arcs: what comes out are parts of the
/// lines and arcs that went in, neighbours on one carrier joined, and a contour nothing touches comes out as it went in.
/// Points nearer than <see cref="SnapDistance"/> count as one, lines and arcs nearer than that as touching, and parts of a
/// result thinner than ten times that are left out. (Input that differs by just about that distance may take a snap distance ten or a
/// hundred times as large to be judged without contradiction.)
/// </remarks>
public sealed class Region2
{
    /// <summary>The distance under which two places cannot be told apart, mm.</summary>
    /// <remarks>
    /// Far above the rounding of coordinates of a few metres (1e-12 mm), so that a shared edge computed twice is one edge, and
    /// far below what any drawing or cutter shows.
    /// </remarks>
    public const double SnapDistance = 1e-7;

    private Region2(ImmutableArray<RegionPart> parts)
    {
        Parts = parts;
        var (area, bounds) = (0.0, Bounds2.Empty);
        foreach (var part in parts)
        {
            area += part.Area;
            bounds = bounds.Joined(part.Outer.Bounds);
        }

        (Area, Bounds) = (area, bounds);
    }

    /// <summary>The region without points.</summary>
    public static Region2 Empty { get; } = new([]);

    /// <summary>The connected pieces.</summary>
    public ImmutableArray<RegionPart> Parts { get; }

    /// <summary>True when the region has no points.</summary>
    public bool IsEmpty => Parts.IsEmpty;

    /// <summary>The area, mm².</summary>
    public double Area { get; }

    /// <summary>The smallest upright rectangle around the region; <see cref="Bounds2.Empty"/> for an empty one.</summary>
    public Bounds2 Bounds { get; }

    /// <summary>All contours: each piece's outline (anticlockwise), then its openings (clockwise). The region lies to their left.</summary>
    public IEnumerable<Path2> Contours
    {
        get
        {
            foreach (var part in Parts)
            {
                yield return part.Outer;
                foreach (var opening in part.Openings)
                {
                    yield return opening;
                }
            }
        }
    }

    /// <summary>What lies inside closed contours, which may cross and overlap themselves and each other.</summary>
    /// <param name="rule">Which points count as inside.</param>
    /// <param name="contours">Closed paths, either way round.</param>
    /// <exception cref="ArgumentException">A contour is open or has coordinates that are not finite.</exception>
    /// <exception cref="BoundaryException">The boundary does not close.</exception>
    public static Region2 FromContours(FillRule rule, params IEnumerable<Path2> contours) =>
        Bounded(rule == FillRule.EvenOdd ? InsideRule.Odd : InsideRule.NonZero, contours, []);

    /// <summary>Everything that lies in at least one of some regions.</summary>
    /// <exception cref="BoundaryException">The boundary does not close.</exception>
    public static Region2 UnionOf(IEnumerable<Region2> regions) =>
        Bounded(InsideRule.NonZero, regions.SelectMany(region => region.Contours), []);

    /// <summary>Everything that lies in this region or the other.</summary>
    /// <exception cref="BoundaryException">The boundary does not close.</exception>
    public Region2 Union(Region2 other) =>
        IsApartFrom(other) ? new(Parts.AddRange(other.Parts)) : Bounded(InsideRule.Either, Contours, other.Contours);

    /// <summary>Everything that lies in both regions. Empty when they share no more than edges and corners.</summary>
    /// <exception cref="BoundaryException">The boundary does not close.</exception>
    public Region2 Intersection(Region2 other) =>
        IsApartFrom(other) ? Empty : Bounded(InsideRule.Both, Contours, other.Contours);

    /// <summary>Everything of this region that does not lie in the other.</summary>
    /// <exception cref="BoundaryException">The boundary does not close.</exception>
    public Region2 Difference(Region2 other) =>
        IsApartFrom(other) ? this : Bounded(InsideRule.FirstOnly, Contours, other.Contours);

    /// <summary>True when the point lies inside, or within <see cref="SnapDistance"/> of the boundary.</summary>
    public bool Contains(Point2 point)
    {
        if (!Bounds.Grown(SnapDistance).Contains(point))
        {
            return false;
        }

        var turns = 0;
        foreach (var contour in Contours)
        {
            turns += Winding.Around(contour, point);
        }

        return turns > 0 || DistanceToBoundary(point) <= SnapDistance;
    }

    /// <summary>The shortest distance from a point to the boundary, mm, from inside as from outside; infinite for an empty region.</summary>
    public double DistanceToBoundary(Point2 point)
    {
        var least = double.PositiveInfinity;
        foreach (var contour in Contours)
        {
            least = Math.Min(least, contour.DistanceTo(point));
        }

        return least;
    }

    /// <summary>The region moved, turned or mirrored.</summary>
    public Region2 Placed(Placement2 placement)
    {
        var parts = ImmutableArray.CreateBuilder<RegionPart>(Parts.Length);
        foreach (var part in Parts)
        {
            var openings = ImmutableArray.CreateBuilder<Path2>(part.Openings.Length);
            foreach (var opening in part.Openings)
            {
                openings.Add(Turned(opening));
            }

            parts.Add(new(Turned(part.Outer), openings.MoveToImmutable()));
        }

        return new(parts.MoveToImmutable());

        // Mirroring turns a contour's sense round; the region must stay on its left.
        Path2 Turned(Path2 path) => placement.IsMirrored ? path.Placed(placement).Reversed() : path.Placed(placement);
    }

    internal static Region2 Bounded(InsideRule rule, IEnumerable<Path2> first, IEnumerable<Path2> second)
    {
        var parts = RegionBuilder.Build(rule, first, second);
        return parts.IsEmpty ? Empty : new(parts);
    }

    private bool IsApartFrom(Region2 other) => !Bounds.Grown(SnapDistance).Touches(other.Bounds);
}
