using System.Collections.Immutable;
using System.Globalization;

namespace PlanForge.Parts.Bench.Measuring;

/// <summary>The texts of the correction sheet: verdict and what to do, how everything sits, and the drawn history of the rounds.</summary>
internal static class ResultParts
{
    /// <summary>What to do; the figures of the wing; those of tailplane and thrust line where they were read; the history.</summary>
    public static IEnumerable<Part> Of(RiggedAirframe airframe, BenchResult result)
    {
        var last = result.Last;
        yield return Advice(airframe, result);
        if (last.Estimates.Any(estimate => estimate.IsSettled))
        {
            yield return Wing(airframe, last);
        }

        if (last.Tail is not null || last.Thrust is not null)
        {
            yield return Others(airframe, last);
        }

        yield return History(airframe, result);
    }

    private static Part Advice(RiggedAirframe airframe, BenchResult result)
    {
        var last = result.Last;
        var sketch = new PartSketch();
        var number = result.Rounds.Length.ToString(CultureInfo.InvariantCulture);
        sketch.Note($"Round {number}, \"{last.Name}\": {BenchTexts.Verdict(last).ToUpperInvariant()}.");
        var advice = new BenchTexts(airframe.Text).Advice(last);
        for (var i = 0; i < advice.Length; i++)
        {
            sketch.Note($"{(i + 1).ToString(CultureInfo.InvariantCulture)}. {advice[i]}");
        }

        if (advice.IsEmpty)
        {
            sketch.Note(last.IsWithin ? "Nothing to do: leave it. The last strokes are the ones that spoil it." : "Nothing can be said: too few readings.");
        }

        sketch.Note("Left and right as seen from the tail, looking forward: left is port, right is starboard. ± gives the 95 % interval.");
        return sketch.AsTemplate("correction-advice", CorrectionParts.Kind, "Correction: what to do");
    }

    private static Part Wing(RiggedAirframe airframe, RoundResult last)
    {
        var words = new BenchTexts(airframe.Text);
        var sketch = new PartSketch();
        AddPairs("Against the drawing, 95 % interval", words.Estimates(last), sketch);
        AddTriples("Errors at pins and cords", words.Checks(last.Checks), sketch);
        if (last.Correction is { } correction && CorrectionParts.IsNeeded(last))
        {
            sketch.Table($"Wood to take off the saddles ({airframe.Text.UnitName})", BenchTexts.TakeOffHead, words.TakeOff(correction));
        }

        return sketch.AsTemplate("correction-wing", CorrectionParts.Kind, "How the wing sits");
    }

    private static Part Others(RiggedAirframe airframe, RoundResult last)
    {
        var words = new TailTexts(airframe.Text);
        var sketch = new PartSketch();
        if (last.Tail is { } tail)
        {
            AddPairs("Tailplane against the drawing, 95 % interval", words.Estimates(tail), sketch);
            AddTriples("Errors at the tailplane's pins and lengths", new BenchTexts(airframe.Text).Checks(tail.Checks), sketch);
        }

        if (last.Thrust is { } thrust)
        {
            AddTriples("Thrust line, 95 % interval", TailTexts.Thrust(thrust), sketch);
            if (thrust.Washers is { } washers && !thrust.IsWithin)
            {
                sketch.Table($"Washers between firewall and mount ({airframe.Text.UnitName})", TailTexts.WashersHead, words.Washers(washers));
            }
        }

        return sketch.AsTemplate("correction-tailplane", CorrectionParts.Kind, last.Tail is null ? "Thrust line" : last.Thrust is null ? "How the tailplane sits" : "Tailplane and thrust line");
    }

    private static Part History(RiggedAirframe airframe, BenchResult result)
    {
        var sketch = new PartSketch();
        new RoundHistory(airframe.Text).Add(result, sketch);
        sketch.Note("An error a round with its 95 % interval as a bar; the box is the tolerance. Below: round and error.");
        sketch.Table("", ["round", "name", "verdict"], result.Rounds.Select((round, i) => ImmutableArray.Create(
            (i + 1).ToString(CultureInfo.InvariantCulture), round.Name, BenchTexts.Verdict(round))));
        return sketch.AsTemplate("correction-rounds", CorrectionParts.Kind, "The rounds");
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
