using System.Collections.Immutable;
using PlanForge.Airframe.Diagnostics;

namespace PlanForge.Airframe.Sections;

/// <summary>What came of reading a coordinate file.</summary>
/// <param name="Section">The section, or null when there is an error among the findings.</param>
/// <param name="Diagnostics">Errors and warnings, in the order of the file.</param>
public sealed record SectionFileResult(Section? Section, ImmutableArray<Diagnostic> Diagnostics);

/// <summary>Coordinate files (<c>.dat</c>) in both public layouts.</summary>
public static class SectionFile
{
    /// <summary>Reads the text of a coordinate file. Never throws, whatever the text holds.</summary>
    /// <param name="fileName">The file's name as the user gave it; its bare name is the section's when the file has no title.</param>
    /// <param name="text">The file's content.</param>
    public static SectionFileResult Read(string fileName, string text) => throw new NotImplementedException();
}
