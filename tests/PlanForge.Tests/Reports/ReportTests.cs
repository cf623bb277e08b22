using System.Text.Json;

namespace PlanForge.Tests.Reports;

public sealed class ReportTests : IDisposable
{
    private readonly TestFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    // Closed forms for a wing of 800 x 150 mm at 2 degrees; 150 sin 2° = 5.234925 mm.
    [Theory]
    [InlineData("wing.span", 800, "mm")]
    [InlineData("wing.area", 120_000, "mm2")]
    [InlineData("wing.incidence", 2, "deg")]
    [InlineData("wing.rise", 5.234925, "mm")]
    public void Figure_has_its_value_and_unit(string key, double value, string unit)
    {
        using var report = Of(SmallDesign.Text);
        var figure = report.RootElement.GetProperty("figures").EnumerateArray().Single(figure => figure.GetProperty("key").GetString() == key);

        Assert.Equal(value, figure.GetProperty("value").GetDouble(), 5e-7);
        Assert.Equal(unit, figure.GetProperty("unit").GetString());
        Assert.NotEqual("", figure.GetProperty("label").GetString());
    }

    [Fact]
    public void Part_that_is_cut_has_its_material_and_figures()
    {
        using var report = Of(SmallDesign.Text);
        var former = report.RootElement.GetProperty("parts").EnumerateArray().Single(part => part.GetProperty("id").GetString() == "former-F1");

        Assert.Equal("cut", former.GetProperty("making").GetString());
        Assert.Equal(3, former.GetProperty("thickness_mm").GetDouble());
        Assert.NotEmpty(former.GetProperty("figures").EnumerateArray());
    }

    [Fact]
    public void Every_part_is_on_a_sheet()
    {
        using var report = Of(SmallDesign.Text);
        var onSheets = report.RootElement.GetProperty("sheets").EnumerateArray()
            .SelectMany(sheet => sheet.GetProperty("parts").EnumerateArray().Select(part => part.GetString())).ToHashSet();
        var parts = report.RootElement.GetProperty("parts").EnumerateArray().Select(part => part.GetProperty("id").GetString()).ToArray();

        Assert.NotEmpty(parts);
        Assert.All(parts, part => Assert.Contains(part, onSheets));
    }

    [Fact]
    public void Warning_has_its_place_and_the_name_of_its_file_without_folders()
    {
        using var report = Of(SmallDesign.Doubtful);
        var warning = report.RootElement.GetProperty("warnings").EnumerateArray().First();

        Assert.Equal("a.yaml", warning.GetProperty("file").GetString());
        Assert.Equal(15, warning.GetProperty("line").GetInt32());
        Assert.NotEqual("", warning.GetProperty("message").GetString());
    }

    [Fact]
    public void Same_report_is_printed_and_written()
    {
        var file = _folder.Write("a.yaml", SmallDesign.Text);
        TestTerminal.Run("draw", file, "--to", _folder["plans"]);

        Assert.Equal(_folder.Read($"plans/{SmallDesign.FolderName}/report.json"), TestTerminal.Run("check", "--json", file).Results);
    }

    private JsonDocument Of(string text) => JsonDocument.Parse(TestTerminal.Run("check", "--json", _folder.Write("a.yaml", text)).Results);
}
