using System.Collections.Immutable;
using PlanForge.Airframe.Diagnostics;

namespace PlanForge.Airframe.Reading;

/// <summary>How far a measured length may be off the designed one.</summary>
/// <param name="Scale">The length that shares are of, mm.</param>
/// <param name="Notable">What is never warned of, mm.</param>
/// <param name="Greatest">What is never refused, mm, unless it is a slip of units.</param>
/// <param name="MayBeHalf">True where half the size is a likely slip.</param>
internal readonly record struct Yardstick(double Scale, double Notable, double Greatest, bool MayBeHalf)
{
    // Common practice, no source: work by hand is within a few percent; past a fifth something else was measured, or in another unit.
    private const double WarnedShare = 0.05;
    private const double RefusedShare = 0.2;

    // "3 mm" birch ply measures 2.7 to 3.4 mm (shared/practice.md); another size of sheet begins at half a millimetre.
    private const double UsualSheet = 0.4;
    private const double AnotherSheet = 0.5;

    private static readonly ImmutableArray<Slip> Slips =
    [
        new(25.4, "25.4 times that is", "were inches read, and taken for millimetres?"),
        new(10, "ten times that is", "is the decimal point one place off, or were centimetres read, and taken for millimetres?"),
        new(0.1, "a tenth of that is", "is the decimal point one place off, or were millimetres read, and taken for centimetres?"),
        new(1 / 25.4, "1/25.4 of that is", "were millimetres read, and taken for inches?"),
    ];

    private static readonly Slip Half = new(2, "twice that is", "was half the breadth measured? It is the full width, over the outside");

    /// <summary>For a size that is held to a share of a length.</summary>
    public static Yardstick Of(double scale) => new(scale, 0, 0, false);

    /// <summary>For a full width.</summary>
    public static Yardstick OfBreadth(double breadth) => new(breadth, 0, 0, true);

    /// <summary>For a thickness: thin sheets are off by a larger share of it.</summary>
    public static Yardstick OfThickness(double thickness) => new(thickness, UsualSheet, Math.Min(AnotherSheet, thickness / 2), false);

    /// <summary>Reports a measured length that is off; true when it is in order or only warned of.</summary>
    public bool Check(string label, double designed, double built, SourcePosition at, Findings findings)
    {
        // What conversion between units leaves is not off.
        const double Rounding = 1e-9;
        var off = Math.Abs(built - designed) - Rounding;
        var both = $"{label}, is {findings.Length(built)} as built and {findings.Length(designed)} as designed";
        if (off > RefusedShare * Scale && SlipOf(designed, built) is { } slip)
        {
            findings.Error(at, $"{both}; {slip.Words} {findings.Length(built * slip.Factor)}: {slip.Question}");
            return false;
        }

        if (off > Math.Max(RefusedShare * Scale, Greatest))
        {
            findings.Error(at, $"{both}: too far off to be the same thing; measure again, or change the design");
            return false;
        }

        if (off > Math.Max(WarnedShare * Scale, Notable))
        {
            findings.Warning(at, $"{both}: measure again to be sure");
        }

        return true;
    }

    // The slip that brings the value nearest to the design, when that is near enough.
    private Slip? SlipOf(double designed, double built)
    {
        Slip? nearest = null;
        var least = RefusedShare * Math.Abs(designed);
        foreach (var slip in MayBeHalf ? [.. Slips, Half] : Slips)
        {
            if (Math.Abs((built * slip.Factor) - designed) is var rest && rest <= least && designed != 0)
            {
                (nearest, least) = (slip, rest);
            }
        }

        return nearest;
    }

    /// <summary>A slip by the factor that would undo it.</summary>
    private sealed record Slip(double Factor, string Words, string Question);
}
