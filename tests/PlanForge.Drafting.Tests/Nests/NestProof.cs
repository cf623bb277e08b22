using NetTopologySuite.Geometries;
using PlanForge.Drafting.Nests;
using PlanForge.Geometry;
using PlanForge.Parts;

namespace PlanForge.Drafting.Tests.Nests;

/// <summary>What must hold of every nest, found by NetTopologySuite from the cut lines alone.</summary>
internal static class NestProof
{
    // Chords of arcs for the outside library, mm; the distances asked for allow ten times as much.
    private const double Tolerance = 0.001;

    // What a nest may fall short of a distance by, mm.
    private const double Slack = 0.01;

    private static readonly GeometryFactory Factory = new();

    /// <summary>A part's wood as a polygon: outlines without their openings.</summary>
    public static NetTopologySuite.Geometries.Geometry Wood(IEnumerable<Path2> contours)
    {
        NetTopologySuite.Geometries.Geometry wood = Factory.CreatePolygon();
        foreach (var contour in contours.OrderByDescending(contour => contour.SignedArea))
        {
            var points = contour.Flattened(Tolerance);
            var ring = Factory.CreatePolygon([.. points.Append(points[0]).Select(point => new Coordinate(point.X, point.Y))]);
            wood = contour.SignedArea > 0 ? wood.Union(ring) : wood.Difference(ring);
        }

        return wood;
    }

    /// <summary>No two parts overlap or come too near, all lie inside the margins, the grain lies along the sheet, nothing is mirrored.</summary>
    public static void HoldsFor(NestedSheet sheet, double clearance)
    {
        var wood = sheet.Parts.Select(part => Wood(part.Contours())).ToList();
        var room = new Envelope(
            sheet.Stock.Margin - Slack, sheet.Length - sheet.Stock.Margin + Slack,
            sheet.Stock.Margin - Slack, sheet.Width - sheet.Stock.Margin + Slack);
        for (var i = 0; i < wood.Count; i++)
        {
            Assert.True(room.Contains(wood[i].EnvelopeInternal), $"{sheet.Parts[i].Part.Id} leaves {sheet.Title}");
            for (var j = 0; j < i; j++)
            {
                var pair = $"{sheet.Parts[i].Part.Id} and {sheet.Parts[j].Part.Id} on {sheet.Title}";
                Assert.True(wood[i].Distance(wood[j]) >= clearance - Slack, $"{pair} are {wood[i].Distance(wood[j])} apart");

                // Parts that may touch may overlap by the rounding of their coordinates.
                var overlap = wood[i].Intersection(wood[j]).Area;
                Assert.True(clearance > Slack ? overlap == 0 : overlap < 1e-6 * wood[i].Length, $"{pair} overlap by {overlap} mm²");
            }
        }

        foreach (var part in sheet.Parts)
        {
            Assert.False(part.Placement.IsMirrored);
            if (part.Part.GrainAngle is { } grain)
            {
                Assert.Equal(0, Math.Sin(grain + part.Placement.Turn), 1e-9);
            }
        }

        // The figures of the sheet against the outside library's: its chords miss at most a sagitta along all edges.
        Assert.Equal(wood.Sum(piece => piece.Area), sheet.PartArea, Tolerance * wood.Sum(piece => piece.Length));
        Assert.Equal(wood.Max(piece => piece.EnvelopeInternal.MaxX) + sheet.Stock.Margin, sheet.UsedLength, Slack);
    }

    /// <summary>Every copy of every part is placed exactly once.</summary>
    public static void HasEveryCopyOnce(NestPlan plan, IEnumerable<Part> parts) => Assert.Equal(
        parts.SelectMany(part => Enumerable.Range(1, part.Quantity).Select(copy => (part.Id, copy))).Order(),
        plan.Sheets.SelectMany(sheet => sheet.Parts).Select(part => (part.Part.Id, part.Copy)).Order());

    /// <summary>A plan in words, all digits kept.</summary>
    public static string Written(NestPlan plan) => string.Join('\n', plan.Sheets.Select(sheet =>
        $"{sheet.Title}: {string.Join("; ", sheet.Parts.Select(part => $"{part.Part.Id} {part.Copy} {part.Placement}"))}"));
}
