using System.Collections.Immutable;

namespace PlanForge.Airframe.Values;

/// <summary>A single value of a description.</summary>
/// <param name="Path">
/// Where it stands, in the words of the file: <c>wing.incidence.rise</c>, <c>formers[F3].thickness</c>. Entries of lists go by their
/// name, else by their number counted from 1. <c>formers[]</c> is which entries a list has, <c>retention.dowels{}</c> that a mapping is
/// there which may be left out; a section file has its own path.
/// </param>
/// <param name="Kind">What kind of value it is.</param>
/// <param name="Value">The value, spelt so that equal values have equal texts: mm, radians, grams or a plain number; words and texts as they are.</param>
/// <param name="Shown">The value for people, in the unit of the description.</param>
/// <param name="Parameters">The parameters it was computed from, those that these were computed from among them, in the order of their names.</param>
public sealed record DescribedValue(string Path, ValueKind Kind, string Value, string Shown, ImmutableArray<string> Parameters);

/// <summary>The kind of a value.</summary>
public enum ValueKind
{
    /// <summary>A plain number.</summary>
    Number,

    /// <summary>A length.</summary>
    Length,

    /// <summary>An angle.</summary>
    Angle,

    /// <summary>A mass.</summary>
    Mass,

    /// <summary>Free text.</summary>
    Text,

    /// <summary>One of some words.</summary>
    Word,

    /// <summary>Two lengths.</summary>
    Size,

    /// <summary>Paper.</summary>
    Paper,

    /// <summary>The coordinates of a section file, by their hash.</summary>
    Coordinates,

    /// <summary>Which entries a list has, in which order; or how many, where they have no names.</summary>
    Members,

    /// <summary>That a mapping is there which may be left out.</summary>
    Presence,
}
