using PlanForge.Drafting.Model;

namespace PlanForge.Output.Dxf;

/// <summary>Which layers a file needs.</summary>
internal static class DxfLayers
{
    /// <summary>The layers that are drawn on, in drawing order.</summary>
    public static IReadOnlyList<DxfLayer> Used(CutContours contours, DxfOptions options) =>
        [.. contours.Paths.Select(path => path.Layer).Distinct().Order().Select(layer => Find(options, layer))];

    /// <summary>The name and colour of a layer.</summary>
    /// <exception cref="ArgumentException">The options name no such layer.</exception>
    public static DxfLayer Find(DxfOptions options, Layer layer)
    {
        foreach (var named in options.Layers)
        {
            if (named.Layer == layer)
            {
                return named;
            }
        }

        throw new ArgumentException($"No name is given for the layer {layer}.", nameof(options));
    }
}
