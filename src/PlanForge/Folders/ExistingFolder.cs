using PlanForge.CommandLine;

namespace PlanForge.Folders;

/// <summary>What stands where a design's folder is to be written.</summary>
/// <param name="Ours">Paths that an earlier run wrote, whether they still exist or not.</param>
/// <param name="Others">Files and links of the user's, sorted; paths inside the folder with <c>/</c>.</param>
/// <param name="OtherFolders">Folders of the user's that hold nothing, sorted.</param>
/// <param name="Before">What the last run drew; null where there was none.</param>
/// <param name="HistoryFile">The history as the last run left it; empty for none.</param>
/// <param name="Mode">Who may read and write the folder, or null where there is none or the system knows no modes.</param>
internal sealed record ExistingFolder(
    IReadOnlySet<string> Ours,
    IReadOnlyList<string> Others,
    IReadOnlyList<string> OtherFolders,
    DrawnState? Before,
    ReadOnlyMemory<byte> HistoryFile,
    UnixFileMode? Mode)
{
    /// <summary>Looks at a folder; one that is not there or is empty holds nothing of anybody's.</summary>
    /// <param name="folder">The folder.</param>
    /// <param name="known">What this process wrote there.</param>
    /// <exception cref="FolderFault">It is a file or read-only, or it holds things and no manifest of ours.</exception>
    public static ExistingFolder Of(string folder, WrittenFiles known)
    {
        if (File.Exists(folder))
        {
            throw new FolderFault(folder, "a file stands where the folder is to be written");
        }

        if (!Directory.Exists(folder))
        {
            return new(new HashSet<string>(), [], [], null, default, null);
        }

        UnixFileMode? mode = OperatingSystem.IsWindows() ? null : File.GetUnixFileMode(folder);
        if (mode is { } bits && !bits.HasFlag(UnixFileMode.UserWrite))
        {
            throw new FolderFault(folder, "the folder is read-only");
        }

        if (IsEmpty(folder))
        {
            return new(new HashSet<string>(), [], [], null, default, mode);
        }

        if ((known.ManifestAsWritten() ?? Manifest.In(folder)) is not { } manifest)
        {
            throw new FolderFault(
                folder,
                $"the folder holds files but no {Manifest.FileName} of {Syntax.Program}; empty it or choose another with {Syntax.To.Name}");
        }

        var ours = new HashSet<string>(manifest.Paths, StringComparer.Ordinal) { Manifest.FileName, History.FileName };
        var others = new List<string>();
        var otherFolders = new List<string>();
        Collect(new(folder), "", ours, others, otherFolders);
        others.Sort(StringComparer.Ordinal);
        otherFolders.Sort(StringComparer.Ordinal);
        return new(ours, others, otherFolders, manifest.State, History.ReadFile(folder), mode);
    }

    public static bool IsEmpty(string folder) => !Directory.EnumerateFileSystemEntries(folder).Any();

    private static void Collect(
        DirectoryInfo folder, string prefix, HashSet<string> ours, List<string> others, List<string> otherFolders)
    {
        foreach (var entry in folder.EnumerateFileSystemInfos())
        {
            var path = prefix + entry.Name;
            if (entry is not DirectoryInfo inner || entry.LinkTarget is not null)
            {
                if (!ours.Contains(path))
                {
                    others.Add(path);
                }
            }
            else if (IsEmpty(inner.FullName))
            {
                otherFolders.Add(path);
            }
            else
            {
                Collect(inner, path + "/", ours, others, otherFolders);
            }
        }
    }
}
