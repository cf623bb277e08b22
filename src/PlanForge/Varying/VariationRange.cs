using System.Collections.Immutable;

namespace PlanForge.Varying;

/// <summary>A parameter and the range it is varied over, in equal steps with both ends.</summary>
/// <param name="Name">The parameter.</param>
/// <param name="From">The first value, as written.</param>
/// <param name="To">The last value, as written.</param>
/// <param name="Steps">How many values, at least 2.</param>
internal sealed record VariationRange(string Name, string From, string To, int Steps)
{
    private const string Between = "..";

    /// <summary>Reads <c>NAME=FROM..TO</c>; null when it is written otherwise.</summary>
    public static VariationRange? Read(string text, int steps)
    {
        var equals = text.IndexOf('=', StringComparison.Ordinal);
        var between = equals < 0 ? -1 : text.IndexOf(Between, equals, StringComparison.Ordinal);
        if (between < 0)
        {
            return null;
        }

        var (name, from, to) = (text[..equals].Trim(), text[(equals + 1)..between].Trim(), text[(between + Between.Length)..].Trim());
        return name.Length == 0 || from.Length == 0 || to.Length == 0 ? null : new(name, from, to, steps);
    }

    /// <summary>
    /// The value of each step as an expression of the description: units, fractions and limits are its own matter, and both ends are
    /// what was written.
    /// </summary>
    public ImmutableArray<string> Values => [.. Enumerable.Range(0, Steps).Select(ValueOf)];

    private string ValueOf(int step) => step == 0 ? From
        : step == Steps - 1 ? To
        : FormattableString.Invariant($"({From}) + (({To}) - ({From})) * {step} / {Steps - 1}");
}
