namespace PlanForge.Tests.Commands;

/// <summary>What <c>draw</c> says and leaves alone when a design is drawn again.</summary>
public sealed class DrawAgainTests : IDisposable
{
    private static readonly DateTime Past = new(2001, 2, 3, 4, 5, 6, DateTimeKind.Utc);

    private readonly TestFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Nothing_is_written_when_nothing_changed()
    {
        Draw(SmallDesign.Text);
        Age();

        var said = Draw("# a remark\n" + SmallDesign.Text);

        // Only the copy of the description, the plans that carry it, and the manifest that lists them.
        Assert.Contains("; 4 files written, ", said, StringComparison.Ordinal);
        Assert.Contains("  nothing to print or cut again\n", said, StringComparison.Ordinal);
        Assert.Equal(["description/a.yaml", "manifest.json", "plan-a4.pdf", "plan.pdf"], Fresh());
        Assert.Contains(" 0 files written, ", Draw("# a remark\n" + SmallDesign.Text), StringComparison.Ordinal);
    }

    [Fact]
    public void What_must_be_made_again_is_named()
    {
        Draw(SmallDesign.Text);

        var said = Draw(SmallDesign.Text.Replace("thickness: 3}", "thickness: 4}", StringComparison.Ordinal));

        Assert.Contains("\n  cut again: Former F1\n", said, StringComparison.Ordinal);
        Assert.Contains("\n  print again: sheet ", said, StringComparison.Ordinal);
        Assert.DoesNotContain("no longer needed", said, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_no_longer_there_is_named_and_its_files_go()
    {
        var two = SmallDesign.Text + "  - {name: F2, station: 200, thickness: 3}\n";
        Draw(two);
        Assert.Contains("parts/former-F2.dxf", _folder.Everything("out/" + SmallDesign.FolderName));

        var said = Draw(SmallDesign.Text);

        Assert.Contains("\n  no longer needed: Former F2\n", said, StringComparison.Ordinal);
        Assert.Contains(", 2 removed\n", said, StringComparison.Ordinal);
        Assert.DoesNotContain("parts/former-F2.dxf", _folder.Everything("out/" + SmallDesign.FolderName));
    }

    [Fact]
    public void A_new_revision_letter_makes_no_sheet_stale()
    {
        Draw(SmallDesign.Text);
        Assert.Contains("  nothing to print or cut again\n", Draw(SmallDesign.Text + "revision: C\n"), StringComparison.Ordinal);
    }

    private string Draw(string text)
    {
        var run = TestTerminal.Run("draw", _folder.Write("a.yaml", text), "--to", _folder["out"]);
        Assert.Equal(ExitCode.Done, run.Code);
        return run.Results;
    }

    private void Age()
    {
        foreach (var file in Files())
        {
            File.SetLastWriteTimeUtc(file, Past);
        }
    }

    // What has another time than long ago was written since.
    private IEnumerable<string> Fresh() => Files().Where(file => File.GetLastWriteTimeUtc(file) != Past)
        .Select(file => Path.GetRelativePath(_folder["out/" + SmallDesign.FolderName], file)).Order(StringComparer.Ordinal);

    private string[] Files() => Directory.GetFiles(_folder["out/" + SmallDesign.FolderName], "*", SearchOption.AllDirectories);
}
