using PlanForge.Airframe.Reading;
using PlanForge.CommandLine;
using PlanForge.Drafting.Cutting;
using PlanForge.Folders;
using PlanForge.Output.Dxf;
using PlanForge.Output.Svg;
using PlanForge.Terminals;

namespace PlanForge.Commands;

/// <summary>Writes the test piece for a cutter, or works out the kerf from what was measured on it.</summary>
internal sealed class CouponCommand(Terminal terminal, Arguments arguments)
{
    private readonly Messages _messages = new(terminal, arguments.Has(Syntax.Quiet));

    /// <summary>Runs the command.</summary>
    public ExitCode Run()
    {
        try
        {
            return arguments.ValueOf(Syntax.Measured) is { } measured ? TellKerf(measured)
                : arguments.ValueOf(Syntax.Thickness) is { } thickness ? WriteCoupon(thickness)
                : Fail($"how thick is the sheet? {Syntax.Thickness.Name} is missing");
        }
        catch (Exception failed) when (failed is IOException or UnauthorizedAccessException)
        {
            _messages.Error(Syntax.Program, failed.Message);
            return ExitCode.FileSystemFault;
        }
    }

    private ExitCode TellKerf(string text)
    {
        if (LengthText.Read(text, out var fault) is not { } measured)
        {
            return Fail($"{Syntax.Measured.Name} {text}: {fault}");
        }

        if (!KerfCoupon.IsPlausible(measured))
        {
            return Fail(FormattableString.Invariant(
                $"{Syntax.Measured.Name} {text}: the row of strips is drawn {KerfCoupon.RowWidth:0} mm wide and must come out narrower, but not by half"));
        }

        terminal.Results.Write(FormattableString.Invariant($"kerf: {KerfCoupon.KerfOf(measured):0.###} mm\n"));
        return ExitCode.Done;
    }

    private ExitCode WriteCoupon(string text)
    {
        if (LengthText.Read(text, out var fault) is not { } thickness)
        {
            return Fail($"{Syntax.Thickness.Name} {text}: {fault}");
        }

        if (thickness is < KerfCoupon.LeastThickness or > KerfCoupon.GreatestThickness)
        {
            return Fail(FormattableString.Invariant($"{Syntax.Thickness.Name} {text}: a sheet is {KerfCoupon.LeastThickness} to {KerfCoupon.GreatestThickness} mm thick"));
        }

        var path = arguments.ValueOf(Syntax.ToCutFile) ?? "kerf-coupon.dxf";
        var isSvg = path.EndsWith(".svg", StringComparison.OrdinalIgnoreCase);
        if (!isSvg && !path.EndsWith(".dxf", StringComparison.OrdinalIgnoreCase))
        {
            return Fail($"{Syntax.ToCutFile.Name} {path}: a cut file ends in .dxf or .svg");
        }

        var coupon = KerfCoupon.Of(arguments.ValueOf(Syntax.SheetMaterial) ?? "", thickness);
        var content = isSvg ? SvgCutWriter.Write(coupon, CutProfile.Default) : DxfWriter.Write(coupon, CutProfile.Default);
        if (!SingleFile.TryWrite(path, content, mayReplace: arguments.Has(Syntax.Force)))
        {
            _messages.Error(path, SingleFile.AnotherStands);
            return ExitCode.FileSystemFault;
        }

        if (!arguments.Has(Syntax.Quiet))
        {
            foreach (var note in coupon.Notes)
            {
                terminal.Results.Write($"{note}\n");
            }
        }

        return ExitCode.Done;
    }

    private ExitCode Fail(string message)
    {
        _messages.Error(Syntax.Program, message);
        return ExitCode.CommandLineFault;
    }
}
