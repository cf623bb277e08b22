using PlanForge.Airframe.Diagnostics;
using PlanForge.Airframe.Format;
using PlanForge.Airframe.Quantities;

namespace PlanForge.Airframe.Reading;

/// <summary>Reports what is wrong between values that are sound by themselves.</summary>
/// <param name="quantities">Writes values in the units of the description.</param>
/// <param name="diagnostics">Receives the findings.</param>
internal sealed class Findings(QuantityReader quantities, DiagnosticList diagnostics)
{
    public void Error(SourcePosition at, string message) => diagnostics.Error(at, message);

    public void Warning(SourcePosition at, string message) => diagnostics.Warning(at, message);

    /// <summary>A length in the units of the description.</summary>
    public string Length(double length) => quantities.Text(length, Dimension.Length);

    /// <summary>An angle in degrees.</summary>
    public string Angle(double angle) => quantities.Text(angle, Dimension.Angle);

    /// <summary>True when an angle lies in a format's range; else that is reported.</summary>
    public bool IsAllowed(double angle, QuantityFormat format, string label, SourcePosition at) =>
        quantities.IsAllowed(angle, format, label, at);

    /// <summary>
    /// A length held to a limit that depends on other values: reports what is clearly over it, and takes off what rounding put
    /// there. NaN stays NaN.
    /// </summary>
    /// <param name="length">The length, mm.</param>
    /// <param name="limit">The greatest allowed, mm.</param>
    /// <param name="what">The key in back quotes.</param>
    /// <param name="whatLimit">What the limit is, in words.</param>
    /// <param name="at">Where the length stands.</param>
    public double AtMost(double length, double limit, string what, string whatLimit, SourcePosition at)
    {
        if (!double.IsNaN(limit) && !Interval.Between(0, limit).Holds(length))
        {
            Error(at, $"{what} is {Length(length)}; it must be at most {Length(limit)}, {whatLimit}");
        }

        return Math.Min(length, limit);
    }

    /// <summary>Reports a name that nothing has, with the nearest that something has.</summary>
    /// <param name="name">The name.</param>
    /// <param name="noun">What should have it.</param>
    /// <param name="where">Where such things are.</param>
    /// <param name="known">The names there are; empty ones failed.</param>
    public void Unknown(TextValue name, string noun, string where, IReadOnlyList<string> known)
    {
        string[] names = [.. known.Where(text => text.Length > 0)];
        Error(name.At, $"there is no {noun} {Quote.Text(name.Text)} {where}; "
            + (Spelling.Near(name.Text, names) is { } near ? $"did you mean `{near}`?"
                : names.Length == 0 ? "there are none at all"
                : $"there {(names.Length == 1 ? "is only" : "are")} {Quote.List(names)}"));
    }

    /// <summary>Reports names given twice; case does not part names, since files are named after them.</summary>
    /// <param name="items">The mappings that have names; empty names failed.</param>
    /// <param name="key">The key of the name.</param>
    /// <param name="what">What is named, with its article.</param>
    public void AreNamesDifferent(List<ReadValue> items, Key<TextFormat> key, string what)
    {
        var known = new Dictionary<string, TextValue>(StringComparer.OrdinalIgnoreCase);
        foreach (var item in items)
        {
            if ((item as MappingValues)?.TextValue(key) is { } name && !known.TryAdd(name.Text, name))
            {
                var first = known[name.Text];
                Error(name.At, first.Text == name.Text
                    ? $"{what} is called {Quote.Text(name.Text)} already, in line {first.At.Line}"
                    : $"{Quote.Text(name.Text)} differs from {Quote.Text(first.Text)}, in line {first.At.Line}, by case alone");
            }
        }
    }
}
