using System.Text;
using System.Text.Json;
using PlanForge.Folders;

namespace PlanForge.Tests.Folders;

public sealed class ManifestTests
{
    // SHA-256 of "abc": FIPS 180-2, appendix B.1 (from memory).
    private const string HashOfAbc = "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad";

    [Fact]
    public void Manifest_states_size_and_hash_of_every_file_sorted_by_path()
    {
        var manifest = Manifest.Of(Empty with { Design = "Oxbow 1420" }, new("a.pdf", []), [File("parts/b.dxf", "abc"), File("parts/B.dxf", ""), File("a.pdf", "abc")]);

        Assert.Equal("manifest.json", manifest.Path);
        using var document = JsonDocument.Parse(manifest.Content);
        var root = document.RootElement;
        Assert.Equal("Oxbow 1420", root.GetProperty("design").GetString());
        Assert.Equal(ToolVersion.Text, root.GetProperty("planforge").GetString());
        var files = root.GetProperty("files").EnumerateArray().ToArray();
        Assert.Equal(["a.pdf", "parts/B.dxf", "parts/b.dxf"], files.Select(file => file.GetProperty("path").GetString()));
        Assert.Equal(3, files[0].GetProperty("bytes").GetInt32());
        Assert.Equal(HashOfAbc, files[0].GetProperty("sha256").GetString());
    }

    [Fact]
    public void Manifest_names_its_files_when_read() => Assert.Equal(
        ["a.pdf"],
        Manifest.Read(Manifest.Of(Empty, new("a.pdf", []), [File("a.pdf", "abc")]).Content)!.Paths.Order(StringComparer.Ordinal));

    [Theory]
    [InlineData("")]
    [InlineData("no JSON")]
    [InlineData("[]")]
    [InlineData("""{"files": []}""")]                                      // another program's list
    [InlineData("""{"planforge": "0.1.0"}""")]
    [InlineData("""{"planforge": "0.1.0", "files": ["a.pdf"]}""")]
    [InlineData("""{"planforge": "0.1.0", "files": [{"path": 1}]}""")]
    public void Other_text_is_no_manifest(string text) => Assert.Null(Manifest.Read(Encoding.UTF8.GetBytes(text)));

    private static DrawnState Empty => new("x", "", "", ToolVersion.Text, [], []);

    private static OutputFile File(string path, string text) => new(path, Encoding.UTF8.GetBytes(text));
}
