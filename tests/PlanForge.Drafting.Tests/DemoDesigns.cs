using System.Collections.Immutable;
using PlanForge.Airframe;
using PlanForge.Airframe.Measuring;
using PlanForge.Airframe.Reading;
using PlanForge.Drafting.PartDrawings;
using PlanForge.Parts;
using PlanForge.Parts.Bench.Measuring;

namespace PlanForge.Drafting.Tests;

/// <summary>The example descriptions and all that is drawn of their parts.</summary>
internal static class DemoDesigns
{
    public static string[] Names { get; } =
        [.. Directory.GetFiles(Folder(new(AppContext.BaseDirectory)), "*.yaml").Select(path => Path.GetFileName(path)).Order(StringComparer.Ordinal)];

    /// <summary>A description, its units replaced where wanted.</summary>
    public static AirframeDescription Read(string name)
    {
        var folder = Folder(new(AppContext.BaseDirectory));
        var read = AirframeReader.Read(name, File.ReadAllText(Path.Combine(folder, name)), file => File.ReadAllText(Path.Combine(folder, file)));
        return read.Airframe ?? throw new InvalidOperationException($"{name}: {read.Diagnostics[0].Message}");
    }

    /// <summary>The text of a description.</summary>
    public static string Text(string name) => File.ReadAllText(Path.Combine(Folder(new(AppContext.BaseDirectory)), name));

    /// <summary>The text of a section file beside the descriptions.</summary>
    public static string? SectionFile(string file) => Text(file);

    public static ImmutableArray<Part> Parts(string name, DisplayUnit? unit = null, bool showsBoth = false)
    {
        var description = Read(name);
        return PartList.Of(description with
        {
            DisplayUnit = unit ?? description.DisplayUnit,
            Sheets = description.Sheets with { HasBothUnits = showsBoth },
        }).Parts;
    }

    /// <summary>Every part in every arrangement, upright and turned, in mm, in inches and in both.</summary>
    public static IEnumerable<PartDrawing> Drawings(string name)
    {
        foreach (var (unit, both) in new[] { (DisplayUnit.Millimetre, false), (DisplayUnit.Inch, false), (DisplayUnit.Millimetre, true), (DisplayUnit.Inch, true) })
        {
            foreach (var part in Parts(name, unit, both))
            {
                foreach (var arrangements in new[] { PartArrangements.Upright(part, unit, both), PartArrangements.Turned(part, unit, both) })
                {
                    foreach (var drawing in arrangements.Fitting((_, _) => true))
                    {
                        yield return drawing;
                    }
                }
            }
        }
    }

    /// <summary>The same of the correction sheet's parts after each round of the demo of measurements.</summary>
    public static IEnumerable<PartDrawing> Corrections()
    {
        var text = File.ReadAllText(Path.Combine(Folder(new(AppContext.BaseDirectory)), "bench", "oxbow-1420-measured.yaml"));
        foreach (var (unit, both) in new[] { (DisplayUnit.Millimetre, false), (DisplayUnit.Inch, false), (DisplayUnit.Millimetre, true), (DisplayUnit.Inch, true) })
        {
            var description = Read("oxbow-1420.yaml");
            description = description with { DisplayUnit = unit, Sheets = description.Sheets with { HasBothUnits = both } };
            var airframe = RiggedAirframe.Of(description, [])!;
            var measured = MeasurementReader.Read("m.yaml", text, unit).Measurements!;
            for (var count = 1; count <= measured.Rounds.Length; count++)
            {
                foreach (var part in CorrectionParts.Of(airframe, BenchResult.Of(airframe, measured with { Rounds = measured.Rounds[..count] })))
                {
                    foreach (var arrangements in new[] { PartArrangements.Upright(part, unit, both), PartArrangements.Turned(part, unit, both) })
                    {
                        foreach (var drawing in arrangements.Fitting((_, _) => true))
                        {
                            yield return drawing;
                        }
                    }
                }
            }
        }
    }

    private static string Folder(DirectoryInfo folder) => File.Exists(Path.Combine(folder.FullName, "PlanForge.sln"))
        ? Path.Combine(folder.FullName, "designs")
        : Folder(folder.Parent!);
}
