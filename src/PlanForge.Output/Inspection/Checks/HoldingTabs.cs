using PlanForge.Output.Inspection.Reading;

namespace PlanForge.Output.Inspection.Checks;

/// <summary>Says which gaps are holding tabs.</summary>
internal static class HoldingTabs
{
    /// <param name="tabs">The tabs, by width.</param>
    /// <param name="layer">Their layer.</param>
    /// <param name="findings">Takes a note for each width.</param>
    public static void Report(List<EndPair> tabs, FileLayer layer, FindingList findings)
    {
        for (var first = 0; first < tabs.Count;)
        {
            var (next, place) = (first, tabs[first].A.At);
            while (next < tabs.Count && tabs[next].Width - tabs[first].Width <= EndPairs.SameWidth)
            {
                var at = tabs[next].A.At;
                place = at.IsBefore(place) ? at : place;
                next++;
            }

            findings.Note(FindingCode.HoldingTabs, place, FormattableString.Invariant($"{next - first} gaps of {Words.Of(tabs[first].Width)} on layer {Words.Quote(layer.Name)} hold the parts"));
            first = next;
        }
    }
}
