using PlanForge.Airframe.Reading;

namespace PlanForge.Airframe.Tests.Reading;

public class SectionFilesTests
{
    private static readonly string TwoUses = BrokenDescription.Sound
        .Replace("naca 2412", "sections/otter.dat", StringComparison.Ordinal)
        .Replace("{length: 500}", "{length: 500, tip: {section: {file: sections/otter.dat}}}", StringComparison.Ordinal);

    [Fact]
    public void A_file_is_read_once_however_often_it_is_named()
    {
        var asked = new List<string>();
        var result = AirframeReader.Read("oxbow.yaml", TwoUses, path =>
        {
            asked.Add(path);
            return Description.ReadSectionFile("otter.dat");
        });
        Assert.Equal(["sections/otter.dat"], asked);
        Assert.Same(result.Airframe!.Wing.Root.Section, result.Airframe.Wing.Panels[0].Tip.Section);
    }

    [Fact]
    public void A_missing_file_is_reported_where_it_is_named()
    {
        var result = AirframeReader.Read("designs/oxbow.yaml", TwoUses, _ => null);
        Assert.Equal(
            [
                "designs/oxbow.yaml:6:19: error: there is no file `sections/otter.dat` beside the description",
                "designs/oxbow.yaml:7:48: error: there is no file `sections/otter.dat` beside the description",
            ],
            result.Diagnostics.Select(d => d.ToString()));
    }

    [Theory]
    [InlineData("designs/oxbow.yaml", "designs/sections/otter.dat")]
    [InlineData("designs\\oxbow.yaml", "designs\\sections/otter.dat")]
    [InlineData("oxbow.yaml", "sections/otter.dat")]
    public void What_is_wrong_in_a_file_is_reported_there_once_and_after_the_description(string description, string file)
    {
        var text = TwoUses.Replace("station: 600", "station: -600", StringComparison.Ordinal);
        var result = AirframeReader.Read(description, text, _ => "no coordinates here\n");
        Assert.Null(result.Airframe);
        Assert.Equal(description, result.Diagnostics[0].At.File);
        Assert.NotEmpty(result.Diagnostics.Skip(1));
        Assert.All(result.Diagnostics.Skip(1), finding => Assert.Equal(file, finding.At.File));
        Assert.Distinct(result.Diagnostics);
    }
}
