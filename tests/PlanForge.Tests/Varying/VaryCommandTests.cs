using System.Globalization;
using System.Text.Json;
using System.Xml.Linq;
using PlanForge.Varying;

namespace PlanForge.Tests.Varying;

public sealed class VaryCommandTests : IDisposable
{
    private static readonly string Text = SmallDesign.Text
        .Replace("units: mm\n", "units: mm\nparameters:\n  chord: {value: 150 mm, from: 100 mm, to: 200 mm}\n", StringComparison.Ordinal)
        .Replace("chord: 150}", "chord: chord}", StringComparison.Ordinal);

    private readonly TestFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Range_is_split_into_equal_steps_with_both_ends_as_written()
    {
        var range = VariationRange.Read("chord=3/4 in .. 40mm", 3)!;

        Assert.Equal(["3/4 in", "(3/4 in) + ((40mm) - (3/4 in)) * 1 / 2", "40mm"], range.Values);
        Assert.Null(VariationRange.Read("chord=40mm", 3));
        Assert.Null(VariationRange.Read("chord=..40mm", 3));
        Assert.Null(VariationRange.Read("40mm..50mm", 3));
    }

    // The area of a rectangular wing is chord times span: 0.8 m of chord from 120 to 180 mm (closed form).
    [Fact]
    public void Csv_has_a_row_a_step_in_order_with_what_the_description_gives_for_it()
    {
        var rows = Csv("chord=120mm..180mm", "--steps", "4");
        var area = Array.FindIndex(rows[0], head => head.StartsWith("wing.", StringComparison.Ordinal) && head.EndsWith("area [mm2]", StringComparison.Ordinal));

        Assert.Equal("chord [mm]", rows[0][0]);
        Assert.Equal(["120", "140", "160", "180"], rows.Skip(1).Select(row => row[0]));
        Assert.True(area > 0, string.Join(", ", rows[0]));
        Assert.All(rows.Skip(1), row => Assert.Equal(800 * Number(row[0]), Number(row[area]), 1e-3));
        Assert.All(rows.Skip(1), row => Assert.Equal("", row[^1]));
    }

    // What a step shows is what check shows for a description that says so itself.
    [Fact]
    public void A_step_is_the_design_with_that_value()
    {
        var json = JsonDocument.Parse(Run("a.yaml", "chord=120mm..180mm", "--steps", "3", "--json").Results).RootElement;
        _folder.Write("b.yaml", Text.Replace("value: 150 mm", "value: 180 mm", StringComparison.Ordinal));
        var report = JsonDocument.Parse(TestTerminal.Run("check", _folder["b.yaml"], "--json").Results).RootElement;
        var expected = report.GetProperty("figures").EnumerateArray()
            .Concat(report.GetProperty("parts").EnumerateArray().SelectMany(part => part.GetProperty("figures").EnumerateArray()))
            .ToDictionary(figure => figure.GetProperty("key").GetString()!, figure => figure.GetProperty("value").GetDouble());
        var last = json.GetProperty("steps")[2].GetProperty("figures").EnumerateObject().ToList();

        Assert.NotEmpty(last);
        Assert.All(last, figure => Assert.Equal(expected[figure.Name], figure.Value.GetDouble()));
    }

    [Fact]
    public void A_step_at_fault_says_why_and_the_others_stand()
    {
        var rows = Csv("chord=180mm..220mm", "--steps", "3");

        Assert.Equal(["180", "200", "220"], rows.Skip(1).Select(row => row[0]));
        Assert.Equal("", rows[2][^1]);
        Assert.NotEqual("", rows[3][^1]);
        Assert.All(rows[3][1..^1], cell => Assert.Equal("", cell));
        Assert.Contains("\nchord 220: ", Run("a.yaml", "chord=180mm..220mm", "--steps", "3").Results, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(1, "chrod=120mm..180mm", "did you mean `chord`?")]
    [InlineData(1, "chord=120deg..180deg", "vary:1:")]
    [InlineData(2, "chord=120mm", "is no range")]
    [InlineData(2, "chord=120mm..180mm --steps 1", "from 2 to 200")]
    [InlineData(2, "chord=120mm..180mm --csv --json", "cannot both")]
    [InlineData(2, "chord=120mm..180mm --chart a.pdf", "ends in .svg")]
    public void What_cannot_be_varied_is_said(int code, string line, string expected)
    {
        var run = Run(["a.yaml", .. line.Split(' ')]);

        Assert.Equal(code, (int)run.Code);
        Assert.Equal("", run.Results);
        Assert.Contains(expected, run.Messages, StringComparison.Ordinal);
    }

    [Fact]
    public void A_missing_description_is_a_fault_of_the_file_system() =>
        Assert.Equal(ExitCode.FileSystemFault, TestTerminal.Run("vary", _folder["nowhere.yaml"], "a=1..2").Code);

    [Fact]
    public void A_chart_has_a_curve_for_every_figure_of_the_airframe_that_varies_and_another_file_is_left_alone()
    {
        var chart = _folder["chart.svg"];
        Assert.Equal(ExitCode.Done, Run("a.yaml", "chord=120mm..180mm", "--chart", chart, "-q").Code);
        var first = File.ReadAllText(chart);
        var report = JsonDocument.Parse(TestTerminal.Run("check", _folder["a.yaml"], "--json").Results).RootElement;
        var whole = report.GetProperty("figures").EnumerateArray().Select(figure => figure.GetProperty("key").GetString()!).ToList();
        var figures = Csv("chord=120mm..180mm")[0].Count(head => whole.Contains(head.Split(' ')[0]));
        XNamespace svg = "http://www.w3.org/2000/svg";

        // Seven dots a curve; a round dot is the only circle or fill there is.
        Assert.Equal(7 * figures, XDocument.Parse(first).Descendants(svg + "path").Count(path => (string?)path.Attribute("stroke") == "none"));
        Assert.Equal(ExitCode.FileSystemFault, Run("a.yaml", "chord=120mm..170mm", "--chart", chart, "-q").Code);
        Assert.Equal(first, File.ReadAllText(chart));
        Assert.Equal(ExitCode.Done, Run("a.yaml", "chord=120mm..170mm", "--chart", chart, "-q", "--force").Code);
        Assert.NotEqual(first, File.ReadAllText(chart));
    }

    private TestTerminal Run(params string[] words)
    {
        _folder.Write("a.yaml", Text);
        return TestTerminal.Run(["vary", _folder[words[0]], .. words[1..]]);
    }

    // No cell here holds a quoted comma but the last.
    private string[][] Csv(params string[] words)
    {
        var run = Run(["a.yaml", .. words, "--csv"]);
        Assert.Equal((ExitCode.Done, ""), (run.Code, run.Messages));
        var lines = run.Results.TrimEnd('\n').Split('\n');
        var count = lines[0].Split(',').Length;
        return [.. lines.Select(line => line.Split(',', count))];
    }

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
