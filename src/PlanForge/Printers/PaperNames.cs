using PlanForge.Airframe.Diagnostics;
using PlanForge.Drafting.Sheets;

namespace PlanForge.Printers;

/// <summary>What to say of a paper that is not known.</summary>
internal static class PaperNames
{
    /// <summary>One sentence without a full stop.</summary>
    public static string Unknown(string name)
    {
        var known = Paper.All.Select(paper => paper.Name).ToArray();
        return Spelling.Near(name, known) is { } near
            ? $"there is no paper `{name}`; did you mean `{near}`?"
            : $"there is no paper `{name}`; papers are {string.Join(", ", known)}";
    }
}
