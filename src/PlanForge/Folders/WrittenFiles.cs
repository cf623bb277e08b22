namespace PlanForge.Folders;

/// <summary>
/// The files that this process wrote to a folder, with size and time stamp: a file that still has both need not be read again to know
/// that it holds the same bytes.
/// </summary>
internal sealed class WrittenFiles
{
    private readonly Dictionary<string, Known> _files = new(StringComparer.Ordinal);

    // That of the run before and that of this one.
    private readonly Dictionary<OutputFile, Manifest?> _manifests = new(ReferenceEqualityComparer.Instance);
    private string _folder = "";

    /// <summary>The files that the last run left as they were and that still are: likely the next one will leave them too.</summary>
    public IEnumerable<string> Steady => _files.Where(file => file.Value.IsSteady && IsAsWritten(file.Key, file.Value)).Select(file => file.Key);

    /// <summary>Says which folder is written; what is known of another is forgotten.</summary>
    public void Begin(string folder)
    {
        if (_folder != folder)
        {
            _files.Clear();
            _manifests.Clear();
            _folder = folder;
        }
    }

    /// <summary>True when a path of the folder is a plain file as it was when this very content was written there; it is steady then.</summary>
    public bool IsAsWritten(string path, OutputFile file)
    {
        if (!IsOf(path, file) || !IsAsWritten(path, _files[path]))
        {
            return false;
        }

        _files[path] = _files[path] with { IsSteady = true };
        return true;
    }

    /// <summary>True when this very content was written to a path, whatever became of it.</summary>
    public bool IsOf(string path, OutputFile file) => _files.TryGetValue(path, out var known) && ReferenceEquals(known.File, file);

    /// <summary>Remembers a file that is about to be put in its place.</summary>
    /// <param name="path">Its place in the folder.</param>
    /// <param name="file">What it holds.</param>
    /// <param name="staged">Where it is now; putting it in its place changes neither size nor time stamp.</param>
    public void Remember(string path, OutputFile file, string staged)
    {
        var info = new FileInfo(staged);
        _files[path] = new(file, info.Length, info.LastWriteTimeUtc, false);
    }

    /// <summary>Forgets all files but those of some paths, and manifests but the last.</summary>
    public void ForgetAllBut(IReadOnlySet<string> paths)
    {
        foreach (var path in _files.Keys)
        {
            if (!paths.Contains(path))
            {
                _files.Remove(path);
            }
        }

        var last = _files.GetValueOrDefault(Manifest.FileName)?.File;
        foreach (var manifest in _manifests.Keys)
        {
            if (!ReferenceEquals(manifest, last))
            {
                _manifests.Remove(manifest);
            }
        }
    }

    /// <summary>Remembers what a file holds that is a manifest.</summary>
    public void Remember(OutputFile file, Manifest manifest) => _manifests[file] = manifest;

    /// <summary>A manifest read; one is read only once.</summary>
    public Manifest? Read(OutputFile manifest)
    {
        if (!_manifests.TryGetValue(manifest, out var read))
        {
            _manifests[manifest] = read = Manifest.Read(manifest.Content);
        }

        return read;
    }

    /// <summary>The manifest in the folder; null when it is not as this process wrote it.</summary>
    public Manifest? ManifestAsWritten() =>
        _files.TryGetValue(Manifest.FileName, out var known) && IsAsWritten(Manifest.FileName, known) ? Read(known.File) : null;

    private bool IsAsWritten(string path, Known known)
    {
        var info = new FileInfo(Path.Combine(_folder, path));
        return info.Exists && !info.Attributes.HasFlag(FileAttributes.ReparsePoint) && info.Length == known.Length && info.LastWriteTimeUtc == known.Time;
    }

    private sealed record Known(OutputFile File, long Length, DateTime Time, bool IsSteady);
}
