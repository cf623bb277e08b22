namespace PlanForge.Following;

/// <summary>
/// Has the system tell when files change, appear, vanish or are renamed. Some file systems tell nothing, and a folder that is replaced
/// is lost sight of: whoever uses this looks at the files now and then too.
/// </summary>
/// <param name="changed">Called on any thread.</param>
internal sealed class FileNotices(Action changed) : IDisposable
{
    private readonly List<FileSystemWatcher> _watchers = [];

    /// <summary>Watches these files and no others; their folders need not exist, nor the files.</summary>
    /// <param name="paths">Full paths.</param>
    public void Watch(IEnumerable<string> paths)
    {
        Dispose();
        foreach (var folder in paths.GroupBy(path => Path.GetDirectoryName(path)!, StringComparer.Ordinal))
        {
            TryWatch(folder.Key, folder.Select(Path.GetFileName).ToHashSet(StringComparer.OrdinalIgnoreCase));
        }
    }

    public void Dispose()
    {
        _watchers.ForEach(watcher => watcher.Dispose());
        _watchers.Clear();
    }

    // The folder is watched, not the file: an editor that saves by renaming replaces the file.
    private void TryWatch(string folder, HashSet<string?> names)
    {
        FileSystemWatcher? watcher = null;
        try
        {
            watcher = new(folder) { NotifyFilter = NotifyFilters.FileName | NotifyFilters.LastWrite | NotifyFilters.Size };
            watcher.Changed += (_, change) => Tell(change.Name);
            watcher.Created += (_, change) => Tell(change.Name);
            watcher.Deleted += (_, change) => Tell(change.Name);
            watcher.Renamed += (_, change) =>
            {
                Tell(change.OldName);
                Tell(change.Name);
            };
            watcher.Error += (_, _) => changed();
            watcher.EnableRaisingEvents = true;
            _watchers.Add(watcher);
        }
        catch (Exception fault) when (fault is IOException or ArgumentException or UnauthorizedAccessException)
        {
            // There is no such folder, or the system has no more watches to give: the slow look at the files remains.
            watcher?.Dispose();
        }

        void Tell(string? name)
        {
            if (names.Contains(Path.GetFileName(name)))
            {
                changed();
            }
        }
    }
}
