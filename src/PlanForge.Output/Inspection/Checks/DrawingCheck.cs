using System.Collections.Immutable;
using PlanForge.Geometry;
using PlanForge.Output.Inspection.Reading;

namespace PlanForge.Output.Inspection.Checks;

/// <summary>All checks of what a file draws.</summary>
internal static class DrawingCheck
{
    // About the least a beam leaves standing in wood, mm; common practice, no source.
    private const double LeastFeature = 1;

    /// <summary>Runs them.</summary>
    /// <returns>What each layer holds.</returns>
    public static ImmutableArray<LayerSummary> Run(CutFile file, InspectionOptions options, FindingList findings)
    {
        var contours = Contours(file, findings);
        foreach (var contour in contours)
        {
            if (contour.Layer.IsCut)
            {
                SegmentCheck.Run(contour, findings);
            }
        }

        var smallHoles = NestingCheck.Run(contours.FindAll(contour => contour.IsClosed && contour.Layer.IsCut), options, findings);
        PairCheck.Run(contours, smallHoles, Math.Max(LeastFeature, (options.Thickness ?? 0) / 2), findings);
        SheetCheck.Run(file, contours, options, findings);
        return Summary(file, contours);
    }

    private static List<Contour> Contours(CutFile file, FindingList findings)
    {
        var shapes = new Dictionary<FileLayer, List<FileShape>>();
        foreach (var shape in file.Shapes)
        {
            if (!shapes.TryGetValue(shape.Layer, out var onLayer))
            {
                shapes.Add(shape.Layer, onLayer = []);
            }

            onLayer.Add(shape);
        }

        var contours = new List<Contour>();
        foreach (var layer in file.Layers)
        {
            if (shapes.TryGetValue(layer, out var onLayer))
            {
                ContourBuilder.Build(file, layer, onLayer, contours, findings);
            }
        }

        return contours;
    }

    private static ImmutableArray<LayerSummary> Summary(CutFile file, List<Contour> contours)
    {
        var sums = new Dictionary<FileLayer, LayerSummary>();
        foreach (var contour in contours)
        {
            var sum = sums.GetValueOrDefault(contour.Layer) ?? new(contour.Layer.Name, contour.Layer.IsCut, 0, 0, 0, Bounds2.Empty);
            sums[contour.Layer] = sum with
            {
                ContourCount = sum.ContourCount + (contour.IsClosed ? 1 : 0),
                OpenCount = sum.OpenCount + (contour.IsClosed ? 0 : 1),
                Length = sum.Length + contour.CutLength,
                Extents = sum.Extents.Joined(contour.Bounds),
            };
        }

        return [.. file.Layers.Where(sums.ContainsKey).Select(layer => sums[layer])];
    }
}
