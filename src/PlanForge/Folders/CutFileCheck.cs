using System.Collections.Immutable;
using PlanForge.Output.Inspection;

namespace PlanForge.Folders;

/// <summary>Looks through the cut files of a run before they are written, as <c>inspect</c> does with files on the disk.</summary>
internal static class CutFileCheck
{
    /// <summary>The faults of the DXF files; none for sound ones. The SVG files have the same lines, and a part on stock those of its sheet.</summary>
    /// <param name="files">The files.</param>
    /// <param name="nested">Ids of the parts that lie on sheets of stock.</param>
    /// <param name="isHeld">True when parts are held in their sheet: then contours are open on purpose.</param>
    /// <param name="kept">What is kept from earlier runs.</param>
    public static ImmutableArray<string> Of(IEnumerable<OutputFile> files, IReadOnlySet<string> nested, bool isHeld, KeptFiles kept)
    {
        var faults = ImmutableArray.CreateBuilder<string>();
        var looking = files.Where(file => IsLookedThrough(file, nested)).Select(file => (file, Found: Task.Run(() => kept.Faults.Of(new(file), () => FaultsOf(file))))).ToList();
        foreach (var (file, found) in looking)
        {
            foreach (var finding in found.GetAwaiter().GetResult())
            {
                if (!(isHeld && finding.Code is (FindingCode.OpenContour or FindingCode.Gap)))
                {
                    faults.Add(finding.In(file.Path));
                }
            }
        }

        return faults.ToImmutable();
    }

    private static bool IsLookedThrough(OutputFile file, IReadOnlySet<string> nested) =>
        file.Path.EndsWith(".dxf", StringComparison.Ordinal) && !(CutFiles.PartOf(file.Path) is { } part && nested.Contains(part));

    private static ImmutableArray<Finding> FaultsOf(OutputFile file) =>
    [
        .. CutFileInspector.Inspect(file.Path, file.Content.ToArray(), new()).Findings.Where(finding => finding.Severity == FindingSeverity.Fault),
    ];
}
