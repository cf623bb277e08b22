using PlanForge.Drafting.Model;

namespace PlanForge.Output.Svg;

/// <summary>Ids and colours of the layers in SVG files; the colours are those of the DXF layers.</summary>
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

    /// <summary>The colour by which a cutting machine's program tells the layers of a cut file apart.</summary>
    public static ReadOnlySpan<byte> ColourOf(Layer layer) => layer switch
    {
        Layer.Frame => "#808080"u8,
        Layer.Reference => "#c0c0c0"u8,
        Layer.CentreAndDatum => "#ff00ff"u8,
        Layer.Score => "#0000ff"u8,
        Layer.Cut => "#000000"u8,
        Layer.Dimensions => "#00ff00"u8,
        Layer.Notes => "#00ffff"u8,
        _ => throw new ArgumentOutOfRangeException(nameof(layer), layer, "A layer without a colour."),
    };
}
