using System.Text.Json;

namespace PlanForge.Tests.Reports;

/// <summary>What is said of measured wood. The body of the small design is 60 mm wide, its skins have no thickness.</summary>
public sealed class AsBuiltReportTests : IDisposable
{
    private const string Measured = SmallDesign.Text + "as_built:\n  fuselage: [{station: 0, breadth: 62}, {station: 300, breadth: 62}]\n  formers: [{name: F1, thickness: 3.2}]\n";

    private readonly TestFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Without_measurements_nothing_is_said_of_them()
    {
        Assert.False(Report(SmallDesign.Text).TryGetProperty("as_built", out _));
        Assert.DoesNotContain("As built", Check(SmallDesign.Text), StringComparison.Ordinal);
    }

    [Fact]
    public void Each_measured_value_stands_beside_the_designed_one()
    {
        var measured = Report(Measured).GetProperty("as_built").GetProperty("measured").EnumerateArray().ToArray();
        Assert.Equal(
            ["fuselage.0.breadth", "fuselage.300.breadth", "former.F1.thickness"], measured.Select(value => value.GetProperty("key").GetString()));
        Assert.Equal([60, 60, 3], measured.Select(value => value.GetProperty("designed").GetDouble()));
        Assert.Equal([62, 62, 3.2], measured.Select(value => value.GetProperty("built").GetDouble()));
        Assert.Equal([2, 2, 0.2], measured.Select(value => value.GetProperty("difference").GetDouble()));
        Assert.All(measured, value => Assert.Equal("mm", value.GetProperty("unit").GetString()));
    }

    [Fact]
    public void What_moved_is_told_by_figure_and_by_part_in_the_order_of_parts()
    {
        var report = Report(Measured);
        var moved = report.GetProperty("as_built");
        var width = moved.GetProperty("figures").EnumerateArray().Single(figure => figure.GetProperty("key").GetString() == "former.F1.width");
        Assert.Equal((60, 62, 2), (width.GetProperty("designed").GetDouble(), width.GetProperty("built").GetDouble(), width.GetProperty("difference").GetDouble()));

        var changed = moved.GetProperty("parts_changed").EnumerateArray().Select(id => id.GetString()).ToArray();
        var parts = report.GetProperty("parts").EnumerateArray().Select(part => part.GetProperty("id").GetString()).ToList();
        Assert.Contains("former-F1", changed);
        Assert.Equal(changed.OrderBy(parts.IndexOf), changed);

        Assert.Equal(changed, moved.GetProperty("parts").EnumerateArray().Select(part => part.GetProperty("id").GetString()));
        Assert.All(moved.GetProperty("parts").EnumerateArray(), part => Assert.NotEqual("", part.GetProperty("text").GetString()));

        // Nothing about the wing depends on the body's width, so that its figures and its level rest at the tip stay out.
        Assert.DoesNotContain("level-rest-wing-tip", changed);
        Assert.DoesNotContain(moved.GetProperty("figures").EnumerateArray(), figure => figure.GetProperty("key").GetString()!.StartsWith("wing.", StringComparison.Ordinal));
    }

    [Fact]
    public void What_measures_as_designed_moves_nothing()
    {
        var moved = Report(SmallDesign.Text + "as_built: {fuselage: [{station: 100, breadth: 60}]}\n").GetProperty("as_built");
        Assert.Single(moved.GetProperty("measured").EnumerateArray());
        Assert.All(
            new[] { "figures", "parts_changed", "parts_added", "parts_gone" },
            name => Assert.Empty(moved.GetProperty(name).EnumerateArray()));
    }

    [Fact]
    public void Check_shows_a_short_section_before_the_figures()
    {
        var lines = Check(Measured).Split('\n');
        Assert.Equal("As built", lines[1]);
        Assert.Equal("  fuselage at station 0 mm, breadth     62 mm  (designed 60 mm, +2 mm)", lines[2]);
        Assert.Equal("  former F1, thickness                 3.2 mm  (designed 3 mm, +0.2 mm)", lines[4]);
        Assert.Equal("Moved by that", lines[5]);
        Assert.Contains(lines, line => line.StartsWith("  Former F1, width as cut ", StringComparison.Ordinal) && line.EndsWith("62 mm  (designed 60 mm, +2 mm)", StringComparison.Ordinal));
        var changed = Array.IndexOf(lines, "Parts that changed");
        Assert.Contains("  Former F1: 3 mm thick before, 3.2 mm now; short by 1 mm: make new (left)", lines[changed..]);
    }

    [Fact]
    public void A_design_that_could_not_be_drawn_before_is_drawn_as_built_with_a_word_about_it()
    {
        // Within skins of 31 mm nothing is left of a former in a body of 60; within 25.5 mm something is.
        var text = SmallDesign.Text.Replace("fuselage:\n", "fuselage:\n  skin: 31\n", StringComparison.Ordinal) + "as_built: {skin: {side: 25.5, top: 25.5, bottom: 25.5}}\n";
        var run = TestTerminal.Run("check", _folder.Write("a.yaml", text), "--json");
        Assert.Equal(ExitCode.Done, run.Code);
        Assert.Contains("cannot be told what moved", run.Messages, StringComparison.Ordinal);
        using var json = JsonDocument.Parse(run.Results);
        Assert.False(json.RootElement.GetProperty("as_built").TryGetProperty("figures", out _));
    }

    private JsonElement Report(string text)
    {
        using var json = JsonDocument.Parse(Run(text, "--json"));
        return json.RootElement.Clone();
    }

    private string Check(string text) => Run(text);

    private string Run(string text, params string[] options)
    {
        var run = TestTerminal.Run(["check", _folder.Write("a.yaml", text), .. options]);
        Assert.Equal((ExitCode.Done, ""), (run.Code, run.Messages));
        return run.Results;
    }
}
