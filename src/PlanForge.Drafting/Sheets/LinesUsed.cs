using System.Collections.Immutable;
using PlanForge.Parts;
using PlanForge.Parts.Arrangement;

namespace PlanForge.Drafting.Sheets;

/// <summary>What some parts have in them that a sheet must explain or warn of.</summary>
/// <param name="Uses">One bit for each meaning of a line.</param>
/// <param name="HasCutParts">True when one is cut by machine.</param>
/// <param name="HasBenchWork">True when one is cut, sanded or glued, which everything is that has an edge, or is read at the bench.</param>
internal readonly record struct LinesUsed(int Uses, bool HasCutParts, bool HasBenchWork)
{
    public static LinesUsed Of(IEnumerable<Part> parts)
    {
        var used = default(LinesUsed);
        foreach (var part in parts)
        {
            used = used.And(OfLines(part.Lines)) with
            {
                HasCutParts = used.HasCutParts || part.Making == Making.Cut,
                HasBenchWork = used.HasBenchWork || part.Making == Making.View,
            };
        }

        return used with { HasBenchWork = used.HasBenchWork || used.Has(LineUse.Cut) };
    }

    /// <summary>What the views of an airframe have in them; nothing for none.</summary>
    public static LinesUsed Of(ArrangementViews? views) =>
        views is null ? default : OfLines(views.Side).And(OfLines(views.Plan)).And(OfLines(views.Front));

    /// <summary>What either has.</summary>
    public LinesUsed And(LinesUsed other) =>
        new(Uses | other.Uses, HasCutParts || other.HasCutParts, HasBenchWork || other.HasBenchWork);

    private static LinesUsed OfLines(ImmutableArray<PartLine> lines)
    {
        var uses = 0;
        foreach (var line in lines)
        {
            uses |= Bit(line.Use);
        }

        return new(uses, false, false);
    }

    public bool Has(LineUse use) => (Uses & Bit(use)) != 0;

    private static int Bit(LineUse use) => 1 << (int)use;
}
