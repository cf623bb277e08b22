using System.Collections.Immutable;
using System.Globalization;
using PlanForge.Designs;
using PlanForge.Output.Svg;
using PlanForge.Reports;

namespace PlanForge.Folders;

/// <summary>Turns a design into the files of its folder. The same design gives the same bytes.</summary>
internal static class DesignFiles
{
    /// <summary>All files, and what is wrong with those for the cutter.</summary>
    /// <param name="design">The design.</param>
    /// <param name="choice">How it is to be written.</param>
    /// <param name="kept">What is kept from earlier runs.</param>
    /// <param name="stop">Asked between the files.</param>
    /// <exception cref="OperationCanceledException">The run was stopped.</exception>
    public static DesignOutput Of(Design design, DrawChoice choice, KeptWork kept, CancellationToken stop)
    {
        // The PDFs take as long as all other files together.
        var plan = Task.Run(() => PlanFiles.Of(design, choice.Print, kept, stop), stop);
        var values = Task.Run(() => DrawnValues.Of(design.ListValues()), stop);
        var pictures = Task.Run(() => Pictures(design, kept.Files, stop), stop);
        var files = ImmutableArray.CreateBuilder<OutputFile>();
        files.AddRange(CutFiles.Of(design, choice.Dxf, kept.Files, stop));
        var faults = CutFileCheck.Of(files, NestedParts(design), design.Airframe.Cutter.HoldingTabs is not null, kept.Files);
        files.AddRange(pictures.GetAwaiter().GetResult());
        files.AddRange(plan.GetAwaiter().GetResult());
        var copies = SourceCopies.Of(design.Sources);
        files.AddRange(copies);
        files.Add(Manifest.Of(DrawnState.Of(design) with { Values = values.GetAwaiter().GetResult() }, new(copies[0].Path, design.With), files, kept.Files));
        return new(files.DrainToImmutable(), faults);
    }

    private static HashSet<string> NestedParts(Design design)
    {
        var parts = new HashSet<string>(StringComparer.Ordinal);
        foreach (var sheet in design.Nests.Sheets)
        {
            foreach (var part in sheet.Parts)
            {
                parts.Add(part.Part.Id);
            }
        }

        return parts;
    }

    private static ImmutableArray<OutputFile> Pictures(Design design, KeptFiles kept, CancellationToken stop)
    {
        var files = ImmutableArray.CreateBuilder<OutputFile>();
        var sheets = design.Sheets.Sheets;
        var digits = sheets.Length < 100 ? "D2" : "D3";
        foreach (var sheet in sheets)
        {
            stop.ThrowIfCancellationRequested();
            var path = $"sheets/sheet-{sheet.Number.ToString(digits, CultureInfo.InvariantCulture)}.svg";
            files.Add(kept.Pictures.Of((new(sheet), path), () => new(path, SvgWriter.Write(sheet))));
        }

        files.Add(new("report.json", Report.Of(design)));
        return files.DrainToImmutable();
    }
}
