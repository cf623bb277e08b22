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

    /// <summary>Reports names given twice; case does not part names, since files are named after them.</summary>
    /// <param name="names">The names with their places; empty ones failed.</param>
    /// <param name="what">What they name, with its article.</param>
    public void AreDifferent(IEnumerable<(string Name, SourcePosition At)> names, string what)
    {
        var lines = new Dictionary<string, (string Name, int Line)>(StringComparer.OrdinalIgnoreCase);
        foreach (var (name, at) in names)
        {
            if (name.Length > 0 && !lines.TryAdd(name, (name, at.Line)))
            {
                var first = lines[name];
                Error(at, first.Name == name
                    ? $"{what} is called {Quote.Text(name)} already, in line {first.Line}"
                    : $"{Quote.Text(name)} differs from {Quote.Text(first.Name)}, in line {first.Line}, by case alone");
            }
        }
    }
}
