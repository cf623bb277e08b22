using System.Collections.Immutable;
using PlanForge.Airframe.Diagnostics;
using PlanForge.Airframe.Measuring;
using PlanForge.Geometry;
using PlanForge.Parts.Wording;

namespace PlanForge.Parts.Bench.Measuring;

/// <summary>
/// Finds two heights that were written down for each other: exchanged, they agree with the drawing, or with the other readings, much
/// better than as they stand.
/// </summary>
internal static class SwappedReadings
{
    // A wing that was roughly seated is nearer than this, mm (common practice, no source); swapped pins are off by the rise.
    private const double RoughSeat = 1;

    // How many times better the readings must get: less would call a badly seated wing a slip of the pen.
    private const double Better = 4;

    /// <summary>Reports the likeliest exchange; false when there is none.</summary>
    public static bool Report(
        ImmutableArray<BenchMark> marks, Point3 pivot, MeasuringRound round, MeasureText text, Action<SourcePosition, string> report)
    {
        var misfit = Misfit(marks, pivot);
        var residual = Residual(marks, pivot, round);
        var likely = new List<(double Before, double After, string With, BenchMark First, string What)>();
        foreach (var (pairs, what) in Exchanges(marks))
        {
            var exchanged = Exchanged(marks, pairs);
            Consider(misfit, Misfit(exchanged, pivot), RoughSeat, "the drawing");
            Consider(residual, Residual(exchanged, pivot, round), Better * round.Resolution, "each other");

            void Consider(double before, double after, double least, string with)
            {
                if (before > least && after < before / Better)
                {
                    likely.Add((before, after, with, marks[pairs[0].A], what));
                }
            }
        }

        if (likely.Count == 0)
        {
            return false;
        }

        // The drawing says more than the readings among themselves, with which everything exchanged agrees as well as nothing. Two
        // exchanges may mend the same fault equally well: then both are named.
        var best = likely.MinBy(it => (it.With == "the drawing" ? 0 : 1, it.After));
        var names = likely.Where(it => it.With == best.With && it.After < best.After + (round.Resolution / 4)).Select(it => it.What);
        report(best.First.Readings[0].At, $"{string.Join(", or ", names)} are likely swapped: exchanged, the heights agree with {best.With} to "
            + $"{text.FineWithUnit(best.After)} instead of {text.FineWithUnit(best.Before)}");
        return true;
    }

    private static IEnumerable<(ImmutableArray<(int A, int B)> Pairs, string What)> Exchanges(ImmutableArray<BenchMark> marks)
    {
        int At(WingEdge edge, Hand hand, bool isPin)
        {
            for (var i = 0; i < marks.Length; i++)
            {
                if (marks[i] is HeightMark mark && mark.IsPin == isPin && (mark.Edge == edge || !isPin) && mark.Hand == hand)
                {
                    return i;
                }
            }

            return -1;
        }

        int frontPort = At(WingEdge.Front, Hand.Port, true), frontStarboard = At(WingEdge.Front, Hand.Starboard, true);
        int rearPort = At(WingEdge.Rear, Hand.Port, true), rearStarboard = At(WingEdge.Rear, Hand.Starboard, true);
        int tipPort = At(WingEdge.Front, Hand.Port, false), tipStarboard = At(WingEdge.Front, Hand.Starboard, false);
        (ImmutableArray<(int A, int B)> Pairs, string What)[] all =
        [
            ([(frontPort, rearPort), (frontStarboard, rearStarboard)], "the front and rear pins"),
            ([(frontPort, rearPort)], "the front and the rear pin on the left (port)"),
            ([(frontStarboard, rearStarboard)], "the front and the rear pin on the right (starboard)"),
            ([(frontPort, frontStarboard)], "the left (port) and the right (starboard) front pin"),
            ([(rearPort, rearStarboard)], "the left (port) and the right (starboard) rear pin"),
            ([(tipPort, tipStarboard)], "the left (port) and the right (starboard) tip"),
            ([(frontPort, frontStarboard), (rearPort, rearStarboard)], "left (port) and right (starboard) of all pins"),
        ];
        return all.Where(exchange => exchange.Pairs.All(pair => pair.A >= 0 && pair.B >= 0));
    }

    private static ImmutableArray<BenchMark> Exchanged(ImmutableArray<BenchMark> marks, ImmutableArray<(int A, int B)> pairs)
    {
        var exchanged = marks.ToBuilder();
        foreach (var (a, b) in pairs)
        {
            exchanged[a] = marks[a] with { Readings = marks[b].Readings };
            exchanged[b] = marks[b] with { Readings = marks[a].Readings };
        }

        return exchanged.MoveToImmutable();
    }

    // Root mean square of heights off the drawn ones, their mean taken off: the board may lie anywhere.
    private static double Misfit(ImmutableArray<BenchMark> marks, Point3 pivot) =>
        Spread(marks, mark => mark.Length(default, pivot), takesMeanOff: true);

    // Off the best seat of a wing without warp: a warp would take the blame for one exchanged pair.
    private static double Residual(ImmutableArray<BenchMark> marks, Point3 pivot, MeasuringRound round)
    {
        var pose = PoseFit.OfTrueWing(marks, pivot, round.Resolution, round.Scatter).Pose;
        return Spread(marks, mark => mark.Length(pose, pivot), takesMeanOff: false);
    }

    private static double Spread(ImmutableArray<BenchMark> marks, Func<BenchMark, double> expected, bool takesMeanOff)
    {
        double count = 0, sum = 0, squares = 0;
        foreach (var mark in marks)
        {
            if (mark is HeightMark)
            {
                var off = mark.Mean - expected(mark);
                (count, sum, squares) = (count + 1, sum + off, squares + (off * off));
            }
        }

        return count == 0 ? 0 : Math.Sqrt(Math.Max(0, (squares / count) - (takesMeanOff ? sum / count * (sum / count) : 0)));
    }
}
