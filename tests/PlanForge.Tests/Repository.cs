namespace PlanForge.Tests;

/// <summary>The tree the tests were built from.</summary>
internal static class Repository
{
    public static string Root { get; } = Find(new(AppContext.BaseDirectory));

    /// <summary>The example descriptions.</summary>
    public static string[] Designs { get; } = [.. Directory.GetFiles(Path.Combine(Root, "designs"), "*.yaml").Order(StringComparer.Ordinal)];

    private static string Find(DirectoryInfo folder) =>
        File.Exists(Path.Combine(folder.FullName, "PlanForge.sln")) ? folder.FullName : Find(folder.Parent!);
}
