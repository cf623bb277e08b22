using System.Text.Json;

namespace PlanForge.Tests.Currency;

public sealed class CurrentCommandTests : IDisposable
{
    private readonly TestFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Everything_that_was_just_drawn_is_current()
    {
        Draw(SmallDesign.Text);
        var manifest = Manifest();
        foreach (var code in Codes(manifest, "parts").Values.Concat(Codes(manifest, "sheets").Values))
        {
            Assert.Equal(ExitCode.Done, Current(code).Code);
        }
    }

    [Fact]
    public void Old_wood_is_told_from_new_and_what_still_holds_on_old_paper_is_said()
    {
        var two = SmallDesign.Text + "  - {name: F2, station: 200, thickness: 3}\n";
        Draw(two);
        var before = Manifest();
        Draw(two.Replace("F1, station: 40, thickness: 3", "F1, station: 40, thickness: 4", StringComparison.Ordinal));

        var wood = Current(Codes(before, "parts")["former-F1"]);
        Assert.Equal(ExitCode.NotCurrent, wood.Code);
        Assert.StartsWith($"{Codes(before, "parts")["former-F1"]} is Former F1 as drawn earlier", wood.Results, StringComparison.Ordinal);
        Assert.Contains($"now {Codes(Manifest(), "parts")["former-F1"]}", wood.Results, StringComparison.Ordinal);
        Assert.Equal(ExitCode.Done, Current(Codes(before, "parts")["former-F2"]).Code);

        var sheet = before.GetProperty("sheets").EnumerateArray().First(it => it.GetProperty("parts").EnumerateArray().Any(part => part.GetString() == "former-F1"));
        var paper = Current(sheet.GetProperty("fingerprint").GetString()!);
        Assert.Equal(ExitCode.NotCurrent, paper.Code);
        Assert.Matches(@"(?m)^  still as it was: .*\bSaddle starboard\b", paper.Results);
        Assert.Contains("  changed: Former F1 (now ", paper.Results, StringComparison.Ordinal);
    }

    [Fact]
    public void Going_back_makes_old_wood_current_again()
    {
        Draw(SmallDesign.Text);
        var code = Codes(Manifest(), "parts")["former-F1"];
        Draw(SmallDesign.Text.Replace("thickness: 3}", "thickness: 4}", StringComparison.Ordinal));
        Draw(SmallDesign.Text);
        Assert.Equal(ExitCode.Done, Current(code).Code);
    }

    [Fact]
    public void The_description_counts_not_the_folder()
    {
        Draw(SmallDesign.Text);
        var code = Codes(Manifest(), "parts")["former-F1"];
        _folder.Write("a.yaml", SmallDesign.Text.Replace("thickness: 3}", "thickness: 4}", StringComparison.Ordinal));
        Assert.Equal(ExitCode.NotCurrent, Current(code).Code);
    }

    [Fact]
    public void What_nothing_carries_is_unknown_and_a_slip_is_guessed_at()
    {
        Draw(SmallDesign.Text);
        var code = Codes(Manifest(), "parts")["former-F1"];
        var slip = code[..^1] + (code[^1] == '7' ? '8' : '7');

        var run = Current(slip);

        Assert.Equal(ExitCode.NotCurrent, run.Code);
        Assert.Contains($"One sign off is {code}, Former F1", run.Results, StringComparison.Ordinal);
    }

    [Fact]
    public void Programs_are_told_the_same()
    {
        Draw(SmallDesign.Text);
        var code = Codes(Manifest(), "parts")["former-F1"];
        using var json = JsonDocument.Parse(TestTerminal.Run("current", _folder["a.yaml"], code, "--to", _folder["out"], "--json").Results);
        Assert.True(json.RootElement.GetProperty("current").GetBoolean());
        Assert.Equal("former-F1", json.RootElement.GetProperty("things")[0].GetProperty("id").GetString());
    }

    [Fact]
    public void What_is_no_fingerprint_is_a_fault_of_the_command_line() => Assert.Equal(ExitCode.CommandLineFault, Current("F3").Code);

    [Fact]
    public void A_description_at_fault_is_shown()
    {
        _folder.Write("a.yaml", SmallDesign.Misspelt);
        Assert.Equal(ExitCode.DescriptionFault, Current("K7F3-2Q").Code);
    }

    private TestTerminal Current(string code)
    {
        if (!File.Exists(_folder["a.yaml"]))
        {
            _folder.Write("a.yaml", SmallDesign.Text);
        }

        return TestTerminal.Run("current", _folder["a.yaml"], code, "--to", _folder["out"]);
    }

    private void Draw(string text) =>
        Assert.Equal(ExitCode.Done, TestTerminal.Run("draw", _folder.Write("a.yaml", text), "--to", _folder["out"]).Code);

    private JsonElement Manifest()
    {
        using var document = JsonDocument.Parse(_folder.Read($"out/{SmallDesign.FolderName}/manifest.json"));
        return document.RootElement.Clone();
    }

    private static Dictionary<string, string> Codes(JsonElement manifest, string what) => manifest.GetProperty(what).EnumerateArray().ToDictionary(
        it => it.TryGetProperty("id", out var id) ? id.GetString()! : "sheet " + it.GetProperty("number").GetInt32(),
        it => it.GetProperty("fingerprint").GetString()!);
}
