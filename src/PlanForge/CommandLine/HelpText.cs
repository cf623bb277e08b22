using System.Collections.Immutable;
using System.Globalization;
using System.Text;

namespace PlanForge.CommandLine;

/// <summary>Writes the help from the tables in <see cref="Syntax"/>: examples first, then what there is to know.</summary>
internal static class HelpText
{
    private static readonly ImmutableArray<(string Line, string Meaning)> Examples =
    [
        ("planforge check designs/oxbow-1420.yaml", "look at the figures first"),
        ("planforge draw designs/oxbow-1420.yaml", "write output/oxbow-1420/"),
        ("planforge draw designs/*.yaml --to /tmp/plans", "several designs, another folder"),
        ("planforge follow designs/oxbow-1420.yaml", "draw again on every save"),
        ("planforge draw designs/oxbow-1420.yaml --printer attic", "pages stretched for one printer"),
        ("planforge vary designs/oxbow-1420.yaml body_width=80mm..110mm", "figures over a parameter"),
        ("planforge bench designs/oxbow-1420.yaml measured.yaml", "what to sand after measuring"),
        ("planforge compare output/oxbow-1420 designs/oxbow-1420.yaml", "what a change leaves to do"),
        ("planforge compare old.yaml new.yaml --to changes.pdf", "new over old, at true size"),
        ("planforge current designs/oxbow-1420.yaml K7F3-2Q", "is this paper or wood current?"),
        ("planforge calibrate --paper Letter", "a page to measure a printer by"),
        ("planforge calibrate --printer attic --across 179.6 --up 259.1", "keep what you measured"),
        ("planforge coupon --material balsa --thickness 3.1", "a test piece for the cutter"),
        ("planforge coupon --measured 98.4", "the kerf it tells"),
        ("planforge inspect parts/*.dxf --thickness 3 --sheet 600x300", "look through cut files"),
        ("planforge schema > planforge.schema.json", "let an editor know the keys"),
    ];

    private static readonly ImmutableArray<(ExitCode Code, string Meaning)> ExitCodes =
    [
        (ExitCode.Done, "everything was done"),
        (ExitCode.DescriptionFault, "a description, section file or printer profile is at fault; nothing of it was written"),
        (ExitCode.CommandLineFault, "the command line is at fault"),
        (ExitCode.FileSystemFault, "a file or folder cannot be read or written; what stood there before still does"),
        (ExitCode.CutFileFault, "a cut file would be cut wrongly, or not at all"),
        (ExitCode.NotCurrent, "the paper or wood asked about is not current, or not known"),
        (ExitCode.InternalFault, "planforge itself is at fault; please report it with the description"),
        (ExitCode.Interrupted, "stopped by Ctrl-C; what stood there before still does"),
        (ExitCode.Terminated, "the same, by SIGTERM"),
    ];

    /// <summary>The help of the whole program.</summary>
    public static string OfProgram()
    {
        var text = new StringBuilder();
        AddRows(text, "Examples", Examples);
        AddRows(text, "Commands", Syntax.Commands.Select(command => (UsageOf(command), command.Summary)));
        foreach (var command in Syntax.Commands)
        {
            AddRows(text, $"Options of {command.Name}", command.Options.Select(RowOf));
        }

        AddRows(text, "Options", [RowOf(Syntax.Help), RowOf(Syntax.Version)]);
        AddExitCodes(text);
        return text.Append("Results go to stdout, messages to stderr. NO_COLOR is respected.\n").ToString();
    }

    /// <summary>The help of one command.</summary>
    public static string Of(CommandSyntax command)
    {
        var text = new StringBuilder();
        AddRows(text, "Examples", Examples.Where(example => example.Line.StartsWith($"{Syntax.Program} {command.Name} ", StringComparison.Ordinal)));
        AddRows(text, "Usage", [($"{Syntax.Program} {UsageOf(command)}", command.Summary)]);
        AddRows(text, "Options", command.Options.Append(Syntax.Help).Select(RowOf));
        AddExitCodes(text);
        return text.ToString();
    }

    private static string UsageOf(CommandSyntax command) => $"{command.Name} {command.Operands.Text}".TrimEnd();

    private static (string, string) RowOf(OptionSyntax option) =>
        (string.Join(", ", new[] { option.Short, $"{option.Name} {option.Value}".TrimEnd() }.OfType<string>()), option.Summary);

    private static void AddExitCodes(StringBuilder text) => AddRows(
        text, "Exit codes", ExitCodes.Select(row => (((int)row.Code).ToString(CultureInfo.InvariantCulture), row.Meaning)));

    private static void AddRows(StringBuilder text, string title, IEnumerable<(string Left, string Right)> rows)
    {
        var all = rows.ToArray();
        if (all.Length == 0)
        {
            return;
        }

        var width = all.Max(row => row.Left.Length);
        text.Append(title).Append(":\n");
        foreach (var (left, right) in all)
        {
            text.Append("  ").Append(left.PadRight(width)).Append("  ").Append(right).Append('\n');
        }

        text.Append('\n');
    }
}
