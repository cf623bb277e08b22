using PlanForge.Parts;

namespace PlanForge.Drafting.Sheets;

/// <summary>What some parts have in them that a sheet must explain or warn of.</summary>
/// <param name="Uses">One bit for each meaning of a line.</param>
/// <param name="HasCutParts">True when one is cut by machine.</param>
/// <param name="HasBenchWork">True when one is cut, sanded or glued: everything that has an edge.</param>
internal readonly record struct LinesUsed(int Uses, bool HasCutParts, bool HasBenchWork)
{
    public static LinesUsed Of(IEnumerable<Part> parts)
    {
        var used = default(LinesUsed);
        foreach (var part in parts)
        {
            foreach (var line in part.Lines)
            {
                used = used with { Uses = used.Uses | Bit(line.Use) };
            }

            used = used with { HasCutParts = used.HasCutParts || part.Making == Making.Cut };
        }

        return used with { HasBenchWork = used.Has(LineUse.Cut) };
    }

    public bool Has(LineUse use) => (Uses & Bit(use)) != 0;

    private static int Bit(LineUse use) => 1 << (int)use;
}
