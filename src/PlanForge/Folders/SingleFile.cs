namespace PlanForge.Folders;

/// <summary>Writes one file as a whole: beside it first, then in its place.</summary>
internal static class SingleFile
{
    /// <summary>Writes a file, over the one that stands there.</summary>
    /// <exception cref="IOException">It cannot be written; what stood there before still does.</exception>
    /// <exception cref="UnauthorizedAccessException">It may not be written.</exception>
    public static void Replace(string path, ReadOnlySpan<byte> content)
    {
        var full = Path.GetFullPath(path);
        var beside = Path.Combine(Path.GetDirectoryName(full)!, $".{Path.GetFileName(full)}.planforge-new");
        try
        {
            File.WriteAllBytes(beside, content);
            File.Move(beside, full, overwrite: true);
        }
        catch
        {
            File.Delete(beside);
            throw;
        }
    }
}
