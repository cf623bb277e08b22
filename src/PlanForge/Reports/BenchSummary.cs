using System.Collections.Immutable;
using System.Text;
using PlanForge.Parts;
using PlanForge.Parts.Bench.Measuring;
using PlanForge.Parts.Wording;

namespace PlanForge.Reports;

/// <summary>Writes what the bench found for a person: the last round, what to do about it, and how the rounds went.</summary>
internal static class BenchSummary
{
    /// <summary>The summary; every line ends with LF.</summary>
    public static string Of(RiggedAirframe airframe, BenchResult result)
    {
        var measure = new MeasureText(airframe.Description.DisplayUnit);
        var words = new BenchTexts(measure);
        var text = new StringBuilder();
        var last = result.Last;
        text.Append(airframe.Description.Name).Append(", round \"").Append(last.Name).Append("\": ").Append(BenchTexts.Verdict(last)).Append("\n\n");
        if (last.Estimates.Any(estimate => estimate.IsSettled))
        {
            Add(text, "How the wing sits, against the drawing (95 % interval)", Pairs(words.Estimates(last)));
        }

        Add(text, "Errors at pins and cords, against the tolerance", Triples(words.Checks(last.Checks)));
        if (last.Correction is { } correction && CorrectionParts.IsNeeded(last))
        {
            Add(text, $"Wood to take off the saddles ({measure.UnitName})", [BenchTexts.TakeOffHead, .. words.TakeOff(correction)]);
        }

        AddOthers(text, last, measure);
        var advice = words.Advice(last);
        Add(text, "What to do", (advice.IsEmpty ? ["Nothing: leave it."] : advice).Select(line => ImmutableArray.Create(line)));
        if (result.Rounds.Length > 1)
        {
            Add(text, "Rounds", result.Rounds.Select(round => ImmutableArray.Create(round.Name, words.Line(round.Checks), BenchTexts.Verdict(round))));
            Add(text, "Rounds at the tailplane", result.Rounds.Where(round => round.Tail is not null).Select(round => ImmutableArray.Create(round.Name, words.Line(round.Tail!.Checks))));
        }

        return text.ToString().TrimEnd('\n') + "\n";
    }

    private static void AddOthers(StringBuilder text, RoundResult last, MeasureText measure)
    {
        var words = new TailTexts(measure);
        if (last.Tail is { } tail)
        {
            Add(text, "How the tailplane sits, against the drawing (95 % interval)", Pairs(words.Estimates(tail)));
            Add(text, "Errors at the tailplane's pins and lengths, against the tolerance", Triples(new BenchTexts(measure).Checks(tail.Checks)));
        }

        if (last.Thrust is { } thrust)
        {
            Add(text, "Thrust line (95 % interval), against the tolerance", Triples(TailTexts.Thrust(thrust)));
            if (thrust.Washers is { } washers && !thrust.IsWithin)
            {
                Add(text, $"Washers between firewall and mount ({measure.UnitName})", [TailTexts.WashersHead, .. words.Washers(washers)]);
            }
        }
    }

    private static IEnumerable<ImmutableArray<string>> Pairs(ImmutableArray<(string Label, string Value)> rows) =>
        rows.Select(row => ImmutableArray.Create(row.Label, row.Value));

    private static IEnumerable<ImmutableArray<string>> Triples(ImmutableArray<(string Label, string Value, string Verdict)> rows) =>
        rows.Select(row => ImmutableArray.Create(row.Label, row.Value, row.Verdict));

    private static void Add(StringBuilder text, string title, IEnumerable<ImmutableArray<string>> rows)
    {
        var all = rows.ToArray();
        if (all.Length == 0)
        {
            return;
        }

        text.Append(title).Append(":\n");
        foreach (var row in all)
        {
            var line = new StringBuilder(" ");
            for (var i = 0; i < row.Length; i++)
            {
                var width = all.Max(other => other[i].Length);
                line.Append(' ').Append(i == row.Length - 1 ? row[i] : row[i].PadRight(width + 1));
            }

            text.Append(line).Append('\n');
        }

        text.Append('\n');
    }
}
