namespace PlanForge.Output.Inspection.Reading.Dxf;

/// <summary>Checks the layers that are used against the table of layers.</summary>
internal static class DxfLayerTable
{
    /// <param name="file">The layers and which of them are used.</param>
    /// <param name="isNeeded">True when the file has a table of layers or must have one.</param>
    /// <param name="findings">Takes what is at fault.</param>
    public static void Check(CutFile file, bool isNeeded, FindingList findings)
    {
        var first = new Dictionary<FileLayer, TextPlace>();
        foreach (var shape in file.Shapes)
        {
            first.TryAdd(shape.Layer, shape.At);
        }

        foreach (var layer in file.Layers)
        {
            if (!first.TryGetValue(layer, out var at))
            {
                continue;
            }

            if (isNeeded && !layer.IsListed && layer.Name != "0")
            {
                findings.Warning(FindingCode.LayerMissing, at, $"layer {Words.Quote(layer.Name)} is used here but not in the table of layers; some programs drop its lines");
            }

            if (layer.IsOff && !layer.IsCut)
            {
                findings.Note(FindingCode.LayerOff, layer.At, $"layer {Words.Quote(layer.Name)} is off, and named as one that is not cut");
            }
            else if (layer.IsOff)
            {
                findings.Warning(FindingCode.LayerOff, layer.At, $"layer {Words.Quote(layer.Name)} has lines but is off or frozen; they may be cut or not");
            }

            if (!System.Text.Ascii.IsValid(layer.Name))
            {
                findings.Warning(FindingCode.LayerName, layer.IsListed ? layer.At : at, $"layer {Words.Quote(layer.Name)}: not every program reads letters beyond ASCII; use plain ones");
            }
        }
    }
}
