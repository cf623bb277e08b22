using System.Collections.Immutable;
using PlanForge.Drafting.Model;

namespace PlanForge.Output.Dxf;

/// <summary>How the layers are called and coloured in a DXF file: shops differ, so a user may give their own.</summary>
/// <param name="Layers">One entry for each layer that is drawn on.</param>
public sealed record DxfOptions(ImmutableArray<DxfLayer> Layers)
{
    /// <summary>The project's own names and colours.</summary>
    public static DxfOptions Default { get; } = new(
    [
        new(Layer.Frame, "FRAME", 8),
        new(Layer.Reference, "REFERENCE", 9),
        new(Layer.CentreAndDatum, "CENTRE", 6),
        new(Layer.Score, "SCORE", 5),
        new(Layer.Cut, "CUT", 7),
        new(Layer.Dimensions, "DIMENSIONS", 3),
        new(Layer.Notes, "NOTES", 4),
    ]);
}

/// <summary>The name and colour of a layer in a DXF file.</summary>
public sealed record DxfLayer
{
    /// <summary>Names a layer.</summary>
    /// <param name="layer">The layer of the drawing.</param>
    /// <param name="name">1 to 31 ASCII letters, digits, hyphens and underscores: what every reader accepts.</param>
    /// <param name="colour">AutoCAD colour index, 1 to 255.</param>
    /// <exception cref="ArgumentException">Another name or colour.</exception>
    public DxfLayer(Layer layer, string name, int colour)
    {
        ArgumentNullException.ThrowIfNull(name);
        if (name.Length is 0 or > 31 || name.Any(character => !(char.IsAsciiLetterOrDigit(character) || character is '-' or '_')))
        {
            throw new ArgumentException($"'{name}' is no layer name: 1 to 31 ASCII letters, digits, '-' and '_'.", nameof(name));
        }

        ArgumentOutOfRangeException.ThrowIfLessThan(colour, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(colour, 255);
        (Layer, Name, Colour) = (layer, name, colour);
    }

    /// <summary>The layer of the drawing.</summary>
    public Layer Layer { get; }

    /// <summary>Its name in the file.</summary>
    public string Name { get; }

    /// <summary>Its colour index.</summary>
    public int Colour { get; }
}
