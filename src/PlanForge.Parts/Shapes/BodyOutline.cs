using System.Collections.Immutable;
using PlanForge.Geometry;
using PlanForge.Geometry.Fitting;

namespace PlanForge.Parts.Shapes;

/// <summary>The line in which a plane square to the datum line cuts the inside of the skins.</summary>
internal static class BodyOutline
{
    // Samples along a curved zone: arcs fitted through them stay within the drawing tolerance of the exact curve.
    private const int CornerStepCount = 32;

    // A side is straight in most bodies and nearly so in the rest.
    private const int SideStepCount = 12;

    // Lines and arcs that run on over the centre line become one when nothing moves by more than this, mm.
    private const double MergeTolerance = 1e-9;

    // Step for the direction of the curve by central difference, in the zone's parameter: errors stay under 1e-7 rad.
    private const double DirectionStep = 1e-4;

    /// <summary>The closed outline inside the skins at a station, anticlockwise, x starboard and y up.</summary>
    /// <param name="body">The fuselage.</param>
    /// <param name="station">The plane's station, mm.</param>
    /// <param name="tolerance">Greatest distance of the drawn from the exact curve, mm.</param>
    /// <returns>The outline; or null where the skins leave nothing inside.</returns>
    public static Path2? Inside(FuselageShape body, double station, double tolerance)
    {
        var half = StarboardHalf(body, station);
        if (half.Length < 3 || half[0].Point.Y >= half[^1].Point.Y || half.Any(sample => sample.Point.X < -1e-9))
        {
            return null;
        }

        // One half is fitted and mirrored, so that port and starboard agree to the last digit.
        var starboard = ArcFitter.Fit(half, tolerance);
        var port = starboard.Placed(Placement2.Mirror).Reversed();
        return Path2.Closed([.. starboard.Vertices[..^1], .. port.Vertices[..^1]]).Merged(MergeTolerance);
    }

    // From the bottom centre round the starboard side to the top centre.
    private static ImmutableArray<CurveSample> StarboardHalf(FuselageShape body, double station)
    {
        var section = body.BayAt(station).At(station);
        var bottom = body.Skins.InPlane(station, Zone.Bottom, 0).Y;
        var top = body.Skins.InPlane(station, Zone.Top, 0).Y;
        var samples = ImmutableArray.CreateBuilder<CurveSample>();
        var lower = Rounds(body, station, section, Zone.LowerCorner);
        var upper = Rounds(body, station, section, Zone.UpperCorner);
        var hasSide = section.Has(Zone.Side);

        // A sharp corner lies where the side's line, run on, meets the flat.
        var sideFrom = lower ? 0 : SideParameterAt(body, station, bottom);
        var sideTo = upper ? 1 : SideParameterAt(body, station, top);
        if (section.Has(Zone.Bottom) || !lower)
        {
            var corner = lower ? body.Skins.InPlane(station, Zone.Bottom, 1) : body.Skins.InPlane(station, Zone.Side, sideFrom);
            samples.Append(new(new(0, bottom), new(1, 0)));
            samples.Append(new(new(corner.X, bottom), new(1, 0)));
        }

        if (lower)
        {
            AddZone(body, station, Zone.LowerCorner, 0, 1, samples);
        }

        if (hasSide)
        {
            AddZone(body, station, Zone.Side, sideFrom, sideTo, samples);
        }

        if (upper)
        {
            AddZone(body, station, Zone.UpperCorner, 0, 1, samples);
        }

        if (section.Has(Zone.Top) || !upper)
        {
            var corner = upper ? body.Skins.InPlane(station, Zone.Top, 0) : body.Skins.InPlane(station, Zone.Side, sideTo);
            samples.Append(new(new(corner.X, top), new(-1, 0)));
            samples.Append(new(new(0, top), new(-1, 0)));
        }

        return samples.ToImmutable();
    }

    // A corner whose radius the skin uses up is sharp inside.
    private static bool Rounds(FuselageShape body, double station, CrossSection section, Zone zone)
    {
        if (!section.Has(zone))
        {
            return false;
        }

        Point2 a = body.Skins.InPlane(station, zone, 0), b = body.Skins.InPlane(station, zone, 1);
        return zone == Zone.LowerCorner ? b.X > a.X && b.Y > a.Y : b.X < a.X && b.Y > a.Y;
    }

    private static double SideParameterAt(FuselageShape body, double station, double height)
    {
        double Above(double v) => body.Skins.InPlane(station, Zone.Side, v).Y - height;

        // The side runs on: half its height past either end is more than any skin.
        return RootFinder.Bracketed(Above, -0.5, 1.5, 1e-13) ?? (Above(0.5) > 0 ? 0 : 1);
    }

    private static void AddZone(
        FuselageShape body, double station, Zone zone, double from, double to, ImmutableArray<CurveSample>.Builder samples)
    {
        // A side runs on past its ends, a corner does not.
        var (least, greatest, steps) = zone == Zone.Side ? (-1.0, 2.0, SideStepCount) : (0.0, 1.0, CornerStepCount);
        for (var i = 0; i <= steps; i++)
        {
            var v = from + ((to - from) * i / steps);
            double before = Math.Max(v - DirectionStep, least), after = Math.Min(v + DirectionStep, greatest);
            var direction = body.Skins.InPlane(station, zone, after) - body.Skins.InPlane(station, zone, before);
            samples.Append(new(body.Skins.InPlane(station, zone, v), direction.Unit()));
        }
    }
}
