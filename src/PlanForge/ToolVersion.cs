namespace PlanForge;

/// <summary>The version of the program as files and the command line state it.</summary>
internal static class ToolVersion
{
    /// <summary>Such as <c>0.1.0</c>.</summary>
    public static string Text { get; } = typeof(ToolVersion).Assembly.GetName().Version!.ToString(3);

    /// <summary>Program and version, as plans and PDFs name what made them.</summary>
    public static string Producer => $"PlanForge {Text}";
}
