using PlanForge.Airframe.Reading;
using PlanForge.CommandLine;
using PlanForge.Output.Inspection;
using PlanForge.Reports;
using PlanForge.Terminals;

namespace PlanForge.Commands;

/// <summary>Looks through cut files and says what would go wrong at the cutter.</summary>
internal sealed class InspectCommand(Terminal terminal, Arguments arguments)
{
    private readonly Messages _messages = new(terminal, arguments.Has(Syntax.Quiet));

    /// <summary>Inspects each file, whatever becomes of the others; the highest exit code counts.</summary>
    public ExitCode Run()
    {
        if (Options() is not { } options)
        {
            return ExitCode.CommandLineFault;
        }

        var (worst, isFirst) = (ExitCode.Done, true);
        foreach (var name in arguments.Operands)
        {
            var code = Inspect(name, options, isFirst);
            worst = code > worst ? code : worst;
            isFirst = false;
        }

        return worst;
    }

    private ExitCode Inspect(string name, InspectionOptions options, bool isFirst)
    {
        byte[] content;
        try
        {
            content = Read(name);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            _messages.Error(name, ReadFault.ReasonOf(name, fault, "a cut file"));
            return ExitCode.FileSystemFault;
        }

        var result = CutFileInspector.Inspect(name, content, options);
        terminal.Results.Write(arguments.Has(Syntax.Json)
            ? InspectionText.ToJson(name, result)
            : InspectionText.Of(name, result, arguments.Has(Syntax.Quiet), isFirst));
        return result.HasFaults ? ExitCode.CutFileFault : ExitCode.Done;
    }

    // One byte more than is taken tells that there is more, also where a device states no length.
    private static byte[] Read(string name)
    {
        using var stream = new FileStream(name, FileMode.Open, FileAccess.Read, FileShare.Read, bufferSize: 0);
        using var content = new MemoryStream();
        var buffer = new byte[1 << 16];
        int count;
        while (content.Length <= CutFileInspector.GreatestSize && (count = stream.Read(buffer)) > 0)
        {
            content.Write(buffer, 0, count);
        }

        return content.ToArray();
    }

    private InspectionOptions? Options()
    {
        double? thickness = null;
        if (arguments.ValueOf(Syntax.Thickness) is { } text)
        {
            if (Length(Syntax.Thickness, text, text) is not { } given)
            {
                return null;
            }

            thickness = given;
        }

        if (arguments.ValueOf(Syntax.SheetSize) is not { } size)
        {
            return new(thickness);
        }

        // `x` parts the two numbers, as in 600x300; `in` and `mm` have none.
        var cross = size.IndexOfAny(['x', 'X', '×']);
        if (cross < 0)
        {
            _messages.Error(Syntax.Program, $"{Syntax.SheetSize.Name} {size}: width and height are needed, such as 600x300");
            return null;
        }

        return Length(Syntax.SheetSize, size, size[..cross]) is { } width && Length(Syntax.SheetSize, size, size[(cross + 1)..]) is { } height
            ? new(thickness, new SheetSize(width, height))
            : null;
    }

    private double? Length(OptionSyntax option, string whole, string text)
    {
        var length = LengthText.Read(text.Trim(), out var fault);
        if (length is > 0)
        {
            return length;
        }

        _messages.Error(Syntax.Program, $"{option.Name} {whole}: {(length is null ? fault : "it has to be over 0 mm")}");
        return null;
    }
}
