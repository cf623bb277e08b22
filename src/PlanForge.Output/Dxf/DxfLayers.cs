using PlanForge.Drafting.Cutting;

namespace PlanForge.Output.Dxf;

/// <summary>A layer of a file.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Colour">Its colour index.</param>
/// <param name="IsWork">False for the notes: they are frozen and not plotted, so that no machine takes them for work.</param>
internal sealed record DxfLayer(string Name, int Colour, bool IsWork)
{
    // Flag of a frozen layer (shared/check-values.md section 10, layer record).
    private const int Frozen = 1;

    /// <summary>The layer's flags, group 70.</summary>
    public int Flags => IsWork ? 0 : Frozen;
}

/// <summary>Which layers a file needs.</summary>
internal static class DxfLayers
{
    /// <summary>The layers that are drawn on, in the order of working.</summary>
    public static List<DxfLayer> Used(CutContours contours, CutProfile profile)
    {
        var layers = new List<DxfLayer>();
        foreach (var style in profile.Operations)
        {
            var isNotes = style.Operation == CutOperation.Notes;
            if ((isNotes ? HasNotes(contours) : IsDone(contours, style.Operation)) && !layers.Exists(layer => layer.Name == style.Layer))
            {
                layers.Add(new(style.Layer, style.Colour, !isNotes));
            }
        }

        return layers;
    }

    private static bool HasNotes(CutContours contours) => contours.Stock is not null || !contours.Notes.IsEmpty;

    private static bool IsDone(CutContours contours, CutOperation operation)
    {
        foreach (var part in contours.Parts)
        {
            foreach (var step in part.Steps)
            {
                if (step.Operation == operation)
                {
                    return true;
                }
            }
        }

        return false;
    }
}
