using PlanForge.Airframe.Diagnostics;
using PlanForge.Airframe.Reading.Yaml;

namespace PlanForge.Airframe.Measuring;

/// <summary>
/// Finds misspelt words for the board's height. A word that is none would be read as an expression, and its fault told in words of
/// expressions.
/// </summary>
/// <param name="diagnostics">Receives them.</param>
internal sealed class BoardWords(DiagnosticList diagnostics)
{
    /// <summary>The file's tree, with what was reported taken out of the reader's way.</summary>
    public YamlMapping Checked(YamlMapping root) => At(root, MeasuringFormat.Rounds.Name, rounds => rounds is YamlList list
        ? list with { Items = [.. list.Items.Select(round => round is YamlMapping keys ? At(keys, MeasuringFormat.Board.Name, Board) : round)] }
        : rounds);

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

    private static YamlMapping At(YamlMapping mapping, string key, Func<YamlNode, YamlNode> change) => mapping with
    {
        Entries = [.. mapping.Entries.Select(entry => entry.Key.Text == key ? entry with { Value = change(entry.Value) } : entry)],
    };
}
