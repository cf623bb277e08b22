using System.Collections.Immutable;
using PlanForge.Airframe.Measuring;
using PlanForge.Geometry;
using PlanForge.Parts.Arrangement;
using PlanForge.Parts.Shapes;

namespace PlanForge.Parts.Bench.Measuring;

/// <summary>The lengths of a round with the places on the drawn wing that they were taken to.</summary>
internal static class BenchMarks
{
    /// <summary>Pins, then tips, then cords.</summary>
    public static ImmutableArray<BenchMark> Of(RiggedAirframe airframe, PinPoints plan, MeasuringRound round)
    {
        var marks = ImmutableArray.CreateBuilder<BenchMark>();
        var board = BoardOf(plan, round);
        AddPins(marks, "", airframe.Wing, plan.Across, board, round.Pins);
        var (leading, trailing) = ArrangedWing.Of(airframe.Wing).Tip;
        var end = round.TipEdge == WingEdge.Front ? leading : trailing;
        foreach (var tip in round.Tips)
        {
            marks.Add(new HeightMark($"tip, {NameOf(tip.Hand)}", round.TipEdge, false, On(tip.Hand, end), tip.Hand, board, tip.Lengths));
        }

        if (round.Cord is { } start)
        {
            foreach (var cord in round.Cords)
            {
                var from = new Point3(start.Station, 0, start.Height);
                marks.Add(new CordMark($"cord, {NameOf(cord.Hand)}", from, On(cord.Hand, end), cord.Hand, cord.Lengths));
            }
        }

        return marks.ToImmutable();
    }

    /// <summary>A side as the builder calls it who stands at the tail and looks forward.</summary>
    public static string NameOf(Hand hand) => hand == Hand.Port ? "left (port)" : "right (starboard)";

    /// <summary>How far the board lies below the datum line, mm; the drawn one where it is not known.</summary>
    public static double BoardOf(PinPoints plan, MeasuringRound round) =>
        round.Board.Knowledge == BoardKnowledge.Measured ? round.Board.Measured : plan.BoardBelowDatum;

    /// <summary>The pins of a wing or tailplane.</summary>
    /// <param name="marks">Takes them.</param>
    /// <param name="owner">What stands before the pin's name.</param>
    /// <param name="wing">The wing or tailplane.</param>
    /// <param name="across">Their planned distance from the centre line, mm.</param>
    /// <param name="board">How far the board lies below the datum line, mm.</param>
    /// <param name="pins">What was read.</param>
    public static void AddPins(
        ImmutableArray<BenchMark>.Builder marks, string owner, WingShape wing, double across, double board, ImmutableArray<PinHeight> pins)
    {
        foreach (var pin in pins)
        {
            var point = PinPoints.EdgeAt(wing, pin.Across ?? across, pin.Edge == WingEdge.Front ? 0 : 1);
            var name = $"{owner}{(pin.Edge == WingEdge.Front ? "front" : "rear")} pin, {NameOf(pin.Hand)}";
            marks.Add(new HeightMark(name, pin.Edge, true, On(pin.Hand, point), pin.Hand, board, pin.Heights));
        }
    }

    /// <summary>A place of the starboard half on either half.</summary>
    public static Point3 On(Hand hand, Point3 starboard) => hand == Hand.Starboard ? starboard : starboard with { Y = -starboard.Y };
}
