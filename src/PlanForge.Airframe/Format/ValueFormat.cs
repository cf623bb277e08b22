using System.Collections.Immutable;
using PlanForge.Airframe.Quantities;

namespace PlanForge.Airframe.Format;

/// <summary>
/// What may stand behind a key. The formats of all keys form one table, which the reader walks to read a description and the
/// schema writer walks to describe one: what the one accepts, the other offers.
/// </summary>
internal abstract class ValueFormat;

/// <summary>The format version: the number 1.</summary>
internal sealed class VersionFormat : ValueFormat
{
    public const string Current = "1";
}

/// <summary>One line of free text.</summary>
/// <param name="longest">The greatest number of characters: what a title strip or a part's label can hold.</param>
/// <param name="isFileName">True when files are named after it.</param>
internal sealed class TextFormat(int longest, bool isFileName) : ValueFormat
{
    /// <summary>Characters that some file system refuses in a name.</summary>
    public const string NotInFileNames = "/\\:*?\"<>|";

    public static readonly TextFormat Line = new(200, false);
    public static readonly TextFormat Name = new(60, true);

    public int Longest => longest;

    public bool IsFileName => isFileName;
}

/// <summary>One of some words; where they mean an enumeration's members, they stand in its order.</summary>
internal sealed class WordFormat(params ImmutableArray<string> words) : ValueFormat
{
    public ImmutableArray<string> Words => words;
}

/// <summary>A quantity or expression of one dimension.</summary>
/// <param name="dimension">The dimension.</param>
/// <param name="range">What values are allowed: lengths in mm, angles in degrees.</param>
internal sealed class QuantityFormat(Dimension dimension, Interval range) : ValueFormat
{
    public static readonly QuantityFormat AnyLength = new(Dimension.Length, Interval.Any);
    public static readonly QuantityFormat PositiveLength = new(Dimension.Length, Interval.Positive);
    public static readonly QuantityFormat LengthFromZero = new(Dimension.Length, Interval.NotNegative);

    public Dimension Dimension => dimension;

    public Interval Range => range;

    public static QuantityFormat Angle(Interval range) => new(Dimension.Angle, range);

    public static QuantityFormat Proportion(Interval range) => new(Dimension.Number, range);
}

/// <summary>A quantity or expression of any dimension a parameter may have.</summary>
internal sealed class ParameterValueFormat : ValueFormat;

/// <summary>Two positive lengths, <c>W x H</c>; the unit of the last serves both.</summary>
/// <param name="allowsOne">True when one length may stand for both.</param>
internal sealed class SizeFormat(bool allowsOne) : ValueFormat
{
    public bool AllowsOne => allowsOne;
}

/// <summary>Paper: a name, or its size <c>W x H</c>.</summary>
/// <param name="names">The names.</param>
internal sealed class PaperFormat(ImmutableArray<string> names) : ValueFormat
{
    private static readonly ImmutableArray<string> CutNames =
        ["A4", "A3", "A2", "A1", "A0", "Letter", "Legal", "Tabloid", "ANSI C", "ANSI D", "ANSI E"];

    /// <summary>Cut paper: what tiles are printed on.</summary>
    public static readonly PaperFormat Cut = new(CutNames);

    /// <summary>Cut paper, and rolls by their width in millimetres.</summary>
    public static readonly PaperFormat Any = new([.. CutNames, "roll 594", "roll 610", "roll 841", "roll 914"]);

    public ImmutableArray<string> Names => names;

    /// <summary>True when a text means a size: no name begins with a figure.</summary>
    public static bool IsSize(string text) => text.Length > 0 && (char.IsAsciiDigit(text[0]) || text[0] == '.');
}

/// <summary>A section by name: <c>naca 2412</c> or <c>FILE.dat</c>.</summary>
internal sealed class SectionNameFormat : ValueFormat;

/// <summary>A list.</summary>
/// <param name="item">What its items are; deferred, since sections hold sections.</param>
/// <param name="least">The least number of items.</param>
/// <param name="greatest">The greatest number of items.</param>
/// <param name="isSingleAllowed">True when a single value may stand for a list of it.</param>
internal sealed class ListFormat(Func<ValueFormat> item, int least = 0, int greatest = int.MaxValue, bool isSingleAllowed = false) : ValueFormat
{
    public bool IsSingleAllowed => isSingleAllowed;

    public ValueFormat Item => item();

    public int Least => least;

    public int Greatest => greatest;
}

/// <summary>A mapping with fixed keys.</summary>
/// <param name="id">Its name in the schema.</param>
/// <param name="noun">What to call it in a message, with its article.</param>
/// <param name="keys">Its keys.</param>
internal sealed class MappingFormat(string id, string noun, params ImmutableArray<Key> keys) : ValueFormat
{
    public string Id => id;

    public string Noun => noun;

    public ImmutableArray<Key> Keys => keys;

    public int IndexOf(Key key) => keys.IndexOf(key);

    public Key? Find(string name)
    {
        foreach (var key in keys)
        {
            if (key.Name == name)
            {
                return key;
            }
        }

        return null;
    }
}

/// <summary>The parameters: a mapping whose keys are their names.</summary>
internal sealed class ParametersFormat(MappingFormat detail) : ValueFormat
{
    /// <summary>A parameter written as a mapping.</summary>
    public MappingFormat Detail => detail;
}

/// <summary>
/// One of several formats, told apart by what is written: a single value is a word when it is one of the words, else the
/// other single format; a mapping is the one whose deciding keys it has.
/// </summary>
/// <param name="id">Its name in the schema.</param>
/// <param name="noun">What to call it in a message, with its article.</param>
/// <param name="alternatives">The formats; mappings whose required keys differ.</param>
internal sealed class ChoiceFormat(string id, string noun, params ImmutableArray<ValueFormat> alternatives) : ValueFormat
{
    public string Id => id;

    public string Noun => noun;

    public ImmutableArray<ValueFormat> Alternatives => alternatives;

    /// <summary>Those of the alternatives that are mappings.</summary>
    public ImmutableArray<MappingFormat> Mappings { get; } = MappingsAmong(alternatives);

    private static ImmutableArray<MappingFormat> MappingsAmong(ImmutableArray<ValueFormat> alternatives)
    {
        var mappings = ImmutableArray.CreateBuilder<MappingFormat>(alternatives.Length);
        foreach (var alternative in alternatives)
        {
            if (alternative is MappingFormat mapping)
            {
                mappings.Add(mapping);
            }
        }

        return mappings.ToImmutable();
    }
}
