using System.Collections.Immutable;
using PlanForge.Airframe.Measuring;
using PlanForge.Geometry;
using PlanForge.Parts.Saddles;
using PlanForge.Parts.Shapes;

namespace PlanForge.Parts.Bench.Measuring;

/// <summary>
/// What the correction sheet holds: the result in words and, where wood has to come off, both saddles at true size as they are now and
/// as they are to be.
/// </summary>
/// <remarks>
/// Laid out like the saddle templates: port as seen from outside, starboard mirrored, the straight edge parallel to the datum line.
/// The line as drawn stands for the seat that is there; how high that really stands does not matter to what comes off.
/// </remarks>
public static class CorrectionParts
{
    internal const string Kind = "Corrections";

    /// <summary>The result; then port, starboard and the enlarged bands where the wing's seat is out of tolerance.</summary>
    /// <param name="airframe">The airframe as drawn.</param>
    /// <param name="result">What was measured on it.</param>
    public static ImmutableArray<Part> Of(RiggedAirframe airframe, BenchResult result)
    {
        ArgumentNullException.ThrowIfNull(airframe);
        ArgumentNullException.ThrowIfNull(result);
        if (result.Last.Correction is not { } correction || !IsNeeded(result.Last))
        {
            return [.. ResultParts.Of(airframe, result)];
        }

        var line = airframe.SaddleLine!;
        var flat = SaddleDevelopment.Of(airframe.Body, line, SaddleTemplates.EdgeHeight(airframe));
        return
        [
            .. ResultParts.Of(airframe, result),
            Template(airframe, flat, result.Last, correction, Hand.Port, Placement2.Identity),
            Template(airframe, flat, result.Last, correction, Hand.Starboard, Placement2.Mirror),
            BandDiagram.Of(airframe, correction),
        ];
    }

    /// <summary>True when sanding the saddles is what a round calls for.</summary>
    public static bool IsNeeded(RoundResult round)
    {
        ArgumentNullException.ThrowIfNull(round);
        foreach (var check in round.Checks)
        {
            if (check.Kind is CheckKind.Across or CheckKind.Rise && !check.IsWithin)
            {
                return true;
            }
        }

        return false;
    }

    private static Part Template(
        RiggedAirframe airframe, SaddleDevelopment flat, RoundResult round, SaddleCorrection correction, Hand hand, Placement2 placement)
    {
        var sketch = new PartSketch();
        var into = airframe.WingSide == WingSide.Lower ? 1.0 : -1.0;
        var points = flat.Line.Points;
        var present = ImmutableArray.CreateBuilder<Point2>(points.Length);
        var target = ImmutableArray.CreateBuilder<Point2>(points.Length);
        for (var i = 0; i < points.Length; i++)
        {
            var outer = points[i].Outer;
            var place = flat.OuterAt(i).Place;

            // The two sides of a corner, and the points of a round nose, may be one place: a line needs them apart.
            if (present.Count > 0 && placement.Apply(place).DistanceTo(present[^1]) < 1e-3)
            {
                continue;
            }

            // The template is flat along the girth of the side; over so little wood that is the height itself.
            var down = flat.At(outer.X, outer.Z - (into * correction.TakeOffAt(outer, hand))) - flat.At(outer.X, outer.Z);
            present.Add(placement.Apply(place));
            target.Add(placement.Apply(place + down));
        }

        sketch.Line(LineUse.Edge, Path2.Polyline(present));
        sketch.Line(LineUse.Trim, Path2.Polyline(target));
        var (front, rear) = (placement.Apply(flat.Edge[0]), placement.Apply(flat.Edge[^1]));
        Path2 outline = Path2.Polygon([front, .. target, rear]);
        sketch.Line(LineUse.Cut, outline.SignedArea < 0 ? outline.Reversed() : outline);
        AddTexts(airframe, flat, round, correction, hand, placement, sketch);
        var name = hand == Hand.Port ? "port" : "starboard";
        return sketch.AsTemplate($"correction-{name}", Kind, $"Correction, {BenchMarks.NameOf(hand)}");
    }

    private static void AddTexts(
        RiggedAirframe airframe,
        SaddleDevelopment flat,
        RoundResult round,
        SaddleCorrection correction,
        Hand hand,
        Placement2 placement,
        PartSketch sketch)
    {
        const double MarkLength = 6;
        var text = airframe.Text;
        var into = airframe.WingSide == WingSide.Lower ? 1.0 : -1.0;
        var name = hand == Hand.Port ? "port" : "starboard";
        for (var i = 0; i < correction.Stations.Length; i++)
        {
            var station = correction.Stations[i];
            var off = hand == Hand.Port ? station.Port : station.Starboard;
            var height = i == 0 ? flat.Line.Points[0].Outer.Z
                : i == correction.Stations.Length - 1 ? flat.Line.Points[^1].Outer.Z
                : flat.Line.AtStation(station.Station)!.Outer.Z;
            var foot = flat.At(station.Station, height);
            sketch.Line(LineUse.Station, foot, foot + new Vector2(0, into * MarkLength), placement);
            sketch.Label(text.Fine(off), placement.Apply(foot + new Vector2(0, into * (MarkLength + 3))));
            sketch.Figure($"correction.{name}.take_off.{i}", $"Correction {name}, off at station {text.Coarse(station.Station)}", off, FigureQuantity.Length);
        }

        var (front, rear) = (placement.Apply(flat.Edge[0]), placement.Apply(flat.Edge[^1]));
        sketch.Label("FRONT", front.Towards(rear, 0.06) + new Vector2(0, into * 9));
        sketch.Label($"{BenchMarks.NameOf(hand)}: take off ({text.UnitName})", front.Towards(rear, 0.5) + new Vector2(0, into * 9));
        var side = flat.EdgeHeight >= 0 ? "above" : "below";
        sketch.Label($"this edge lies {text.CoarseWithUnit(Math.Abs(flat.EdgeHeight))} {side} the datum line", front.Towards(rear, 0.5) + new Vector2(0, into * 4));
        var (asItIs, asItIsToBe) = airframe.WingSide == WingSide.Lower ? ("upper", "lower") : ("lower", "upper");
        sketch.Note($"After the round \"{round.Name}\". The {asItIs} line is the seat as it is, the {asItIsToBe} one the seat as it is to be, square to the datum line.");
        sketch.Note($"Cut along the {asItIsToBe} line, hold the paper to the body with its straight edge parallel to the datum line, mark, and sand to the mark.");
    }
}
