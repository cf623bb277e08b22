using PlanForge.Drafting.Model;
using PlanForge.Output.Bytes;

namespace PlanForge.Output.Pdf;

/// <summary>The layers of a document as optional content groups, which viewers list and switch (ISO 32000-1, 8.11).</summary>
internal sealed class LayerGroups
{
    private readonly int[] _numbers = new int[DrawingNeeds.LayerCount];

    /// <summary>Reserves a group for each layer that some drawing uses, in drawing order.</summary>
    public LayerGroups(PdfFile file, IEnumerable<DrawingNeeds> drawings)
    {
        var used = UsedBy(drawings);
        for (var layer = 0; layer < _numbers.Length; layer++)
        {
            _numbers[layer] = used[layer] ? file.Reserve() : 0;
        }
    }

    private IEnumerable<int> Used => _numbers.Where(number => number != 0);

    /// <summary>Appends the name by which content streams refer to a layer.</summary>
    public static ByteText AppendResourceName(ByteText text, Layer layer) => text.Append("/Layer"u8).Append((int)layer);

    /// <summary>Writes the groups.</summary>
    public void Write(PdfFile file)
    {
        for (var layer = 0; layer < _numbers.Length; layer++)
        {
            if (_numbers[layer] != 0)
            {
                file.Begin(_numbers[layer]).Append("<< /Type /OCG /Name "u8).AppendString(NameOf((Layer)layer)).Append(" >>"u8);
                file.End();
            }
        }
    }

    /// <summary>Appends the catalog's entry: all groups, all visible, listed in drawing order.</summary>
    public void AppendCatalogEntry(ByteText text) => text
        .Append("/OCProperties << /OCGs "u8).AppendReferences(Used)
        .Append(" /D << /Name (Layers) /BaseState /ON /Order "u8).AppendReferences(Used).Append(" >> >>"u8);

    /// <summary>Appends a resource entry: the groups of the layers that a drawing uses.</summary>
    public void AppendProperties(ByteText text, IEnumerable<DrawingNeeds> drawings)
    {
        var used = UsedBy(drawings);
        text.Append("/Properties <<"u8);
        for (var layer = 0; layer < used.Length; layer++)
        {
            if (used[layer])
            {
                AppendResourceName(text.Append(" "u8), (Layer)layer).Append(" "u8).AppendReference(_numbers[layer]);
            }
        }

        text.Append(" >>"u8);
    }

    private static bool[] UsedBy(IEnumerable<DrawingNeeds> drawings)
    {
        var used = new bool[DrawingNeeds.LayerCount];
        foreach (var drawing in drawings)
        {
            for (var layer = 0; layer < used.Length; layer++)
            {
                used[layer] |= drawing.Layers[layer];
            }
        }

        return used;
    }

    private static string NameOf(Layer layer) => layer switch
    {
        Layer.Frame => "Frame",
        Layer.Reference => "Reference",
        Layer.CentreAndDatum => "Centre lines and datum",
        Layer.Score => "Score",
        Layer.Cut => "Cut",
        Layer.Dimensions => "Dimensions",
        Layer.Notes => "Notes",
        _ => throw new ArgumentOutOfRangeException(nameof(layer), layer, "A layer without a name."),
    };
}
