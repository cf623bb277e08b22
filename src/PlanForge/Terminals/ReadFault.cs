namespace PlanForge.Terminals;

/// <summary>Why a file cannot be read, in the words of messages.</summary>
internal static class ReadFault
{
    /// <summary>The reason.</summary>
    /// <param name="path">The file.</param>
    /// <param name="fault">What reading it ended with.</param>
    /// <param name="wanted">What should have stood there: <c>a description</c>.</param>
    public static string ReasonOf(string path, Exception fault, string wanted) => fault switch
    {
        FileNotFoundException or DirectoryNotFoundException => "there is no such file",
        _ when Directory.Exists(path) => $"this is a folder, not {wanted}",
        _ => $"cannot be read: {fault.Message}",
    };
}
