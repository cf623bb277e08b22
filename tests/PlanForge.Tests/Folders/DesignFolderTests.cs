using System.Runtime.Versioning;
using System.Text;
using PlanForge.Folders;

namespace PlanForge.Tests.Folders;

// Permissions and links are those of Unix.
[UnsupportedOSPlatform("windows")]
public sealed class DesignFolderTests : IDisposable
{
    private readonly TestFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Second_run_replaces_the_first_and_leaves_nothing_beside_it(bool canExchange)
    {
        var disk = new FaultyDisk { CanExchange = canExchange };
        Write(disk, ("plan.pdf", "one"), ("parts/former-F1.dxf", "one"));
        Write(disk, ("plan.pdf", "two"), ("parts/former-F2.dxf", "two"));

        Assert.Equal(["x/", "x/manifest.json", "x/parts/", "x/parts/former-F2.dxf", "x/plan.pdf"], _folder.Everything("out"));
        Assert.Equal("two", _folder.Read("out/x/plan.pdf"));
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Files_of_the_users_stay_as_they_are(bool canExchange)
    {
        var disk = new FaultyDisk { CanExchange = canExchange };
        var time = new DateTime(2001, 2, 3, 4, 5, 6, DateTimeKind.Utc);
        Write(disk, ("parts/former-F1.dxf", "one"));
        File.SetLastWriteTimeUtc(_folder.Write("out/x/parts/mine.txt", "mine"), time);
        _folder.Write("out/x/photos/wing.jpg", "a wing");
        Directory.CreateDirectory(_folder["out/x/empty"]);
        File.CreateSymbolicLink(_folder["out/x/link"], "nowhere");

        Write(disk, ("plan.pdf", "two"));

        Assert.Equal(
            ["empty/", "link", "manifest.json", "parts/", "parts/mine.txt", "photos/", "photos/wing.jpg", "plan.pdf"],
            _folder.Everything("out/x"));
        Assert.Equal("mine", _folder.Read("out/x/parts/mine.txt"));
        Assert.Equal(time, File.GetLastWriteTimeUtc(_folder["out/x/parts/mine.txt"]));
        Assert.Equal("nowhere", new FileInfo(_folder["out/x/link"]).LinkTarget);
    }

    [Fact]
    public void Files_that_did_not_change_are_not_written_again()
    {
        Write(new Disk(), ("plan.pdf", "one"), ("report.json", "one"));
        var time = new DateTime(2001, 2, 3, 4, 5, 6, DateTimeKind.Utc);
        File.SetLastWriteTimeUtc(_folder["out/x/plan.pdf"], time);
        var disk = new FaultyDisk();

        Write(disk, ("plan.pdf", "one"), ("report.json", "two"));

        Assert.Equal(2, disk.Writes);     // the report and the manifest
        Assert.Equal(time, File.GetLastWriteTimeUtc(_folder["out/x/plan.pdf"]));
    }

    [Fact]
    public void File_of_ours_that_was_changed_is_written_again()
    {
        Write(new Disk(), ("plan.pdf", "one"));
        _folder.Write("out/x/plan.pdf", "eno");

        Write(new Disk(), ("plan.pdf", "one"));

        Assert.Equal("one", _folder.Read("out/x/plan.pdf"));
    }

    [Fact]
    public void Folder_that_is_not_ours_is_refused()
    {
        _folder.Write("out/x/thesis.txt", "ten years of work");

        var fault = Assert.Throws<FolderFault>(() => Write(new Disk(), ("plan.pdf", "one")));

        Assert.Contains("no manifest.json of planforge", fault.Message, StringComparison.Ordinal);
        Assert.Equal(["x/", "x/thesis.txt"], _folder.Everything("out"));
    }

    [Fact]
    public void Manifest_of_another_program_is_not_ours()
    {
        _folder.Write("out/x/manifest.json", """{"name": "a web page"}""");

        Assert.Throws<FolderFault>(() => Write(new Disk(), ("plan.pdf", "one")));
        Assert.Equal("""{"name": "a web page"}""", _folder.Read("out/x/manifest.json"));
    }

    [Fact]
    public void Empty_folder_is_taken()
    {
        Directory.CreateDirectory(_folder["out/x"]);
        Write(new Disk(), ("plan.pdf", "one"));
        Assert.Equal("one", _folder.Read("out/x/plan.pdf"));
    }

    [Fact]
    public void File_of_the_users_in_the_way_of_a_new_one_of_ours_is_not_overwritten()
    {
        Write(new Disk(), ("plan.pdf", "one"));
        _folder.Write("out/x/report.json", "mine");

        var fault = Assert.Throws<FolderFault>(() => Write(new Disk(), ("plan.pdf", "two"), ("report.json", "two")));

        Assert.EndsWith("report.json", fault.Path, StringComparison.Ordinal);
        Assert.Equal(("one", "mine"), (_folder.Read("out/x/plan.pdf"), _folder.Read("out/x/report.json")));
        Assert.Equal(["x/", "x/manifest.json", "x/plan.pdf", "x/report.json"], _folder.Everything("out"));
    }

    [Fact]
    public void File_where_the_folder_belongs_is_refused()
    {
        _folder.Write("out/x", "a file");

        var fault = Assert.Throws<FolderFault>(() => Write(new Disk(), ("plan.pdf", "one")));

        Assert.Contains("a file stands", fault.Message, StringComparison.Ordinal);
        Assert.Equal("a file", _folder.Read("out/x"));
    }

    [Fact]
    public void File_where_the_folder_above_belongs_is_refused()
    {
        _folder.Write("out", "a file");

        Assert.Throws<FolderFault>(() => Write(new Disk(), ("plan.pdf", "one")));
        Assert.Equal("a file", _folder.Read("out"));
    }

    [Fact]
    public void Read_only_folder_is_refused()
    {
        Write(new Disk(), ("plan.pdf", "one"));
        var mode = File.GetUnixFileMode(_folder["out/x"]);
        File.SetUnixFileMode(_folder["out/x"], UnixFileMode.UserRead | UnixFileMode.UserExecute);

        var fault = Assert.Throws<FolderFault>(() => Write(new Disk(), ("plan.pdf", "two")));

        File.SetUnixFileMode(_folder["out/x"], mode);
        Assert.Equal("the folder is read-only", fault.Message);
        Assert.Equal("one", _folder.Read("out/x/plan.pdf"));
    }

    [Fact]
    public void Folder_keeps_its_permissions()
    {
        const UnixFileMode mode = UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute;
        Write(new Disk(), ("plan.pdf", "one"));
        File.SetUnixFileMode(_folder["out/x"], mode);

        Write(new Disk(), ("plan.pdf", "two"));

        Assert.Equal(mode, File.GetUnixFileMode(_folder["out/x"]));
    }

    // /proc takes no new folders, not even from root.
    [Fact]
    public void System_that_takes_no_folder_is_named_in_the_fault()
    {
        var fault = Assert.Throws<FolderFault>(() => DesignFolder.Open("/proc/planforge/x", new Disk()));
        Assert.Contains("/proc/planforge", fault.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public void Full_disk_leaves_the_last_good_output_whole(int write)
    {
        Write(new Disk(), ("plan.pdf", "one"), ("parts/former-F1.dxf", "one"));
        _folder.Write("out/x/mine.txt", "mine");
        var before = Contents();
        var full = new FaultyDisk { OnWrite = number => ThrowIf(number == write, new IOException("No space left on device")) };

        var fault = Assert.Throws<FolderFault>(() => Write(full, ("plan.pdf", "two"), ("parts/former-F1.dxf", "two")));

        Assert.Contains("No space left on device", fault.Message, StringComparison.Ordinal);
        Assert.Equal(before, Contents());
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    public void Renaming_that_fails_leaves_the_last_good_output_whole(int move)
    {
        Write(new Disk(), ("plan.pdf", "one"));
        var before = Contents();
        var disk = new FaultyDisk { CanExchange = false, OnMove = number => ThrowIf(number == move, new IOException("Device or resource busy")) };

        Assert.Throws<FolderFault>(() => Write(disk, ("plan.pdf", "two")));
        Assert.Equal(before, Contents());
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public void Stopped_run_leaves_the_last_good_output_whole(int write)
    {
        Write(new Disk(), ("plan.pdf", "one"), ("parts/former-F1.dxf", "one"));
        var before = Contents();
        using var stop = new CancellationTokenSource();
        var disk = new FaultyDisk { OnWrite = number => { if (number == write) { stop.Cancel(); } } };

        Assert.ThrowsAny<OperationCanceledException>(
            () => Write(disk, stop.Token, ("plan.pdf", "two"), ("parts/former-F1.dxf", "two")));
        Assert.Equal(before, Contents());
    }

    [Fact]
    public void First_run_that_fails_leaves_no_folder()
    {
        var full = new FaultyDisk { OnWrite = _ => throw new IOException("No space left on device") };

        Assert.Throws<FolderFault>(() => Write(full, ("plan.pdf", "one")));
        Assert.Empty(_folder.Everything("out"));
    }

    [Fact]
    public void What_a_killed_run_was_writing_is_removed()
    {
        Write(new Disk(), ("plan.pdf", "one"));
        _folder.Write("out/.x.planforge-new/parts/half.dxf", "hal");
        _folder.Write("out/.x.planforge-lock", "");

        Write(new Disk(), ("plan.pdf", "two"));

        Assert.Equal(["x/", "x/manifest.json", "x/plan.pdf"], _folder.Everything("out"));
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Folder_that_a_killed_run_had_put_aside_comes_back(bool isEmptyThere)
    {
        Write(new Disk(), ("plan.pdf", "one"));
        _folder.Write("out/x/mine.txt", "mine");
        Directory.Move(_folder["out/x"], _folder["out/.x.planforge-old"]);
        if (isEmptyThere)
        {
            Directory.CreateDirectory(_folder["out/x"]);
        }

        Write(new Disk(), ("plan.pdf", "two"));

        Assert.Equal(["x/", "x/manifest.json", "x/mine.txt", "x/plan.pdf"], _folder.Everything("out"));
        Assert.Equal(("two", "mine"), (_folder.Read("out/x/plan.pdf"), _folder.Read("out/x/mine.txt")));
    }

    [Fact]
    public void Folder_put_aside_is_not_dropped_while_the_one_in_its_place_is_not_ours()
    {
        _folder.Write("out/.x.planforge-old/mine.txt", "mine");
        _folder.Write("out/x/other.txt", "other");

        Assert.Throws<FolderFault>(() => Write(new Disk(), ("plan.pdf", "two")));
        Assert.Equal("mine", _folder.Read("out/.x.planforge-old/mine.txt"));
    }

    [Fact]
    public void Second_run_at_the_same_time_is_refused()
    {
        FolderFault? fault = null;
        var disk = new FaultyDisk
        {
            OnWrite = number => fault ??= Assert.Throws<FolderFault>(() => Write(new Disk(), ("plan.pdf", "two"))),
        };

        Write(disk, ("plan.pdf", "one"));

        Assert.Equal("another run is writing this folder", fault!.Message);
        Assert.Equal("one", _folder.Read("out/x/plan.pdf"));
    }

    [Fact]
    public void Link_to_a_folder_stays_a_link()
    {
        Directory.CreateDirectory(_folder["elsewhere/plans"]);
        Directory.CreateDirectory(_folder["out"]);
        Directory.CreateSymbolicLink(_folder["out/x"], "../elsewhere/plans");

        Write(new Disk(), ("plan.pdf", "one"));
        Write(new Disk(), ("plan.pdf", "two"));

        Assert.Equal("two", _folder.Read("elsewhere/plans/plan.pdf"));
        Assert.NotNull(new DirectoryInfo(_folder["out/x"]).LinkTarget);
        Assert.Single(Directory.EnumerateFileSystemEntries(_folder["out"]));
        Assert.Equal(["plans/", "plans/manifest.json", "plans/plan.pdf"], _folder.Everything("elsewhere"));
    }

    [Fact]
    public void What_was_prepared_and_stays_is_the_same_file_and_is_not_written()
    {
        var (known, plan, _) = Settled();
        var time = File.GetLastWriteTimeUtc(_folder["out/x/plan.pdf"]);
        var disk = new FaultyDisk { OnWrite = number => ThrowIf(number > 2, new IOException("one file and the manifest are enough")) };

        var changes = WriteAhead(known, disk, null, plan, FileOf("parts/former-F1.dxf", "two"));

        Assert.Equal((2, 1, 0), (changes.Written, changes.Kept, changes.Removed));
        Assert.Equal(time, File.GetLastWriteTimeUtc(_folder["out/x/plan.pdf"]));
        Assert.Equal("two", _folder.Read("out/x/parts/former-F1.dxf"));
        Assert.Equal(["x/", "x/manifest.json", "x/parts/", "x/parts/former-F1.dxf", "x/plan.pdf"], _folder.Everything("out"));
    }

    [Fact]
    public void What_was_prepared_and_is_no_longer_drawn_is_gone_with_its_folder()
    {
        var (known, plan, part) = Settled();

        Assert.Equal(1, WriteAhead(known, new Disk(), null, plan).Removed);
        Assert.Equal(["x/", "x/manifest.json", "x/plan.pdf"], _folder.Everything("out"));
        WriteAhead(known, new Disk(), null, plan);
        Assert.Equal(["x/", "x/manifest.json", "x/plan.pdf"], _folder.Everything("out"));
    }

    [Fact]
    public void What_the_user_does_to_the_folder_after_it_was_prepared_is_kept_or_mended()
    {
        var (known, plan, part) = Settled();

        WriteAhead(known, new Disk(), Meddle, plan, part);
        WriteAhead(known, new Disk(), null, plan, part);

        Assert.Equal(["manifest.json", "mine.txt", "parts/", "parts/former-F1.dxf", "plan.pdf"], _folder.Everything("out/x"));
        Assert.Equal(("one", "one", "mine"), (_folder.Read("out/x/plan.pdf"), _folder.Read("out/x/parts/former-F1.dxf"), _folder.Read("out/x/mine.txt")));

        void Meddle()
        {
            File.AppendAllText(_folder["out/x/plan.pdf"], " and more");
            File.Delete(_folder["out/x/parts/former-F1.dxf"]);
            _folder.Write("out/x/mine.txt", "mine");
        }
    }

    [Fact]
    public void Folder_that_was_prepared_and_not_written_is_as_it_was()
    {
        var known = new WrittenFiles();
        WriteAhead(known, new Disk(), null, FileOf("plan.pdf", "one"));
        var before = Contents();

        using (var opened = DesignFolder.Open(_folder["out/x"], new Disk(), known))
        {
            opened.Prepare();
            Assert.Throws<FolderFault>(() => Write(new Disk(), ("plan.pdf", "two")));
        }

        Assert.Equal(before, Contents());
    }

    /// <summary>Two files written twice: both are likely to stay.</summary>
    private (WrittenFiles Known, OutputFile Plan, OutputFile Part) Settled()
    {
        var (known, plan, part) = (new WrittenFiles(), FileOf("plan.pdf", "one"), FileOf("parts/former-F1.dxf", "one"));
        WriteAhead(known, new Disk(), null, plan, part);
        WriteAhead(known, new Disk(), null, plan, part);
        return (known, plan, part);
    }

    private FolderChanges WriteAhead(WrittenFiles known, IDisk disk, Action? meanwhile, params OutputFile[] files)
    {
        using var opened = DesignFolder.Open(_folder["out/x"], disk, known);
        opened.Prepare();
        meanwhile?.Invoke();
        return opened.Write(WithManifest([.. files]), CancellationToken.None);
    }

    private static OutputFile FileOf(string path, string text) => new(path, Encoding.UTF8.GetBytes(text));

    private void Write(IDisk disk, params (string Path, string Text)[] files) => Write(disk, CancellationToken.None, files);

    private void Write(IDisk disk, CancellationToken stop, params (string Path, string Text)[] files)
    {
        using var opened = DesignFolder.Open(_folder["out/x"], disk);
        opened.Write(WithManifest([.. files.Select(file => FileOf(file.Path, file.Text))]), stop);
    }

    private static List<OutputFile> WithManifest(List<OutputFile> all)
    {
        all.Add(Manifest.Of(new("x", "", "", ToolVersion.Text, [], []), new("x.yaml", []), all));
        return all;
    }

    private string[] Contents() =>
        [.. _folder.Everything("out").Select(path => path.EndsWith('/') ? path : $"{path}: {_folder.Read("out/" + path)}")];

    private static void ThrowIf(bool condition, Exception fault)
    {
        if (condition)
        {
            throw fault;
        }
    }
}
