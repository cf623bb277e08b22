using NetTopologySuite.Geometries;
using NetTopologySuite.Geometries.Utilities;
using PlanForge.Geometry.Regions;

namespace PlanForge.Geometry.Tests;

/// <summary>Regions and paths as NetTopologySuite sees them: arcs flattened into chords.</summary>
internal static class Nts
{
    /// <summary>Greatest distance between arcs and chords, mm.</summary>
    public const double Sagitta = 1e-4;

    private static readonly GeometryFactory Factory = new();

    public static Polygon Polygon(Path2 outline) => Factory.CreatePolygon(Ring(outline));

    public static NetTopologySuite.Geometries.Geometry Of(Region2 region)
    {
        var polygons = new List<Polygon>();
        foreach (var part in region.Parts)
        {
            polygons.Add(Factory.CreatePolygon(Ring(part.Outer), [.. part.Openings.Select(Ring)]));
        }

        // Where arcs touch, their chords may cross.
        return GeometryFixer.Fix(Factory.CreateMultiPolygon([.. polygons]));
    }

    /// <summary>The area that flattening may add or take, mm²: two thirds of the sagitta along every arc, here of all boundaries.</summary>
    public static double AreaTolerance(params Region2[] regions) =>
        1e-6 + (Sagitta * regions.Sum(region => region.Contours.Sum(contour => contour.Length)));

    private static LinearRing Ring(Path2 path)
    {
        var coordinates = path.Flattened(Sagitta).Select(point => new Coordinate(point.X, point.Y)).ToList();
        coordinates.Add(coordinates[0].Copy());
        return Factory.CreateLinearRing([.. coordinates]);
    }
}
