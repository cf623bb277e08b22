using System.Collections.Immutable;
using System.Text.Json;
using CsCheck;
using PlanForge.Airframe.Described;
using PlanForge.Airframe.Reading;
using PlanForge.Currency;
using PlanForge.Designs;
using PlanForge.Folders;

namespace PlanForge.Tests.Currency;

public sealed class ChangesSinceTests : IDisposable
{
    private readonly TestFolder _folder = new();
    private readonly Dictionary<Choice, Design> _designs = [];

    public void Dispose() => _folder.Dispose();

    // What a comparison of both descriptions says, each read anew, against what manifest and history kept of the old one.
    [Fact]
    public void Each_old_description_is_told_by_just_the_values_that_differ() => Choices.Array[2, 8].Sample(
        chosen =>
        {
            var designs = Array.ConvertAll(chosen, DesignOf);
            var now = designs[^1];
            var states = StatesAfter(designs).ToList();
            foreach (var code in designs.Select(design => design.Airframe.Issue.Fingerprint.Code).Where(code => code != now.Airframe.Issue.Fingerprint.Code))
            {
                var check = CurrencyCheck.Of(code, DrawnState.Of(now), states);
                var since = ChangesSince.Of(check.Past!, DrawnState.Of(now), now);
                var old = designs.Last(design => design.Airframe.Issue.Fingerprint.Code == code);
                var expected = Texts(now.ListValues().Since(old.ListValues()));
                Assert.NotEmpty(expected);
                Assert.Equal(expected, Texts(since.Values!.Value));

                using var json = JsonDocument.Parse(CurrencyReport.Of(check, DrawnState.Of(now), since));
                Assert.Equal(
                    now.ListValues().Since(old.ListValues()).Select(value => value.Path),
                    json.RootElement.GetProperty("changed").EnumerateArray().Select(value => value.GetProperty("path").GetString()!));
            }
        },
        iter: 200,
        threads: 1);

    [Fact]
    public void A_part_is_told_by_what_it_is_made_from_and_a_part_that_is_no_more_by_nothing()
    {
        var (old, now) = (DesignOf(new(60, 3, true, "first")), DesignOf(new(60, 4, false, "second")));
        var state = StatesAfter([old, now]).Last();
        var since = ChangesSince.Of(state, DrawnState.Of(now), now);
        ImmutableArray<MarkedThing> things = [.. MarkedThing.AllOf(state)];

        Assert.Equal(["formers[]", "formers[F1].thickness"], since.CausesOf(things.Single(thing => thing.Id == "former-F1")).Select(value => value.Path));
        Assert.Empty(since.CausesOf(things.Single(thing => thing.Id == "former-F2")));
        Assert.Contains(since.Values!.Value, value => value.Path == "notes[1]" && value.Shown == "first -> second");
    }

    [Fact]
    public void A_sheet_that_shows_no_parts_is_told_by_what_it_reads_itself()
    {
        var (old, now) = (DesignOf(new(60, 3, true, "first")), DesignOf(new(64, 3, true, "second")));
        var state = StatesAfter([old, now]).Last();
        var since = ChangesSince.Of(state, DrawnState.Of(now), now);
        var arrangement = MarkedThing.AllOf(state).Single(thing => thing.Title == "Sheet 1, General arrangement");

        Assert.Empty(arrangement.Parts);
        Assert.Contains(since.CausesOf(arrangement), value => value.Path.StartsWith("fuselage.", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("""{"path": "name", "kind": "colour", "value": "x"}""")]
    [InlineData("""{"path": "name", "kind": "text"}""")]
    [InlineData("""{"path": "name", "kind": "text", "value": null}""")]
    [InlineData("""{"path": "name", "kind": "text", "value": "x"}, {"path": "name", "kind": "text", "value": "y"}""")]
    public void Values_that_are_none_of_ours_are_not_known(string values)
    {
        using var document = JsonDocument.Parse($$"""{"values": [{{values}}], "parameters": []}""");
        Assert.Null(DrawnValues.Read(document.RootElement)!.ToDescribed());
    }

    [Theory]
    [InlineData("{}")]
    [InlineData("""{"values": []}""")]
    [InlineData("""{"values": 1, "parameters": []}""")]
    [InlineData("""{"values": [[0, 1]], "parameters": []}""")]
    public void A_manifest_without_them_has_none(string manifest)
    {
        using var document = JsonDocument.Parse(manifest);
        Assert.Null(DrawnValues.Read(document.RootElement));
    }

    [Fact]
    public void What_is_written_down_is_read_back()
    {
        var values = DesignOf(new(60, 3, true, "a \"quoted\" note with a back\\slash")).ListValues();
        var lines = DrawnValues.Of(values);
        using var document = JsonDocument.Parse(JsonText.Write(json =>
        {
            json.WriteStartObject();
            lines.Write(json);
            json.WriteEndObject();
        }));
        var read = DrawnValues.Read(document.RootElement)!;
        Assert.True(read.IsSameAs(lines));
        Assert.Equal(values.Values.Select(Text), read.ToDescribed()!.Values.Select(Text));
        Assert.Equal(values.Parameters.Select(Text), read.ToDescribed()!.Parameters.Select(Text));
    }

    private static Gen<Choice> Choices => Gen.Select(
        Gen.Int[60, 62], Gen.Int[3, 4], Gen.Bool, Gen.Bool,
        (wide, thickness, hasSecond, isFirst) => new Choice(wide, thickness, hasSecond, isFirst ? "first" : "second"));

    private Design DesignOf(Choice choice)
    {
        if (!_designs.TryGetValue(choice, out var design))
        {
            var text = SmallDesign.Text
                .Replace("units: mm", $"units: mm\nnotes: [{JsonSerializer.Serialize(choice.Note)}]\nparameters: {{wide: {choice.Wide} mm, half: wide / 2}}", StringComparison.Ordinal)
                .Replace("half_breadth: 30", "half_breadth: half", StringComparison.Ordinal)
                .Replace("thickness: 3}", $"thickness: {choice.Thickness}}}", StringComparison.Ordinal);
            text += choice.HasSecond ? "  - {name: F2, station: 200, thickness: 3}\n" : "";
            design = Planner.Plan(_folder.Write("a.yaml", text), ParameterOverrides.None).Design!;
            _designs.Add(choice, design);
        }

        return design;
    }

    /// <summary>What manifest and history hold after all were drawn, the latest first.</summary>
    private static IEnumerable<DrawnState> StatesAfter(Design[] designs)
    {
        DrawnState? before = null;
        ReadOnlyMemory<byte> history = default;
        foreach (var design in designs)
        {
            var state = DrawnState.Of(design) with { Values = DrawnValues.Of(design.ListValues()) };
            var now = Manifest.Read(Manifest.Of(state, new("a.yaml", []), []).Content)!.State!;
            history = History.After(before, history, now)?.Content ?? default;
            before = now;
        }

        return History.Read(history, before!).Prepend(before!);
    }

    private static IEnumerable<string> Texts(IEnumerable<ValueChange> changes) =>
        changes.Select(change => $"{change.Path}: {Text(change.Before)} -> {Text(change.After)} [{string.Join("; ", Texts(change.Parameters))}]");

    private static string Text(DescribedValue? value) =>
        value is null ? "none" : $"{value.Path} {value.Kind} {value.Value} {value.Shown} ({string.Join(", ", value.Parameters)})";

    private sealed record Choice(int Wide, int Thickness, bool HasSecond, string Note);
}
