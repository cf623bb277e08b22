using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using PlanForge.Airframe.Diagnostics;
using PlanForge.Airframe.Reading;
using PlanForge.Drafting.Sheets;

namespace PlanForge.Printers;

/// <summary>The file of measured printers: <c>printers.yaml</c> in the user's settings folder.</summary>
internal static class ProfileFile
{
    private const string List = "printers";
    private const string PaperKey = "paper";
    private const string DrawnAcross = "drawn_across";
    private const string MeasuredAcross = "measured_across";
    private const string DrawnUp = "drawn_up";
    private const string MeasuredUp = "measured_up";

    private static readonly ImmutableArray<string> Keys = [PaperKey, DrawnAcross, MeasuredAcross, DrawnUp, MeasuredUp];

    /// <summary>Where the file is unless the user says otherwise: below $XDG_CONFIG_HOME or ~/.config, on Windows below AppData.</summary>
    public static string DefaultPath => Path.Combine(
        Environment.GetFolderPath(Environment.SpecialFolder.ApplicationData, Environment.SpecialFolderOption.DoNotVerify), "planforge", "printers.yaml");

    /// <summary>The profiles in the order of the file; what is wrong goes to the findings.</summary>
    public static ImmutableArray<PrinterProfile> Read(string path, string text, out ImmutableArray<Diagnostic> findings)
    {
        var read = NamedEntries.Read(path, text, List, Keys);
        findings = read.Findings;
        if (!findings.IsEmpty)
        {
            return [];
        }

        var wrong = ImmutableArray.CreateBuilder<Diagnostic>();
        var profiles = ImmutableArray.CreateBuilder<PrinterProfile>(read.Entries.Length);
        foreach (var entry in read.Entries)
        {
            if (ProfileOf(entry, wrong) is { } profile)
            {
                profiles.Add(profile);
            }
        }

        findings = wrong.ToImmutable();
        return profiles.ToImmutable();
    }

    /// <summary>The text of a file with these profiles, in their order.</summary>
    public static string Write(IEnumerable<PrinterProfile> profiles)
    {
        var text = new StringBuilder("# Printers, measured on the page of planforge calibrate; draw --printer NAME stretches pages by drawn / measured.\n");
        text.Append(List).Append(":\n");
        foreach (var profile in profiles)
        {
            text.Append("  ").Append(Quoted(profile.Name)).Append(":\n");
            text.Append("    ").Append(PaperKey).Append(": ").Append(Quoted(profile.Paper.Name)).Append('\n');
            AppendLength(text, DrawnAcross, profile.Across.Drawn);
            AppendLength(text, MeasuredAcross, profile.Across.Measured);
            AppendLength(text, DrawnUp, profile.Up.Drawn);
            AppendLength(text, MeasuredUp, profile.Up.Measured);
        }

        return text.ToString();
    }

    private static void AppendLength(StringBuilder text, string key, double millimetres) =>
        text.Append(CultureInfo.InvariantCulture, $"    {key}: {millimetres:0.#########} mm\n");

    private static string Quoted(string name) => name.All(character => char.IsAsciiLetterOrDigit(character) || character == '-') && char.IsAsciiLetter(name[0])
        ? name
        : $"\"{name.Replace("\\", "\\\\", StringComparison.Ordinal).Replace("\"", "\\\"", StringComparison.Ordinal)}\"";

    private static PrinterProfile? ProfileOf(NamedEntry entry, ImmutableArray<Diagnostic>.Builder wrong)
    {
        var before = wrong.Count;
        var paperName = entry.Values[PaperKey];
        var paper = Paper.Find(paperName.Text);
        if (paper is null)
        {
            wrong.Add(Diagnostic.Error(paperName.At, PaperNames.Unknown(paperName.Text)));
        }

        if (entry.Name.Length > PrinterProfile.LongestName)
        {
            wrong.Add(Diagnostic.Error(entry.At, PrinterProfile.NameFault));
        }

        var across = new MeasuredBar(LengthOf(entry.Values[DrawnAcross], wrong), LengthOf(entry.Values[MeasuredAcross], wrong));
        var up = new MeasuredBar(LengthOf(entry.Values[DrawnUp], wrong), LengthOf(entry.Values[MeasuredUp], wrong));
        return wrong.Count > before ? null : new(entry.Name, paper!, across, up);
    }

    private static double LengthOf(EntryValue value, ImmutableArray<Diagnostic>.Builder wrong)
    {
        if (LengthText.Read(value.Text, out var fault) is not { } length)
        {
            wrong.Add(Diagnostic.Error(value.At, fault));
            return 1;
        }

        if (length <= 0)
        {
            wrong.Add(Diagnostic.Error(value.At, "a bar is longer than 0 mm"));
        }

        return length;
    }
}
