using System.Collections.Immutable;
using PlanForge.Geometry;

namespace PlanForge.Output.Inspection;

/// <summary>What was found out about a cut file.</summary>
/// <param name="Findings">By line and column; of one kind no more than a few dozen are listed, and a last one counts the others.</param>
/// <param name="Summary">What the file holds.</param>
public sealed record InspectionResult(ImmutableArray<Finding> Findings, CutFileSummary Summary)
{
    /// <summary>True when at least one finding is a fault.</summary>
    public bool HasFaults => Findings.Any(finding => finding.Severity == FindingSeverity.Fault);
}

/// <summary>What a cut file holds.</summary>
/// <param name="Format">Such as <c>DXF AC1015</c> or <c>SVG</c>.</param>
/// <param name="Unit">What a number of the file means, such as <c>mm</c>; empty when it does not say.</param>
/// <param name="Layers">The layers with lines, in the order they come up.</param>
/// <param name="Colours">The colours of lines as the file writes them (SVG), in the order they come up.</param>
public sealed record CutFileSummary(string Format, string Unit, ImmutableArray<LayerSummary> Layers, ImmutableArray<string> Colours);

/// <summary>What a layer holds.</summary>
/// <param name="Name">Its name.</param>
/// <param name="IsCut">False when its name says that it is only marked: score, engrave, text and the like.</param>
/// <param name="ContourCount">Closed contours, those with holding tabs included.</param>
/// <param name="OpenCount">Open paths.</param>
/// <param name="Length">Length of all lines, mm.</param>
/// <param name="Extents">The smallest rectangle around it, mm.</param>
public sealed record LayerSummary(string Name, bool IsCut, int ContourCount, int OpenCount, double Length, Bounds2 Extents);
