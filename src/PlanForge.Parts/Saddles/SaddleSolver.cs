using PlanForge.Geometry;
using PlanForge.Parts.Shapes;

namespace PlanForge.Parts.Saddles;

/// <summary>
/// Finds where the wing's surface, moved out by the seat tape, meets the outer and inner face of the starboard side.
/// </summary>
/// <remarks>
/// For a fixed section parameter w the wing's surface is one line from the centre outboard, panel by panel between their
/// mitre planes. On it, y less the body's half-breadth changes sign exactly once, inside to outside: a bracketed root,
/// solved to 1e-12 of a millimetre or so. The inner face is then reached by three unknowns (distance along the panel, and
/// the station and height of the foot on the outer face) from three equations: wing point plus thickness times the side's
/// normal equals the foot. Solving along w, not along the station, keeps the round nose harmless.
/// </remarks>
internal sealed class SaddleSolver(WingShape wing, FuselageShape body, WingSide side, double seatTape)
{
    private const double RootTolerance = 1e-12;

    // The inner search gains a factor of about radius/skin each round; a skin thicker than the radius does not converge.
    private const int GreatestRoundCount = 80;
    private const double InnerTolerance = 1e-10;

    /// <summary>The saddle point at w, or null where the wing's surface does not cross the side (nor its run-on).</summary>
    public SaddlePoint? At(double w)
    {
        double? before = null;
        Point3 seatBefore = default;
        for (var panel = 0; panel < wing.Panels.Length; panel++)
        {
            var (from, to) = wing.Range(panel, side, w, seatTape);
            var atFrom = Outside(panel, from, w);
            if (before is < 0 && atFrom >= 0)
            {
                // The surfaces of two panels miss each other by a trace in the mitre plane, and the side passes between:
                // the saddle bridges the gap straight.
                var bridge = (Inner: seatBefore, Outer: SeatAt(panel, from, w).Point);
                var at = RootFinder.Bracketed(t => Outside(bridge.Inner.Towards(bridge.Outer, t)), 0, 1, RootTolerance) ?? 1;
                return Solved(panel, from, w, bridge.Inner.Towards(bridge.Outer, at));
            }

            var atTo = Outside(panel, to, w);
            if (atFrom < 0 && atTo >= 0)
            {
                var index = panel;
                var along = RootFinder.Bracketed(s => Outside(index, s, w), from, to, RootTolerance);
                return along is { } found ? Solved(panel, found, w, SeatAt(panel, found, w).Point) : null;
            }

            (before, seatBefore) = (atTo, SeatAt(panel, to, w).Point);
        }

        return null;
    }

    private WingSeat SeatAt(int panel, double along, double w) => wing.SeatAt(panel, side, along, w, seatTape);

    // How far the seat point lies outside the body's side, mm along y.
    private double Outside(int panel, double along, double w) => Outside(SeatAt(panel, along, w).Point);

    private double Outside(Point3 seat) => seat.Y - body.HalfBreadthAt(seat.X, seat.Z);

    private SaddlePoint Solved(int panel, double along, double w, Point3 outer)
    {
        var wingNormal = SeatAt(panel, along, w).Normal;
        var bay = body.BayAt(outer.X);
        var face = FuselageShape.SideAt(bay, outer.X, outer.Z);
        var sideNormal = FuselageShape.OutwardNormal(face);
        var tangent = wingNormal.Cross(sideNormal).Unit();
        var (inner, foot) = InnerAt(panel, bay, along, w, outer);
        return new(
            w, panel, bay.Index, outer, side == WingSide.Lower ? tangent : -tangent, wingNormal, sideNormal, inner, foot);
    }

    private (Point3 Inner, Point3 Foot) InnerAt(int panel, FuselageBay bay, double along, double w, Point3 outer)
    {
        if (body.Skin.Side == 0)
        {
            return (outer, outer);
        }

        var best = InnerOf(panel, bay, along, w, outer);
        foreach (var neighbour in NeighboursNear(bay, best.Foot.X))
        {
            var other = InnerOf(panel, neighbour, along, w, outer);
            var bestHolds = body.Skins.IsWithin(bay.Index, best.Foot.X);
            var otherHolds = body.Skins.IsWithin(neighbour.Index, other.Foot.X);
            var isFurtherIn = other.Inner.Y < best.Inner.Y;
            if (bestHolds == otherHolds ? isFurtherIn == otherHolds : otherHolds)
            {
                (best, bay) = (other, neighbour);
            }
        }

        return best;
    }

    // Bays whose inner face can reach a foot: those that begin or end within a few thicknesses of it.
    private IEnumerable<FuselageBay> NeighboursNear(FuselageBay bay, double station)
    {
        var reach = 2 * body.Skin.Side;
        if (bay.Index > 0 && station < bay.From + reach)
        {
            yield return body.Bays[bay.Index - 1];
        }

        if (bay.Index < body.Bays.Length - 1 && station > bay.To - reach)
        {
            yield return body.Bays[bay.Index + 1];
        }
    }

    private (Point3 Inner, Point3 Foot) InnerOf(int panel, FuselageBay bay, double along, double w, Point3 start)
    {
        double x = start.X, z = start.Z;
        var (from, to) = wing.Range(panel, side, w, seatTape);
        Point3 inner = start, foot = start;
        for (var round = 0; round < GreatestRoundCount; round++)
        {
            if (along < from && panel > 0)
            {
                // The line to the inner face passes a joint: go on along the neighbouring panel.
                panel--;
                along += wing.Panels[panel].Length;
                (from, to) = wing.Range(panel, side, w, seatTape);
            }
            else if (along > to && panel < wing.Panels.Length - 1)
            {
                along -= wing.Panels[panel].Length;
                panel++;
                (from, to) = wing.Range(panel, side, w, seatTape);
            }

            var (surface, _, seat) = SeatAt(panel, along, w);
            var face = FuselageShape.SideAt(bay, x, z);
            var normal = FuselageShape.OutwardNormal(face);
            (inner, foot) = (seat, face.Point);
            var miss = seat + (normal * SkinAt(bay, x, z, normal)) - face.Point;
            if (miss.Length < InnerTolerance)
            {
                break;
            }

            // Columns of the Jacobian with the turning of the normals left out: along moves by Du, the foot by −Du, −Dv.
            Vector3 a = surface.Du, b = -face.Du, c = -face.Dv;
            var volume = a.Dot(b.Cross(c));
            along -= miss.Dot(b.Cross(c)) / volume;
            x -= a.Dot(miss.Cross(c)) / volume;
            z -= a.Dot(b.Cross(miss)) / volume;
        }

        return (inner, foot);
    }

    private double SkinAt(FuselageBay bay, double x, double z, Vector3 normal)
    {
        var section = bay.At(x);
        var zone = z > (section.Upper - section.UpperUp).Value ? Zone.UpperCorner
            : z < (section.Lower + section.LowerUp).Value ? Zone.LowerCorner
            : Zone.Side;
        return body.Skins.ThicknessAt(zone, normal);
    }
}
