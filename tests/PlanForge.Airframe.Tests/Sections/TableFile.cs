using System.Globalization;

namespace PlanForge.Airframe.Tests.Sections;

/// <summary>The data files beside these tests; the first line of each names its source.</summary>
internal static class TableFile
{
    /// <summary>The rows of numbers of a table; lines that start with # are remarks.</summary>
    public static double[][] Rows(string name) =>
        [.. Text(name).Split('\n')
            .Where(line => line.Length > 0 && line[0] != '#')
            .Select(line => line.Split(' ', StringSplitOptions.RemoveEmptyEntries)
                .Select(number => double.Parse(number, NumberStyles.Float, CultureInfo.InvariantCulture))
                .ToArray())];

    /// <summary>The file as it is.</summary>
    public static string Text(string name) => File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Sections", "Data", name));
}
