using System.Collections.Immutable;

namespace PlanForge.CommandLine;

/// <summary>The whole command line: every command and option there is. Parser, help and completions are made from it.</summary>
internal static class Syntax
{
    public const string Program = "planforge";

    public const string DefaultFolder = "output";

    public static OptionSyntax Help { get; } = new("--help", null, "Print this help, or the help of a command.", "-h");

    public static OptionSyntax Version { get; } = new("--version", null, "Print the version.");

    public static OptionSyntax To { get; } =
        new("--to", "FOLDER", $"Folder that takes one folder a design (default: {DefaultFolder}).");

    public static OptionSyntax Json { get; } = new("--json", null, "Print the reports as JSON instead, one after the other.");

    public static OptionSyntax Quiet { get; } = new("--quiet", null, "Print warnings and errors only.", "-q");

    public static CommandSyntax Draw { get; } = new(
        "draw", "Write plan, templates, cut files and report of each description.", OperandSyntax.Files, [To, Quiet]);

    public static CommandSyntax Check { get; } = new(
        "check", "Compute everything and print the key figures; write nothing.", OperandSyntax.Files, [Json, Quiet]);

    public static CommandSyntax Schema { get; } = new(
        "schema", "Print the JSON Schema of descriptions, for editors.", OperandSyntax.None, []);

    public static CommandSyntax Completion { get; } = new(
        "completion", "Print the completion script of a shell.", OperandSyntax.OneOf("SHELL", ["bash", "zsh", "fish"]), []);

    public static CommandSyntax HelpCommand { get; } = new(
        "help", Help.Summary, OperandSyntax.AtMostOneOf("[COMMAND]", [Draw.Name, Check.Name, Schema.Name, Completion.Name]), []);

    /// <summary>What <c>--version</c> stands for; it has no word of its own.</summary>
    public static CommandSyntax VersionCommand { get; } = new("", Version.Summary, OperandSyntax.None, []);

    /// <summary>All commands, in the order of the help.</summary>
    public static ImmutableArray<CommandSyntax> Commands { get; } = [Draw, Check, Schema, Completion, HelpCommand];

    /// <summary>The command of that name, or null.</summary>
    public static CommandSyntax? Find(string name)
    {
        foreach (var command in Commands)
        {
            if (command.Name == name)
            {
                return command;
            }
        }

        return null;
    }
}
