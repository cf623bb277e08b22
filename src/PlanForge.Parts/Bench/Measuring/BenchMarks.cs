using System.Collections.Immutable;
using PlanForge.Airframe.Measuring;
using PlanForge.Geometry;
using PlanForge.Parts.Arrangement;

namespace PlanForge.Parts.Bench.Measuring;

/// <summary>The lengths of a round with the places on the drawn wing that they were taken to.</summary>
internal static class BenchMarks
{
    /// <summary>Pins, then tips, then cords.</summary>
    public static ImmutableArray<BenchMark> Of(RiggedAirframe airframe, PinPoints plan, MeasuringRound round)
    {
        var marks = ImmutableArray.CreateBuilder<BenchMark>();
        var board = round.Board.Knowledge == BoardKnowledge.Measured ? round.Board.Measured : plan.BoardBelowDatum;
        foreach (var pin in round.Pins)
        {
            var point = PinPoints.EdgeAt(airframe.Wing, pin.Across ?? plan.Across, pin.Edge == WingEdge.Front ? 0 : 1);
            var name = $"{(pin.Edge == WingEdge.Front ? "front" : "rear")} pin, {NameOf(pin.Hand)}";
            marks.Add(new HeightMark(name, pin.Edge, true, On(pin.Hand, point), pin.Hand, board, pin.Heights));
        }

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

    private static Point3 On(Hand hand, Point3 starboard) => hand == Hand.Starboard ? starboard : starboard with { Y = -starboard.Y };
}
