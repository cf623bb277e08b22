namespace PlanForge.Folders;

/// <summary>
/// The files that this process wrote, with size and time stamp: a file that still has both need not be read again to know that it holds
/// the same bytes.
/// </summary>
internal sealed class WrittenFiles
{
    private readonly Dictionary<string, (OutputFile File, long Length, DateTime Time)> _files = new(StringComparer.Ordinal);

    /// <summary>True when a path is a plain file as it was when this very content was written there.</summary>
    public bool IsAsWritten(string path, OutputFile file)
    {
        if (!_files.TryGetValue(path, out var known) || !ReferenceEquals(known.File, file))
        {
            return false;
        }

        var info = new FileInfo(path);
        return info.Exists && info.LinkTarget is null && info.Length == known.Length && info.LastWriteTimeUtc == known.Time;
    }

    /// <summary>Remembers a file that is about to be put in its place.</summary>
    /// <param name="path">Its place.</param>
    /// <param name="file">What it holds.</param>
    /// <param name="staged">Where it is now; putting it in its place changes neither size nor time stamp.</param>
    public void Remember(string path, OutputFile file, string staged)
    {
        var info = new FileInfo(staged);
        _files[path] = (file, info.Length, info.LastWriteTimeUtc);
    }
}
