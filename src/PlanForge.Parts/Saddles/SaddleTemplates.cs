using PlanForge.Airframe.Diagnostics;
using PlanForge.Geometry;
using PlanForge.Parts.Arrangement;
using PlanForge.Parts.Dowels;
using PlanForge.Parts.Shapes;

namespace PlanForge.Parts.Saddles;

/// <summary>Paper templates of the saddle, port and starboard: the side unrolled, with both lines, the bevel and all stations.</summary>
public sealed class SaddleTemplates : IPartKind
{
    // Marks of formers and dowels just ahead of and behind the saddle are wanted too, mm.
    private const double Reach = 30;

    /// <inheritdoc/>
    public string Title => "Saddles";

    /// <inheritdoc/>
    public IEnumerable<Part> Make(RiggedAirframe airframe, ICollection<Diagnostic> findings)
    {
        var unrolled = airframe.Piece("the side unrolled", () => UnrolledSide.Of(airframe.Body, airframe.SaddleLine!, EdgeHeight(airframe)));

        // The fit is the costly part and the same for both hands: the second one is only mirrored.
        SaddleContours Contours() => airframe.Piece("the lines of the saddle templates", () => SaddleContours.Of(airframe, Flat())).Value;
        foreach (var (hand, placement) in new[] { ("port", Placement2.Identity), ("starboard", Placement2.Mirror) })
        {
            if (ShapeGuard.Make(airframe, "the saddle", airframe.Description.Wing.At, findings, () => Template(airframe, Flat(), Contours(), hand, placement)) is not { } template)
            {
                // The other side degenerates alike: one error says it.
                yield break;
            }

            yield return template;
        }

        // Made where it is used: what it is made from counts there.
        SaddleDevelopment Flat() => new(airframe.Body, airframe.SaddleLine!, unrolled.Value);
    }

    /// <summary>Height of the template's straight edge: the given depth off the line, but within the body.</summary>
    internal static double EdgeHeight(RiggedAirframe airframe)
    {
        const double Rim = 1;
        var line = airframe.SaddleLine!;
        var depth = airframe.Description.Saddle.Depth;
        var body = airframe.Body;
        if (airframe.WingSide == WingSide.Lower)
        {
            var bottom = line.Points.Max(point => body.LowerAt(point.Outer.X));
            return Math.Max(line.Points.Min(point => point.Outer.Z) - depth, bottom + Rim);
        }

        var top = line.Points.Min(point => body.UpperAt(point.Outer.X));
        return Math.Min(line.Points.Max(point => point.Outer.Z) + depth, top - Rim);
    }

    // The development is laid out as seen from outside the port side; the starboard one is its mirror image.
    private Part Template(
        RiggedAirframe airframe, SaddleDevelopment flat, SaddleContours contours, string hand, Placement2 placement)
    {
        var sketch = new PartSketch();
        var into = airframe.WingSide == WingSide.Lower ? 1.0 : -1.0;
        contours.AddTo(sketch, placement);
        AddStations(airframe, flat, into, placement, sketch);
        AddTexts(airframe, flat, into, placement, sketch);
        SaddleTable.Add(airframe, flat, hand, sketch);
        return sketch.AsTemplate($"saddle-{hand}", Title, $"Saddle {hand}") with { Fitted = [contours.Fitted.Placed(placement)] };
    }

    private static void AddStations(RiggedAirframe airframe, SaddleDevelopment flat, double into, Placement2 placement, PartSketch sketch)
    {
        var line = flat.Line;
        foreach (var former in airframe.Description.Formers)
        {
            var axis = DowelAxis.Through(former, airframe);
            foreach (var (station, isFront) in FormerFaces.Between(former, line.From - Reach, line.To + Reach))
            {
                // The mark stands out of the saddle line, and beyond the dowels' cross where there is one.
                var tip = line.AtStation(Math.Clamp(station, line.From, line.To))!.Outer.Z + (into * 4);
                if (axis is not null)
                {
                    var clear = axis.HeightAt(station) + (into * 5);
                    tip = into > 0 ? Math.Max(tip, clear) : Math.Min(tip, clear);
                }

                Point2 low = flat.At(station, flat.EdgeHeight), high = flat.At(station, tip);
                sketch.Line(LineUse.Station, low, high, placement);
                if (isFront)
                {
                    var name = axis is null ? former.Name : $"{former.Name}, dowel axis {airframe.Text.Coarse(axis.HeightAt(station))}";
                    sketch.Label(name, placement.Apply(high + new Vector2(0, into * 3)));
                }
            }

            if (axis is not null && former.Station >= line.From - Reach && former.Station <= line.To + Reach)
            {
                sketch.Cross(LineUse.Centre, placement.Apply(flat.At(former.Station, axis.HeightAt(former.Station))), 6);
            }
        }

        if ((flat.EdgeHeight < 0) == (line.Points[0].Outer.Z > 0))
        {
            Point2 a = placement.Apply(flat.At(line.From, 0)), b = placement.Apply(flat.At(line.To, 0));
            sketch.Line(LineUse.Datum, a, b);
            sketch.Label("datum line", a.Towards(b, 0.3) + new Vector2(0, 2.5));
        }
    }

    private static void AddTexts(RiggedAirframe airframe, SaddleDevelopment flat, double into, Placement2 placement, PartSketch sketch)
    {
        var text = airframe.Text;
        var line = flat.Line;
        var (front, rear) = (placement.Apply(flat.Edge[0]), placement.Apply(flat.Edge[^1]));
        var free = placement.Apply(flat.At(WidestGap(airframe, line), flat.EdgeHeight));
        var side = flat.EdgeHeight >= 0 ? "above" : "below";
        sketch.Label(
            $"this edge lies {text.CoarseWithUnit(Math.Abs(flat.EdgeHeight))} {side} the datum line", free + new Vector2(0, into * 4));
        sketch.Label("FRONT", front.Towards(rear, 0.06) + new Vector2(0, into * 9));
        var outward = front.X < rear.X ? 1 : -1;
        AddAlong(front, rear);
        sketch.Up(front, placement.Apply(flat.OuterAt(0).Place), outward);
        sketch.Up(rear, placement.Apply(flat.OuterAt(line.Points.Length - 1).Place), -outward);

        // Along the straight edge from the saddle's front to each former's front face.
        foreach (var former in airframe.Description.Formers)
        {
            const double Least = 1;
            if (former.Station > line.From + Least && former.Station < line.To - Least)
            {
                AddAlong(front, placement.Apply(flat.At(former.Station, flat.EdgeHeight)));
            }
        }

        void AddAlong(Point2 from, Point2 to) => sketch.Across(from.X < to.X ? from : to, from.X < to.X ? to : from, -into);
    }

    // The station in the middle of the longest stretch of the saddle that no former marks.
    private static double WidestGap(RiggedAirframe airframe, SaddleLine line)
    {
        List<double> marks = [line.From, line.To];
        foreach (var former in airframe.Description.Formers)
        {
            foreach (var (station, _) in FormerFaces.Between(former, line.From, line.To))
            {
                if (station > line.From && station < line.To)
                {
                    marks.Add(station);
                }
            }
        }

        marks.Sort();
        var widest = 1;
        for (var i = 2; i < marks.Count; i++)
        {
            widest = marks[i] - marks[i - 1] > marks[widest] - marks[widest - 1] ? i : widest;
        }

        return (marks[widest - 1] + marks[widest]) / 2;
    }
}
