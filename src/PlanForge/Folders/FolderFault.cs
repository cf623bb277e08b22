namespace PlanForge.Folders;

/// <summary>A folder cannot be written; what stood there before still does.</summary>
/// <param name="path">The file or folder at fault.</param>
/// <param name="message">What is wrong: one sentence without a full stop.</param>
/// <param name="cause">What the system reported, or null.</param>
internal sealed class FolderFault(string path, string message, Exception? cause = null) : Exception(message, cause)
{
    /// <summary>The file or folder at fault.</summary>
    public string Path => path;
}
