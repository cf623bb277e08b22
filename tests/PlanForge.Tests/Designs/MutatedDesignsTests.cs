using System.Collections.Concurrent;
using System.Globalization;
using System.Text;
using PlanForge.Airframe.Diagnostics;
using PlanForge.Airframe.Reading;
using PlanForge.Drafting.Sheets;
using PlanForge.Drafting.Tiles;
using PlanForge.Output.Pdf;
using PlanForge.Parts;

namespace PlanForge.Tests.Designs;

/// <summary>
/// The whole way from text to PDF over spoiled copies of the demos: whatever a builder types, the answer is drawings or
/// findings, never an exception. The variable PLANFORGE_FUZZ sets how many copies are tried; PLANFORGE_FUZZ_KEEP
/// names a folder that takes the copies which failed.
/// </summary>
public class MutatedDesignsTests
{
    private const int UsualCount = 2000;

    // A case slower than this, on a loaded machine, counts as hanging.
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);

    [Fact]
    public void No_mutation_of_a_demo_throws_or_hangs()
    {
        var count = int.TryParse(Environment.GetEnvironmentVariable("PLANFORGE_FUZZ"), CultureInfo.InvariantCulture, out var wanted) ? wanted : UsualCount;
        var folder = DemoFolder.Path;
        var demos = Directory.GetFiles(folder, "*.yaml").Order(StringComparer.Ordinal).Select(File.ReadAllText).ToArray();
        var sections = Directory.GetFiles(folder, "*.dat").ToDictionary(path => Path.GetFileName(path), File.ReadAllText);
        Assert.Equal(4, demos.Length);
        var faults = new ConcurrentBag<string>();
        int drawn = 0, refused = 0;
        Parallel.For(0, count, new ParallelOptions { MaxDegreeOfParallelism = 2 }, seed =>
        {
            var text = Mutated(demos[seed % demos.Length], new Random(seed));
            var clock = System.Diagnostics.Stopwatch.StartNew();
            try
            {
                Interlocked.Increment(ref Draw(text, sections) ? ref drawn : ref refused);
            }
            catch (Exception fault)
            {
                faults.Add($"seed {seed}: {fault}");
                if (Environment.GetEnvironmentVariable("PLANFORGE_FUZZ_KEEP") is { Length: > 0 } keep)
                {
                    File.WriteAllText(Path.Combine(keep, FormattableString.Invariant($"seed-{seed}.yaml")), text);
                }
            }

            if (clock.Elapsed > Patience)
            {
                faults.Add($"seed {seed} took {clock.Elapsed.TotalSeconds:F0} s");
            }
        });
        Assert.True(faults.IsEmpty, $"{faults.Count} of {count}:\n{string.Join('\n', faults.Order(StringComparer.Ordinal).Take(10))}");

        // Mutations that never reach the geometry, or never fail, would prove little.
        Assert.True(drawn > count / 10, $"only {drawn} of {count} were drawn");
        Assert.True(refused > count / 10, $"only {refused} of {count} were refused");
    }

    // True when drawings came out; false when there were errors, of which each must have a place and words.
    private static bool Draw(string text, IReadOnlyDictionary<string, string> sections)
    {
        var read = AirframeReader.Read("demo.yaml", text, name => sections.GetValueOrDefault(name));
        var findings = read.Diagnostics;
        if (read.Airframe is { } airframe)
        {
            var list = PartList.Of(airframe);
            findings = findings.AddRange(list.Findings);
            if (!list.Parts.IsEmpty)
            {
                var plan = PlanSheets.Draw(PlanOptions.Of(airframe, "test"), list);
                findings = findings.AddRange(plan.Findings);
                if (!plan.Sheets.Sheets.IsEmpty)
                {
                    Assert.NotEmpty(PdfWriter.Write(plan.Sheets, new PdfInfo("test")));
                    foreach (var tile in airframe.Sheets.Tiles.Select(TileOptions.Of).Where(options => options.Fault() is null))
                    {
                        Assert.NotEmpty(PdfWriter.Write(TilePlan.Of(plan.Sheets, tile).Pages!, new PdfInfo("test")));
                    }

                    return true;
                }
            }
        }

        Assert.Contains(findings, finding => finding.Severity == Severity.Error);
        Assert.All(findings, finding => Assert.NotEmpty(finding.Message));
        return false;
    }

    private static string Mutated(string text, Random random)
    {
        for (var times = random.Next(1, 4); times > 0; times--)
        {
            text = random.Next(10) switch
            {
                0 => WithoutLine(text, random),
                1 => WithLineTwice(text, random),
                2 => WithSwappedCharacters(text, random),
                3 => WithStrangeCharacter(text, random),
                _ => WithOtherNumber(text, random),
            };
        }

        return text;
    }

    private static string WithOtherNumber(string text, Random random)
    {
        // Where numbers begin: a digit that no letter, digit or point precedes.
        var starts = Enumerable.Range(1, text.Length - 1)
            .Where(i => char.IsAsciiDigit(text[i]) && !char.IsLetterOrDigit(text[i - 1]) && text[i - 1] is not ('.' or '_'))
            .ToArray();
        if (starts.Length == 0)
        {
            return text;
        }

        var start = starts[random.Next(starts.Length)];
        var end = start;
        while (end < text.Length && (char.IsAsciiDigit(text[end]) || text[end] == '.'))
        {
            end++;
        }

        var old = double.TryParse(text[start..end], NumberStyles.Float, CultureInfo.InvariantCulture, out var value) ? value : 1;
        var other = random.Next(6) switch
        {
            0 => 0,
            1 => -old,
            2 => old * 10,
            3 => old / 10,
            _ => old * (0.5 + random.NextDouble()),
        };
        return string.Concat(text.AsSpan(0, start), other.ToString("0.###", CultureInfo.InvariantCulture), text.AsSpan(end));
    }

    private static string WithoutLine(string text, Random random)
    {
        var lines = text.Split('\n').ToList();
        lines.RemoveAt(random.Next(lines.Count));
        return string.Join('\n', lines);
    }

    private static string WithLineTwice(string text, Random random)
    {
        var lines = text.Split('\n').ToList();
        lines.Insert(random.Next(lines.Count), lines[random.Next(lines.Count)]);
        return string.Join('\n', lines);
    }

    private static string WithSwappedCharacters(string text, Random random)
    {
        var builder = new StringBuilder(text);
        int a = random.Next(text.Length), b = random.Next(text.Length);
        (builder[a], builder[b]) = (builder[b], builder[a]);
        return builder.ToString();
    }

    private static string WithStrangeCharacter(string text, Random random)
    {
        const string Strange = "{}[]:,-\"'#&*!|>%@\t\u00b0\u2044\u00e9\u4e2d\ud83d\n";
        return text.Insert(random.Next(text.Length), Strange[random.Next(Strange.Length)].ToString());
    }
}

/// <summary>Where the demos lie: beside the solution, found from the tests' own folder upward.</summary>
internal static class DemoFolder
{
    public static string Path
    {
        get
        {
            for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
            {
                var designs = System.IO.Path.Combine(folder.FullName, "designs");
                if (File.Exists(System.IO.Path.Combine(folder.FullName, "PlanForge.sln")) && Directory.Exists(designs))
                {
                    return designs;
                }
            }

            throw new DirectoryNotFoundException("No folder above the tests holds PlanForge.sln and designs/.");
        }
    }
}
