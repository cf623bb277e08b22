using System.Globalization;

namespace PlanForge.Reports;

/// <summary>Writes how many there are of something.</summary>
internal static class Counts
{
    /// <summary><c>1 sheet</c>, <c>2 sheets</c>.</summary>
    public static string Of(int count, string noun) =>
        $"{count.ToString(CultureInfo.InvariantCulture)} {noun}{(count == 1 ? "" : "s")}";
}
