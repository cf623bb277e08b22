using PlanForge.Airframe.Schema;
using PlanForge.CommandLine;
using PlanForge.Commands;
using PlanForge.Folders;
using PlanForge.Terminals;

namespace PlanForge;

/// <summary>The whole program: a command line in, text and files out.</summary>
internal static class Application
{
    /// <summary>Runs one command line.</summary>
    /// <param name="words">The words after the program's name.</param>
    /// <param name="terminal">Where to write.</param>
    /// <param name="disk">Where folders are written.</param>
    public static ExitCode Run(ReadOnlySpan<string> words, Terminal terminal, IDisk disk)
    {
        if (ArgumentParser.Parse(words, out var fault) is not { } arguments)
        {
            var messages = new Messages(terminal, isQuiet: false);
            messages.Error(Syntax.Program, fault);
            messages.Line($"`{Syntax.Program} {Syntax.Help.Name}` shows examples and everything there is.");
            return ExitCode.CommandLineFault;
        }

        var isQuiet = arguments.Has(Syntax.Quiet);
        if (arguments.Command == Syntax.Draw || arguments.Command == Syntax.Follow)
        {
            return Draw(arguments, terminal, disk);
        }

        if (arguments.Command == Syntax.Calibrate)
        {
            return new CalibrateCommand(terminal, arguments).Run();
        }

        if (arguments.Command == Syntax.Coupon)
        {
            return new CouponCommand(terminal, arguments).Run();
        }

        if (arguments.Command == Syntax.Bench)
        {
            return new BenchCommand(terminal, arguments).Run();
        }

        if (arguments.Command == Syntax.Compare)
        {
            return new CompareCommand(terminal, arguments).Run();
        }

        if (arguments.Command == Syntax.Current)
        {
            return new CurrentCommand(terminal, arguments.Overrides, isQuiet, arguments.Has(Syntax.Json), arguments.ValueOf(Syntax.To) ?? Syntax.DefaultFolder)
                .Run(arguments.Operands[0], arguments.Operands[1]);
        }

        if (arguments.Command == Syntax.Check)
        {
            return new CheckCommand(terminal, arguments.Overrides, isQuiet, arguments.Has(Syntax.Json)).Run(arguments.Operands);
        }

        if (arguments.Command == Syntax.Vary)
        {
            return new VaryCommand(terminal, arguments).Run();
        }

        if (arguments.Command == Syntax.Inspect)
        {
            return new InspectCommand(terminal, arguments).Run();
        }

        terminal.Results.Write(TextOf(arguments));
        return ExitCode.Done;
    }

    private static ExitCode Draw(Arguments arguments, Terminal terminal, IDisk disk)
    {
        var isQuiet = arguments.Has(Syntax.Quiet);
        var messages = new Messages(terminal, isQuiet);
        try
        {
            if (DrawOptions.Read(arguments, messages, out var code) is not { } choice)
            {
                return code;
            }

            var folder = arguments.ValueOf(Syntax.To) ?? Syntax.DefaultFolder;
            return arguments.Command == Syntax.Follow
                ? new FollowCommand(terminal, arguments.Overrides, isQuiet, folder, choice, disk).Run(arguments.Operands[0])
                : new DrawCommand(terminal, arguments.Overrides, isQuiet, folder, choice, disk).Run(arguments.Operands);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            messages.Error(arguments.ValueOf(Syntax.Profiles) ?? Syntax.Program, $"cannot be read: {fault.Message}");
            return ExitCode.FileSystemFault;
        }
    }

    private static string TextOf(Arguments arguments)
    {
        if (arguments.Command == Syntax.Schema)
        {
            return arguments.Operands is [Syntax.Measurements] ? MeasurementSchema.ToJson() : DescriptionSchema.ToJson();
        }

        if (arguments.Command == Syntax.Completion)
        {
            return CompletionScripts.Of(arguments.Operands[0]);
        }

        if (arguments.Command == Syntax.VersionCommand)
        {
            return $"{Syntax.Program} {ToolVersion.Text}\n";
        }

        return arguments.Operands is [var name] ? HelpText.Of(Syntax.Find(name)!) : HelpText.OfProgram();
    }
}
