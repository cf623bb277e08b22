using System.Globalization;
using System.Text.Json.Nodes;
using YamlDotNet.Core;
using YamlDotNet.RepresentationModel;

namespace PlanForge.Airframe.Tests.Schema;

/// <summary>Turns YAML into JSON as the editors that check by a schema do: plain scalars by the core schema of YAML 1.2.</summary>
internal static class YamlToJson
{
    public static JsonNode? Convert(string yaml)
    {
        var stream = new YamlStream();
        stream.Load(new StringReader(yaml));
        return Convert(stream.Documents[0].RootNode);
    }

    private static JsonNode? Convert(YamlNode node) => node switch
    {
        YamlMappingNode mapping => new JsonObject(mapping.Children.Select(c => KeyValuePair.Create(((YamlScalarNode)c.Key).Value!, Convert(c.Value)))),
        YamlSequenceNode list => new JsonArray([.. list.Children.Select(Convert)]),
        YamlScalarNode { Style: ScalarStyle.Plain, Value: "" or "~" or "null" } => null,
        YamlScalarNode { Style: ScalarStyle.Plain, Value: "true" or "false" } truth => JsonValue.Create(truth.Value == "true"),
        YamlScalarNode { Style: ScalarStyle.Plain } plain when IsNumber(plain.Value!, out var number) => JsonValue.Create(number),
        YamlScalarNode text => JsonValue.Create(text.Value),
        _ => throw new NotSupportedException(node.GetType().Name),
    };

    private static bool IsNumber(string text, out double number) => double.TryParse(
        text,
        NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint | NumberStyles.AllowExponent,
        CultureInfo.InvariantCulture,
        out number);
}
