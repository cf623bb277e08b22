using PlanForge.Geometry;
using PlanForge.Geometry.Regions;
using PlanForge.Parts.Shapes;

namespace PlanForge.Parts.Bench.Setup;

/// <summary>The shape of one cradle, seen from the tail: x starboard, y the height above the datum line.</summary>
/// <param name="Wood">What is cut, without the slots of the feet.</param>
/// <param name="Front">The body's outside at the front face.</param>
/// <param name="Rear">The body's outside at the rear face.</param>
/// <param name="Board">Height of the board: minus that of the datum line above it, mm.</param>
/// <param name="Bottom">Height of the lowest point of the opening, mm.</param>
/// <param name="Top">Height of the arms' upper ends, mm.</param>
/// <param name="HalfOpening">Half-breadth of the opening between the arms' upper ends, where it is widest, mm.</param>
/// <param name="HalfWidth">Half the width of the whole cradle, mm.</param>
internal sealed record CradleOutline(
    Region2 Wood, Path2 Front, Path2 Rear, double Board, double Bottom, double Top, double HalfOpening, double HalfWidth)
{
    // How far the arms rise up the body, as a share of its depth: under the middle, so that the body lifts out.
    private const double ArmShare = 0.45;

    // Common practice, no source: arms narrower than this bend, and the slots of the feet need three thicknesses.
    private const double LeastArm = 20;

    /// <summary>The cradle with its front face at a station; null where the body has no outline.</summary>
    /// <remarks>
    /// The opening is the larger of both faces' outlines everywhere; above the body's widest place it keeps that breadth, so that the
    /// body lifts straight out.
    /// </remarks>
    public static CradleOutline? Of(RiggedAirframe airframe, double station, double board)
    {
        const double Clear = 10;
        var thickness = airframe.Description.Bench.Cradles.Thickness;

        // Without skins the inside is the outside.
        var outside = FuselageShape.Of(airframe.Description.Fuselage with { Skin = default }, airframe.Inputs);
        if (BodyOutline.Inside(outside, station, Drawn.Tolerance) is not { } front
            || BodyOutline.Inside(outside, station + thickness, Drawn.Tolerance) is not { } rear)
        {
            return null;
        }

        var body = Region2.FromContours(FillRule.NonZero, [front]).Union(Region2.FromContours(FillRule.NonZero, [rear]));
        var bounds = body.Bounds;
        var arm = Math.Max(LeastArm, 3 * thickness);
        double top = bounds.MinY + (ArmShare * bounds.Height), half = bounds.MaxX;
        var above = Path2.Rectangle(new(-half, WidestHeight(body), half, bounds.MaxY + Clear));
        var opening = body.Union(Region2.FromContours(FillRule.NonZero, [above]));
        var blank = Region2.FromContours(FillRule.NonZero, [Path2.Rectangle(new(-half - arm, board, half + arm, top))]);
        var wood = blank.Difference(opening);
        return new(wood, front, rear, board, bounds.MinY, top, HalfOpeningAt(top, wood), half + arm);
    }

    /// <summary>The angle that the seat's bottom is bevelled by, radians: positive when the body drops towards the tail.</summary>
    public double BottomBevel(double thickness) => Math.Atan((Front.Bounds.MinY - Rear.Bounds.MinY) / thickness);

    /// <summary>The angle that the seat's sides are bevelled by, radians: positive when the body widens towards the tail.</summary>
    public double SideBevel(double thickness) => Math.Atan((Rear.Bounds.MaxX - Front.Bounds.MaxX) / thickness);

    // The inner corner of the starboard arm's upper end.
    private static double HalfOpeningAt(double top, Region2 wood)
    {
        const double Tolerance = 1e-6;
        var half = wood.Bounds.MaxX;
        foreach (var contour in wood.Contours)
        {
            foreach (var vertex in contour.Vertices)
            {
                var isInner = Math.Abs(vertex.Point.Y - top) < Tolerance && vertex.Point.X > 0;
                half = isInner ? Math.Min(half, vertex.Point.X) : half;
            }
        }

        return half;
    }

    // The lowest place of the greatest breadth, as near as a hundredth of a millimetre.
    private static double WidestHeight(Region2 body)
    {
        const double Tolerance = 0.01;
        var widest = body.Bounds.MaxX - Tolerance;
        var height = double.PositiveInfinity;
        foreach (var part in body.Parts)
        {
            foreach (var point in part.Outer.Flattened(Tolerance / 2))
            {
                height = point.X >= widest ? Math.Min(height, point.Y) : height;
            }
        }

        return double.IsFinite(height) ? height : body.Bounds.Centre.Y;
    }
}
