using System.Collections.Immutable;
using PlanForge.Airframe;
using PlanForge.Geometry;
using PlanForge.Parts.Shapes;

namespace PlanForge.Parts.Arrangement;

/// <summary>The front view, seen from the nose looking aft: (−y, z), starboard on the left.</summary>
/// <remarks>
/// The body's outline is that of its described cross-sections and, where it runs fair, of those half way between them. What lies ahead of the
/// wing's leading edge hides the wing; the wing hides what of the body lies behind it; all hide the tailplane.
/// </remarks>
internal static class FrontView
{
    public static ImmutableArray<PartLine> Draw(RiggedAirframe airframe, WingShape? tail)
    {
        var view = new ViewLines();
        var body = airframe.Body;
        var leading = airframe.Description.Wing.LeadingEdge.Station;
        var sections = Sections(body, airframe.Description.Fuselage.Stations, leading);
        var ahead = sections.Where(section => section.Station <= leading).Select(section => new Silhouette(section.Outline)).ToArray();
        var all = sections.Select(section => new Silhouette(section.Outline)).ToArray();
        var wing = Faces(airframe.Wing);
        var wings = wing.Select(face => new Silhouette(face)).ToArray();
        for (var i = 0; i < sections.Length; i++)
        {
            AddSection(sections[i].Outline, i, all, i < ahead.Length ? [] : wings, view);
        }

        AddFaces(wing, ahead, view);
        if (tail is not null)
        {
            AddFaces(Faces(tail), [.. all, .. wings], view);
        }

        AddAxes(airframe, view);
        return view.Lines;
    }

    // From the nose aft.
    private static ImmutableArray<(double Station, Path2 Outline)> Sections(
        FuselageShape body, ImmutableArray<FuselageStation> described, double leading)
    {
        var stations = new List<double> { body.From };
        for (var i = 0; i < body.Bays.Length; i++)
        {
            var bay = body.Bays[i];
            if (described[i].RunAft == Run.Fair)
            {
                stations.Add((bay.From + bay.To) / 2);
            }

            stations.Add(bay.To);
        }

        if (leading > body.From && leading < body.To)
        {
            stations.Add(leading);
        }

        return [.. stations.Order().Select(station => (station, BodySection.Outside(body, station)))];
    }

    // The stretches of a section that stand out from all others; where two run together the one ahead is drawn.
    private static void AddSection(Path2 outline, int index, Silhouette[] all, Silhouette[] inFront, ViewLines view)
    {
        foreach (var (piece, middle) in Silhouette.Pieces(outline, [.. all.Where((_, i) => i != index), .. inFront]))
        {
            var isCovered = false;
            for (var i = 0; i < all.Length && !isCovered; i++)
            {
                isCovered = i != index && all[i].Contains(middle, isOutlineInside: i < index);
            }

            if (!isCovered)
            {
                view.Add(inFront.Any(wing => wing.Contains(middle)) ? LineUse.Hidden : LineUse.Edge, piece);
            }
        }
    }

    private static void AddFaces(ImmutableArray<Path2> faces, IReadOnlyCollection<Silhouette> inFront, ViewLines view)
    {
        for (var i = 0; i < faces.Length; i++)
        {
            // The line on the centre plane is no edge: the two innermost faces are one piece of wing.
            var points = faces[i].Vertices;
            var isInnermost = i < 2;
            view.Edge(
                isInnermost
                    ? Path2.Open([points[0], points[1], points[2], points[3]])
                    : Path2.Closed(points),
                inFront);
        }
    }

    // Each panel as seen from the front, starboard and port in turn: inner lower, outer lower, outer upper, inner upper corner.
    private static ImmutableArray<Path2> Faces(WingShape wing)
    {
        var faces = ImmutableArray.CreateBuilder<Path2>(2 * wing.Panels.Length);
        for (var i = 0; i < wing.Panels.Length; i++)
        {
            var (innerLow, innerHigh) = Extremes(wing, i, isInner: true);
            var (outerLow, outerHigh) = Extremes(wing, i, isInner: false);
            Point2[] corners = [innerLow, outerLow, outerHigh, innerHigh];
            faces.Add(Path2.Polygon(corners.Select(corner => new Point2(-corner.X, corner.Y))));
            faces.Add(Path2.Polygon(corners));
        }

        return faces.MoveToImmutable();
    }

    // The lowest and highest place of a panel's end, (y, z). Between its ends a panel is all but ruled: straight lines join them.
    private static (Point2 Low, Point2 High) Extremes(WingShape wing, int panel, bool isInner)
    {
        const int Steps = 64;
        Point2 low = new(0, double.PositiveInfinity), high = new(0, double.NegativeInfinity);
        foreach (var side in (ReadOnlySpan<WingSide>)[WingSide.Lower, WingSide.Upper])
        {
            for (var i = 0; i <= Steps; i++)
            {
                var w = Math.Max(WingShape.Nose, (double)i / Steps);
                var (from, to) = wing.Range(panel, side, w, 0);
                var place = wing.At(panel, side, isInner ? from : to, w).Point;
                low = place.Z < low.Y ? new(place.Y, place.Z) : low;
                high = place.Z > high.Y ? new(place.Y, place.Z) : high;
            }
        }

        return (low, high);
    }

    private static void AddAxes(RiggedAirframe airframe, ViewLines view)
    {
        const double Overhang = 0.05;
        var stations = airframe.Description.Fuselage.Stations;
        var past = airframe.Wing.HalfSpan * Overhang;
        double low = stations.Min(station => station.Lower), high = stations.Max(station => station.Upper);
        view.Add(LineUse.Centre, new Point2(0, low - past), new(0, high + past));
        var half = airframe.Wing.HalfSpan + past;
        view.Add(LineUse.Datum, new Point2(-half, 0), new(half, 0));
    }
}
