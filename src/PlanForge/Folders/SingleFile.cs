namespace PlanForge.Folders;

/// <summary>Writes one file as a whole: beside it first, then in its place.</summary>
internal static class SingleFile
{
    /// <summary>What to tell when <see cref="TryWrite"/> left a file alone.</summary>
    public const string AnotherStands = "there is another file of this name; give one with --to, or --force to write over it";

    /// <summary>Writes a file unless another one stands there.</summary>
    /// <param name="path">Where to.</param>
    /// <param name="content">What.</param>
    /// <param name="mayReplace">True to write over another file too.</param>
    /// <returns>False when a file of other content stands there and was left alone.</returns>
    /// <exception cref="IOException">It cannot be written; what stood there before still does.</exception>
    /// <exception cref="UnauthorizedAccessException">It may not be written.</exception>
    public static bool TryWrite(string path, ReadOnlySpan<byte> content, bool mayReplace)
    {
        if (!mayReplace && File.Exists(path) && !File.ReadAllBytes(path).AsSpan().SequenceEqual(content))
        {
            return false;
        }

        Replace(path, content);
        return true;
    }

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
