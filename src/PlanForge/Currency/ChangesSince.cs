using System.Collections.Immutable;
using PlanForge.Airframe.Described;
using PlanForge.Designs;
using PlanForge.Drafting.Model;
using PlanForge.Folders;

namespace PlanForge.Currency;

/// <summary>What became of the description since something was drawn.</summary>
/// <param name="Past">What was drawn then.</param>
/// <param name="Now">What is drawn now.</param>
/// <param name="Values">The values that differ; null when it is not known what they were.</param>
/// <param name="Design">The design as it is now.</param>
internal sealed record ChangesSince(DrawnState Past, DrawnState Now, ImmutableArray<ValueChange>? Values, Design Design)
{
    /// <summary>What became of it since a state.</summary>
    /// <param name="past">What was drawn then.</param>
    /// <param name="now">What is drawn now.</param>
    /// <param name="design">The design as it is now.</param>
    public static ChangesSince Of(DrawnState past, DrawnState now, Design design) =>
        new(past, now, past.Values?.ToDescribed() is { } before ? design.ListValues().Since(before) : null, design);

    /// <summary>
    /// Of the values that differ, those that a thing's parts are made from, as far as these are not as they were; of a sheet whose parts
    /// all are, or that shows none, those that it reads itself.
    /// </summary>
    public ImmutableArray<ValueChange> CausesOf(MarkedThing thing)
    {
        if (Values is not { } values)
        {
            return [];
        }

        // What a part that is no more was made from, nobody knows now.
        var was = thing.Parts.ToDictionary(part => part.Id, part => part.Fingerprint, StringComparer.Ordinal);
        var inputs = Design.Parts
            .Where(part => was.TryGetValue(part.Id, out var fingerprint) && fingerprint != (part.Fingerprint?.Code ?? ""))
            .Select(part => part.Inputs).ToList();
        if (inputs.Count == 0 && thing.Kind == MarkedKind.Sheet)
        {
            var drawn = Past.Sheets.First(sheet => sheet.Fingerprint == thing.Fingerprint);
            inputs = [.. Design.Sheets.Sheets.Where(sheet => sheet.Title == drawn.Title || HasSameParts(sheet, drawn)).Select(sheet => sheet.OwnInputs)];
        }

        return [.. values.Where(value => inputs.Exists(set => set.Covers(value.Path)))];
    }

    private static bool HasSameParts(Sheet sheet, DrawnSheet drawn) => !sheet.Parts.IsEmpty && sheet.Parts.SequenceEqual(drawn.Parts);
}
