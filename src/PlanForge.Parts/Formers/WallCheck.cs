using PlanForge.Airframe;
using PlanForge.Airframe.Diagnostics;
using PlanForge.Geometry;
using PlanForge.Parts.Dowels;

namespace PlanForge.Parts.Formers;

/// <summary>Warns of wood too narrow to live: thin walls, and dowel holes too near an edge. Common practice, no source.</summary>
internal static class WallCheck
{
    private const double LeastWall = 3;

    // From the hole's centre, in dowel diameters.
    private const double LeastEdgeDistance = 1.5;

    // Distances are probed at points this near (mm) along the contours: a wall is not missed by more than a trace of it.
    private const double ProbeTolerance = 0.02;

    /// <summary>Adds warnings about a former's wood.</summary>
    public static void Check(FormerDescription former, FormerBlank blank, RiggedAirframe airframe, ICollection<Diagnostic> findings)
    {
        var text = airframe.Text;
        if (blank.Wood.Parts.Length > 1)
        {
            findings.Add(Diagnostic.Warning(former.At, $"former {former.Name} falls into {blank.Wood.Parts.Length} pieces"));
        }

        if (ThinnestWall(blank) is { } wall && wall < LeastWall)
        {
            findings.Add(Diagnostic.Warning(
                former.At,
                $"former {former.Name} has a wall of {text.CoarseWithUnit(wall)}: under {text.CoarseWithUnit(LeastWall)} breaks in handling"));
        }

        if (DowelAxis.Through(former, airframe) is { } axis)
        {
            var dowels = axis.Dowels;
            var centre = axis.HoleAt(former.Station + (former.Thickness / 2)).Centre;
            var distance = NearestEdge(blank, centre);
            if (distance < LeastEdgeDistance * dowels.Diameter)
            {
                findings.Add(Diagnostic.Warning(
                    dowels.At,
                    $"the dowel axis is {text.CoarseWithUnit(distance)} from an edge of former {former.Name}: at least 1.5 diameters, {text.CoarseWithUnit(LeastEdgeDistance * dowels.Diameter)}, keep the wood from splitting"));
            }
        }
    }

    // The least distance between two different contours of the wood.
    private static double? ThinnestWall(FormerBlank blank)
    {
        double? least = null;
        foreach (var part in blank.Wood.Parts)
        {
            for (var i = 0; i < part.Openings.Length; i++)
            {
                var probes = part.Openings[i].Flattened(ProbeTolerance);
                least = Least(least, probes, part.Outer);
                for (var j = 0; j < part.Openings.Length; j++)
                {
                    least = i == j ? least : Least(least, probes, part.Openings[j]);
                }
            }
        }

        return least;
    }

    private static double? Least(double? least, IEnumerable<Point2> probes, Path2 contour)
    {
        foreach (var probe in probes)
        {
            var distance = contour.DistanceTo(probe);
            least = least is { } best && best < distance ? best : distance;
        }

        return least;
    }

    // To the nearest edge that is not a dowel hole itself.
    private static double NearestEdge(FormerBlank blank, Point2 centre)
    {
        var nearest = double.PositiveInfinity;
        foreach (var part in blank.Wood.Parts)
        {
            foreach (var contour in (IEnumerable<Path2>)[part.Outer, .. part.Openings])
            {
                var isDowelHole = contour != part.Outer && blank.DowelHoles.Any(hole =>
                    Math.Abs(hole.SignedArea - contour.SignedArea) < 1e-6 && hole.Bounds.Centre.DistanceTo(contour.Bounds.Centre) < 1e-6);
                if (!isDowelHole)
                {
                    nearest = Math.Min(nearest, contour.DistanceTo(centre));
                }
            }
        }

        return nearest;
    }
}
