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
internal sealed class DesignFolder : IDisposable
{
    private readonly IDisk _disk;
    private readonly WrittenFiles _known;
    private readonly string _given;
    private readonly string _target;
    private readonly string _parent;
    private readonly string _new;
    private readonly string _old;
    private readonly string _lock;
    private readonly HashSet<string> _made = new(StringComparer.Ordinal);
    private readonly HashSet<string> _prepared = new(StringComparer.Ordinal);
    private FileStream? _held;
    private string _spent;

    private DesignFolder(string folder, string target, IDisk disk, WrittenFiles known)
    {
        (_given, _target, _disk, _known) = (folder, target, disk, known);
        _known.Begin(target);
        _parent = Path.GetDirectoryName(target)!;
        var name = Path.GetFileName(target);
        _new = Path.Combine(_parent, $".{name}.planforge-new");
        _old = Path.Combine(_parent, $".{name}.planforge-old");
        _lock = Path.Combine(_parent, $".{name}.planforge-lock");
        _spent = _new;
    }

    /// <summary>Opens a folder to be written, there or not; nobody else can until it is closed again, which clears up beside it.</summary>
    /// <param name="folder">The folder; its parents are made. A link to a folder stays one: what it points to is written.</param>
    /// <param name="disk">The file system.</param>
    /// <param name="known">What earlier runs of this process wrote there; null for nothing.</param>
    /// <exception cref="FolderFault">The file system refuses, or another run writes the folder.</exception>
    public static DesignFolder Open(string folder, IDisk disk, WrittenFiles? known = null) => Guarded(folder, () =>
    {
        var target = new DirectoryInfo(Path.TrimEndingDirectorySeparator(Path.GetFullPath(folder)));
        var opened = new DesignFolder(folder, target.LinkTarget is null ? target.FullName : target.ResolveLinkTarget(true)!.FullName, disk, known ?? new());
        opened.Begin();
        return opened;
    });

    /// <summary>
    /// Sets up beforehand what will likely stay as it is: the files of this process that its last run left as they were. It saves time
    /// while there is none to lose; what comes out differently is made anew. What becomes of such a file in its old place from here on
    /// does not count.
    /// </summary>
    /// <exception cref="FolderFault">The file system refuses.</exception>
    public void Prepare() => Guarded(_given, () =>
    {
        var existing = ExistingFolder.Of(_target, _known);
        DropLeftOvers();
        Directory.CreateDirectory(_new);
        foreach (var path in _known.Steady.Where(existing.Ours.Contains))
        {
            _disk.Keep(Path.Combine(_target, path), Place(path));
            _prepared.Add(path);
        }

        return true;
    });

    /// <summary>Puts the files of a design where the folder's earlier files are; files of the user's stay. Once.</summary>
    /// <param name="output">The files.</param>
    /// <param name="stop">Asked until the folders change places, never after.</param>
    /// <returns>What was written, kept and removed.</returns>
    /// <exception cref="FolderFault">The file system refuses, or the folder is not ours to replace.</exception>
    /// <exception cref="OperationCanceledException">The run was stopped.</exception>
    public FolderChanges Write(DesignOutput output, CancellationToken stop)
    {
        _known.Remember(output.Files[^1], output.Manifest);
        return Write(output.Files, stop);
    }

    /// <summary>Puts files where the folder's earlier files are; files of the user's stay. Once.</summary>
    /// <param name="files">All files, the manifest among them.</param>
    /// <param name="stop">Asked until the folders change places, never after.</param>
    /// <returns>What was written, kept and removed.</returns>
    /// <exception cref="FolderFault">The file system refuses, or the folder is not ours to replace.</exception>
    /// <exception cref="OperationCanceledException">The run was stopped.</exception>
    public FolderChanges Write(IReadOnlyList<OutputFile> files, CancellationToken stop) => Guarded(_given, () =>
    {
        var existing = ExistingFolder.Of(_target, _known);
        var all = WithHistory(files, existing);
        var paths = all.Select(file => file.Path).ToHashSet(StringComparer.Ordinal);
        if (_prepared.Count == 0 || !_prepared.IsSubsetOf(paths))
        {
            DropLeftOvers();
            _prepared.Clear();
            _made.Clear();
        }

        var kept = Stage(all, existing, stop);
        KeepOthers(paths, existing, stop);
        if (existing.Mode is { } mode && !OperatingSystem.IsWindows())
        {
            File.SetUnixFileMode(_new, mode);
        }

        stop.ThrowIfCancellationRequested();
        var removed = existing.Ours.Count(path => !paths.Contains(path) && File.Exists(Path.Combine(_target, path)));
        PutInPlace();
        _known.ForgetAllBut(paths);
        return new FolderChanges(all.Count - kept, kept, removed, existing.Before);
    });

    /// <summary>Drops what is of no use any more beside the folder and lets others write it.</summary>
    public void Dispose()
    {
        if (_held is { } held)
        {
            if (Directory.Exists(_spent))
            {
                TryDelete(_spent);
            }

            _held = null;
            held.Dispose();
        }
    }

    private static T Guarded<T>(string folder, Func<T> act)
    {
        try
        {
            return act();
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            throw new FolderFault(folder, $"the folder cannot be written: {fault.Message}", fault);
        }
    }

    private void Begin()
    {
        Directory.CreateDirectory(_parent);
        _held = Lock();
        try
        {
            BringBack();
        }
        catch
        {
            _held.Dispose();
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

    private IReadOnlyList<OutputFile> WithHistory(IReadOnlyList<OutputFile> files, ExistingFolder existing)
    {
        var manifest = files.LastOrDefault(file => file.Path == Manifest.FileName);
        return manifest is not null && _known.Read(manifest)?.State is { } now && History.After(existing.Before, existing.HistoryFile, now) is { } history
            ? [.. files, history]
            : files;
    }

    /// <summary>Writes the new folder; returns how many files it shares with the old one.</summary>
    private int Stage(IReadOnlyList<OutputFile> files, ExistingFolder existing, CancellationToken stop)
    {
        var kept = 0;
        var writing = new List<(OutputFile File, string Path)>();
        Directory.CreateDirectory(_new);
        foreach (var file in files)
        {
            stop.ThrowIfCancellationRequested();
            var path = Place(file.Path);
            var before = Path.Combine(_target, file.Path);
            var isOurs = existing.Ours.Contains(file.Path);
            if (_prepared.Contains(file.Path))
            {
                if (_known.IsOf(file.Path, file))
                {
                    kept++;
                    continue;
                }

                File.Delete(path);
            }
            else if (isOurs && _known.IsAsWritten(file.Path, file))
            {
                _disk.Keep(before, path);
                kept++;
                continue;
            }

            if (isOurs && HasContent(before, file.Content.Span))
            {
                _disk.Keep(before, path);
                kept++;
            }
            else
            {
                writing.Add((file, path));
                continue;
            }

            _known.Remember(file.Path, file, path);
        }

        WriteNew(writing, stop);
        foreach (var (file, path) in writing)
        {
            _known.Remember(file.Path, file, path);
        }

        return kept;
    }

    // Two files at a time: most of making one is waiting for the system.
    private void WriteNew(List<(OutputFile File, string Path)> files, CancellationToken stop)
    {
        var others = Task.Run(() => WriteEvery(second: 1), CancellationToken.None);
        try
        {
            WriteEvery(second: 0);
        }
        finally
        {
            // Nobody may write any more when the folder is dropped.
            others.ConfigureAwait(ConfigureAwaitOptions.SuppressThrowing).GetAwaiter().GetResult();
        }

        others.GetAwaiter().GetResult();

        void WriteEvery(int second)
        {
            for (var i = second; i < files.Count; i += 2)
            {
                stop.ThrowIfCancellationRequested();
                _disk.Write(files[i].Path, files[i].File.Content.Span);
            }
        }
    }

    private void KeepOthers(HashSet<string> written, ExistingFolder existing, CancellationToken stop)
    {
        foreach (var other in existing.Others)
        {
            stop.ThrowIfCancellationRequested();
            if (written.Contains(other))
            {
                throw new FolderFault(Path.Combine(_target, other), "this file is not ours and stands where one of ours belongs; move it away");
            }

            _disk.Keep(Path.Combine(_target, other), Place(other));
        }

        foreach (var other in existing.OtherFolders)
        {
            Directory.CreateDirectory(Path.Combine(_new, other));
        }
    }

    /// <summary>The place of a file in the new folder; the folders that lead to it are made.</summary>
    private string Place(string file)
    {
        var path = Path.Combine(_new, file);
        var folder = Path.GetDirectoryName(path)!;
        if (_made.Add(folder))
        {
            Directory.CreateDirectory(folder);
        }

        return path;
    }

    /// <summary>True when a file is a plain one and holds just these bytes: then it need not be written again.</summary>
    private static bool HasContent(string path, ReadOnlySpan<byte> content)
    {
        var file = new FileInfo(path);
        return file.Exists && !file.Attributes.HasFlag(FileAttributes.ReparsePoint) && file.Length == content.Length && content.SequenceEqual(File.ReadAllBytes(path));
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

        _spent = _old;
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
