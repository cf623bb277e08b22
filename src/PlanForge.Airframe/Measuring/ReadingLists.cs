using PlanForge.Airframe.Diagnostics;
using PlanForge.Airframe.Reading.Yaml;

namespace PlanForge.Airframe.Measuring;

/// <summary>
/// Turns single readings into lists of one, so that <c>port: 168.25</c> and <c>port: [168.25, 168.5]</c> are read by one format.
/// </summary>
/// <param name="diagnostics">Receives misspelt words for the board.</param>
internal sealed class ReadingLists(DiagnosticList diagnostics)
{
    /// <summary>The file's tree with every reading in a list.</summary>
    public YamlMapping Of(YamlMapping root) => At(root, "rounds", rounds => rounds is YamlList list
        ? list with { Items = [.. list.Items.Select(Round)] }
        : rounds);

    private YamlNode Round(YamlNode node)
    {
        if (node is not YamlMapping round)
        {
            return node;
        }

        round = At(round, "pins", pins => pins is YamlMapping all ? At(At(all, "front", Sides), "rear", Sides) : pins);
        return At(At(At(round, "tips", Sides), "cord", Sides), MeasuringFormat.Board.Name, Board);
    }

    // A word that is none would be read as an expression, and its fault told in words of expressions.
    private YamlNode Board(YamlNode node)
    {
        if (node is not YamlScalar { IsEmpty: false } scalar || MeasuringFormat.BoardWords.Words.Contains(scalar.Text)
            || Spelling.Near(scalar.Text, MeasuringFormat.BoardWords.Words) is not { } near)
        {
            return node;
        }

        diagnostics.Error(scalar.At, $"`{MeasuringFormat.Board.Name}` cannot be {Quote.Text(scalar.Text)}; did you mean `{near}`?");
        return new YamlRefused(scalar.At);
    }

    private static YamlNode Sides(YamlNode node) => node is YamlMapping pair ? At(At(pair, "port", Listed), "starboard", Listed) : node;

    // An empty value stays what it is: the reader says that it is missing.
    private static YamlNode Listed(YamlNode node) => node is YamlScalar { IsEmpty: false } ? new YamlList(node.At, [node]) : node;

    private static YamlMapping At(YamlMapping mapping, string key, Func<YamlNode, YamlNode> change) => mapping with
    {
        Entries = [.. mapping.Entries.Select(entry => entry.Key.Text == key ? entry with { Value = change(entry.Value) } : entry)],
    };
}
