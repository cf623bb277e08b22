using PlanForge.Airframe.Format;
using PlanForge.Airframe.Quantities;

namespace PlanForge.Airframe.Schema;

/// <summary>Regular expressions (ECMA 262, as JSON Schema wants) for the texts a description holds.</summary>
/// <remarks>They follow the reader's grammar as far as a regular expression can and err on the side of accepting.</remarks>
internal static class Patterns
{
    private const string Decimal = @"(\d+\.?\d*|\.\d+)([eE][-+]?\d+)?";
    private const string Number = @"(\d+\s+\d+/\d+|\d+/\d+|" + Decimal + ")";

    public const string ParameterName = "^[A-Za-z][A-Za-z0-9_]*$";

    public const string SectionName = @"^\s*[Nn][Aa][Cc][Aa]\s+\d{4,5}\s*$|^[^/\\:][^\\:]*\.[Dd][Aa][Tt]\s*$";

    /// <summary>Two sides with an x between them.</summary>
    public const string Size = @"^[^x×]*\S\s*[x×]\s*\S";

    /// <summary>A size that begins with a figure, as no name of paper does.</summary>
    public const string PaperSize = @"^[\d.][^x×]*[x×]\s*\S";

    /// <summary>
    /// What begins with a word or a parenthesis, or has an operator behind its first value; without a comma between two digits.
    /// A single literal is none, or <c>2 1/4 deg</c> would do for a length.
    /// </summary>
    public const string Expression =
        """^(?=[\w\s+\-*/().,'"°′″%]+$)(?!.*\d,\d)(?!\s*[-+]?\s*""" + Number
        + """\s*([A-Za-z]+|['"°′″%])?\s*$)\s*([-+]?\s*[A-Za-z(]|.*\S\s*[-+*/])""";

    /// <summary>A name that files can bear; see <see cref="TextFormat.NotInFileNames"/>.</summary>
    public static string FileName
    {
        get
        {
            var refused = TextFormat.NotInFileNames.Replace("\\", "\\\\", StringComparison.Ordinal);
            return $"^[^{refused}. ]([^{refused}]*[^{refused}. ])?$";
        }
    }

    /// <summary>A number with or without a unit of a dimension; lengths also feet and inches, angles degrees and minutes.</summary>
    public static string Literal(Dimension dimension)
    {
        var signs = dimension switch
        {
            Dimension.Length => "|'|\"|′|″",
            Dimension.Angle => "|°",
            _ => "",
        };
        var second = dimension switch
        {
            Dimension.Length => $@"(\s*{Number}\s*(in|""|″))?",
            Dimension.Angle => $@"(\s*{Number}\s*['′](\s*{Number}\s*[""″])?)?",
            _ => "",
        };
        var units = dimension == Dimension.Number ? "%" : string.Join('|', WordsOf(dimension)) + signs;
        return $@"^\s*[-+]?\s*{Number}\s*({units})?{second}\s*$";
    }

    private static IEnumerable<string> WordsOf(Dimension dimension) =>
        UnitTable.Words.Where(word => UnitTable.FromWord(word)?.PowersOf().ToDimension() == dimension);
}
