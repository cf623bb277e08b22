using System.Collections.Immutable;
using PlanForge.Airframe;
using PlanForge.Geometry;
using PlanForge.Geometry.Offsets;
using PlanForge.Geometry.Regions;
using PlanForge.Parts.Dowels;

namespace PlanForge.Parts.Formers;

/// <summary>What is added to and taken from a former's outline, each as a region in the former's own plane.</summary>
internal static class FormerFeatures
{
    // Notches and tabs reach this far past the edge (and through any allowance), mm, so that a sloping edge leaves no sliver.
    private const double Overshoot = 5;

    /// <summary>Tabs on both sides or on the upper or lower edge; they begin inside the wood.</summary>
    public static Region2 Tabs(FormerDescription former, FormerOutline outline)
    {
        var tabs = new List<Region2>();
        foreach (var tab in former.Tabs)
        {
            double from = tab.Position - (tab.Width / 2), to = tab.Position + (tab.Width / 2);
            if (tab.Edge == TabEdge.Side)
            {
                if (Reach(outline.Net, new(0, tab.Position), new(1, 0)) is { } y)
                {
                    tabs.Add(Box(y - Overshoot, from, y + tab.Depth, to));
                    tabs.Add(Box(-y - tab.Depth, from, -y + Overshoot, to));
                }

                continue;
            }

            var up = tab.Edge == TabEdge.Upper ? 1 : -1;
            if (Reach(outline.Net, new(tab.Position, Middle(outline.Net)), new(0, up)) is { } z)
            {
                double edge = Middle(outline.Net) + (up * z), tip = edge + (up * tab.Depth), root = edge - (up * Overshoot);
                tabs.Add(Box(from, Math.Min(tip, root), to, Math.Max(tip, root)));
            }
        }

        return Region2.UnionOf(tabs);
    }

    /// <summary>Notches for longerons and stringers, set on the net edge.</summary>
    public static Region2 Notches(FormerDescription former, FormerOutline outline, RiggedAirframe airframe)
    {
        var notches = new List<Region2>();
        foreach (var longeron in airframe.Description.Fuselage.Longerons)
        {
            if (longeron.Place is LongeronPlace.Keel or LongeronPlace.Crown)
            {
                var up = longeron.Place == LongeronPlace.Crown ? 1 : -1;
                if (Reach(outline.Net, new(0, Middle(outline.Net)), new(0, up)) is { } reach)
                {
                    double edge = Middle(outline.Net) + (up * reach), root = edge - (up * longeron.Up);
                    var tip = edge + (up * (Overshoot + (up > 0 ? former.Allowance.Upper : former.Allowance.Lower)));
                    notches.Add(Box(-longeron.Across / 2, Math.Min(root, tip), longeron.Across / 2, Math.Max(root, tip)));
                }

                continue;
            }

            if (SideNotch(outline, longeron, former.Allowance) is { } notch)
            {
                notches.Add(notch);
                notches.Add(notch.Placed(Placement2.Mirror));
            }
        }

        return Region2.UnionOf(notches);
    }

    /// <summary>Openings; those off the centre line on both sides.</summary>
    public static Region2 Openings(FormerDescription former)
    {
        var openings = new List<Region2>();
        foreach (var opening in former.Openings)
        {
            AddBothSides(openings, opening.Across, centre => RoundedBox(
                new(centre, opening.Height), opening.Width, opening.Depth, opening.CornerRadius));
        }

        return Region2.UnionOf(openings);
    }

    /// <summary>Slots; those off the centre line on both sides.</summary>
    public static Region2 Slots(FormerDescription former)
    {
        var slots = new List<Region2>();
        foreach (var slot in former.Slots)
        {
            AddBothSides(slots, slot.Across, centre => RoundedBox(new(centre, slot.Height), slot.Width, slot.Depth, 0));
        }

        return Region2.UnionOf(slots);
    }

    /// <summary>
    /// The dowel holes of a cross-former, clockwise, cut straight through where the axis passes mid thickness: reaming along
    /// the axis then takes equal wood from both faces.
    /// </summary>
    public static ImmutableArray<Path2> DowelHoles(FormerDescription former, RiggedAirframe airframe)
    {
        if (DowelAxis.Through(former, airframe) is not { } axis)
        {
            return [];
        }

        var hole = axis.HoleAt(former.Station + (former.Thickness / 2));
        return axis.Across > 0 ? [hole.Contour(), hole.Contour(isPort: true)] : [hole.Contour()];
    }

    /// <summary>The opening that leaves a rim along every edge of the wood, holes included, its corners rounded.</summary>
    public static Region2 Lightening(Region2 wood, LighteningDescription lightening)
    {
        var opening = Offsetter.Offset(wood, -lightening.Rim, CornerStyle.Round);
        return lightening.CornerRadius > 0 ? Offsetter.WithRoundedInsideCorners(opening, lightening.CornerRadius) : opening;
    }

    /// <summary>The inner corner of a longeron's notch, starboard or beside the centre line, at which a leader can point; null without one.</summary>
    public static Point2? NotchCorner(FormerDescription former, FormerOutline outline, LongeronDescription longeron)
    {
        if (longeron.Place is LongeronPlace.Keel or LongeronPlace.Crown)
        {
            var up = longeron.Place == LongeronPlace.Crown ? 1 : -1;
            return Reach(outline.Net, new(0, Middle(outline.Net)), new(0, up)) is { } reach
                ? new Point2(longeron.Across / 2, Middle(outline.Net) + (up * (reach - longeron.Up)))
                : null;
        }

        if (SideNotch(outline, longeron, former.Allowance) is not { } notch)
        {
            return null;
        }

        var bounds = notch.Bounds;
        return new(bounds.MinX, longeron.Place == LongeronPlace.UpperCorner ? bounds.MinY : bounds.MaxY);
    }

    // How far the region reaches from a point inside it in a direction, to the first edge, mm; null from outside.
    internal static double? Reach(Region2 region, Point2 from, Vector2 direction)
    {
        if (!region.Contains(from))
        {
            return null;
        }

        var far = region.Bounds.Width + region.Bounds.Height;
        var ray = Path2.Line(from, from + (direction * far));
        double? nearest = null;
        foreach (var contour in region.Contours)
        {
            foreach (var crossing in ray.IntersectionsWith(contour, Region2.SnapDistance))
            {
                var distance = crossing.Point.DistanceTo(from);
                nearest = nearest is { } best ? Math.Min(best, distance) : distance;
            }
        }

        return nearest;
    }

    internal static double Middle(Region2 region) => (region.Bounds.MinY + region.Bounds.MaxY) / 2;

    private static Region2? SideNotch(FormerOutline outline, LongeronDescription longeron, AllowanceDescription allowance)
    {
        var net = outline.Net;
        double top, bottom;
        switch (longeron.Place)
        {
            case LongeronPlace.UpperCorner:
                (top, bottom) = (SideEnd(net, 1) + allowance.Upper + Overshoot, SideEnd(net, 1) - longeron.Up);
                break;
            case LongeronPlace.LowerCorner:
                (top, bottom) = (SideEnd(net, -1) + longeron.Up, SideEnd(net, -1) - allowance.Lower - Overshoot);
                break;
            default:
                (top, bottom) = (longeron.Height + (longeron.Up / 2), longeron.Height - (longeron.Up / 2));
                break;
        }

        var level = longeron.Place switch
        {
            LongeronPlace.UpperCorner => bottom + (longeron.Up / 2),
            LongeronPlace.LowerCorner => top - (longeron.Up / 2),
            _ => longeron.Height,
        };
        return Reach(net, new(0, level), new(1, 0)) is { } y
            ? Box(y - longeron.Across, bottom, y + allowance.Side + Overshoot, top)
            : null;
    }

    // Height at which the side ends above (+1) or below (−1): the upper or lower edge's outer end.
    private static double SideEnd(Region2 net, int up)
    {
        var edge = OutlineEdge.Facing(net.Parts[0].Outer, new(0, up));
        return edge is null ? (up > 0 ? net.Bounds.MaxY : net.Bounds.MinY) : edge.Start.X > edge.End.X ? edge.Start.Y : edge.End.Y;
    }

    private static void AddBothSides(List<Region2> regions, double across, Func<double, Region2> make)
    {
        regions.Add(make(across));
        if (across != 0)
        {
            regions.Add(make(-across));
        }
    }

    private static Region2 Box(double minX, double minY, double maxX, double maxY) =>
        Region2.FromContours(FillRule.NonZero, Path2.Rectangle(new(minX, minY, maxX, maxY)));

    private static Region2 RoundedBox(Point2 centre, double width, double depth, double radius)
    {
        if (radius > 0 && width == depth && radius * 2 >= width)
        {
            return Region2.FromContours(FillRule.NonZero, Path2.Circle(centre, radius));
        }

        double x = width / 2, y = depth / 2;
        if (radius == 0)
        {
            return Box(centre.X - x, centre.Y - y, centre.X + x, centre.Y + y);
        }

        // Quarter circles: bulge tan(90°/4).
        var quarter = Math.Tan(Math.PI / 8);
        ImmutableArray<PathVertex> vertices =
        [
            new(centre + new Vector2(radius - x, -y)),
            new(centre + new Vector2(x - radius, -y), quarter),
            new(centre + new Vector2(x, radius - y)),
            new(centre + new Vector2(x, y - radius), quarter),
            new(centre + new Vector2(x - radius, y)),
            new(centre + new Vector2(radius - x, y), quarter),
            new(centre + new Vector2(-x, y - radius)),
            new(centre + new Vector2(-x, radius - y), quarter),
        ];
        return Region2.FromContours(FillRule.NonZero, Path2.Closed(vertices));
    }
}
