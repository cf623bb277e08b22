using System.Collections.Immutable;

namespace PlanForge.Drafting.Cutting;

/// <summary>How one shop wants its cut files: the operations in the order of working, each with its layer and colours.</summary>
/// <param name="Operations">Each operation at most once; one that is missing is left out of the file.</param>
public sealed record CutProfile(ImmutableArray<OperationStyle> Operations)
{
    /// <summary>
    /// The project's own: engrave, score, cut openings, cut outlines; one layer and colour for all that is cut through.
    /// </summary>
    public static CutProfile Default { get; } = new(
    [
        new(CutOperation.Engrave, "ENGRAVE", 3, 0x00FF00),
        new(CutOperation.Score, "SCORE", 5, 0x0000FF),
        new(CutOperation.CutInside, "CUT", 7, 0x000000),
        new(CutOperation.CutOutside, "CUT", 7, 0x000000),
        new(CutOperation.Notes, "NOTES_NOT_CUT", 8, 0x808080),
    ]);

    /// <summary>The style of an operation, or null when the shop does not want it.</summary>
    public OperationStyle? Find(CutOperation operation)
    {
        foreach (var style in Operations)
        {
            if (style.Operation == operation)
            {
                return style;
            }
        }

        return null;
    }
}

/// <summary>Layer and colours of an operation.</summary>
public sealed record OperationStyle
{
    /// <summary>The greatest number of characters of a layer's name: what the oldest readers take.</summary>
    public const int LongestLayer = 31;

    /// <summary>The greatest colour index of DXF.</summary>
    public const int GreatestColour = 255;

    /// <summary>Names the layer of an operation.</summary>
    /// <param name="operation">The operation.</param>
    /// <param name="layer">1 to 31 ASCII letters, digits, hyphens and underscores: what every reader accepts.</param>
    /// <param name="colour">Colour index of DXF, 1 to 255.</param>
    /// <param name="stroke">Colour of the stroke in SVG, 0xRRGGBB.</param>
    /// <exception cref="ArgumentException">Another name or colour.</exception>
    public OperationStyle(CutOperation operation, string layer, int colour, int stroke)
    {
        ArgumentNullException.ThrowIfNull(layer);
        if (!IsLayerName(layer))
        {
            throw new ArgumentException($"'{layer}' is no layer name: 1 to 31 ASCII letters, digits, '-' and '_'.", nameof(layer));
        }

        ArgumentOutOfRangeException.ThrowIfLessThan(colour, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(colour, GreatestColour);
        ArgumentOutOfRangeException.ThrowIfNegative(stroke);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(stroke, 0xFFFFFF);
        (Operation, Layer, Colour, Stroke) = (operation, layer, colour, stroke);
    }

    /// <summary>The operation.</summary>
    public CutOperation Operation { get; }

    /// <summary>Name of its layer.</summary>
    public string Layer { get; }

    /// <summary>Colour index of the layer in DXF.</summary>
    public int Colour { get; }

    /// <summary>Colour of the stroke in SVG, 0xRRGGBB.</summary>
    public int Stroke { get; }

    /// <summary>True for a name that every reader accepts.</summary>
    public static bool IsLayerName(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        foreach (var character in name)
        {
            if (!char.IsAsciiLetterOrDigit(character) && character is not ('-' or '_'))
            {
                return false;
            }
        }

        return name.Length is > 0 and <= LongestLayer;
    }
}
