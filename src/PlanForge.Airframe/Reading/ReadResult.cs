using System.Collections.Immutable;
using PlanForge.Airframe.Described;
using PlanForge.Airframe.Diagnostics;

namespace PlanForge.Airframe.Reading;

/// <summary>What came of reading a description.</summary>
/// <param name="Airframe">The airframe, or null when there is an error among the findings.</param>
/// <param name="Diagnostics">
/// Every error and warning once: those about the description first, by position, then those about section files.
/// </param>
public sealed record ReadResult(AirframeDescription? Airframe, ImmutableArray<Diagnostic> Diagnostics)
{
    private readonly Lazy<DescribedValues>? _values;

    /// <summary>The description as a flat list of values; none when it could not be read.</summary>
    /// <remarks>Listed when it is first asked for: most runs do not.</remarks>
    public DescribedValues ListValues() => _values?.Value ?? DescribedValues.None;

    internal ReadResult(AirframeDescription airframe, ImmutableArray<Diagnostic> diagnostics, Func<DescribedValues> values)
        : this(airframe, diagnostics) => _values = new(values);
}
