using System.Collections.Immutable;
using System.Globalization;
using PlanForge.Drafting.PartDrawings;
using PlanForge.Designs;
using PlanForge.Output.Dxf;
using PlanForge.Output.Pdf;
using PlanForge.Output.Svg;
using PlanForge.Parts;
using PlanForge.Reports;

namespace PlanForge.Folders;

/// <summary>Turns a design into the files of its folder. The same design gives the same bytes.</summary>
internal static class DesignFiles
{
    /// <summary>All files, the manifest last.</summary>
    /// <param name="design">The design.</param>
    /// <param name="stop">Asked between the files.</param>
    /// <exception cref="OperationCanceledException">The run was stopped.</exception>
    public static ImmutableArray<OutputFile> Of(Design design, CancellationToken stop)
    {
        var files = ImmutableArray.CreateBuilder<OutputFile>();
        AddSheets(design, files, stop);
        foreach (var part in design.Parts)
        {
            if (part.Making == Making.Cut)
            {
                stop.ThrowIfCancellationRequested();
                var drawing = CutDrawings.Of(part);
                files.Add(new($"parts/{part.Id}.dxf", DxfWriter.Write(drawing, DxfOptions.Default)));
                files.Add(new($"parts/{part.Id}.svg", SvgWriter.WriteCut(drawing)));
            }
        }

        files.Add(new("report.json", Report.Of(design)));
        files.Add(Manifest.Of(design.Airframe.Name, files));
        return files.DrainToImmutable();
    }

    private static void AddSheets(Design design, ImmutableArray<OutputFile>.Builder files, CancellationToken stop)
    {
        var sheets = design.Sheets.Sheets;
        if (sheets.IsEmpty)
        {
            return;
        }

        files.Add(new("plan.pdf", PdfWriter.Write(design.Sheets, new($"PlanForge {ToolVersion.Text}"))));
        var digits = "D" + Math.Max(2, sheets.Length.ToString(CultureInfo.InvariantCulture).Length).ToString(CultureInfo.InvariantCulture);
        foreach (var sheet in sheets)
        {
            stop.ThrowIfCancellationRequested();
            files.Add(new($"sheets/sheet-{sheet.Number.ToString(digits, CultureInfo.InvariantCulture)}.svg", SvgWriter.Write(sheet)));
        }
    }
}
