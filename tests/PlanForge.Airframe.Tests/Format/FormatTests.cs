using PlanForge.Airframe.Format;

namespace PlanForge.Airframe.Tests.Format;

/// <summary>What the table of formats must hold for reader and schema to rely on it.</summary>
public class FormatTests
{
    // Words stand in the order of the members they mean, since the reader takes the one for the other.
    [Theory]
    [InlineData("placement", typeof(WingPlacement))]
    [InlineData("reference", typeof(IncidenceReference))]
    [InlineData("place", typeof(LongeronPlace))]
    [InlineData("grain", typeof(GrainDirection))]
    [InlineData("face", typeof(FormerFace))]
    [InlineData("trailing_edge", typeof(Airframe.Sections.TrailingEdge))]
    public void Words_stand_in_the_order_of_the_members_they_mean(string key, Type members) => Assert.All(
        FormatTable.Mappings().SelectMany(m => m.Keys).Where(k => k.Name == key),
        found => Assert.Equal(Enum.GetNames(members), Members(found)));

    [Fact]
    public void Words_for_edges_and_runs_stand_in_the_order_of_the_members_they_mean()
    {
        Assert.Equal(Enum.GetNames<FormerEdge>(), Members(FormerFormat.BevelEdge));
        Assert.Equal(Enum.GetNames<TabEdge>(), Members(FormerFormat.TabEdge));
        Assert.Equal(Enum.GetNames<Run>(), Members(FuselageFormat.Run));
        Assert.Equal(Enum.GetNames<Run>(), Members(FuselageFormat.RunAft));
        Assert.Equal(["mm", "cm", "in"], AirframeFormat.Units.Format.Words);
        Assert.Equal([DisplayUnit.Millimetre, DisplayUnit.Centimetre, DisplayUnit.Inch], Enum.GetValues<DisplayUnit>());
    }

    [Fact]
    public void Names_of_formats_are_different() =>
        Assert.Distinct(FormatTable.All().Select(f => (f as MappingFormat)?.Id ?? (f as ChoiceFormat)?.Id).Where(id => id is not null));

    [Fact]
    public void Keys_of_a_mapping_are_different_lower_case_words() => Assert.All(FormatTable.Mappings(), mapping =>
    {
        Assert.Distinct(mapping.Keys.Select(k => k.Name));
        Assert.All(mapping.Keys, key => Assert.Matches("^[a-z]+(_[a-z]+)*$", key.Name));
    });

    [Fact]
    public void Every_key_says_what_it_means_in_a_sentence() =>
        Assert.All(FormatTable.Mappings().SelectMany(m => m.Keys), key => Assert.Matches(@"^[A-Za-z].{3,}\.$", key.Summary));

    // Only then can the reader make them up without anything to report.
    [Fact]
    public void Mappings_assumed_empty_require_no_key() => Assert.All(
        FormatTable.Mappings().SelectMany(m => m.Keys).Where(k => k.Presence == Presence.AssumedEmpty),
        key => Assert.DoesNotContain(((MappingFormat)key.Format).Keys, k => k.Presence == Presence.Required));

    [Fact]
    public void Mappings_of_a_choice_are_told_apart_by_a_required_key() => Assert.All(FormatTable.All().OfType<ChoiceFormat>(), choice =>
    {
        var mappings = choice.Alternatives.OfType<MappingFormat>().ToList();
        Assert.All(mappings, one => Assert.True(
            mappings.Count == 1 || one.Keys.Any(key => key.Presence == Presence.Required && mappings.All(other => other == one || other.Find(key.Name) is null)),
            one.Id));
    });

    private static IEnumerable<string> Members(Key key) => ((WordFormat)key.Format).Words.Select(
        word => string.Concat(word.Split(' ').Select(part => char.ToUpperInvariant(part[0]) + part[1..])));
}
