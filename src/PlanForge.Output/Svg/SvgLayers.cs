using PlanForge.Drafting.Model;

namespace PlanForge.Output.Svg;

/// <summary>Ids of the layers of sheets.</summary>
internal static class SvgLayers
{
    /// <summary>How many layers there are.</summary>
    public const int Count = (int)Layer.Notes + 1;

    /// <summary>The id of a layer's group.</summary>
    public static ReadOnlySpan<byte> IdOf(Layer layer) => layer switch
    {
        Layer.Frame => "frame"u8,
        Layer.Reference => "reference"u8,
        Layer.CentreAndDatum => "centre-and-datum"u8,
        Layer.Score => "score"u8,
        Layer.Cut => "cut"u8,
        Layer.Dimensions => "dimensions"u8,
        Layer.Notes => "notes"u8,
        _ => throw new ArgumentOutOfRangeException(nameof(layer), layer, "A layer without an id."),
    };
}
