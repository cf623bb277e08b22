using System.Text.Json;
using System.Text.Json.Nodes;
using Json.Schema;
using PlanForge.Airframe.Format;
using PlanForge.Airframe.Measuring;
using PlanForge.Airframe.Schema;

namespace PlanForge.Airframe.Tests.Schema;

/// <summary>The schema of files of measurements, judged by an independent validator (JsonSchema.Net) and against its table.</summary>
public sealed class MeasurementSchemaTests
{
    private const string Sound =
        "design: a.yaml\nrounds: [{name: a, pins: {front: {port: [1, 2 mm], starboard: 3}}, tailplane: {cord: {from: wing tips, port: 3}}, "
        + "thrust: {over: 100, down: -3}}]\n";

    private static readonly string Json = MeasurementSchema.ToJson();
    private static readonly JsonSchema Schema = JsonSchema.FromText(Json);
    private static readonly EvaluationOptions Draft07 = new() { EvaluateAs = SpecVersion.Draft7 };

    [Fact]
    public void Schema_is_a_draft_07_schema() => Assert.True(MetaSchemas.Draft7.Evaluate(JsonNode.Parse(Json), Draft07).IsValid);

    [Fact]
    public void Every_reference_leads_to_a_definition_and_every_definition_is_used()
    {
        using var document = JsonDocument.Parse(Json);
        var defined = document.RootElement.GetProperty("definitions").EnumerateObject().Select(d => "#/definitions/" + d.Name);
        var used = All(document.RootElement).Where(p => p.Name == "$ref").Select(p => p.Value.GetString()!).Distinct();
        Assert.Equal(defined.Order(StringComparer.Ordinal), used.Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Every_mapping_of_the_reader_is_there_with_its_keys()
    {
        using var document = JsonDocument.Parse(Json);
        foreach (var mapping in FormatTable.All(MeasuringFormat.Root).OfType<MappingFormat>())
        {
            var schema = mapping == MeasuringFormat.Root ? document.RootElement : document.RootElement.GetProperty("definitions").GetProperty(mapping.Id);
            Assert.Equal(mapping.Keys.Select(key => key.Name), schema.GetProperty("properties").EnumerateObject().Select(property => property.Name));
        }
    }

    [Fact]
    public void Demo_and_every_way_to_write_a_reading_are_valid()
    {
        Assert.True(IsValid(Sound));
        Assert.NotNull(MeasurementReader.Read("m.yaml", Sound, DisplayUnit.Millimetre).Measurements);
        var demo = File.ReadAllText(Path.Combine(Root(), "designs", "bench", "oxbow-1420-measured.yaml"));
        Assert.StartsWith("# yaml-language-server: $schema=../measurements.schema.json\n", demo, StringComparison.Ordinal);
        Assert.True(IsValid(demo));
    }

    [Theory]
    [InlineData("port: [1, 2 mm]", "port: []")]
    [InlineData("port: [1, 2 mm]", "port: -1")]
    [InlineData("port: [1, 2 mm]", "prot: 1")]
    [InlineData("wing tips", "tail tips")]
    [InlineData("over: 100, ", "")]
    [InlineData("rounds: [{name: a", "rounds: [{nmae: a")]
    public void What_the_reader_refuses_is_not_valid(string from, string to)
    {
        var text = Sound.Replace(from, to, StringComparison.Ordinal);
        Assert.Null(MeasurementReader.Read("m.yaml", text, DisplayUnit.Millimetre).Measurements);
        Assert.False(IsValid(text));
    }

    private static bool IsValid(string yaml) => Schema.Evaluate(YamlToJson.Convert(yaml), Draft07).IsValid;

    private static string Root()
    {
        var folder = AppContext.BaseDirectory;
        while (!File.Exists(Path.Combine(folder, "PlanForge.sln")))
        {
            folder = Path.GetDirectoryName(folder) ?? throw new InvalidOperationException("The tests must run inside the repository.");
        }

        return folder;
    }

    private static IEnumerable<JsonProperty> All(JsonElement element) => element.ValueKind switch
    {
        JsonValueKind.Object => element.EnumerateObject().SelectMany(p => All(p.Value).Prepend(p)),
        JsonValueKind.Array => element.EnumerateArray().SelectMany(All),
        _ => [],
    };
}
