using PlanForge.Airframe.Reading.Yaml;

namespace PlanForge.Airframe.Measuring;

/// <summary>
/// Turns single readings into lists of one, so that <c>port: 168.25</c> and <c>port: [168.25, 168.5]</c> are read by one format.
/// </summary>
internal static class ReadingLists
{
    /// <summary>The file's tree with every reading in a list.</summary>
    public static YamlMapping Of(YamlMapping root) => At(root, "rounds", rounds => rounds is YamlList list
        ? list with { Items = [.. list.Items.Select(Round)] }
        : rounds);

    private static YamlNode Round(YamlNode node)
    {
        if (node is not YamlMapping round)
        {
            return node;
        }

        round = At(round, "pins", pins => pins is YamlMapping all ? At(At(all, "front", Sides), "rear", Sides) : pins);
        return At(At(round, "tips", Sides), "cord", Sides);
    }

    private static YamlNode Sides(YamlNode node) => node is YamlMapping pair ? At(At(pair, "port", Listed), "starboard", Listed) : node;

    // An empty value stays what it is: the reader says that it is missing.
    private static YamlNode Listed(YamlNode node) => node is YamlScalar { IsEmpty: false } ? new YamlList(node.At, [node]) : node;

    private static YamlMapping At(YamlMapping mapping, string key, Func<YamlNode, YamlNode> change) => mapping with
    {
        Entries = [.. mapping.Entries.Select(entry => entry.Key.Text == key ? entry with { Value = change(entry.Value) } : entry)],
    };
}
