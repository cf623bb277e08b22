using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using PlanForge.Airframe;
using PlanForge.Parts;
using PlanForge.Parts.Wording;

namespace PlanForge.Drafting.Nests;

/// <summary>All that the layout of one stock's parts depends on.</summary>
internal sealed class NestKey(ImmutableArray<StockDescription> stocks, ImmutableArray<Part> parts, NestOptions options) : IEquatable<NestKey>
{
    private readonly ImmutableArray<StockDescription> _stocks = stocks;
    private readonly ImmutableArray<Part> _parts = parts;
    private readonly NestOptions _options = options;

    public bool Equals(NestKey? other) => other is not null && _options == other._options
        && _parts.AsSpan().SequenceEqual(other._parts.AsSpan(), ReferenceEqualityComparer.Instance)
        && _stocks.AsSpan().SequenceEqual(other._stocks.AsSpan(), SameStock.Comparer);

    public override bool Equals(object? obj) => Equals(obj as NestKey);

    public override int GetHashCode()
    {
        var hash = new HashCode();
        foreach (var part in _parts)
        {
            hash.Add(RuntimeHelpers.GetHashCode(part));
        }

        return hash.ToHashCode();
    }

    /// <summary>Compares stock with its remnants, places in the description included: findings name them.</summary>
    private sealed class SameStock : IEqualityComparer<StockDescription>
    {
        public static SameStock Comparer { get; } = new();

        public bool Equals(StockDescription? one, StockDescription? other) => one is not null && other is not null
            && one.Remnants.AsSpan().SequenceEqual(other.Remnants.AsSpan()) && one with { Remnants = other.Remnants } == other;

        public int GetHashCode(StockDescription stock) => 0;
    }
}

/// <summary>All that the drawing of a nest depends on.</summary>
internal sealed class NestDrawingKey : IEquatable<NestDrawingKey>
{
    private readonly NestedSheet _frame;
    private readonly ImmutableArray<NestedPart> _parts;
    private readonly (ShownUnits Units, double Width, double Height, bool IsAlone) _room;

    /// <summary>The key of a nest that is drawn into some room.</summary>
    public NestDrawingKey(NestedSheet sheet, ShownUnits units, double width, double height, bool isAlone)
    {
        // What a line more or less above it in the description changes is not drawn.
        _frame = sheet with { Parts = [], Stock = sheet.Stock with { Remnants = [], OnHand = null, At = default } };
        _parts = sheet.Parts;
        _room = (units, width, height, isAlone);
    }

    public bool Equals(NestDrawingKey? other) => other is not null && _room == other._room && _frame == other._frame
        && _parts.AsSpan().SequenceEqual(other._parts.AsSpan());

    public override bool Equals(object? obj) => Equals(obj as NestDrawingKey);

    public override int GetHashCode() => HashCode.Combine(_room, _frame.Title, _parts.Length);
}
