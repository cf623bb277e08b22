namespace PlanForge.Tests;

/// <summary>A folder of a test's own, gone when the test ends.</summary>
internal sealed class TestFolder : IDisposable
{
    public string Root { get; } = Directory.CreateTempSubdirectory("planforge-test-").FullName;

    public string this[string path] => Path.Combine(Root, path);

    /// <summary>Writes a text file, with its folders, and gives its full path.</summary>
    public string Write(string path, string text)
    {
        var full = this[path];
        Directory.CreateDirectory(Path.GetDirectoryName(full)!);
        File.WriteAllText(full, text);
        return full;
    }

    public string Read(string path) => File.ReadAllText(this[path]);

    /// <summary>Every file and folder below a folder, hidden ones too, as sorted relative paths; folders end with a slash.</summary>
    public string[] Everything(string path = "")
    {
        var folder = new DirectoryInfo(this[path]);
        return [.. folder.EnumerateFileSystemInfos("*", SearchOption.AllDirectories)
            .Select(entry => Path.GetRelativePath(folder.FullName, entry.FullName) + (entry is DirectoryInfo { LinkTarget: null } ? "/" : ""))
            .Order(StringComparer.Ordinal)];
    }

    public void Dispose() => Directory.Delete(Root, recursive: true);
}
