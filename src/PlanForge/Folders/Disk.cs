namespace PlanForge.Folders;

/// <summary>The file system.</summary>
internal sealed class Disk : IDisk
{
    public void Write(string path, ReadOnlySpan<byte> content)
    {
        using var handle = File.OpenHandle(path, FileMode.CreateNew, FileAccess.Write, FileShare.None, FileOptions.None, content.Length);
        RandomAccess.Write(handle, content, 0);
    }

    public void Keep(string existing, string path)
    {
        if (NativeCalls.TryLink(existing, path))
        {
            return;
        }

        var source = new FileInfo(existing);
        if (source.LinkTarget is { } target)
        {
            File.CreateSymbolicLink(path, target);
            return;
        }

        File.Copy(existing, path);
        File.SetLastWriteTimeUtc(path, source.LastWriteTimeUtc);
    }

    public bool TryExchange(string one, string other) => NativeCalls.TryExchange(one, other);

    public void Move(string from, string to) => Directory.Move(from, to);
}
