using System.Collections.Immutable;
using PlanForge.Folders;

namespace PlanForge.Currency;

/// <summary>Whether a piece of paper or wood is of the design as it is now.</summary>
/// <param name="Code">The fingerprint on it.</param>
/// <param name="Things">What carries it: of the present design, else of the latest earlier one; none when nothing does.</param>
/// <param name="Past">When it is not current, what was drawn then; null when it is, or when it is unknown.</param>
/// <param name="Near">A known fingerprint that differs in one sign, for one that is unknown; null when there is none.</param>
internal sealed record CurrencyCheck(string Code, ImmutableArray<MarkedThing> Things, DrawnState? Past, MarkedThing? Near)
{
    /// <summary>True when it is current.</summary>
    public bool IsCurrent => !Things.IsEmpty && Past is null;

    /// <summary>Looks for a fingerprint.</summary>
    /// <param name="code">The fingerprint, as it is printed.</param>
    /// <param name="now">What the description draws now.</param>
    /// <param name="past">What was drawn before, the latest first; asked for no more than is needed.</param>
    public static CurrencyCheck Of(string code, DrawnState now, IEnumerable<DrawnState> past)
    {
        MarkedThing? near = null;
        foreach (var state in past.Prepend(now))
        {
            ImmutableArray<MarkedThing> things = [.. MarkedThing.AllOf(state).Where(thing => thing.Fingerprint == code)];
            if (!things.IsEmpty)
            {
                return new(code, things, ReferenceEquals(state, now) ? null : state, null);
            }

            near ??= MarkedThing.AllOf(state).FirstOrDefault(thing => IsNear(thing.Fingerprint, code));
        }

        return new(code, [], null, near);
    }

    private static bool IsNear(string one, string other) =>
        one.Length == other.Length && one.Where((sign, i) => sign != other[i]).Count() == 1;
}

/// <summary>Something that carries a fingerprint.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Id">A part's id, a sheet's number, the design's name.</param>
/// <param name="Title">What the builder calls it.</param>
/// <param name="Fingerprint">Its short fingerprint.</param>
/// <param name="Parts">The parts it shows: those of a sheet, the part itself.</param>
internal sealed record MarkedThing(MarkedKind Kind, string Id, string Title, string Fingerprint, ImmutableArray<DrawnPart> Parts)
{
    /// <summary>Everything of a state that carries one: parts, sheets, the description.</summary>
    public static IEnumerable<MarkedThing> AllOf(DrawnState state)
    {
        var parts = state.Parts.DistinctBy(part => part.Id, StringComparer.Ordinal).ToDictionary(part => part.Id, StringComparer.Ordinal);
        foreach (var part in state.Parts)
        {
            yield return new(MarkedKind.Part, part.Id, part.Title, part.Fingerprint, [part]);
        }

        foreach (var sheet in state.Sheets)
        {
            var number = sheet.Number.ToString(System.Globalization.CultureInfo.InvariantCulture);
            yield return new(
                MarkedKind.Sheet, number, $"Sheet {number}, {sheet.Title}", sheet.Fingerprint, [.. sheet.Parts.Where(parts.ContainsKey).Select(id => parts[id])]);
        }

        yield return new(MarkedKind.Description, state.Design, $"The description of {state.Design}", state.Fingerprint, [.. state.Parts]);
    }
}

/// <summary>What can carry a fingerprint.</summary>
internal enum MarkedKind
{
    /// <summary>A part, on its drawing and engraved on the wood.</summary>
    Part,

    /// <summary>A sheet, in its title block.</summary>
    Sheet,

    /// <summary>The description, in the report and the manifest.</summary>
    Description,
}
