using System.Globalization;
using PlanForge.Drafting.Model;
using PlanForge.Drafting.Printing;
using PlanForge.Drafting.Sheets;

namespace PlanForge.Printers;

/// <summary>What was measured on the calibration page of a printer.</summary>
/// <param name="Name">The owner's name for the printer.</param>
/// <param name="Paper">The paper it was measured on.</param>
/// <param name="Across">The bar across the page.</param>
/// <param name="Up">The bar up the page.</param>
internal sealed record PrinterProfile(string Name, Paper Paper, MeasuredBar Across, MeasuredBar Up)
{
    // A good printer errs by some tenths of a percent; over one it is worth a second look, over three it is no printer's error
    // (shared/practice.md).
    private const double Doubtful = 0.01;
    private const double Refused = 0.03;

    /// <summary>The most letters a name may have: it is printed on every page.</summary>
    public const int LongestName = 40;

    /// <summary>What to tell of a longer one.</summary>
    public static string NameFault => FormattableString.Invariant($"the name of a printer has {LongestName} letters at most: it is printed on every page");

    /// <summary>How pages are stretched for this printer.</summary>
    public PrinterScale Scale => new(Name, Across.Factor, Up.Factor);

    /// <summary>Why these measures cannot be a printer's error, or null: one sentence without a full stop.</summary>
    public string? Fault => Find(Refused) is { } bar
        ? $"{bar.Said}: that is more than 3 % and no error of a printer but scaling by the print dialog{CauseOf(bar)}; print the page again at 100 %"
        : null;

    /// <summary>Why these measures should be looked at again, or null: one sentence without a full stop.</summary>
    public string? Doubt => Fault is null && Find(Doubtful) is { } bar
        ? $"{bar.Said}: more than 1 % is much for a printer{CauseOf(bar)}; see that the page was printed at 100 %"
        : null;

    private (string Said, double Printed)? Find(double limit)
    {
        foreach (var (bar, words) in new[] { (Across, "across"), (Up, "up") })
        {
            // The limit itself is still allowed, whatever the last bit of a division says.
            if (Math.Abs(bar.Printed - 1) > limit + 1e-9)
            {
                return (FormattableString.Invariant($"{words} {bar.Measured:0.##} mm were measured for {bar.Drawn:0.##} mm ({bar.Printed * 100:F1} %)"), bar.Printed);
            }
        }

        return null;
    }

    private string CauseOf((string Said, double Printed) bar) =>
        ShrinkCause.Nearest(Paper, bar.Printed) is { } cause
            ? string.Create(CultureInfo.InvariantCulture, $" (likely {cause.Words}, {cause.Factor * 100:F1} %)")
            : "";
}

/// <summary>A bar and what came out of the printer.</summary>
/// <param name="Drawn">Its true length, mm, over 0.</param>
/// <param name="Measured">The printed length, mm, over 0.</param>
internal readonly record struct MeasuredBar(double Drawn, double Measured)
{
    /// <summary>Printed over true length.</summary>
    public double Printed => Measured / Drawn;

    /// <summary>What a page must be stretched by.</summary>
    public double Factor => Drawn / Measured;
}
