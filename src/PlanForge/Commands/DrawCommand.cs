using PlanForge.Airframe.Reading;
using PlanForge.Designs;
using PlanForge.Folders;
using PlanForge.Parts;
using PlanForge.Reports;
using PlanForge.Terminals;

namespace PlanForge.Commands;

/// <summary>Writes the folder of each design.</summary>
internal sealed class DrawCommand(Terminal terminal, ParameterOverrides overrides, bool isQuiet, string folder, DrawChoice choice, IDisk disk)
    : DesignCommand<DesignOutput>(terminal, overrides, isQuiet)
{
    private readonly Dictionary<string, string> _drawn = new(StringComparer.Ordinal);

    protected override int Effort => choice.Effort;

    protected override DesignOutput WorkOut(Design design, CancellationToken stop) =>
        DesignFiles.Of(design, choice, stop);

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

        DesignFolder.Write(target, result.Files, disk, stop);
        if (!IsQuiet)
        {
            var cut = design.Parts.Count(part => part.Making == Making.Cut);
            var stock = design.Nests.Sheets.IsEmpty ? "" : $" on {Counts.Of(design.Nests.Sheets.Length, "sheet")} of stock";
            Results.Write($"{target}: {Counts.Of(design.Sheets.Sheets.Length, "sheet")}, {Counts.Of(cut, "cut part")}{stock}\n");
        }

        return ExitCode.Done;
    }
}
