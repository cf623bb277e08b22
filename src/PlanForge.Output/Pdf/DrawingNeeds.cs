using System.Collections.Immutable;
using PlanForge.Drafting.Model;

namespace PlanForge.Output.Pdf;

/// <summary>What a drawing needs of the document it stands in. Immutable.</summary>
internal sealed class DrawingNeeds
{
    /// <summary>How many layers there are.</summary>
    public const int LayerCount = (int)Layer.Notes + 1;

    private DrawingNeeds(ImmutableArray<bool> layers, ImmutableArray<string> signs) => (Layers, Signs) = (layers, signs);

    /// <summary>For each layer whether it is used.</summary>
    public ImmutableArray<bool> Layers { get; }

    /// <summary>The signs its texts are lettered with, each once.</summary>
    public ImmutableArray<string> Signs { get; }

    /// <summary>Looks through a drawing.</summary>
    public static DrawingNeeds Of(Drawing drawing)
    {
        var layers = new bool[LayerCount];
        var signs = new HashSet<string>(StringComparer.Ordinal);
        var known = signs.GetAlternateLookup<ReadOnlySpan<char>>();
        foreach (var item in drawing.Items)
        {
            layers[(int)item.Layer] = true;
            if (item is not DrawingItem.Text text)
            {
                continue;
            }

            foreach (var (start, end) in Pdf.Signs.Of(text.Content))
            {
                known.Add(text.Content.AsSpan(start, end - start));
            }
        }

        return new([.. layers], [.. signs]);
    }
}
