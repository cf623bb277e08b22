using System.Collections.Immutable;
using System.Globalization;

namespace PlanForge.Parts.Bench.Measuring;

/// <summary>The text of the correction sheet: verdict, what to do, how everything sits; with the drawn history of the rounds.</summary>
internal static class ResultPart
{
    /// <summary>The part.</summary>
    public static Part Of(RiggedAirframe airframe, BenchResult result)
    {
        var (text, last) = (airframe.Text, result.Last);
        var words = new BenchTexts(text);
        var sketch = new PartSketch();
        new RoundHistory(text).Add(result, sketch);
        var number = result.Rounds.Length.ToString(CultureInfo.InvariantCulture);
        sketch.Note($"Round {number}, \"{last.Name}\": {BenchTexts.Verdict(last)}.");
        var advice = words.Advice(last);
        foreach (var line in advice)
        {
            sketch.Note(line);
        }

        if (advice.IsEmpty)
        {
            sketch.Note(last.IsWithin ? "Nothing to do: leave it. The last strokes are the ones that spoil it." : "Nothing can be said: too few readings.");
        }

        sketch.Note("Left and right as seen from the tail, looking forward: left is port, right is starboard. ± gives the 95 % interval.");
        sketch.Note("In the panels: an error a round, its interval as a bar, the tolerance as a band. Numbers below: round, error.");
        AddTables(text, words, result, sketch);
        return sketch.AsTemplate("correction-result", CorrectionParts.Kind, "Correction: how it sits and what to do");
    }

    private static void AddTables(Wording.MeasureText text, BenchTexts words, BenchResult result, PartSketch sketch)
    {
        var last = result.Last;
        if (last.Estimates.Any(estimate => estimate.IsSettled))
        {
            AddPairs("How the wing sits, against the drawing", words.Estimates(last), sketch);
            AddTriples("Errors at pins and cords", words.Checks(last.Checks), sketch);
        }

        var others = new TailTexts(text);
        if (last.Tail is { } tail)
        {
            AddPairs("How the tailplane sits, against the drawing", others.Estimates(tail), sketch);
            AddTriples("Errors at the tailplane's pins and lengths", words.Checks(tail.Checks), sketch);
        }

        if (last.Thrust is { } thrust)
        {
            AddTriples("Thrust line", TailTexts.Thrust(thrust), sketch);
            if (thrust.Washers is { } washers && !thrust.IsWithin)
            {
                sketch.Table($"Washers between firewall and mount ({text.UnitName})", TailTexts.WashersHead, others.Washers(washers));
            }
        }

        if (last.Correction is { } correction && CorrectionParts.IsNeeded(last))
        {
            sketch.Table($"Wood to take off the saddles ({text.UnitName})", BenchTexts.TakeOffHead, words.TakeOff(correction));
        }

        if (result.Rounds.Length > 1)
        {
            sketch.Table("Rounds", ["round", "name", "verdict"], result.Rounds.Select((round, i) => ImmutableArray.Create(
                (i + 1).ToString(CultureInfo.InvariantCulture), round.Name, BenchTexts.Verdict(round))));
        }
    }

    private static void AddPairs(string title, ImmutableArray<(string Label, string Value)> rows, PartSketch sketch) =>
        sketch.Table(title, ["what", "found"], rows.Select(row => ImmutableArray.Create(row.Label, row.Value)));

    private static void AddTriples(string title, ImmutableArray<(string Label, string Value, string Verdict)> rows, PartSketch sketch)
    {
        if (!rows.IsEmpty)
        {
            sketch.Table(title, ["what", "found", "tolerance"], rows.Select(row => ImmutableArray.Create(row.Label, row.Value, row.Verdict)));
        }
    }
}
