using PlanForge.Airframe.Diagnostics;
using PlanForge.Airframe.Reading;

namespace PlanForge.Airframe.Tests.Reading;

public class ParameterOverridesTests
{
    private static readonly string Text = BrokenDescription.Sound
        .Replace("units: mm", "units: mm\nparameters: {wide: {value: 180 mm, from: 150 mm, to: 250 mm}, more: wide / 9}", StringComparison.Ordinal)
        .Replace("chord: 200", "chord: wide + more", StringComparison.Ordinal);

    [Theory]
    [InlineData("wide=171mm", 190)]
    [InlineData("wide = 17.1 cm", 190)]
    [InlineData("wide=171", 190)]
    [InlineData("more=5 mm", 185)]
    public void A_given_value_takes_the_place_of_the_file_s(string given, double chord)
    {
        var read = Read(given);
        Assert.Equal(chord, read.Airframe!.Wing.Root.Chord, 1e-9);
        Assert.Equal(given[..4], Assert.Single(read.Airframe.Overrides).Name);
    }

    [Fact]
    public void The_fingerprint_is_that_of_the_resulting_values()
    {
        var written = Text.Replace("180 mm", "171 mm", StringComparison.Ordinal);
        Assert.Equal(Description.Read(written).Airframe!.Issue.Fingerprint, Read("wide=171mm").Airframe!.Issue.Fingerprint);
        Assert.NotEqual(Description.Read(Text).Airframe!.Issue.Fingerprint, Read("wide=171mm").Airframe!.Issue.Fingerprint);
        Assert.Empty(Description.Read(Text).Airframe!.Overrides);
    }

    [Fact]
    public void Several_may_be_given_and_may_name_each_other() => Assert.Equal(160 + 80, Read("wide=160mm", "more=wide/2").Airframe!.Wing.Root.Chord, 1e-9);

    [Theory]
    [InlineData("wide=95xm", "--with:1:15: error: `xm` is not a unit")]
    [InlineData("wiDe=95mm", "--with:1:8: error: the description has no parameter `wiDe`; did you mean `wide`?")]
    [InlineData("wide=300mm", "--with:1:13: error: `wide` is 300 mm; it must be from 150 mm to 250 mm")]
    [InlineData("wide=3 deg", "--with:1:13: error: a length is needed here, and `3 deg` is an angle")]
    [InlineData("wide", "--with:1:8: error: `wide` gives no value")]
    [InlineData("wide=", "--with:1:12: error: `wide` has no value behind `=`")]
    [InlineData("wide=(2", "--with:1:13: error:")]
    [InlineData("wide=2\n3", "--with:1:")]
    [InlineData("wide=more * 2", "--with:1:13: error: these parameters are defined by each other")]
    public void What_is_wrong_is_shown_in_the_argument(string given, string start)
    {
        var read = Read(given);
        Assert.Null(read.Airframe);
        Assert.StartsWith(start, read.Diagnostics.First(finding => finding.Severity == Severity.Error).ToString(), StringComparison.Ordinal);
        Assert.All(read.Diagnostics, finding => Assert.Equal("--with", finding.At.File));
    }

    [Fact]
    public void The_second_argument_is_the_second_line()
    {
        var read = Read("wide=160mm", "wide=170mm");
        Assert.Equal("--with:2:8: error: `wide` is given twice", Assert.Single(read.Diagnostics).ToString());
    }

    private static ReadResult Read(params string[] given) =>
        AirframeReader.Read("complete.yaml", Text, Description.ReadSectionFile, new ParameterOverrides("--with", [.. given]));
}
