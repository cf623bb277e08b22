using System.Collections.Immutable;

namespace PlanForge.Folders;

/// <summary>What is written of a design.</summary>
/// <param name="Files">All files, the manifest last.</param>
/// <param name="Manifest">What the manifest says.</param>
/// <param name="CutFaults">What the inspection of its own cut files found: nothing, unless the program is at fault.</param>
internal sealed record DesignOutput(ImmutableArray<OutputFile> Files, Manifest Manifest, ImmutableArray<string> CutFaults);
