using System.Collections.Immutable;

namespace PlanForge.CommandLine;

/// <summary>The whole command line: every command and option there is. Parser, help and completions are made from it.</summary>
internal static class Syntax
{
    public const string Program = "planforge";

    public const string DefaultFolder = "output";

    /// <summary>The files whose schema is asked for, besides descriptions.</summary>
    public const string Measurements = "measurements";

    public static OptionSyntax Help { get; } = new("--help", null, "Print this help, or the help of a command.", "-h");

    public static OptionSyntax Version { get; } = new("--version", null, "Print the version.");

    public static OptionSyntax To { get; } =
        new("--to", "FOLDER", $"Folder that takes one folder a design (default: {DefaultFolder}).");

    public static OptionSyntax Tiles { get; } =
        new("--tiles", "PAPER", "Paper of the tiled plan, such as A4, Letter or A3.");

    public static OptionSyntax Printer { get; } =
        new("--printer", "NAME", "The printer to draw for, or that was measured.");

    public static OptionSyntax Profiles { get; } =
        new("--profiles", "FILE", "File of measured printers (default: printers.yaml in your settings).");

    public static OptionSyntax Dxf { get; } =
        new("--dxf", "VERSION", "Version of the DXF files, r2000 or r12 (default: r2000).");

    public static OptionSyntax NestEffort { get; } =
        new("--effort", "COUNT", "Arrangements to try when parts are laid out on stock, 1 to 100000 (default: 8).");

    public static OptionSyntax ToFile { get; } =
        new("--to", "FILE", "File to write (default: calibration-PAPER.pdf).");

    public static OptionSyntax ToSheet { get; } =
        new("--to", "FILE", "Write the correction sheet too: a PDF at true size.");

    public static OptionSyntax ToChanges { get; } =
        new("--to", "FILE", "File to draw changed parts to, new over old: a PDF at true size.");

    public static OptionSyntax OnPaper { get; } = new("--paper", "PAPER", "Paper of the page (default: A4).");

    public static OptionSyntax Across { get; } = new("--across", "LENGTH", "What the bar across the page measures.");

    public static OptionSyntax Up { get; } = new("--up", "LENGTH", "What the bar up the page measures.");

    public static OptionSyntax Force { get; } = new("--force", null, "Write over another file of the same name.");

    public static OptionSyntax Thickness { get; } = new("--thickness", "LENGTH", "Thickness of the sheet that is cut.");

    public static OptionSyntax SheetMaterial { get; } = new("--material", "NAME", "What the sheet is.");

    public static OptionSyntax Measured { get; } = new("--measured", "LENGTH", "Width of the coupon's row of strips, pushed together.");

    public static OptionSyntax ToCutFile { get; } = new("--to", "FILE", "File to write, .dxf or .svg (default: kerf-coupon.dxf).");

    public static OptionSyntax SheetSize { get; } = new("--sheet", "WxH", "Size of the sheet, such as 600x300; its corner is the origin.");

    public static OptionSyntax Steps { get; } = new("--steps", "COUNT", "How many values, both ends among them, 2 to 200 (default: 7).");

    public static OptionSyntax Csv { get; } = new("--csv", null, "Print comma-separated values instead, a row a step.");

    public static OptionSyntax Chart { get; } = new("--chart", "FILE", "Draw the figures that vary as curves, an .svg file.");

    public static OptionSyntax Json { get; } = new("--json", null, "Print the reports as JSON instead, one after the other.");

    public static OptionSyntax With { get; } =
        new("--with", "NAME=VALUE", "Another value for a parameter of the descriptions; may be given several times.");

    public static OptionSyntax WithForNew { get; } =
        With with { Summary = "Another value for a parameter of NEW; may be given several times." };

    public static OptionSyntax Quiet { get; } = new("--quiet", null, "Print warnings and errors only.", "-q");

    public static CommandSyntax Draw { get; } = new(
        "draw", "Write plan, templates, cut files and report of each description.", OperandSyntax.Files,
        [To, With, Tiles, Printer, Profiles, Dxf, NestEffort, Quiet]);

    public static CommandSyntax Follow { get; } = new(
        "follow", "Draw a description, and again whenever it is saved.", OperandSyntax.File,
        [To, With, Tiles, Printer, Profiles, Dxf, NestEffort, Quiet]);

    public static CommandSyntax Vary { get; } = new(
        "vary", "Work a design out for several values of a parameter.", OperandSyntax.DesignAndRange,
        [Steps, With, Csv, Json, Chart, Force, Quiet]);

    public static CommandSyntax Check { get; } = new(
        "check", "Compute everything and print the key figures; write nothing.", OperandSyntax.Files, [With, Json, Quiet]);

    public static CommandSyntax Bench { get; } = new(
        "bench", "Turn what was measured at the building board into corrections.", OperandSyntax.DesignAndMeasured,
        [ToSheet, With, Force, Tiles, Printer, Profiles, Json, Quiet]);

    public static CommandSyntax Current { get; } = new(
        "current", "Say whether paper or wood with this fingerprint is current.", OperandSyntax.DesignAndFingerprint,
        [To, With, Json, Quiet]);

    public static CommandSyntax Compare { get; } = new(
        "compare", "Say what a change leaves to print, cut or sand; exit code 0 either way.", OperandSyntax.OldAndNew,
        [ToChanges, WithForNew, Force, Tiles, Printer, Profiles, Json, Quiet]);

    public static CommandSyntax Calibrate { get; } = new(
        "calibrate", "Write a page to measure a printer by, or keep what was measured.", OperandSyntax.None,
        [ToFile, OnPaper, Force, Printer, Across, Up, Profiles, Quiet]);

    public static CommandSyntax Inspect { get; } = new(
        "inspect", "Say what would go wrong with cut files at the cutter.", OperandSyntax.CutFiles, [Thickness, SheetSize, Json, Quiet]);

    public static CommandSyntax Coupon { get; } = new(
        "coupon", "Write a test piece for a cutter's kerf and fit, or tell the kerf from it.", OperandSyntax.None,
        [SheetMaterial, Thickness, ToCutFile, Force, Measured, Quiet]);

    public static CommandSyntax Schema { get; } = new(
        "schema", "Print the JSON Schema of descriptions or measurements.",
        OperandSyntax.AtMostOneOf("[FILES]", ["descriptions", Measurements]), []);

    public static CommandSyntax Completion { get; } = new(
        "completion", "Print the completion script of a shell.", OperandSyntax.OneOf("SHELL", ["bash", "zsh", "fish"]), []);

    public static CommandSyntax HelpCommand { get; } = new(
        "help", Help.Summary, OperandSyntax.AtMostOneOf("[COMMAND]", [Draw.Name, Follow.Name, Check.Name, Vary.Name, Bench.Name, Compare.Name, Current.Name, Calibrate.Name, Coupon.Name, Inspect.Name, Schema.Name, Completion.Name]), []);

    /// <summary>What <c>--version</c> stands for; it has no word of its own.</summary>
    public static CommandSyntax VersionCommand { get; } = new("", Version.Summary, OperandSyntax.None, []);

    /// <summary>All commands, in the order of the help.</summary>
    public static ImmutableArray<CommandSyntax> Commands { get; } = [Draw, Follow, Check, Vary, Bench, Compare, Current, Calibrate, Coupon, Inspect, Schema, Completion, HelpCommand];

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
