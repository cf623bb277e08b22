using System.Globalization;
using System.Runtime.CompilerServices;
using System.Text.RegularExpressions;
using PlanForge.Output.Inspection;

namespace PlanForge.Output.Tests.Inspection;

/// <summary>
/// The small cut files beside this one. The first comment of each says what is wrong with it, then the code words of the
/// findings with line and column (0:0 for the file as a whole), then perhaps the thickness and sheet it is inspected for.
/// </summary>
internal static partial class CutFileCorpus
{
    /// <summary>The files of a folder, by name.</summary>
    public static string[] FilesOf(string folder, [CallerFilePath] string here = "") =>
        [.. Directory.GetFiles(Path.Combine(Path.GetDirectoryName(here)!, folder)).Order(StringComparer.Ordinal)];

    /// <summary>The findings a file expects, in the order of code words and places, and what is known about its sheet.</summary>
    public static (string[] Findings, InspectionOptions Options) ExpectedOf(string file)
    {
        var comment = File.ReadLines(file).First(line => line.Contains('|', StringComparison.Ordinal));
        var parts = comment.Replace("-->", "", StringComparison.Ordinal).Split('|');
        var sizes = Sizes().Matches(parts.Length > 2 ? parts[2] : "").ToDictionary(
            match => match.Groups[1].Value, match => match.Groups[2].Value.Split('x').Select(text => double.Parse(text, CultureInfo.InvariantCulture)).ToArray());
        return (
            [.. parts[1].Split(' ', StringSplitOptions.RemoveEmptyEntries).Order(StringComparer.Ordinal)],
            new(sizes.GetValueOrDefault("thickness")?[0], sizes.TryGetValue("sheet", out var sheet) ? new SheetSize(sheet[0], sheet[1]) : null));
    }

    public static InspectionResult Inspect(string file) =>
        CutFileInspector.Inspect(Path.GetFileName(file), File.ReadAllBytes(file), ExpectedOf(file).Options);

    /// <summary>The code word and place of each finding, in order.</summary>
    public static string[] FoundIn(InspectionResult result) =>
        [.. result.Findings.Select(finding => FormattableString.Invariant($"{finding.Code}@{finding.Line}:{finding.Column}")).Order(StringComparer.Ordinal)];

    [GeneratedRegex(@"(\w+)=([\d.x]+)")]
    private static partial Regex Sizes();
}
