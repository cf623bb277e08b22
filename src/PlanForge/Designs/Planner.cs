using System.Collections.Immutable;
using PlanForge.Airframe;
using PlanForge.Airframe.Diagnostics;
using PlanForge.Airframe.Reading;
using PlanForge.Drafting.Cutting;
using PlanForge.Drafting.Nests;
using PlanForge.Drafting.Sheets;
using PlanForge.Drafting.Tiles;
using PlanForge.Parts;

namespace PlanForge.Designs;

/// <summary>Carries a description through the stages, from its text to drawings; writes nothing.</summary>
internal static class Planner
{
    /// <summary>Plans one description.</summary>
    /// <param name="path">The description, as the user gave it.</param>
    /// <param name="overrides">Other values for some of its parameters.</param>
    /// <param name="effort">How many arrangements of each stock's parts are tried.</param>
    /// <param name="stop">Asked between the stages.</param>
    /// <exception cref="IOException">The description or a section file cannot be read.</exception>
    /// <exception cref="UnauthorizedAccessException">The description or a section file may not be read.</exception>
    /// <exception cref="OperationCanceledException">The run was stopped.</exception>
    public static PlanningResult Plan(string path, ParameterOverrides overrides, int effort, CancellationToken stop)
    {
        var texts = new Dictionary<string, string>(StringComparer.Ordinal);
        var sources = ImmutableArray.CreateBuilder<SourceFile>();
        var folder = FolderOf(path);
        var read = Read(path, overrides, texts, sources);
        if (read.Airframe is not { } airframe)
        {
            return new(null, read.Diagnostics, texts);
        }

        stop.ThrowIfCancellationRequested();
        var parts = PartList.Of(airframe);
        var findings = read.Diagnostics.AddRange(parts.Findings);
        if (parts.Findings.Any(finding => finding.Severity == Severity.Error))
        {
            return new(null, findings, texts);
        }

        stop.ThrowIfCancellationRequested();
        var (profile, profileFindings) = ReadProfile(folder, airframe.Cutter, texts, sources);
        var cutting = Task.Run(() => CutParts.Of(parts.Parts, airframe.Cutter), stop);
        var nests = Nest(airframe, parts, effort);
        findings = findings.AddRange(nests.Findings);
        var plan = PlanSheets.Draw(PlanOptions.Of(airframe, ToolVersion.Producer), parts, nests.Sheets);
        findings = findings.AddRange(plan.Findings).AddRange(TileFaults(airframe));
        var cuts = cutting.GetAwaiter().GetResult();
        findings = findings.AddRange(profileFindings).AddRange(cuts.Findings);
        if (findings.Any(finding => finding.Severity == Severity.Error))
        {
            return new(null, findings, texts);
        }

        var design = new Design(Path.GetFileName(path), airframe, parts.Parts, parts.AirframeFigures, plan.Sheets, findings)
        {
            Sources = sources.DrainToImmutable(),
            ListValues = read.ListValues,
            Cuts = cuts.Drawings,
            CutProfile = profile ?? CutProfile.Default,
            Nests = nests,
        };
        return new(design, findings, texts);
    }

    /// <summary>The parts on their stock, as far apart as the widest kerf asks for over and above the spacing.</summary>
    private static NestPlan Nest(AirframeDescription airframe, PartList parts, int effort)
    {
        var kerf = 0.0;
        foreach (var part in parts.Parts)
        {
            if (part.Making == Making.Cut && airframe.Cutter.KerfFor(part.Material, part.Thickness) is { } own)
            {
                kerf = Math.Max(kerf, own.Width);
            }
        }

        return NestPlan.Of(parts.Parts, airframe.Stock, airframe.DisplayUnit, new() { Effort = effort, Kerf = kerf });
    }

    /// <summary>Reads a description with its section files; builds nothing.</summary>
    /// <param name="path">The description, as the user gave it.</param>
    /// <param name="overrides">Other values for some of its parameters.</param>
    /// <param name="texts">Takes the text of each file that was read, by its name in the findings.</param>
    /// <param name="sources">Takes the files.</param>
    /// <exception cref="IOException">The description or a section file cannot be read.</exception>
    /// <exception cref="UnauthorizedAccessException">The description or a section file may not be read.</exception>
    public static ReadResult Read(
        string path, ParameterOverrides overrides, Dictionary<string, string> texts, ImmutableArray<SourceFile>.Builder sources)
    {
        var text = TextFile.Read(path, out var bytes, out var fault);
        texts[path] = text;
        texts[overrides.Option] = overrides.Text;
        if (fault is not null)
        {
            return new(null, [fault]);
        }

        var folder = FolderOf(path);
        sources.Add(new(Path.GetFileName(path), bytes));
        return AirframeReader.Read(path, text, name => ReadSection(folder, name, texts, sources), overrides);
    }

    /// <summary>The folder of a file as the user gave it, with its last separator; empty for a bare name.</summary>
    private static string FolderOf(string path) => path[..(path.LastIndexOfAny(['/', Path.DirectorySeparatorChar]) + 1)];

    private static IEnumerable<Diagnostic> TileFaults(AirframeDescription airframe)
    {
        var names = new HashSet<string>(StringComparer.OrdinalIgnoreCase);
        foreach (var tile in airframe.Sheets.Tiles)
        {
            if (!names.Add(tile.Paper.Name))
            {
                yield return Diagnostic.Error(tile.At, $"tiles on `{tile.Paper.Name}` are asked for twice");
            }

            if (TileOptions.Of(tile).Fault() is { } fault)
            {
                yield return Diagnostic.Error(tile.At, fault);
            }
        }
    }

    private static (CutProfile? Profile, ImmutableArray<Diagnostic> Findings) ReadProfile(
        string folder, CutterDescription cutter, Dictionary<string, string> texts, ImmutableArray<SourceFile>.Builder sources)
    {
        if (cutter.Profile is not { } profile)
        {
            return (CutProfile.Default, []);
        }

        return ReadSection(folder, profile.File, texts, sources) is { } text
            ? CutProfileFile.Read(folder + profile.File, text)
            : (null, [Diagnostic.Error(profile.At, $"there is no file `{profile.File}` beside the description")]);
    }

    private static string? ReadSection(
        string folder, string name, Dictionary<string, string> texts, ImmutableArray<SourceFile>.Builder sources)
    {
        var path = folder + name;
        if (!File.Exists(path))
        {
            return null;
        }

        // Old section files have titles in whatever encoding their author used; the coordinates are ASCII in all of them.
        texts[path] = TextFile.Read(path, out var bytes, out _);
        sources.Add(new(name, bytes));
        return texts[path];
    }
}
