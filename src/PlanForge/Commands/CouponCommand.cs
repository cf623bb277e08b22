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
    private const double LeastThickness = 0.5;
    private const double GreatestThickness = 25;
    private const double Drawn = KerfCoupon.Strips * KerfCoupon.StripWidth;

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

        if (!(measured > Drawn / 2 && measured < Drawn))
        {
            return Fail(FormattableString.Invariant(
                $"{Syntax.Measured.Name} {text}: the row of strips is drawn {Drawn:0} mm wide and must come out narrower, but not by half"));
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

        if (thickness is < LeastThickness or > GreatestThickness)
        {
            return Fail(FormattableString.Invariant($"{Syntax.Thickness.Name} {text}: a sheet is {LeastThickness} to {GreatestThickness} mm thick"));
        }

        var path = arguments.ValueOf(Syntax.ToCutFile) ?? "kerf-coupon.dxf";
        var isSvg = path.EndsWith(".svg", StringComparison.OrdinalIgnoreCase);
        if (!isSvg && !path.EndsWith(".dxf", StringComparison.OrdinalIgnoreCase))
        {
            return Fail($"{Syntax.ToCutFile.Name} {path}: a cut file ends in .dxf or .svg");
        }

        var coupon = KerfCoupon.Of(arguments.ValueOf(Syntax.SheetMaterial) ?? "", thickness);
        var content = isSvg ? SvgCutWriter.Write(coupon, CutProfile.Default) : DxfWriter.Write(coupon, CutProfile.Default);
        if (File.Exists(path) && !arguments.Has(Syntax.Force) && !File.ReadAllBytes(path).AsSpan().SequenceEqual(content))
        {
            _messages.Error(path, "there is another file of this name; give one with --to, or --force to write over it");
            return ExitCode.FileSystemFault;
        }

        SingleFile.Replace(path, content);
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
