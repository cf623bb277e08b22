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
        text.Append(airframe.Description.Name).Append(", round \"").Append(last.Name).Append("\": ").Append(Verdict(last)).Append("\n\n");
        Add(text, "How the wing sits, against the drawing (95 % interval)", words.Estimates(last).Select(row => ImmutableArray.Create(row.Label, row.Value)));
        Add(text, "Errors at pins and cords, against the tolerance", words.Checks(last).Select(row => ImmutableArray.Create(row.Label, row.Value, row.Verdict)));
        if (last.Correction is { } correction && !last.IsWithin)
        {
            Add(text, $"Wood to take off the saddles ({measure.UnitName})", [BenchTexts.TakeOffHead, .. words.TakeOff(correction)]);
        }

        var advice = words.Advice(last);
        Add(text, "What to do", (advice.IsEmpty ? ["Nothing: leave it."] : advice).Select(line => ImmutableArray.Create(line)));
        if (result.Rounds.Length > 1)
        {
            Add(text, "Rounds", result.Rounds.Select(round => ImmutableArray.Create(round.Name, Errors(round, words, measure), Verdict(round))));
        }

        return text.ToString().TrimEnd('\n') + "\n";
    }

    private static string Verdict(RoundResult round) => round.Checks.IsEmpty ? "nothing settled" : round.IsWithin ? "within tolerance" : "out of tolerance";

    private static string Errors(RoundResult round, BenchTexts words, MeasureText measure) => string.Join(", ", round.Checks.Select(check =>
        $"{ShortName(check.Kind)} {words.WithSign(check.Value)} {measure.UnitName}"));

    private static string ShortName(CheckKind kind) => kind switch
    {
        CheckKind.Across => "across",
        CheckKind.Rise => "rise",
        CheckKind.RiseAcross => "warp",
        _ => "square",
    };

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
