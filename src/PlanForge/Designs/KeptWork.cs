using System.Collections.Immutable;
using PlanForge.Airframe.Diagnostics;
using PlanForge.Drafting;
using PlanForge.Drafting.Cutting;
using PlanForge.Folders;
using PlanForge.Geometry;
using PlanForge.Output.Pdf;
using PlanForge.Parts;

namespace PlanForge.Designs;

/// <summary>
/// The work of earlier runs on one design, so that a run after a small change makes only what is new. Empty at first: a run with an empty
/// one and a run with a full one give the same bytes. For one run at a time.
/// </summary>
internal sealed class KeptWork
{
    /// <summary>Parts.</summary>
    public KeptParts Parts { get; } = new();

    /// <summary>Parts without what was measured on the wood, where something was.</summary>
    public KeptParts PartsAsDesigned { get; } = new();

    /// <summary>Drawings of parts, sheets and tiles.</summary>
    public KeptDrawings Drawings { get; } = new();

    /// <summary>Packed content of printable pages.</summary>
    public KeptPages Pages { get; } = new();

    /// <summary>Files.</summary>
    public KeptFiles Files { get; } = new();

    /// <summary>What the cutter's profile says, by its path and text.</summary>
    public Kept<(string Path, string Text), (CutProfile? Profile, ImmutableArray<Diagnostic> Findings)> Profiles { get; } = new();

    /// <summary>Ends a run that came to its end; what it did not ask for is let go. A run that failed does not end: the next one goes on.</summary>
    public void EndRun()
    {
        Parts.EndRun();
        PartsAsDesigned.EndRun();
        Drawings.EndRun();
        Pages.EndRun();
        Files.EndRun();
        Profiles.EndRun();
    }
}
