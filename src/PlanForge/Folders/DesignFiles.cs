using System.Collections.Immutable;
using System.Globalization;
using PlanForge.Designs;
using PlanForge.Output.Svg;
using PlanForge.Reports;

namespace PlanForge.Folders;

/// <summary>Turns a design into the files of its folder. The same design gives the same bytes.</summary>
/// <param name="choice">How it is to be written.</param>
/// <param name="kept">What is kept from earlier runs.</param>
/// <param name="stop">Asked between the files.</param>
internal sealed class DesignFiles(DrawChoice choice, KeptWork kept, CancellationToken stop) : IDesignWork<DesignOutput>
{
    private Task<CutOutput>? _cutting;

    public void CutsKnown(DesignCuts cuts) => _cutting = Task.Run(() => CutOutput.Of(cuts, choice, kept.Files, stop), stop);

    /// <summary>All files, and what is wrong with those for the cutter.</summary>
    public DesignOutput Finish(Design design)
    {
        // The PDFs take as long as all other files together.
        var plan = Task.Run(() => PlanFiles.Of(design, choice.Print, kept, stop), stop);
        var values = Task.Run(() => DrawnValues.Of(design.ListValues()), stop);
        var files = ImmutableArray.CreateBuilder<OutputFile>();
        var pictures = Pictures(design, kept.Files, stop);
        var cut = _cutting!.GetAwaiter().GetResult();
        files.AddRange(cut.Files);
        files.AddRange(pictures);
        files.AddRange(plan.GetAwaiter().GetResult());
        var copies = SourceCopies.Of(design.Sources);
        files.AddRange(copies);
        var state = DrawnState.Of(design) with { Values = values.GetAwaiter().GetResult() };
        var description = new DrawnDescription(copies[0].Path, design.With);
        var manifest = new Manifest([.. files.Select(file => file.Path)], description, state);
        files.Add(Manifest.Of(state, description, files, kept.Files));
        return new(files.DrainToImmutable(), manifest, cut.Faults);
    }

    private static ImmutableArray<OutputFile> Pictures(Design design, KeptFiles kept, CancellationToken stop)
    {
        var files = ImmutableArray.CreateBuilder<OutputFile>();
        var sheets = design.Sheets.Sheets;
        var letters = new LetterStamps();
        var digits = sheets.Length < 100 ? "D2" : "D3";
        foreach (var sheet in sheets)
        {
            stop.ThrowIfCancellationRequested();
            var path = $"sheets/sheet-{sheet.Number.ToString(digits, CultureInfo.InvariantCulture)}.svg";
            files.Add(kept.Pictures.Of((new(sheet), path), () => new(path, SvgWriter.Write(sheet, letters))));
        }

        files.Add(new("report.json", Report.Of(design, kept)));
        return files.DrainToImmutable();
    }
}
