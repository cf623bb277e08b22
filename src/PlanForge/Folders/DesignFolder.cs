namespace PlanForge.Folders;

/// <summary>
/// Writes a design's folder as a whole: beside it first, then in its place in one step. A run that fails or is stopped leaves
/// the folder as it was; a run that was killed is cleared up by the next one.
/// </summary>
/// <remarks>
/// Two folders beside the target serve it, both hidden: <c>.NAME.planforge-new</c> is being written, and
/// <c>.NAME.planforge-old</c> stands aside for a moment where the system cannot swap folders in one step. A lock file keeps a
/// second run out. Nothing is promised for a loss of power: files are not forced to the disk.
/// </remarks>
internal sealed class DesignFolder
{
    private readonly IDisk _disk;
    private readonly WrittenFiles _known;
    private readonly string _target;
    private readonly string _parent;
    private readonly string _new;
    private readonly string _old;
    private readonly string _lock;

    private DesignFolder(string target, IDisk disk, WrittenFiles known)
    {
        (_disk, _known) = (disk, known);
        _target = target;
        _parent = Path.GetDirectoryName(target)!;
        var name = Path.GetFileName(target);
        _new = Path.Combine(_parent, $".{name}.planforge-new");
        _old = Path.Combine(_parent, $".{name}.planforge-old");
        _lock = Path.Combine(_parent, $".{name}.planforge-lock");
    }

    /// <summary>Puts files where a folder's earlier files are; files of the user's stay.</summary>
    /// <param name="folder">The folder to write; its parents are made. A link to a folder stays one: what it points to is written.</param>
    /// <param name="files">All files, the manifest among them.</param>
    /// <param name="disk">The file system.</param>
    /// <param name="stop">Asked until the folders change places, never after.</param>
    /// <param name="known">What earlier runs of this process wrote there; null for nothing.</param>
    /// <returns>What was written, kept and removed.</returns>
    /// <exception cref="FolderFault">The file system refuses, or the folder is not ours to replace.</exception>
    /// <exception cref="OperationCanceledException">The run was stopped.</exception>
    public static FolderChanges Write(string folder, IReadOnlyList<OutputFile> files, IDisk disk, CancellationToken stop, WrittenFiles? known = null)
    {
        try
        {
            var target = new DirectoryInfo(Path.TrimEndingDirectorySeparator(Path.GetFullPath(folder)));
            return new DesignFolder(target.LinkTarget is null ? target.FullName : target.ResolveLinkTarget(true)!.FullName, disk, known ?? new()).Write(files, stop);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            throw new FolderFault(folder, $"the folder cannot be written: {fault.Message}", fault);
        }
    }

    private FolderChanges Write(IReadOnlyList<OutputFile> files, CancellationToken stop)
    {
        Directory.CreateDirectory(_parent);
        using var held = Lock();
        BringBack();
        var existing = ExistingFolder.Of(_target);
        DropLeftOvers();
        try
        {
            var all = WithHistory(files, existing);
            var kept = Stage(all, existing, stop);
            var removed = existing.Ours.Except(all.Select(file => file.Path)).Count(path => File.Exists(Path.Combine(_target, path)));
            PutInPlace();
            return new(all.Count - kept, kept, removed, existing.Before);
        }
        catch
        {
            TryDelete(_new);
            throw;
        }
    }

    private FileStream Lock()
    {
        try
        {
            return new(_lock, FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None, 1, FileOptions.DeleteOnClose);
        }
        catch (IOException fault) when (File.Exists(_lock))
        {
            throw new FolderFault(_target, "another run is writing this folder", fault);
        }
    }

    /// <summary>Undoes the first half of a swap by two renames whose second half a killed run never came to.</summary>
    private void BringBack()
    {
        if (!Directory.Exists(_old))
        {
            return;
        }

        if (Directory.Exists(_target) && ExistingFolder.IsEmpty(_target))
        {
            Directory.Delete(_target);
        }

        if (!Path.Exists(_target))
        {
            _disk.Move(_old, _target);
        }
    }

    private void DropLeftOvers()
    {
        foreach (var folder in new[] { _old, _new })
        {
            if (Directory.Exists(folder))
            {
                Directory.Delete(folder, recursive: true);
            }
        }
    }

    private static IReadOnlyList<OutputFile> WithHistory(IReadOnlyList<OutputFile> files, ExistingFolder existing)
    {
        var manifest = files.LastOrDefault(file => file.Path == Manifest.FileName);
        return manifest is not null && Manifest.Read(manifest.Content)?.State is { } now && History.After(existing.Before, existing.HistoryFile, now) is { } history
            ? [.. files, history]
            : files;
    }

    /// <summary>Writes the new folder; returns how many files it shares with the old one.</summary>
    private int Stage(IReadOnlyList<OutputFile> files, ExistingFolder existing, CancellationToken stop)
    {
        var kept = 0;
        Directory.CreateDirectory(_new);
        var folders = new HashSet<string>(StringComparer.Ordinal) { _new };
        foreach (var file in files)
        {
            stop.ThrowIfCancellationRequested();
            var path = Prepare(file.Path, folders);
            var before = Path.Combine(_target, file.Path);
            var isOurs = existing.Ours.Contains(file.Path);
            var isKnown = isOurs && _known.IsAsWritten(before, file);
            if (isKnown || (isOurs && HasContent(before, file.Content.Span)))
            {
                _disk.Keep(before, path);
                kept++;
            }
            else
            {
                _disk.Write(path, file.Content.Span);
            }

            if (!isKnown)
            {
                _known.Remember(before, file, path);
            }
        }

        KeepOthers(files, existing, folders, stop);
        if (existing.Mode is { } mode && !OperatingSystem.IsWindows())
        {
            File.SetUnixFileMode(_new, mode);
        }

        stop.ThrowIfCancellationRequested();
        return kept;
    }

    private void KeepOthers(
        IReadOnlyList<OutputFile> files, ExistingFolder existing, HashSet<string> folders, CancellationToken stop)
    {
        var written = files.Select(file => file.Path).ToHashSet(StringComparer.Ordinal);
        foreach (var other in existing.Others)
        {
            stop.ThrowIfCancellationRequested();
            if (written.Contains(other))
            {
                throw new FolderFault(Path.Combine(_target, other), "this file is not ours and stands where one of ours belongs; move it away");
            }

            _disk.Keep(Path.Combine(_target, other), Prepare(other, folders));
        }

        foreach (var other in existing.OtherFolders)
        {
            Directory.CreateDirectory(Path.Combine(_new, other));
        }
    }

    private string Prepare(string file, HashSet<string> folders)
    {
        var path = Path.Combine(_new, file);
        var folder = Path.GetDirectoryName(path)!;
        if (folders.Add(folder))
        {
            Directory.CreateDirectory(folder);
        }

        return path;
    }

    /// <summary>True when a file is a plain one and holds just these bytes: then it need not be written again.</summary>
    private static bool HasContent(string path, ReadOnlySpan<byte> content)
    {
        var file = new FileInfo(path);
        return file.Exists && file.LinkTarget is null && file.Length == content.Length && content.SequenceEqual(File.ReadAllBytes(path));
    }

    private void PutInPlace()
    {
        if (!Directory.Exists(_target))
        {
            _disk.Move(_new, _target);
            return;
        }

        if (_disk.TryExchange(_new, _target))
        {
            TryDelete(_new);
            return;
        }

        _disk.Move(_target, _old);
        try
        {
            _disk.Move(_new, _target);
        }
        catch
        {
            _disk.Move(_old, _target);
            throw;
        }

        TryDelete(_old);
    }

    /// <summary>Drops a folder nobody needs any more; what cannot be dropped now is tried again by the next run.</summary>
    private static void TryDelete(string folder)
    {
        try
        {
            Directory.Delete(folder, recursive: true);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            // The result stands either way: an error here would deny it.
        }
    }
}
