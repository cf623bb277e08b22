using NetTopologySuite.Geometries;
using PlanForge.Airframe;
using PlanForge.Drafting.Conventions;
using PlanForge.Drafting.Cutting;
using PlanForge.Drafting.Model;
using PlanForge.Geometry;
using PlanForge.Parts;

namespace PlanForge.Drafting.Tests.Cutting;

/// <summary>Cut drawings made of contours, and what they hold.</summary>
internal static class Cuts
{
    /// <summary>Greatest distance between arcs and the chords that stand for them in NetTopologySuite, mm.</summary>
    public const double Sagitta = 1e-4;

    private static readonly GeometryFactory Factory = new();

    public static CutDrawing Drawing(params IEnumerable<Path2> contours) => new("test", new(
        [.. contours.Select(path => new DrawingItem.Stroke(Layer.Cut, path, LineConventions.StyleOf(LineUse.Cut)))]));

    /// <summary>The cut lines of a drawing.</summary>
    public static IReadOnlyList<Path2> Contours(this CutDrawing drawing) =>
        [.. drawing.Drawing.Items.OfType<DrawingItem.Stroke>().Where(stroke => stroke.Layer == Layer.Cut).Select(stroke => stroke.Path)];

    public static IReadOnlyList<Path2> Compensated(double kerf, params IEnumerable<Path2> contours)
    {
        var compensated = KerfCompensation.Of(Drawing(contours), kerf, out var lost);
        Assert.Null(lost);
        Assert.Equal(kerf, compensated!.Kerf);
        return compensated.Contours();
    }

    /// <summary>The area inside the outlines and outside the openings, mm².</summary>
    public static double Area(this IEnumerable<Path2> contours) => contours.Sum(contour => contour.SignedArea);

    public static double Length(this IEnumerable<Path2> contours) => contours.Sum(contour => contour.Length);

    /// <summary>The material as NetTopologySuite sees it, arcs as chords.</summary>
    public static NetTopologySuite.Geometries.Geometry Material(IReadOnlyList<Path2> contours)
    {
        NetTopologySuite.Geometries.Geometry material = Factory.CreatePolygon();
        foreach (var contour in contours)
        {
            var points = contour.Flattened(Sagitta).Select(point => new Coordinate(point.X, point.Y)).ToList();
            points.Add(points[0].Copy());
            material = material.SymmetricDifference(Factory.CreatePolygon([.. points]));
        }

        return material;
    }

    /// <summary>Every cut part of every example description, as it is prepared for a cutter.</summary>
    public static IEnumerable<(Part Part, CutDrawing Drawing)> OfDesigns(CutterDescription cutter)
    {
        foreach (var name in DemoDesigns.Names)
        {
            var parts = DemoDesigns.Parts(name).Where(part => part.Making == Making.Cut).ToList();
            var result = CutParts.Of(parts, cutter);
            Assert.Empty(result.Findings.Select(finding => finding.ToString()));
            Assert.Equal(parts.Count, result.Drawings.Length);
            for (var i = 0; i < parts.Count; i++)
            {
                yield return (parts[i], result.Drawings[i]);
            }
        }
    }
}
