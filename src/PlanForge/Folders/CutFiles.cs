using System.Collections.Immutable;
using PlanForge.Designs;
using PlanForge.Drafting.Cutting;
using PlanForge.Output.Dxf;
using PlanForge.Output.Svg;

namespace PlanForge.Folders;

/// <summary>The files of a design for the cutter: one a part, and one a sheet of stock with its parts in place.</summary>
internal static class CutFiles
{
    private const string PartFolder = "parts/";
    private const string Millimetres = "_mm";

    /// <summary>All of them, parts before sheets.</summary>
    /// <param name="cuts">What goes to the cutter.</param>
    /// <param name="version">The version of DXF.</param>
    /// <param name="kept">What is kept from earlier runs.</param>
    /// <param name="stop">Asked between the files.</param>
    /// <exception cref="OperationCanceledException">The run was stopped.</exception>
    public static IEnumerable<OutputFile> Of(DesignCuts cuts, DxfVersion version, KeptFiles kept, CancellationToken stop)
    {
        var profile = cuts.Profile;
        foreach (var drawing in cuts.Drawings)
        {
            stop.ThrowIfCancellationRequested();
            var files = kept.Parts.Of((new(drawing), new(profile), version), () =>
            [
                new(DxfName(PartFolder + drawing.Name, version), DxfWriter.Write(drawing, profile, version)),
                new($"{PartFolder}{drawing.Name}.svg", SvgCutWriter.Write(drawing, profile)),
            ]);
            foreach (var file in files)
            {
                yield return file;
            }
        }

        foreach (var sheet in SheetsOf(cuts))
        {
            stop.ThrowIfCancellationRequested();
            var files = kept.Sheets.Of(new(sheet, profile, version), () =>
            [
                new(DxfName($"cut/{sheet.Name}", version), DxfWriter.Write(sheet, profile, version)),
                new($"cut/{sheet.Name}.svg", SvgCutWriter.Write(sheet, profile)),
            ]);
            foreach (var file in files)
            {
                yield return file;
            }
        }
    }

    /// <summary>The id of the part that a DXF file is of; null for a sheet of stock.</summary>
    public static string? PartOf(string path) => path.StartsWith(PartFolder, StringComparison.Ordinal)
        ? Path.GetFileNameWithoutExtension(path).Replace(Millimetres, "", StringComparison.Ordinal)
        : null;

    /// <summary>The nests with the drawings for the cutter on them.</summary>
    internal static IEnumerable<CutSheet> SheetsOf(DesignCuts cuts)
    {
        var byName = cuts.Drawings.ToDictionary(cut => cut.Name, StringComparer.Ordinal);
        foreach (var nest in cuts.Nests.Sheets)
        {
            var placed = ImmutableArray.CreateBuilder<PlacedCut>(nest.Parts.Length);
            foreach (var part in nest.Parts)
            {
                placed.Add(new(byName[part.Part.Id], part.Placement));
            }

            yield return new(FolderName.Of(nest.Title), nest.Length, nest.Width, placed.MoveToImmutable());
        }
    }

    // R12 cannot say its unit: the name does.
    private static string DxfName(string name, DxfVersion version) => version == DxfVersion.R12 ? $"{name}{Millimetres}.dxf" : $"{name}.dxf";
}
