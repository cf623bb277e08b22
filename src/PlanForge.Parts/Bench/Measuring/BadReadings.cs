using System.Collections.Immutable;
using PlanForge.Airframe.Diagnostics;
using PlanForge.Airframe.Measuring;
using PlanForge.Geometry;
using PlanForge.Parts.Wording;

namespace PlanForge.Parts.Bench.Measuring;

/// <summary>Finds readings that cannot be right: in another unit, swapped, contradicting each other, or too few for anything.</summary>
internal static class BadReadings
{
    /// <summary>Reports what is found. The graver fault hides the lesser one: a wrong unit also looks like a contradiction.</summary>
    public static void Report(
        ImmutableArray<BenchMark> marks, Point3 pivot, MeasuringRound round, PoseFit fit, MeasureText text, Action<SourcePosition, string> report)
    {
        if (ReportUnits(marks, pivot, text, report) || SwappedReadings.Report(marks, pivot, round, text, report))
        {
            return;
        }

        if (fit.Scatter.Farthest() is var (mark, reading, off))
        {
            var (it, way) = (marks[mark].Readings[reading], off > 0 ? "more" : "less");
            report(it.At, $"{marks[mark].Name}, reads {text.FineWithUnit(it.Value)}, {text.FineWithUnit(Math.Abs(off))} {way} than the other readings "
                + "allow (over 4 standard deviations): measure it again, and what it was compared with");
            return;
        }

        if (fit.HalfWidths[(int)PoseUnknown.Incidence] is null && fit.HalfWidths[(int)PoseUnknown.Roll] is null && fit.HalfWidths[(int)PoseUnknown.Yaw] is null)
        {
            report(round.At, "too few readings: incidence needs the height of a front and of a rear pin, roll needs heights on both sides, "
                + "square needs the cord to both tips");
        }
    }

    private static bool ReportUnits(ImmutableArray<BenchMark> marks, Point3 pivot, MeasureText text, Action<SourcePosition, string> report)
    {
        var wrong = new List<(BenchMark Mark, MeasuredLength Reading, WrongUnit Unit)>();
        var count = 0;
        foreach (var mark in marks)
        {
            var drawn = mark.Length(default, pivot);
            foreach (var reading in mark.Readings)
            {
                count++;
                if (WrongUnit.Of(reading.Value / drawn) is { } unit)
                {
                    wrong.Add((mark, reading, unit));
                }
            }
        }

        if (wrong.Count == count && count > 1 && wrong.TrueForAll(it => it.Unit == wrong[0].Unit))
        {
            report(wrong[0].Reading.At, $"all {MeasureText.Rounded(count, 0)} readings are about {wrong[0].Unit.Share} what is drawn: {wrong[0].Unit.Cause}");
            return true;
        }

        foreach (var (mark, reading, unit) in wrong)
        {
            report(reading.At, $"{mark.Name}, reads {text.FineWithUnit(reading.Value)}, about {unit.Share} the {text.CoarseWithUnit(mark.Length(default, pivot))} "
                + $"that is drawn: {unit.Cause}");
        }

        return wrong.Count > 0;
    }

    /// <summary>A wrong unit by what it makes of a length.</summary>
    /// <param name="Factor">The reading over the true length.</param>
    /// <param name="Share">The factor in words.</param>
    /// <param name="Cause">What may have happened.</param>
    private sealed record WrongUnit(double Factor, string Share, string Cause)
    {
        // The board may lie off its drawn height, so a length is known roughly; 10 and 25.4 are a factor of 2.54 apart.
        private const double Slack = 1.4;

        private static readonly ImmutableArray<WrongUnit> All =
        [
            new(1 / MeasureText.MillimetresPerInch, "1/25.4 of", "were inches read, and taken for millimetres?"),
            new(0.1, "a tenth of", "were centimetres read, and taken for millimetres?"),
            new(10, "ten times", "were millimetres read, and taken for centimetres?"),
            new(MeasureText.MillimetresPerInch, "25.4 times", "were millimetres read, and taken for inches?"),
        ];

        public static WrongUnit? Of(double ratio)
        {
            foreach (var unit in All)
            {
                if (ratio > unit.Factor / Slack && ratio < unit.Factor * Slack)
                {
                    return unit;
                }
            }

            return null;
        }
    }
}
