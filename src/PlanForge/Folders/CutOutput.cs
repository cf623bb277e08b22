using System.Collections.Immutable;
using PlanForge.Designs;

namespace PlanForge.Folders;

/// <summary>The files of a design for the cutter, looked through before they are written.</summary>
/// <param name="Files">The files, parts before sheets of stock.</param>
/// <param name="Faults">What the inspection found: nothing, unless the program is at fault.</param>
internal sealed record CutOutput(ImmutableArray<OutputFile> Files, ImmutableArray<string> Faults)
{
    /// <summary>Makes and inspects the files.</summary>
    /// <param name="cuts">What goes to the cutter.</param>
    /// <param name="choice">How it is to be written.</param>
    /// <param name="kept">What is kept from earlier runs.</param>
    /// <param name="stop">Asked between the files.</param>
    /// <exception cref="OperationCanceledException">The run was stopped.</exception>
    public static CutOutput Of(DesignCuts cuts, DrawChoice choice, KeptFiles kept, CancellationToken stop)
    {
        ImmutableArray<OutputFile> files = [.. CutFiles.Of(cuts, choice.Dxf, kept, stop)];
        return new(files, CutFileCheck.Of(files, NestedParts(cuts), cuts.AreHeld, kept));
    }

    private static HashSet<string> NestedParts(DesignCuts cuts)
    {
        var parts = new HashSet<string>(StringComparer.Ordinal);
        foreach (var sheet in cuts.Nests.Sheets)
        {
            foreach (var part in sheet.Parts)
            {
                parts.Add(part.Part.Id);
            }
        }

        return parts;
    }
}
