using System.Collections.Immutable;
using PlanForge.Airframe.Diagnostics;
using PlanForge.Airframe.Format;
using PlanForge.Airframe.Inputs;

namespace PlanForge.Airframe;

#pragma warning disable CS1591 // The parameters of each record say what its properties are.

/// <summary>What the cutting machine needs to know.</summary>
/// <param name="Kerf">Full width the cutter burns away, mm, or null when it was not measured: then nothing is compensated.</param>
/// <param name="At">Where it stands.</param>
public sealed record CutterDescription(double? Kerf, SourcePosition At)
{
    public double? Kerf { get => Origin.Read(field, WorkshopFormat.Kerf); init; } = Kerf;

    internal Origin Origin { get; init; }

    internal CutterDescription Watched(InputLog log) => this with { Origin = Origin.Watched(log) };


    /// <summary>Kerfs by material and thickness; each sheet once.</summary>
    public ImmutableArray<KerfDescription> Kerfs { get => Origin.Read(field, WorkshopFormat.Kerfs); init; } = [];

    /// <summary>How much wider than its sheet a slot is that names one, mm, −1 to 1.</summary>
    public double Fit { get => Origin.Read(field, WorkshopFormat.SlotFit); init; }

    /// <summary>The bridges that keep parts in their sheet, or null for none.</summary>
    public HoldingTabsDescription? HoldingTabs { get => Origin.Read(field, WorkshopFormat.HoldingTabs); init; }

    /// <summary>The file that says how the shop wants its layers, or null for the project's own.</summary>
    public ProfileDescription? Profile { get => Origin.Read(field, WorkshopFormat.CutterProfile); init; }

    /// <summary>Speed of cutting, mm/s, over 0, or null.</summary>
    public double? CutSpeed { get => Origin.Read(field, WorkshopFormat.CutSpeed); init; }

    /// <summary>Speed of scoring, mm/s, over 0, or null.</summary>
    public double? ScoreSpeed { get => Origin.Read(field, WorkshopFormat.ScoreSpeed); init; }

    /// <summary>Speed of engraving, mm/s, over 0, or null.</summary>
    public double? EngraveSpeed { get => Origin.Read(field, WorkshopFormat.EngraveSpeed); init; }

    /// <summary>
    /// The kerf in a sheet and where it was given: that of its material and thickness, else of its material in any thickness,
    /// else the plain one; null when none was given.
    /// </summary>
    /// <param name="material">The material as parts say it; case does not count.</param>
    /// <param name="thickness">The sheet's thickness, mm.</param>
    public (double Width, SourcePosition At)? KerfFor(string material, double thickness)
    {
        KerfDescription? best = null;
        foreach (var kerf in Kerfs)
        {
            if (kerf.Suits(material, thickness) && (best is null || kerf.Thickness is not null))
            {
                best = kerf;
            }
        }

        return best is not null ? (best.Kerf, best.At) : Kerf is { } plain ? (plain, At) : null;
    }
}

/// <summary>The kerf in one material.</summary>
/// <param name="Material">What is cut.</param>
/// <param name="Thickness">Thickness of the sheet, mm, over 0, or null for any.</param>
/// <param name="Kerf">Full width the cutter burns away, mm, 0 or more.</param>
/// <param name="At">Where it stands.</param>
public sealed record KerfDescription(string Material, double? Thickness, double Kerf, SourcePosition At)
{
    // Thicknesses are measured to a hundredth of a millimetre at best.
    private const double SameThickness = 0.005;

    /// <summary>True when the kerf is meant for such a sheet.</summary>
    public bool Suits(string material, double thickness) =>
        string.Equals(Material, material, StringComparison.OrdinalIgnoreCase)
        && (Thickness is not { } own || Math.Abs(own - thickness) <= SameThickness);

    internal bool IsForSameSheetAs(KerfDescription other) =>
        other.Thickness is { } thickness ? Thickness is not null && Suits(other.Material, thickness) : Thickness is null && Suits(other.Material, 0);
}

/// <summary>Bridges of wood that keep a part in its sheet until it is broken out.</summary>
/// <param name="Width">Width of the wood that is left, mm, over 0.</param>
/// <param name="Count">How many on each outline, 1 to 24.</param>
/// <param name="At">Where it stands.</param>
public sealed record HoldingTabsDescription(double Width, int Count, SourcePosition At);

/// <summary>A shop's profile.</summary>
/// <param name="File">The file beside the description.</param>
/// <param name="At">Where it stands.</param>
public sealed record ProfileDescription(string File, SourcePosition At);
