using PlanForge.Geometry;

namespace PlanForge.Parts.Shapes;

/// <summary>The surfaces inside the skins: the outside moved inward along its own normal by the skin's thickness.</summary>
/// <remarks>
/// At a rounded corner between skins of different thickness the thickness passes from one to the other with the direction
/// of the normal. Where straight bays fold, the inner faces meet in a mitre, as bent or butted sheet does.
/// </remarks>
internal sealed class FuselageInside(FuselageShape outside)
{
    // Each round of the fixed-point search gains at least two digits for skins thinner than the radii of the body.
    private const int GreatestRoundCount = 60;

    private const double Tolerance = 1e-11;

    /// <summary>Thickness of the skin at a surface point with an outward normal.</summary>
    public double ThicknessAt(Zone zone, Vector3 normal)
    {
        var skin = outside.Skin;
        switch (zone)
        {
            case Zone.Bottom:
                return skin.Bottom;
            case Zone.Top:
                return skin.Top;
            case Zone.Side:
                return skin.Side;
            default:
                var across = normal.Y * normal.Y;
                var up = normal.Z * normal.Z;
                var flat = zone == Zone.LowerCorner ? skin.Bottom : skin.Top;
                return ((skin.Side * across) + (flat * up)) / (across + up);
        }
    }

    /// <summary>The point of the inside in the plane of a station, for a zone and its parameter v: (y, z), mm.</summary>
    public Point2 InPlane(double station, Zone zone, double v)
    {
        var homeBay = outside.BayAt(station);
        var home = homeBay.Index;
        Foot? best = null;

        // A foot lies at most one thickness of its own skins from the plane; further from a fold than this no neighbour can matter.
        var reach = ThickestOf(zone);
        bool isNearFront = station <= homeBay.From + reach, isNearRear = station >= homeBay.To - reach;
        if (!isNearFront && !isNearRear)
        {
            return FootInPlane(homeBay, station, zone, v).Inner;
        }

        for (var i = Math.Max(0, isNearFront ? home - 1 : home); i <= Math.Min(outside.Bays.Length - 1, isNearRear ? home + 1 : home); i++)
        {
            var bay = outside.Bays[i];
            var foot = FootInPlane(bay, station, zone, v);
            best = Better(best, foot with { IsOwn = IsWithin(i, foot.Station) });
        }

        return best!.Value.Inner;
    }

    private double ThickestOf(Zone zone)
    {
        var skin = outside.Skin;
        return zone switch
        {
            Zone.Bottom => skin.Bottom,
            Zone.Top => skin.Top,
            Zone.Side => skin.Side,
            Zone.LowerCorner => Math.Max(skin.Side, skin.Bottom),
            _ => Math.Max(skin.Side, skin.Top),
        };
    }

    /// <summary>Half-breadth of the inside at a station and height, mm; null above or below the inside.</summary>
    public double? HalfBreadthAt(double station, double height)
    {
        if (height < InPlane(station, Zone.Bottom, 0).Y || height > InPlane(station, Zone.Top, 0).Y)
        {
            return null;
        }

        var section = outside.BayAt(station).At(station);
        foreach (var zone in (ReadOnlySpan<Zone>)[Zone.Side, Zone.LowerCorner, Zone.UpperCorner])
        {
            if (!section.Has(zone))
            {
                continue;
            }

            // A leaning side runs on a little, to the sharp corner inside the skins.
            var (from, to) = zone == Zone.Side ? (-0.1, 1.1) : (0.0, 1.0);
            double Above(double v) => InPlane(station, zone, v).Y - height;
            if (RootFinder.Bracketed(Above, from, to, 1e-13) is { } v && (zone != Zone.Side || IsOnSide(section, v)))
            {
                return InPlane(station, zone, v).X;
            }
        }

        return null;
    }

    // With rounded corners the side ends where the corner begins.
    private static bool IsOnSide(CrossSection section, double v) =>
        (v >= 0 || !section.Has(Zone.LowerCorner)) && (v <= 1 || !section.Has(Zone.UpperCorner));

    /// <summary>True when a bay's functions hold at a station; the end bays run on.</summary>
    public bool IsWithin(int bay, double station) =>
        (bay == 0 || station >= outside.Bays[bay].From) && (bay == outside.Bays.Length - 1 || station <= outside.Bays[bay].To);

    // Of two faces that both claim the place the one further in bounds the inside; of two that both only run on, the one
    // further out: that is the mitre of a hollow and of a raised fold.
    private static Foot Better(Foot? before, Foot now)
    {
        if (before is not { } old)
        {
            return now;
        }

        if (old.IsOwn != now.IsOwn)
        {
            return old.IsOwn ? old : now;
        }

        var isFurtherIn = (now.Inner - old.Inner).Dot(now.Outward) < 0;
        return isFurtherIn == now.IsOwn ? now : old;
    }

    private Foot FootInPlane(FuselageBay bay, double station, Zone zone, double v)
    {
        var x = station;
        for (var round = 0; ; round++)
        {
            var u = Dual.U(x);
            var (y, z) = bay.At(u).At(zone, Dual.V(v));

            // v runs from the bottom round to the top on the starboard side, so Dv × Du points outward.
            var normal = -new Dual3(u, y, z).Normal;
            var thickness = ThicknessAt(zone, normal);
            var next = station + (thickness * normal.X);
            if (Math.Abs(next - x) < Tolerance || round == GreatestRoundCount)
            {
                var inner = new Point2(y.Value - (thickness * normal.Y), z.Value - (thickness * normal.Z));
                return new(x, inner, new(normal.Y, normal.Z), IsOwn: false);
            }

            x = next;
        }
    }

    private readonly record struct Foot(double Station, Point2 Inner, Vector2 Outward, bool IsOwn);
}
