using System.Collections.Immutable;
using PlanForge.Drafting.Clipping;
using PlanForge.Geometry;

namespace PlanForge.Drafting.Conventions;

/// <summary>Parallel lines that fill a cut surface.</summary>
public static class Hatching
{
    // Outlines are hatched within this distance, mm: larger would show a gap beside a curve, smaller only costs time.
    private const double Tolerance = 0.02;

    /// <summary>Lines of one pattern inside some outlines (even-odd: openings stay free), from the lowest line up.</summary>
    /// <param name="outlines">Closed paths.</param>
    /// <param name="pattern">Angles and distances.</param>
    public static ImmutableArray<Path2> Of(ImmutableArray<Path2> outlines, HatchPattern pattern)
    {
        ArgumentNullException.ThrowIfNull(pattern);
        var area = new EvenOddArea(outlines, Tolerance);
        var lines = ImmutableArray.CreateBuilder<Path2>();
        foreach (var family in pattern.Families)
        {
            AddFamily(outlines, area, family, lines);
        }

        return lines.ToImmutable();
    }

    private static void AddFamily(
        ImmutableArray<Path2> outlines, EvenOddArea area, HatchLines family, ImmutableArray<Path2>.Builder lines)
    {
        // Seen turned back by the angle of the lines, these lie level: the bounds there tell which are needed.
        var turn = Placement2.TurnedBy(-family.Angle);
        var bounds = Bounds2.Empty;
        foreach (var outline in outlines)
        {
            foreach (var point in outline.Flattened(Tolerance))
            {
                bounds = bounds.Including(turn.Apply(point));
            }
        }

        if (bounds.IsEmpty)
        {
            return;
        }

        var back = Placement2.TurnedBy(family.Angle);
        var last = (int)Math.Floor((bounds.MaxY - family.Shift) / family.Spacing);
        for (var i = (int)Math.Ceiling((bounds.MinY - family.Shift) / family.Spacing); i <= last; i++)
        {
            var y = (i * family.Spacing) + family.Shift;
            var across = Path2.Line(back.Apply(new Point2(bounds.MinX - 1, y)), back.Apply(new Point2(bounds.MaxX + 1, y)));
            lines.AddRange(area.Inside(across));
        }
    }
}

/// <summary>Lines in one direction.</summary>
/// <param name="Angle">Direction from the x axis, radians.</param>
/// <param name="Spacing">Distance between lines, mm, over 0.</param>
/// <param name="Shift">How far the line nearest the origin lies to the left of it, mm.</param>
public readonly record struct HatchLines(double Angle, double Spacing, double Shift = 0);

/// <summary>How a material is hatched where it is cut through.</summary>
/// <remarks>
/// No standard covers model woods: balsa wide and single, hardwood narrow, ply by its crossing layers is this project's choice.
/// </remarks>
/// <param name="Families">Its lines, direction by direction.</param>
public sealed record HatchPattern(ImmutableArray<HatchLines> Families)
{
    private const double Slope = Math.PI / 4;

    /// <summary>End grain of balsa and other light wood: single lines, wide apart.</summary>
    public static HatchPattern Balsa { get; } = new([new(Slope, 2)]);

    /// <summary>End grain of hardwood: single lines, narrow.</summary>
    public static HatchPattern Hardwood { get; } = new([new(Slope, 1)]);

    /// <summary>Ply: lines both ways, as its layers cross.</summary>
    public static HatchPattern Ply { get; } = new([new(Slope, 2), new(-Slope, 2)]);

    /// <summary>The pattern for a material by its name, or null for one that is neither wood nor ply.</summary>
    public static HatchPattern? Find(string material)
    {
        ArgumentNullException.ThrowIfNull(material);
        return Names(material, "ply") || Names(material, "plywood") || Names(material, "liteply") ? Ply
            : Names(material, "balsa") ? Balsa
            : Names(material, "spruce") || Names(material, "birch") || Names(material, "beech") || Names(material, "pine")
                || Names(material, "basswood") || Names(material, "hardwood") ? Hardwood
            : null;
    }

    private static bool Names(string material, string word)
    {
        var at = material.IndexOf(word, StringComparison.OrdinalIgnoreCase);
        return at >= 0 && (at == 0 || !char.IsLetter(material[at - 1]))
            && (at + word.Length == material.Length || !char.IsLetter(material[at + word.Length]));
    }
}
