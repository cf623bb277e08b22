using System.Collections.Immutable;
using PlanForge.Parts.Wording;

namespace PlanForge.Parts.Bolts;

/// <summary>Hole sizes for a screw thread, mm.</summary>
/// <remarks>
/// Metric: clearance holes of ISO 273, medium series, tapping drills of ISO 2306 (major diameter less pitch). Inch: free fit
/// and the tapping drill for 75 % thread of the tap and clearance drill chart (ASME B1.1 threads). Figures and how well they
/// are confirmed: shared/check-values.md section 6; the tapping drills of M2 and M2.5 are from memory (D − P).
/// </remarks>
/// <param name="Thread">Designation, such as <c>M6</c> or <c>1/4-20</c>.</param>
/// <param name="Clearance">Diameter of the hole the screw passes, mm.</param>
/// <param name="Tapping">Diameter of the drill before tapping, mm.</param>
/// <param name="DrillNames">What the two drills are called in the shop: clearance, tapping.</param>
public sealed record Fastener(string Thread, double Clearance, double Tapping, (string Clearance, string Tapping) DrillNames)
{
    private const double Inch = MeasureText.MillimetresPerInch;

    /// <summary>All threads known, smallest first: metric, then inch.</summary>
    public static ImmutableArray<Fastener> All { get; } =
    [
        Metric("M2", 2.4, 1.6),
        Metric("M2.5", 2.9, 2.05),
        Metric("M3", 3.4, 2.5),
        Metric("M4", 4.5, 3.3),
        Metric("M5", 5.5, 4.2),
        Metric("M6", 6.6, 5.0),
        Metric("M8", 9.0, 6.8),
        new("4-40", 0.1285 * Inch, 0.0890 * Inch, ("#30", "#43")),
        new("6-32", 0.1495 * Inch, 0.1065 * Inch, ("#25", "#36")),
        new("8-32", 0.1770 * Inch, 0.1360 * Inch, ("#16", "#29")),
        new("10-24", 0.2010 * Inch, 0.1495 * Inch, ("#7", "#25")),
        new("10-32", 0.2010 * Inch, 0.1590 * Inch, ("#7", "#21")),
        new("1/4-20", 0.2660 * Inch, 0.2010 * Inch, ("H", "#7")),
    ];

    /// <summary>The fastener of a designation, or null.</summary>
    public static Fastener? Find(string thread) =>
        All.FirstOrDefault(fastener => string.Equals(fastener.Thread, thread, StringComparison.OrdinalIgnoreCase));

    private static Fastener Metric(string thread, double clearance, double tapping) => new(
        thread,
        clearance,
        tapping,
        (FormattableString.Invariant($"{clearance} mm"), FormattableString.Invariant($"{tapping} mm")));
}
