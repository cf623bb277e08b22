using PlanForge.Airframe.Reading;
using PlanForge.Designs;
using PlanForge.Following;

namespace PlanForge.Tests.Following;

public sealed class FollowedFilesTests : IDisposable
{
    private const string WithSection =
        """
        planforge: 1
        name: Sections
        units: mm
        wing:
          leading_edge: {station: 100, height: 20}
          root: {section: {file: own.dat}, chord: 150}
          panels: [{length: 400}]
        fuselage:
          stations:
            - {station: 0, half_breadth: 30, upper: 30, lower: -30}
            - {station: 300, half_breadth: 30, upper: 30, lower: -30}
        cutter: {profile: shop.yaml}

        """;

    private readonly TestFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void A_description_that_was_not_there_is_not_current_once_it_is()
    {
        var files = FollowedFiles.Of(_folder["a.yaml"]);
        Assert.True(files.AreCurrent());

        _folder.Write("a.yaml", SmallDesign.Text);
        Assert.False(files.AreCurrent());
        Assert.True(files.AsTheyAre().AreCurrent());
    }

    [Fact]
    public void Section_files_and_the_profile_are_followed_before_they_are_there()
    {
        var files = Planned("a.yaml", WithSection);

        Assert.Contains(_folder["own.dat"], files.Paths);
        Assert.True(files.AreCurrent());
        _folder.Write("own.dat", "x");
        Assert.False(files.AreCurrent());
    }

    [Fact]
    public void A_broken_description_keeps_what_it_included_followed()
    {
        var whole = WithSection.Replace("{file: own.dat}", "naca 2412", StringComparison.Ordinal);
        _folder.Write("shop.yaml", "operations: {}\n");
        var files = Planned("a.yaml", whole);
        Assert.Contains(_folder["shop.yaml"], files.Paths);

        var broken = After(files, "a.yaml", whole + "wing: [\n");
        Assert.Contains(_folder["shop.yaml"], broken.Paths);
        Assert.True(broken.AreCurrent());
    }

    [Fact]
    public void What_is_no_longer_included_is_no_longer_followed()
    {
        _folder.Write("shop.yaml", "operations: {}\n");
        var whole = WithSection.Replace("{file: own.dat}", "naca 2412", StringComparison.Ordinal);
        var files = After(Planned("a.yaml", whole), "a.yaml", SmallDesign.Text);

        Assert.Equal([_folder["a.yaml"]], files.Paths);
    }

    [Fact]
    public void The_target_of_a_link_is_followed_too()
    {
        var target = _folder.Write("elsewhere/real.yaml", SmallDesign.Text);
        File.CreateSymbolicLink(_folder["a.yaml"], target);

        Assert.Equal([_folder["a.yaml"], target], FollowedFiles.Of(_folder["a.yaml"]).Paths);
    }

    private FollowedFiles Planned(string name, string text) => After(FollowedFiles.Of(_folder[name]), name, text);

    private FollowedFiles After(FollowedFiles before, string name, string text) =>
        before.After(Planner.Plan(_folder.Write(name, text), ParameterOverrides.None, 1, new(), CancellationToken.None));
}
