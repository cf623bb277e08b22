using System.Diagnostics;

namespace PlanForge.Tests.Following;

/// <summary>The real process and real saves. Every wait is for something to be there, with a limit no sound run comes near.</summary>
public sealed class FollowCommandTests : IDisposable
{
    private static readonly TimeSpan Limit = TimeSpan.FromSeconds(60);

    private readonly TestFolder _folder = new();
    private readonly List<Process> _started = [];

    public void Dispose()
    {
        foreach (var process in _started)
        {
            process.Kill();
            process.WaitForExit();
            process.Dispose();
        }

        _folder.Dispose();
    }

    [Fact]
    public void Every_way_of_saving_is_drawn_and_Ctrl_C_ends_it()
    {
        _folder.Write("a.yaml", Named("zero"));
        var follow = Start("a.yaml");
        WaitFor(() => Has("zero"));

        _folder.Write("a.yaml", Named("in place"));
        WaitFor(() => Has("in place"));

        _folder.Write("a.yaml.tmp", Named("renamed over"));
        File.Move(_folder["a.yaml.tmp"], _folder["a.yaml"], overwrite: true);
        WaitFor(() => Has("renamed over"));

        // As editors that keep a backup do.
        File.Move(_folder["a.yaml"], _folder["a.yaml~"]);
        _folder.Write("a.yaml", Named("moved away"));
        WaitFor(() => Has("moved away"));

        File.Delete(_folder["a.yaml"]);
        _folder.Write("a.yaml", Named("made anew"));
        WaitFor(() => Has("made anew"));

        Signal("INT", follow);
        Assert.True(follow.WaitForExit(Limit));
        Assert.Equal(0, follow.ExitCode);
        Assert.DoesNotContain(_folder.Everything("output"), path => path.StartsWith('.'));
    }

    [Fact]
    public void A_broken_description_is_reported_and_the_last_good_output_kept_until_it_is_mended()
    {
        _folder.Write("a.yaml", Named("good"));
        var follow = Start("a.yaml");
        var said = Collect(follow);
        WaitFor(() => Has("good"));

        _folder.Write("a.yaml", SmallDesign.Misspelt);
        WaitFor(() => said.ToString().Contains("a.yaml:7:", StringComparison.Ordinal) && said.ToString().Contains("what was drawn last is kept", StringComparison.Ordinal));
        Assert.True(Has("good"));

        File.Delete(_folder["a.yaml"]);
        WaitFor(() => said.ToString().Contains("a.yaml: error: there is no such file", StringComparison.Ordinal));
        Assert.True(Has("good"));

        _folder.Write("a.yaml", Named("mended"));
        WaitFor(() => Has("mended"));
    }

    [Fact]
    public void A_profile_that_appears_later_and_then_changes_is_drawn_with()
    {
        _folder.Write("a.yaml", SmallDesign.Text + "cutter: {profile: shop.yaml}\n");
        var follow = Start("a.yaml");
        var said = Collect(follow);
        WaitFor(() => said.ToString().Contains("there is no file `shop.yaml`", StringComparison.Ordinal));

        _folder.Write("shop.yaml", Profile("FIRST"));
        WaitFor(() => Reads("parts/former-F1.dxf", "FIRST"));

        _folder.Write("shop.yaml", Profile("SECOND"));
        WaitFor(() => Reads("parts/former-F1.dxf", "SECOND"));
    }

    [Fact]
    public void A_description_that_is_not_there_ends_it_at_once()
    {
        var run = ProgramProcess.Run(_folder.Root, "follow", "nowhere.yaml");

        Assert.Equal(new(3, "", "nowhere.yaml: error: there is no such file\n"), run);
    }

    private static string Profile(string layer) =>
        $"operations:\n  cut_inside: {{layer: {layer}, colour: 7, stroke: \"#000000\"}}\n  cut_outside: {{layer: {layer}, colour: 7, stroke: \"#000000\"}}\n";

    private static string Named(string owner) => SmallDesign.Text + $"owner: {owner}\n";

    private bool Has(string owner) => Reads("plan.pdf", $"owner: {owner}\n");

    // The plan holds the description, packed only when it is long; the report names no owner.
    private bool Reads(string file, string text)
    {
        try
        {
            return File.ReadAllText(_folder[$"output/{SmallDesign.FolderName}/{file}"]).Contains(text, StringComparison.Ordinal);
        }
        catch (Exception fault) when (fault is IOException)
        {
            return false;
        }
    }

    private Process Start(params string[] words)
    {
        var process = ProgramProcess.Start(_folder.Root, ["follow", .. words]);
        _started.Add(process);
        return process;
    }

    private static Heard Collect(Process process)
    {
        var said = new Heard();
        process.ErrorDataReceived += (_, line) => said.Add(line.Data);
        process.BeginErrorReadLine();
        return said;
    }

    private static void Signal(string signal, Process process)
    {
        using var kill = Process.Start("kill", [$"-{signal}", FormattableString.Invariant($"{process.Id}")]);
        kill.WaitForExit();
        Assert.Equal(0, kill.ExitCode);
    }

    private static void WaitFor(Func<bool> isThere)
    {
        var clock = Stopwatch.StartNew();
        while (!isThere())
        {
            Assert.True(clock.Elapsed < Limit, "what was waited for did not come");
            Thread.Sleep(20);
        }
    }

    private sealed class Heard
    {
        private readonly Lock _lock = new();
        private string _text = "";

        public void Add(string? line)
        {
            lock (_lock)
            {
                _text += line + "\n";
            }
        }

        public override string ToString()
        {
            lock (_lock)
            {
                return _text;
            }
        }
    }
}
