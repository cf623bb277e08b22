using System.Collections.Immutable;
using PlanForge.Airframe.Diagnostics;

namespace PlanForge.Airframe.Reading;

/// <summary>What came of reading a description.</summary>
/// <param name="Airframe">The airframe, or null when there is an error among the findings.</param>
/// <param name="Diagnostics">
/// Every error and warning once: those about the description first, by position, then those about section files.
/// </param>
public sealed record ReadResult(AirframeDescription? Airframe, ImmutableArray<Diagnostic> Diagnostics)
{
    /// <summary>The values that were read, to be held against those of another reading; null without an airframe.</summary>
    public DescriptionValues? Values { get; init; }
}
