using System.Collections.Immutable;
using PlanForge.Airframe.Diagnostics;
using PlanForge.Airframe.Expressions;
using PlanForge.Airframe.Format;
using PlanForge.Airframe.Inputs;

namespace PlanForge.Airframe.Reading;

/// <summary>A value of the description after its own checks.</summary>
/// <remarks>
/// A value that failed was reported and says nothing further: as a number it is NaN, with which every comparison is false, as
/// a word it is −1, which is no enumeration's member, as text it is empty. So checks between values need not ask.
/// </remarks>
/// <param name="At">Where it stands.</param>
internal abstract record ReadValue(SourcePosition At)
{
    /// <summary>Its place in the description's tree; null while it is read.</summary>
    public Place? Place { get; set; }

    /// <summary>The parameters its expression names.</summary>
    public ImmutableArray<string> Parameters { get; set; } = [];

    /// <summary>The origin of the record that is made from this value.</summary>
    public Origin Origin => this is MappingValues ? new(Place) : Origin.OfValue(Place);
}

/// <summary>A value that was reported.</summary>
internal sealed record FailedValue(SourcePosition At) : ReadValue(At);

/// <summary>A quantity: mm, rad, g or a plain number; NaN when it failed.</summary>
internal sealed record NumberValue(SourcePosition At, double Number, Dimension Dimension) : ReadValue(At);

/// <summary>Text.</summary>
internal sealed record TextValue(SourcePosition At, string Text) : ReadValue(At);

/// <summary>A word, also by its place in its format.</summary>
internal sealed record WordValue(SourcePosition At, int Index, string Word) : ReadValue(At);

/// <summary>Two lengths, mm.</summary>
internal sealed record SizeValue(SourcePosition At, double First, double Second) : ReadValue(At);

/// <summary>Paper.</summary>
internal sealed record PaperValue(SourcePosition At, PaperDescription Paper) : ReadValue(At);

/// <summary>A list of what its items were read as.</summary>
internal sealed record ListValue(SourcePosition At, List<ReadValue> Items) : ReadValue(At);

/// <summary>A parameter's value, parsed but not yet worked out; null when it could not be parsed.</summary>
internal sealed record ParsedValue(SourcePosition At, Yaml.YamlScalar Scalar, Expression? Expression) : ReadValue(At);

/// <summary>The values of a mapping, by key.</summary>
/// <param name="At">Where the mapping stands.</param>
/// <param name="Format">Which mapping it is.</param>
/// <param name="Values">The values in the order of the format's keys; null for an absent key without default.</param>
internal sealed record MappingValues(SourcePosition At, MappingFormat Format, ReadValue?[] Values) : ReadValue(At)
{
    /// <summary>True when the key is there or has a default.</summary>
    public bool Has(Key key) => Find(key) is not null;

    /// <summary>Where a key's value stands, or the mapping when the key is absent.</summary>
    public SourcePosition AtValue(Key key) => Find(key)?.At ?? At;

    /// <summary>A quantity; NaN when it failed or is missing.</summary>
    public double Number(Key<QuantityFormat> key) => (Find(key) as NumberValue)?.Number ?? double.NaN;

    /// <summary>A quantity, or null when the key is absent.</summary>
    public double? OptionalNumber(Key<QuantityFormat> key) => Has(key) ? Number(key) : null;

    /// <summary>A text; empty when it failed or is absent.</summary>
    public string Text(Key<TextFormat> key) => TextValue(key)?.Text ?? "";

    /// <summary>A text with its place; null when it failed or is absent.</summary>
    public TextValue? TextValue(Key<TextFormat> key) => Find(key) as TextValue;

    /// <summary>The place of a word in its format; −1 when it failed or is absent.</summary>
    public int Word(Key<WordFormat> key) => (Find(key) as WordValue)?.Index ?? -1;

    /// <summary>A word itself; empty when it failed or is absent.</summary>
    public string WordText(Key<WordFormat> key) => Word(key) is >= 0 and var index ? key.Format.Words[index] : "";

    /// <summary>A size; NaN when it failed or is missing.</summary>
    public (double First, double Second) Size(Key<SizeFormat> key) =>
        Find(key) is SizeValue size ? (size.First, size.Second) : (double.NaN, double.NaN);

    /// <summary>Paper; null when it failed.</summary>
    public PaperDescription? Paper(Key<PaperFormat> key) => (Find(key) as PaperValue)?.Paper;

    /// <summary>A list's items; none when it failed or is absent.</summary>
    public List<ReadValue> List(Key<ListFormat> key) => (Find(key) as ListValue)?.Items ?? [];

    /// <summary>A mapping; null when it failed or is absent.</summary>
    public MappingValues? Mapping(Key<MappingFormat> key) => Find(key) as MappingValues;

    /// <summary>Whichever alternative was read; null when the key is absent.</summary>
    public ReadValue? Choice(Key<ChoiceFormat> key) => Find(key);

    /// <summary>A parameter's value; null when the key is absent or failed.</summary>
    public ParsedValue? Parsed(Key<ParameterValueFormat> key) => Find(key) as ParsedValue;

    /// <summary>The origin of what is made from the mapping behind a key, present or not.</summary>
    public Origin OriginOf(Key key) => new(Place?.Of(key));

    private ReadValue? Find(Key key) => Values[Format.IndexOf(key)];
}
