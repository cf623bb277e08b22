using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using Json.Schema;
using PlanForge.Airframe.Format;
using PlanForge.Airframe.Schema;
using PlanForge.Airframe.Tests.Reading;

namespace PlanForge.Airframe.Tests.Schema;

/// <summary>The schema, judged by an independent validator (JsonSchema.Net) and against the table it is written from.</summary>
public class DescriptionSchemaTests
{
    private static readonly string Json = DescriptionSchema.ToJson();
    private static readonly JsonSchema Schema = JsonSchema.FromText(Json);
    private static readonly EvaluationOptions Draft07 = new() { EvaluateAs = SpecVersion.Draft7 };

    [Fact]
    public void The_schema_is_a_draft_07_schema()
    {
        var root = JsonNode.Parse(Json)!;
        Assert.Equal("http://json-schema.org/draft-07/schema#", root["$schema"]!.GetValue<string>());
        Assert.True(MetaSchemas.Draft7.Evaluate(root, Draft07).IsValid);
    }

    [Fact]
    public void The_schema_is_the_same_on_every_run_and_has_lf_line_ends()
    {
        Assert.Equal(Json, DescriptionSchema.ToJson());
        Assert.DoesNotContain('\r', Json);
        Assert.EndsWith("}\n", Json, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_reference_leads_to_a_definition_and_every_definition_is_used()
    {
        using var document = JsonDocument.Parse(Json);
        var defined = document.RootElement.GetProperty("definitions").EnumerateObject().Select(d => "#/definitions/" + d.Name).ToHashSet();
        var used = All(document.RootElement).Where(p => p.Name == "$ref").Select(p => p.Value.GetString()!).ToHashSet();
        Assert.Equal(defined.Order(StringComparer.Ordinal), used.Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Every_mapping_of_the_reader_is_there_with_its_keys_and_no_others()
    {
        using var document = JsonDocument.Parse(Json);
        Assert.All(FormatTable.Mappings(), mapping =>
        {
            var schema = mapping.Id == "description"
                ? document.RootElement
                : document.RootElement.GetProperty("definitions").GetProperty(mapping.Id);
            Assert.False(schema.GetProperty("additionalProperties").GetBoolean());
            Assert.Equal(mapping.Keys.Select(k => k.Name), schema.GetProperty("properties").EnumerateObject().Select(p => p.Name));
            Assert.Equal(
                mapping.Keys.Where(k => k.Presence == Presence.Required).Select(k => k.Name),
                schema.GetProperty("required").EnumerateArray().Select(r => r.GetString()));
            Assert.All(mapping.Keys, key => Assert.StartsWith(
                key.Summary,
                schema.GetProperty("properties").GetProperty(key.Name).GetProperty("description").GetString(),
                StringComparison.Ordinal));
        });
    }

    [Fact]
    public void The_complete_description_is_valid() => Assert.True(IsValid(Description.Complete));

    [Fact]
    public void The_least_description_is_valid() => Assert.True(IsValid(BrokenDescription.Sound));

    // What the reader takes the schema must take: here every odd writing of lengths and angles.
    [Theory]
    [InlineData("chord: 200", "chord: 5' 6 1/2\"")]
    [InlineData("chord: 200", "chord: 5′6″")]
    [InlineData("chord: 200", "chord: 2 1/4 in")]
    [InlineData("chord: 200", "chord: 3/64\"")]
    [InlineData("chord: 200", "chord: +.5mm")]
    [InlineData("chord: 200", "chord: 5. cm")]
    [InlineData("chord: 200", "chord: 1e-3 m")]
    [InlineData("chord: 200", "chord: '200'")]
    [InlineData("chord: 200", "chord: (1 mm + 2 mm) * 2")]
    [InlineData("chord: 200", "chord: 2*100 mm")]
    [InlineData("chord: 200", "chord: 'max(1 mm, 2 mm)'")]
    [InlineData("chord: 200", "chord: -(-3 mm)")]
    [InlineData("wing:", "wing:\n  incidence: 1° 30' 15\"")]
    [InlineData("wing:", "wing:\n  incidence: {angle: 0.01 rad}")]
    [InlineData("wing:", "wing:\n  incidence: {rise: 3, over: 200 mm, reference: underside}")]
    [InlineData("naca 2412", "NACA 23012")]
    [InlineData("section: naca 2412", "section: {naca: 2412, thickness: 0.1}")]
    [InlineData("section: naca 2412", "section: {blend: [naca 2412, {blend: [naca 0009, naca 0012], at: 50 %}], at: 0.5}")]
    [InlineData("name: Sound", "name: 1420")]
    [InlineData("name: Sound", "name: no")]
    [InlineData("name: Sound", "name: a")]
    public void What_the_reader_takes_is_valid(string from, string to)
    {
        var text = BrokenDescription.Sound.Replace(from, to, StringComparison.Ordinal);
        Assert.NotNull(Description.Read(text).Airframe);
        Assert.True(IsValid(text), text);
    }

    // The one exception is the version in quotes. Texts are spoiled once, so that about one in five stays readable.
    [Fact]
    public void What_the_reader_takes_of_spoiled_descriptions_is_valid()
    {
        var taken = 0;
        for (var i = 0; i < 1000; i++)
        {
            var text = Mutation.Of(i % 2 == 0 ? Description.Complete : BrokenDescription.Sound, 1, new Random(i));
            if (Description.Read(text).Airframe is not null && text.Contains("planforge: 1\n", StringComparison.Ordinal))
            {
                taken++;
                Assert.True(IsValid(text), $"text {i} is not valid:\n{text}");
            }
        }

        Assert.InRange(taken, 100, 1000);
    }

    [Theory]
    [InlineData("name: Sound\n", "", "a required key is missing")]
    [InlineData("name: Sound", "nmae: Sound", "a key is misspelled")]
    [InlineData("planforge: 1", "planforge: 2", "the version is another")]
    [InlineData("units: mm", "units: ft", "a word is unknown")]
    [InlineData("name: Sound", "name: a/b", "a name cannot name a file")]
    [InlineData("name: Sound", "name: Sound.", "a name ends with a dot")]
    [InlineData("chord: 200", "chord: 0", "a bare number is out of its range")]
    [InlineData("chord: 200", "chord: 200 mn", "a unit is unknown")]
    [InlineData("chord: 200", "chord: 3 deg", "a unit measures something else")]
    [InlineData("chord: 200", "chord: '1,5 mm'", "a decimal comma")]
    [InlineData("chord: 200", "chord: 2 1/4 deg", "an angle where a length belongs")]
    [InlineData("chord: 200", "chord: [200]", "a list where a value belongs")]
    [InlineData("[{length: 500}]", "[]", "a list is too short")]
    [InlineData("[{length: 500}]", "{length: 500}", "a mapping where a list belongs")]
    [InlineData("naca 2412", "naca 241", "a section has three digits")]
    [InlineData("naca 2412", "flat plate", "a section is neither digits nor a file")]
    [InlineData("section: naca 2412", "section: {naca: 2412, file: otter.dat}", "keys of two alternatives are mixed")]
    [InlineData("section: naca 2412", "section: {blend: [naca 2412], at: 0.5}", "a blend has one section")]
    [InlineData("wing:", "wing:\n  incidence: {reference: chord}", "an alternative lacks what decides it")]
    [InlineData("wing:", "wing:\n  incidence: 50", "an angle is out of its range")]
    [InlineData("wing:", "parameters: {2nd: 3}\nwing:", "a parameter's name begins with a digit")]
    [InlineData("wing:", "stock: [{name: a, material: b, thickness: 3, size: 100 mm}]\nwing:", "a size has one length")]
    public void What_the_reader_refuses_is_not_valid_where_a_schema_can_tell(string from, string to, string because)
    {
        var text = BrokenDescription.Sound.Replace(from, to, StringComparison.Ordinal);
        Assert.Null(Description.Read(text).Airframe);
        Assert.False(IsValid(text), because);
    }

    [Fact]
    public void Defaults_in_the_schema_are_valid_there()
    {
        using var document = JsonDocument.Parse(Json);
        var bounds = All(document.RootElement).Where(p => p.Value.ValueKind == JsonValueKind.Object && p.Value.TryGetProperty("default", out _)).ToList();
        Assert.True(bounds.Count > 20);
        Assert.All(bounds, property =>
        {
            var part = JsonNode.Parse(Json)!.AsObject();
            var standalone = new JsonObject
            {
                ["allOf"] = new JsonArray(JsonNode.Parse(property.Value.GetRawText())),
                ["definitions"] = part["definitions"]!.DeepClone(),
            };
            var value = JsonNode.Parse(property.Value.GetProperty("default").GetRawText());
            Assert.True(
                JsonSchema.FromText(standalone.ToJsonString()).Evaluate(value, Draft07).IsValid,
                string.Create(CultureInfo.InvariantCulture, $"{property.Name}: {value}"));
        });
    }

    private static bool IsValid(string yaml) => Schema.Evaluate(YamlToJson.Convert(yaml), Draft07).IsValid;

    private static IEnumerable<JsonProperty> All(JsonElement element) => element.ValueKind switch
    {
        JsonValueKind.Object => element.EnumerateObject().SelectMany(p => All(p.Value).Prepend(p)),
        JsonValueKind.Array => element.EnumerateArray().SelectMany(All),
        _ => [],
    };
}
