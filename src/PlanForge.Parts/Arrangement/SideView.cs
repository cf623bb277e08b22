using System.Collections.Immutable;
using PlanForge.Geometry;
using PlanForge.Parts.Shapes;

namespace PlanForge.Parts.Arrangement;

/// <summary>The side view, seen from port: (x, z). Wing and tailplane are cut at the centre line.</summary>
internal static class SideView
{
    /// <summary>Adds the formers and the axes to the outlines.</summary>
    public static ImmutableArray<PartLine> Draw(RiggedAirframe airframe, ImmutableArray<PartLine> outlines, ArrangedThrust? thrust)
    {
        var view = new ViewLines();
        view.Add(outlines);
        foreach (var former in airframe.Description.Formers)
        {
            var (from, to) = FormerStation.At(former.Station, airframe);
            view.Add(LineUse.Station, new Point2(former.Station, from), new(former.Station, to));
        }

        AddAxes(airframe, thrust, view);
        return view.Lines;
    }

    /// <summary>Body, wing and tailplane.</summary>
    public static ImmutableArray<PartLine> Outlines(RiggedAirframe airframe, WingShape? tail)
    {
        var view = new ViewLines();
        var body = airframe.Body;
        var upper = ViewLines.Through(BodyCurves.Upper(body, body.From, body.To));
        var lower = ViewLines.Through(BodyCurves.Lower(body, body.From, body.To));
        var outline = ViewLines.Between(lower, upper);
        var wing = RootSection.Closed(ViewLines.Through(RootSection.Outline(airframe.Wing)));
        Silhouette inBody = new(outline), inWing = new(wing);

        // A high wing lies in the body's seat and hides it there; a low wing is hidden within the body's sides.
        var isHigh = airframe.WingSide == WingSide.Lower;
        view.Edge(outline, isHigh ? [inWing] : []);
        view.Edge(wing, isHigh ? [] : [inBody]);
        if (tail is not null)
        {
            view.Edge(RootSection.Closed(ViewLines.Through(RootSection.Outline(tail))), inBody);
        }

        return view.Lines;
    }

    private static void AddAxes(RiggedAirframe airframe, ArrangedThrust? thrust, ViewLines view)
    {
        const double Overhang = 0.03;
        var body = airframe.Body;
        var past = (body.To - body.From) * Overhang;
        view.Add(LineUse.Datum, new Point2(body.From - past, 0), new(body.To + past, 0));
        if (thrust is { } line)
        {
            // Nose down positive: ahead of the nose the line falls.
            var ahead = new Vector2(-Math.Cos(line.Down), -Math.Sin(line.Down)) * line.Length;
            var nose = new Point2(line.Station, line.Height);
            view.Add(LineUse.Centre, nose + ahead, nose - ahead);
        }
    }
}
