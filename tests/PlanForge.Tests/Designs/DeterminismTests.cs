using System.Diagnostics;

namespace PlanForge.Tests.Designs;

/// <summary>The same description gives the same bytes; and those of the example designs are complete.</summary>
public sealed class DeterminismTests : IDisposable
{
    private readonly TestFolder _folder = new();

    public static TheoryData<string> DesignNames => [.. Repository.Designs.Select(path => Path.GetFileName(path))];

    public void Dispose() => _folder.Dispose();

    [Theory]
    [MemberData(nameof(DesignNames))]
    public void Design_is_drawn_to_the_same_bytes_in_every_culture_and_from_every_folder(string design)
    {
        var first = Draw("one", PathOf(design));
        Assert.Equal(first, Draw("two", PathOf(design)));
        Assert.Equal(first, Hostile.Under(Hostile.German, () => Draw("three", PathOf(design))));
        Assert.Equal(first, Hostile.Under(Hostile.Persian, () => Draw("four", PathOf(design))));
        Assert.Equal(first, Draw("five", CopyOf(design)));
    }

    // The hashes are judged by another program: sha256sum of GNU coreutils.
    [Theory]
    [MemberData(nameof(DesignNames))]
    public void Manifest_lists_every_file_with_the_hash_it_has(string design)
    {
        Draw("one", PathOf(design));
        var folder = Directory.GetDirectories(_folder["one"]).Single();
        var listed = Manifest(folder);
        var there = Directory.GetFiles(folder, "*", SearchOption.AllDirectories).Select(path => Path.GetRelativePath(folder, path));

        Assert.Equal(there.Where(path => path != "manifest.json").Order(StringComparer.Ordinal), listed.Select(file => file.Path));
        Assert.Equal(listed.Select(file => $"{file.Hash}  {file.Path}"), HashesBySha256sum(folder, listed.Select(file => file.Path)));
    }

    [Theory]
    [MemberData(nameof(DesignNames))]
    public void Every_cut_part_has_a_cut_file_of_each_kind(string design)
    {
        Draw("one", PathOf(design));
        var folder = Directory.GetDirectories(_folder["one"]).Single();
        using var report = System.Text.Json.JsonDocument.Parse(File.ReadAllBytes(Path.Combine(folder, "report.json")));
        var cut = report.RootElement.GetProperty("parts").EnumerateArray()
            .Where(part => part.GetProperty("making").GetString() == "cut").Select(part => part.GetProperty("id").GetString()!).ToArray();

        Assert.NotEmpty(cut);
        Assert.Equal(
            cut.SelectMany(id => new[] { $"{id}.dxf", $"{id}.svg" }).Order(StringComparer.Ordinal),
            Directory.GetFiles(Path.Combine(folder, "parts")).Select(path => Path.GetFileName(path)).Order(StringComparer.Ordinal));
        Assert.Equal(
            report.RootElement.GetProperty("sheets").GetArrayLength(), Directory.GetFiles(Path.Combine(folder, "sheets"), "sheet-*.svg").Length);
    }

    private string[] Draw(string to, string path)
    {
        var run = TestTerminal.Run("draw", "-q", path, "--to", _folder[to]);
        Assert.Equal(ExitCode.Done, run.Code);
        return [.. Directory.GetFiles(_folder[to], "*", SearchOption.AllDirectories).Order(StringComparer.Ordinal)
            .Select(file => $"{Path.GetRelativePath(_folder[to], file)} {Convert.ToBase64String(File.ReadAllBytes(file))}")];
    }

    private static string PathOf(string design) => Path.Combine(Repository.Root, "designs", design);

    private string CopyOf(string design)
    {
        Directory.CreateDirectory(_folder["elsewhere"]);
        foreach (var file in Directory.GetFiles(Path.Combine(Repository.Root, "designs")))
        {
            File.Copy(file, Path.Combine(_folder["elsewhere"], Path.GetFileName(file)));
        }

        return Path.Combine(_folder["elsewhere"], design);
    }

    private static (string Path, string Hash)[] Manifest(string folder)
    {
        using var manifest = System.Text.Json.JsonDocument.Parse(File.ReadAllBytes(Path.Combine(folder, "manifest.json")));
        return [.. manifest.RootElement.GetProperty("files").EnumerateArray()
            .Select(file => (file.GetProperty("path").GetString()!, file.GetProperty("sha256").GetString()!))];
    }

    private static string[] HashesBySha256sum(string folder, IEnumerable<string> paths)
    {
        using var process = Process.Start(new ProcessStartInfo("sha256sum", paths) { WorkingDirectory = folder, RedirectStandardOutput = true })!;
        var output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return output.Split('\n', StringSplitOptions.RemoveEmptyEntries);
    }
}
