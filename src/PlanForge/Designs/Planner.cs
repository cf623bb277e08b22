using System.Collections.Immutable;
using PlanForge.Airframe;
using PlanForge.Airframe.Diagnostics;
using PlanForge.Airframe.Reading;
using PlanForge.Drafting.Cutting;
using PlanForge.Drafting.Nests;
using PlanForge.Drafting.Sheets;
using PlanForge.Drafting.Tiles;
using PlanForge.Parts;
using PlanForge.Parts.Comparison;

namespace PlanForge.Designs;

/// <summary>Carries a description through the stages, from its text to drawings; writes nothing.</summary>
internal static class Planner
{
    /// <summary>Plans one description once.</summary>
    /// <param name="path">The description, as the user gave it.</param>
    /// <param name="overrides">Other values for some of its parameters.</param>
    /// <exception cref="IOException">The description or a section file cannot be read.</exception>
    /// <exception cref="UnauthorizedAccessException">The description or a section file may not be read.</exception>
    public static PlanningResult Plan(string path, ParameterOverrides overrides) => Plan(path, overrides, NestOptions.UsualEffort, new(), CancellationToken.None);

    /// <summary>Plans one description, as far as the work is not kept from an earlier run.</summary>
    /// <param name="path">The description, as the user gave it.</param>
    /// <param name="overrides">Other values for some of its parameters.</param>
    /// <param name="effort">How many arrangements of each stock's parts are tried.</param>
    /// <param name="kept">What is kept from earlier runs.</param>
    /// <param name="stop">Asked between the stages.</param>
    /// <param name="cutsKnown">Told what goes to the cutter before the sheets are drawn, where nothing is wrong with it; null for nobody.</param>
    /// <exception cref="IOException">The description or a section file cannot be read.</exception>
    /// <exception cref="UnauthorizedAccessException">The description or a section file may not be read.</exception>
    /// <exception cref="OperationCanceledException">The run was stopped.</exception>
    public static PlanningResult Plan(string path, ParameterOverrides overrides, int effort, KeptWork kept, CancellationToken stop, Action<DesignCuts>? cutsKnown = null)
    {
        var texts = new Dictionary<string, string>(StringComparer.Ordinal);
        var sources = ImmutableArray.CreateBuilder<SourceFile>();
        var folder = FolderOf(path);
        var missing = new List<string>();
        var read = Read(path, texts, sources, missing, overrides);
        if (read.Airframe is not { } airframe)
        {
            return Failed(read.Diagnostics);
        }

        stop.ThrowIfCancellationRequested();
        var before = airframe.AsBuilt is { } asBuilt ? Task.Run(() => PartList.Of(asBuilt.Designed, read.ListValues, kept.PartsAsDesigned), stop) : null;
        var parts = PartList.Of(airframe, read.ListValues, kept.Parts);
        var findings = read.Diagnostics.AddRange(parts.Findings);
        if (HasErrors(parts.Findings))
        {
            return Failed(findings);
        }

        stop.ThrowIfCancellationRequested();
        var moving = before?.ContinueWith(designed => Moved(designed.GetAwaiter().GetResult(), parts), TaskScheduler.Default);
        var (profile, profileFindings) = ReadProfile(folder, airframe.Cutter, texts, sources, missing, kept);
        var nesting = Task.Run(() => Nest(airframe, parts, effort, kept), stop);
        var cutting = Task.Run(() => Cut(), stop);
        var plan = PlanSheets.Draw(
            PlanOptions.Of(airframe, ToolVersion.Producer), parts, () => nesting.GetAwaiter().GetResult().Sheets, kept.Drawings);
        var nests = nesting.GetAwaiter().GetResult();
        findings = findings.AddRange(nests.Findings).AddRange(plan.Findings).AddRange(TileFaults(airframe));
        var (cuts, cutFindings) = cutting.GetAwaiter().GetResult();
        findings = findings.AddRange(profileFindings).AddRange(cutFindings);
        var moved = moving?.GetAwaiter().GetResult();
        if (before is not null && moved is null)
        {
            findings = findings.Add(Diagnostic.Warning(
                airframe.AsBuilt!.Measurements[0].At, "without what was measured the design cannot be drawn, so that it cannot be told what moved"));
        }

        if (HasErrors(findings))
        {
            return Failed(findings);
        }

        var design = new Design(Path.GetFileName(path), airframe, parts.Parts, parts.AirframeFigures, plan.Sheets, findings)
        {
            Sources = sources.DrainToImmutable(),
            With = overrides.Given,
            ListValues = read.ListValues,
            Cuts = cuts,
            Moved = moved,
        };
        return new(design, findings, texts);

        (DesignCuts Cuts, ImmutableArray<Diagnostic> Findings) Cut()
        {
            var drawn = CutParts.Of(parts.Parts, airframe.Cutter, kept.Drawings);
            var laid = nesting.GetAwaiter().GetResult();
            var cuts = new DesignCuts(drawn.Drawings, laid, profile ?? CutProfile.Default, airframe.Cutter.HoldingTabs is not null);
            if (!HasErrors([.. profileFindings, .. drawn.Findings, .. laid.Findings]))
            {
                cutsKnown?.Invoke(cuts);
            }

            return (cuts, drawn.Findings);
        }

        PlanningResult Failed(ImmutableArray<Diagnostic> all) => new(null, all, texts) { Missing = [.. missing] };
    }

    private static bool HasErrors(ImmutableArray<Diagnostic> findings) => findings.Any(finding => finding.Severity == Severity.Error);

    private static AsBuiltChanges? Moved(PartList designed, PartList built) =>
        HasErrors(designed.Findings) ? null : AsBuiltChanges.Between(designed, built);

    /// <summary>The parts on their stock, as far apart as the widest kerf asks for over and above the spacing.</summary>
    private static NestPlan Nest(AirframeDescription airframe, PartList parts, int effort, KeptWork kept)
    {
        var kerf = 0.0;
        foreach (var part in parts.Parts)
        {
            if (part.Making == Making.Cut && airframe.Cutter.KerfFor(part.Material, part.Thickness) is { } own)
            {
                kerf = Math.Max(kerf, own.Width);
            }
        }

        return NestPlan.Of(parts.Parts, airframe.Stock, airframe.DisplayUnit, new() { Effort = effort, Kerf = kerf }, kept.Drawings);
    }

    /// <summary>Reads a description with its section files; builds nothing.</summary>
    /// <param name="path">The description, as the user gave it.</param>
    /// <param name="texts">Takes the text of each file that was read and of the overrides, by its name in the findings.</param>
    /// <param name="sources">Takes the files.</param>
    /// <param name="missing">Takes the paths of files that are not there.</param>
    /// <param name="overrides">Other values for parameters; null for none.</param>
    /// <exception cref="IOException">The description or a section file cannot be read.</exception>
    /// <exception cref="UnauthorizedAccessException">The description or a section file may not be read.</exception>
    public static ReadResult Read(
        string path,
        Dictionary<string, string> texts,
        ImmutableArray<SourceFile>.Builder sources,
        ICollection<string>? missing = null,
        ParameterOverrides? overrides = null)
    {
        if (overrides is { Given.IsEmpty: false })
        {
            texts[overrides.Option] = overrides.Text;
        }

        var text = TextFile.Read(path, out var bytes, out var fault);
        texts[path] = text;
        if (fault is not null)
        {
            return new(null, [fault]);
        }

        var folder = FolderOf(path);
        sources.Add(new(Path.GetFileName(path), bytes));
        return AirframeReader.Read(path, text, name => ReadSection(folder, name, texts, sources, missing), overrides ?? ParameterOverrides.None);
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
        string folder, CutterDescription cutter, Dictionary<string, string> texts, ImmutableArray<SourceFile>.Builder sources, ICollection<string> missing, KeptWork kept)
    {
        if (cutter.Profile is not { } profile)
        {
            return (CutProfile.Default, []);
        }

        return ReadSection(folder, profile.File, texts, sources, missing) is { } text
            ? kept.Profiles.Of((folder + profile.File, text), () => CutProfileFile.Read(folder + profile.File, text))
            : (null, [Diagnostic.Error(profile.At, $"there is no file `{profile.File}` beside the description")]);
    }

    private static string? ReadSection(
        string folder, string name, Dictionary<string, string> texts, ImmutableArray<SourceFile>.Builder sources, ICollection<string>? missing)
    {
        var path = folder + name;
        if (!File.Exists(path))
        {
            missing?.Add(path);
            return null;
        }

        // Old section files have titles in whatever encoding their author used; the coordinates are ASCII in all of them.
        texts[path] = TextFile.Read(path, out var bytes, out _);
        sources.Add(new(name, bytes));
        return texts[path];
    }
}
