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
    public void Old_wood_and_paper_say_what_changed_since()
    {
        var text = SmallDesign.Text
            .Replace("units: mm", "units: mm\nparameters: {wide: 60 mm}", StringComparison.Ordinal)
            .Replace("half_breadth: 30", "half_breadth: wide / 2", StringComparison.Ordinal)
            + "  - {name: F2, station: 200, thickness: 3}\n";
        Draw(text);
        var old = Manifest();
        text = text.Replace("wide: 60", "wide: 62", StringComparison.Ordinal).Replace("F1, station: 40, thickness: 3", "F1, station: 40, thickness: 4", StringComparison.Ordinal);
        Draw(text);
        Draw(text.Replace("fuselage:", "saddle: {depth: 24 mm}\nfuselage:", StringComparison.Ordinal)
            .Replace("  - {name: F2, station: 200, thickness: 3}\n", "", StringComparison.Ordinal));
        var now = Manifest();
        string Was(string part) => Codes(old, "parts")[part];
        string Is(string part) => Codes(now, "parts")[part];
        var description = old.GetProperty("fingerprint").GetString();

        Assert.Equal(
            $"""
            {Was("former-F1")} is Former F1 as drawn earlier (description {description}): not current.
              changed: Former F1 (now {Is("former-F1")})
              because of wide 60 mm -> 62 mm, formers[] F1, F2 -> F1, formers[F1].thickness 3 mm -> 4 mm
              changed since too, without a part in it: 9 values

            """,
            Current(Was("former-F1")).Results);
        Assert.Equal(
            $"""
            {Was("former-F2")} is Former F2 as drawn earlier (description {description}): not current.
              no longer part of the design: Former F2
              changed since in the description: wide 60 mm -> 62 mm, formers[] F1, F2 -> F1, formers[F1].thickness 3 mm -> 4 mm, saddle.depth 25 mm -> 24 mm, formers[F2].name F2 -> none, formers[F2].station 200 mm -> none and 6 other values

            """,
            Current(Was("former-F2")).Results);
        Assert.EndsWith(
            """
              changed since:
                fuselage.stations[1].half_breadth 30 mm -> 31 mm (wide 60 mm -> 62 mm)
                fuselage.stations[2].half_breadth 30 mm -> 31 mm (wide 60 mm -> 62 mm)
                formers[] F1, F2 -> F1
                formers[F1].thickness 3 mm -> 4 mm
                saddle.depth 25 mm -> 24 mm
                formers[F2].name F2 -> none
                formers[F2].station 200 mm -> none
                formers[F2].thickness 3 mm -> none
                formers[F2].grain across -> none
                formers[F2].role former -> none
                formers[F2].allowance.upper 0 mm -> none
                formers[F2].allowance.lower 0 mm -> none
                formers[F2].allowance.side 0 mm -> none

            """,
            Current(description!).Results,
            StringComparison.Ordinal);
    }

    [Fact]
    public void What_a_version_drew_that_kept_no_values_is_known_without_what_changed()
    {
        Draw(SmallDesign.Text);
        var code = Codes(Manifest(), "parts")["former-F1"];
        var path = $"out/{SmallDesign.FolderName}/manifest.json";
        var manifest = System.Text.Json.Nodes.JsonNode.Parse(_folder.Read(path))!.AsObject();
        Assert.True(manifest.Remove("values") && manifest.Remove("parameters"));
        _folder.Write(path, manifest.ToJsonString());
        Draw(SmallDesign.Text.Replace("thickness: 3}", "thickness: 4}", StringComparison.Ordinal));

        var run = Current(code);

        Assert.Equal(ExitCode.NotCurrent, run.Code);
        Assert.EndsWith($"  what changed since is not known: planforge {ToolVersion.Text}, which drew it, kept no values\n", run.Results, StringComparison.Ordinal);
        using var json = JsonDocument.Parse(TestTerminal.Run("current", _folder["a.yaml"], code, "--to", _folder["out"], "--json").Results);
        Assert.Equal(JsonValueKind.Null, json.RootElement.GetProperty("changed").ValueKind);
    }

    [Fact]
    public void A_history_that_somebody_damaged_stops_no_drawing_and_loses_no_file()
    {
        Draw(SmallDesign.Text);
        Draw(SmallDesign.Text.Replace("thickness: 3}", "thickness: 4}", StringComparison.Ordinal));
        var code = Codes(Manifest(), "parts")["former-F1"];
        _folder.Write($"out/{SmallDesign.FolderName}/history.json", "{\"steps_back\": [{\"planforge\": 7}");
        _folder.Write($"out/{SmallDesign.FolderName}/mine.txt", "mine");
        Draw(SmallDesign.Text.Replace("thickness: 3}", "thickness: 5}", StringComparison.Ordinal));
        Assert.Contains("because of formers[F1].thickness 4 mm -> 5 mm\n", Current(code).Results, StringComparison.Ordinal);
        Assert.Equal("mine", _folder.Read($"out/{SmallDesign.FolderName}/mine.txt"));
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
