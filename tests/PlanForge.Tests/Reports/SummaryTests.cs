namespace PlanForge.Tests.Reports;

public sealed class SummaryTests : IDisposable
{
    private readonly TestFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    // Closed forms: 2 x 400 mm; 800 x 150 mm; a straight wing's mean chord is its chord; 150 mm x sin 2 degrees = 5.2349 mm.
    [Theory]
    [InlineData("Wing span", "800 mm")]
    [InlineData("Wing area, projected", "1200 cm²")]
    [InlineData("Wing mean aerodynamic chord", "150 mm")]
    [InlineData("Wing incidence, root chord line", "2°")]
    [InlineData("Wing rise over the root chord", "5.23 mm")]
    public void Figure_is_shown_in_the_units_of_the_description(string label, string expected) =>
        Assert.Equal(expected, ValueIn(SmallDesign.Text, label));

    // 1 in = 25.4 mm: a chord of 150 mm is 5.906 in, the area 1200 cm² is 186.0 in².
    [Theory]
    [InlineData("Wing root chord", "5.906 in")]
    [InlineData("Wing area, projected", "186 in²")]
    public void Inches_are_shown_in_inches(string label, string expected)
    {
        var text = SmallDesign.Text.Replace("units: mm", "units: in", StringComparison.Ordinal);
        text = System.Text.RegularExpressions.Regex.Replace(text, @"(?<=: )-?\d+(?=[,}])", "$0 mm");

        Assert.Equal(expected, ValueIn(text, label));
    }

    [Fact]
    public void Values_stand_in_one_column()
    {
        var lines = Lines(SmallDesign.Text).Where(line => line.StartsWith("  ", StringComparison.Ordinal)).ToArray();

        Assert.NotEmpty(lines);
        Assert.Single(lines.Select(line => line.TrimEnd().EndsWith(" mm", StringComparison.Ordinal) ? line.Length - 3 : -1).Where(end => end > 0).Distinct());
    }

    [Fact]
    public void Airframe_comes_first_and_then_part_by_part()
    {
        var titles = Lines(SmallDesign.Text).Where(line => line.Length > 0 && line[0] != ' ').ToArray();

        Assert.StartsWith(SmallDesign.Name, titles[0], StringComparison.Ordinal);
        Assert.Contains("Former F1 (former-F1)", titles);
        Assert.StartsWith("  Wing span", Lines(SmallDesign.Text)[1], StringComparison.Ordinal);
    }

    private string ValueIn(string text, string label)
    {
        var line = Lines(text).First(line => line.StartsWith($"  {label}  ", StringComparison.Ordinal));
        return line[(label.Length + 2)..].Trim();
    }

    private string[] Lines(string text)
    {
        var run = TestTerminal.Run("check", _folder.Write("a.yaml", text));
        Assert.Equal((ExitCode.Done, ""), (run.Code, run.Messages));
        return run.Results.Split('\n');
    }
}
