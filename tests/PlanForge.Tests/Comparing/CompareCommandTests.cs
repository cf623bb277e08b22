using System.Text;
using System.Text.Json;

namespace PlanForge.Tests.Comparing;

public sealed class CompareCommandTests : IDisposable
{
    private static readonly string Two = SmallDesign.Text + "  - {name: F2, station: 200, thickness: 3}\n";

    private readonly TestFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void A_body_two_millimetres_wider_leaves_formers_short_by_one_a_side()
    {
        var former = Former(Compare(Two, Wide(31)), "former-F1");

        Assert.Equal(("changed", "make"), (Text(former, "state"), Text(former, "do")));
        Assert.Equal([("short", 1.0), ("short", 1.0)], former.GetProperty("zones").EnumerateArray()
            .Select(zone => (Text(zone, "side"), Math.Round(zone.GetProperty("largest").GetProperty("mm").GetDouble(), 3))));
        Assert.Equal(["left", "right"], former.GetProperty("zones").EnumerateArray().Select(zone => Text(zone.GetProperty("largest"), "where")).Order(StringComparer.Ordinal));
        Assert.False(former.TryGetProperty("take_off", out _));
    }

    [Fact]
    public void A_narrower_body_leaves_wood_to_take_off()
    {
        var former = Former(Compare(Two, Wide(29.4)), "former-F1");

        Assert.Equal(("changed", "take_off"), (Text(former, "state"), Text(former, "do")));
        Assert.Equal(0.6, former.GetProperty("take_off").GetProperty("mm").GetDouble(), 1e-3);
        Assert.False(former.TryGetProperty("short", out _));
    }

    [Fact]
    public void A_former_of_the_same_shape_at_another_station_is_moved()
    {
        var found = Compare(Two, Two.Replace("station: 40", "station: 60", StringComparison.Ordinal));

        Assert.Equal(("moved", "put_elsewhere"), (Text(Former(found, "former-F1"), "state"), Text(Former(found, "former-F1"), "do")));
        Assert.Equal("the same shape at station 60 mm, before at 40 mm", Text(Former(found, "former-F1"), "text"));
        Assert.Equal("same", Text(Former(found, "former-F2"), "state"));
        Assert.Equal(["formers[F1].station"], Former(found, "former-F1").GetProperty("causes").EnumerateArray().Select(cause => Text(cause, "path")));
    }

    [Fact]
    public void Remarks_the_order_of_keys_and_the_spelling_of_units_change_nothing()
    {
        var other = "# another remark\n" + Two
            .Replace("{name: F1, station: 40, thickness: 3}", "{thickness: 0.3 cm, station: 40 mm, name: F1}", StringComparison.Ordinal);

        Assert.True(Compare(Two, other).GetProperty("same").GetBoolean());
        Assert.EndsWith("\n\nNothing differs: all that was printed and cut still holds.\n", Run("old.yaml", "new.yaml").Results, StringComparison.Ordinal);
    }

    [Fact]
    public void The_parameter_behind_a_change_is_its_cause()
    {
        var text = Two.Replace("units: mm\n", "units: mm\nparameters: {body: 60 mm}\n", StringComparison.Ordinal)
            .Replace("half_breadth: 30", "half_breadth: body / 2", StringComparison.Ordinal);
        Write(text, text.Replace("60 mm", "62 mm", StringComparison.Ordinal));

        var run = Run("old.yaml", "new.yaml");

        Assert.Equal(ExitCode.Done, run.Code);
        Assert.Contains("\nMake or make anew:\n  Former F1; Former F2: short by 1 mm: make new (", run.Results, StringComparison.Ordinal);
        Assert.Contains("\n    because of body 60 mm -> 62 mm\n", run.Results, StringComparison.Ordinal);
        Assert.Contains("\n  width as cut ", run.Results.Replace("    ", "  ", StringComparison.Ordinal), StringComparison.Ordinal);
    }

    [Fact]
    public void A_sheet_that_must_be_printed_though_no_part_on_it_changed_says_why()
    {
        var sheets = Compare(Two, Two + "sheets: {projection: third angle}\n").GetProperty("sheets").EnumerateArray().ToArray();

        Assert.Equal(("reprint", "General arrangement"), (Text(sheets[0], "do"), Text(sheets[0], "title")));
        Assert.Equal(["sheets.projection"], sheets[0].GetProperty("causes").EnumerateArray().Select(cause => Text(cause, "path")));
        Assert.All(sheets[1..], sheet => Assert.Equal("keep", Text(sheet, "do")));
        Assert.Contains("\nSheets:\n  print 1\n    1 because of sheets.projection first angle -> third angle\n", Run("old.yaml", "new.yaml").Results, StringComparison.Ordinal);
    }

    [Fact]
    public void Parts_come_and_go()
    {
        var found = Compare(Two, SmallDesign.Text);
        Assert.Equal(("gone", "discard"), (Text(Former(found, "former-F2"), "state"), Text(Former(found, "former-F2"), "do")));

        found = Compare(SmallDesign.Text, Two);
        Assert.Equal(("new", "make"), (Text(Former(found, "former-F2"), "state"), Text(Former(found, "former-F2"), "do")));
    }

    [Fact]
    public void A_saddle_template_is_measured_though_it_is_not_cut()
    {
        var found = Compare(Two, Two.Replace("incidence: 2 deg", "incidence: 2.5 deg", StringComparison.Ordinal));
        var saddle = Former(found, "saddle-port");

        Assert.Equal(("changed", "print_again"), (Text(saddle, "state"), Text(saddle, "do")));

        // The wing turns about its leading edge: over a chord of 150 mm half a degree is 1.3 mm, and no place goes further.
        Assert.InRange(saddle.GetProperty("largest").GetProperty("mm").GetDouble(), 0.5, 1.4);
        Assert.Contains(found.GetProperty("figures").EnumerateArray(), figure =>
            Text(figure, "key").Contains("incidence", StringComparison.Ordinal) && Math.Abs(figure.GetProperty("new").GetDouble() - figure.GetProperty("old").GetDouble() - 0.5) < 1e-6);
    }

    [Fact]
    public void What_draw_wrote_is_compared_with_the_description_as_it_is_now()
    {
        var file = _folder.Write("a.yaml", Two);
        Assert.Equal(ExitCode.Done, TestTerminal.Run("draw", file, "--to", _folder["out"]).Code);
        var drawn = "out/" + SmallDesign.FolderName;
        Assert.Contains("Nothing differs", Run(drawn, "a.yaml").Results, StringComparison.Ordinal);

        _folder.Write("a.yaml", Two.Replace("station: 40, thickness: 3", "station: 40, thickness: 4", StringComparison.Ordinal));
        var found = Json(drawn, "a.yaml");
        Assert.Equal("make", Text(Former(found, "former-F1"), "do"));
        Assert.StartsWith("3 mm thick before, 4 mm now", Text(Former(found, "former-F1"), "text"), StringComparison.Ordinal);

        // A sheet is kept when, and only when, its fingerprint is on a sheet of the folder.
        using var manifest = JsonDocument.Parse(_folder.Read(drawn + "/manifest.json"));
        var printed = manifest.RootElement.GetProperty("sheets").EnumerateArray().Select(sheet => Text(sheet, "fingerprint")).ToHashSet();
        var sheets = found.GetProperty("sheets").EnumerateArray().ToList();
        Assert.All(sheets, sheet => Assert.Equal(printed.Contains(Text(sheet, "fingerprint")) ? "keep" : "reprint", Text(sheet, "do")));
        Assert.Contains(sheets, sheet => Text(sheet, "do") == "reprint");
    }

    [Fact]
    public void A_folder_drawn_with_other_values_is_compared_as_it_was_drawn()
    {
        var file = _folder.Write("a.yaml", Two.Replace("units: mm\n", "units: mm\nparameters: {body: 60 mm}\n", StringComparison.Ordinal)
            .Replace("half_breadth: 30", "half_breadth: body / 2", StringComparison.Ordinal));
        Assert.Equal(ExitCode.Done, TestTerminal.Run("draw", file, "--to", _folder["out"], "--with", "body=62mm").Code);

        var former = Former(Json("out/" + SmallDesign.FolderName, "a.yaml"), "former-F1");

        Assert.Equal(1, former.GetProperty("take_off").GetProperty("mm").GetDouble(), 1e-3);
        Assert.Equal(["62 mm", "60 mm"], former.GetProperty("causes")[0].GetProperty("parameters").EnumerateArray().SelectMany(it => new[] { Text(it, "old"), Text(it, "new") }));
    }

    [Fact]
    public void A_folder_that_draw_did_not_write_is_refused()
    {
        _folder.Write("other/readme.txt", "mine");
        _folder.Write("new.yaml", Two);

        var run = Run("other", "new.yaml");

        Assert.Equal(ExitCode.FileSystemFault, run.Code);
        Assert.Contains("holds no manifest.json of planforge", run.Messages, StringComparison.Ordinal);
        Assert.Equal(ExitCode.FileSystemFault, Run("none.yaml", "new.yaml").Code);
    }

    [Fact]
    public void Faults_of_either_description_are_told_with_their_places()
    {
        Write(SmallDesign.Misspelt, Two.Replace("half_breadth", "half_breath", StringComparison.Ordinal));

        var run = Run("old.yaml", "new.yaml");

        Assert.Equal(ExitCode.DescriptionFault, run.Code);
        Assert.Contains($"{_folder["old.yaml"]}:7:", run.Messages, StringComparison.Ordinal);
        Assert.Contains($"{_folder["new.yaml"]}:12:", run.Messages, StringComparison.Ordinal);
    }

    [Fact]
    public void Changed_parts_are_drawn_new_over_old()
    {
        Write(Two, Wide(31));

        Assert.Equal(ExitCode.Done, Run("old.yaml", "new.yaml", "--to", _folder["changes.pdf"]).Code);
        Assert.StartsWith("%PDF-", Encoding.Latin1.GetString(File.ReadAllBytes(_folder["changes.pdf"])), StringComparison.Ordinal);

        _folder.Write("mine.pdf", "mine");
        Assert.Equal(ExitCode.FileSystemFault, Run("old.yaml", "new.yaml", "--to", _folder["mine.pdf"]).Code);
        Assert.Equal("mine", _folder.Read("mine.pdf"));
        Assert.Equal(ExitCode.CommandLineFault, Run("old.yaml", "new.yaml", "--to", _folder["changes.svg"]).Code);
        Assert.Equal(ExitCode.CommandLineFault, Run("old.yaml", "new.yaml", "--tiles", "A4").Code);
    }

    [Fact]
    public void Without_changed_lines_nothing_is_drawn()
    {
        Write(Two, Two);

        Assert.Contains("not written, for no part's lines differ", Run("old.yaml", "new.yaml", "--to", _folder["changes.pdf"]).Results, StringComparison.Ordinal);
        Assert.False(File.Exists(_folder["changes.pdf"]));
    }

    private static string Wide(double halfBreadth) =>
        Two.Replace("half_breadth: 30", FormattableString.Invariant($"half_breadth: {halfBreadth}"), StringComparison.Ordinal);

    private static string Text(JsonElement json, string name) => json.GetProperty(name).GetString()!;

    private static JsonElement Former(JsonElement comparison, string id) =>
        comparison.GetProperty("parts").EnumerateArray().Single(part => Text(part, "id") == id);

    private JsonElement Compare(string old, string now)
    {
        Write(old, now);
        return Json("old.yaml", "new.yaml");
    }

    private void Write(string old, string now)
    {
        _folder.Write("old.yaml", old);
        _folder.Write("new.yaml", now);
    }

    private JsonElement Json(string old, string now)
    {
        var run = Run(old, now, "--json");
        Assert.Equal(ExitCode.Done, run.Code);
        using var json = JsonDocument.Parse(run.Results);
        return json.RootElement.Clone();
    }

    private TestTerminal Run(string old, string now, params string[] options) => TestTerminal.Run(["compare", _folder[old], _folder[now], .. options]);
}
