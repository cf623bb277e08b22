using PlanForge.Airframe.Reading;
using PlanForge.Designs;
using PlanForge.Folders;
using PlanForge.Reports;
using PlanForge.Terminals;

namespace PlanForge.Commands;

/// <summary>Writes the folder of each design.</summary>
internal class DrawCommand(Terminal terminal, ParameterOverrides overrides, bool isQuiet, string folder, DrawChoice choice, IDisk disk)
    : DesignCommand<DesignOutput>(terminal, overrides, isQuiet)
{
    private readonly Dictionary<string, string> _drawn = new(StringComparer.Ordinal);

    protected override int Effort => choice.Effort;

    protected override IDesignWork<DesignOutput> Begin(KeptWork kept, CancellationToken stop) => new DesignFiles(choice, kept, stop);

    protected override ExitCode Use(string file, Design design, DesignOutput result, CancellationToken stop)
    {
        var name = FolderName.Of(design.Airframe.Name);
        if (name.Length == 0)
        {
            Messages.Error(file, $"the name `{design.Airframe.Name}` has no letter or digit to call a folder by");
            return ExitCode.DescriptionFault;
        }

        if (!_drawn.TryAdd(name, file))
        {
            Messages.Error(file, $"the folder {name} belongs to {_drawn[name]} in this run; give the designs different names");
            return ExitCode.DescriptionFault;
        }

        var target = Path.Combine(folder, name);
        if (!result.CutFaults.IsEmpty)
        {
            foreach (var fault in result.CutFaults)
            {
                Messages.Line($"{target}/{fault}");
            }

            Messages.Error(file, "nothing was written: a cut file would be cut wrongly; please report it with the description");
            return ExitCode.CutFileFault;
        }

        using var opened = Open(target, disk);
        var changes = opened.Write(result, stop);
        if (!IsQuiet)
        {
            Show(DrawSummary.Of(target, design, changes));
        }

        return ExitCode.Done;
    }

    /// <summary>Opens the folder of a design.</summary>
    /// <exception cref="FolderFault">The file system refuses, or another run writes the folder.</exception>
    protected virtual DesignFolder Open(string target, IDisk disk) => DesignFolder.Open(target, disk);

    /// <summary>Tells what was drawn.</summary>
    /// <param name="summary">Whole lines.</param>
    protected virtual void Show(string summary) => Results.Write(summary);
}
