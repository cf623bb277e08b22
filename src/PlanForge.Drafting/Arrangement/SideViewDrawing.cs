using System.Collections.Immutable;
using PlanForge.Airframe;
using PlanForge.Drafting.Measures;
using PlanForge.Drafting.Model;
using PlanForge.Geometry;
using PlanForge.Parts.Arrangement;

namespace PlanForge.Drafting.Arrangement;

/// <summary>The side view with formers, angles and lengths.</summary>
internal static class SideViewDrawing
{
    // Clear space between the view and the first row of labels or dimensions, mm.
    private const double Clear = 6;

    // The extension lines of an outer row pass the inner ones: which order keeps them off the texts, and whether the inner
    // texts can be long, depends on the airframe. The best first.
    private static ReadOnlySpan<LengthOrder> Orders =>
    [
        LengthOrder.ChordsFirst, LengthOrder.MomentFirst, LengthOrder.BareChordsFirst, LengthOrder.BareMomentFirst, LengthOrder.NoChords,
    ];

    /// <summary>Draws the view with the order of dimensions that sets the fewest lines through texts.</summary>
    /// <param name="views">The views.</param>
    /// <param name="scale">Drawn length over true length.</param>
    /// <param name="unit">The unit lengths are shown in.</param>
    /// <param name="isTerse">True to leave out the angles, which the table of key figures gives too.</param>
    public static Sketch Draw(ArrangementViews views, double scale, DisplayUnit unit, bool isTerse)
    {
        ViewSketch? best = null;
        var fewest = int.MaxValue;
        foreach (var order in Orders)
        {
            var view = new ViewSketch(views.Side, scale, unit);
            AddLengths(views, view, order);
            var clashes = TextClashes.Count(view.Sketch.Items);
            (best, fewest) = clashes < fewest ? (view, clashes) : (best, fewest);
            if (clashes == 0)
            {
                break;
            }
        }

        AddLabels(views, best!, isTerse);
        if (!isTerse)
        {
            // The datum line is drawn a little past the body: the leader takes its rear end.
            var end = new Point2(best!.LineBounds.MaxX, 0);
            best.NearBy("datum line", end + new Vector2(12, 3), end);
        }

        return best!.Sketch;
    }

    private static void AddLabels(ArrangementViews views, ViewSketch view, bool isTerse)
    {
        const double AboveEdge = 0.8;
        var bounds = view.LineBounds;
        var rows = new LabelRows(view.Sketch, ViewSketch.TextHeight, bounds.MaxY + Clear, bounds.MinX, bounds.MaxX);
        foreach (var former in views.Formers)
        {
            var x = former.Station * view.Scale;
            rows.Place(former.Name, hasArrow: false, [new(x, (view.TopAt(x) ?? bounds.MaxY) + AboveEdge)]);
        }

        if (!isTerse)
        {
            if (views.Tailplane is { } tail)
            {
                rows.Place($"tailplane incidence {Measure.Angle(tail.Incidence)}", hasArrow: true, OnSection(tail, view));
            }

            rows.Place($"wing incidence {Measure.Angle(views.Wing.Incidence)}", hasArrow: true, OnSection(views.Wing, view));
            AddThrust(views, view, rows);
        }

        rows.Draw();
    }

    private static void AddThrust(ArrangementViews views, ViewSketch view, LabelRows rows)
    {
        if (views.Thrust is { } thrust)
        {
            // On the piece that is drawn ahead of the nose.
            Point2 Ahead(double share) => view.At(
                thrust.Station - (share * thrust.Length * Math.Cos(thrust.Down)), thrust.Height - (share * thrust.Length * Math.Sin(thrust.Down)));
            rows.Place(ThrustText(thrust), hasArrow: true, [Ahead(0.5), Ahead(0.7), Ahead(0.9)]);
        }
    }

    // The leader comes down on the section, wherever between a fifth and four fifths of its chord it finds its way.
    private static ImmutableArray<Point2> OnSection(ArrangedWing wing, ViewSketch view)
    {
        const double Step = 0.05;
        var places = ImmutableArray.CreateBuilder<Point2>();
        for (var i = 0; i <= 12; i++)
        {
            var fraction = 0.5 + ((i % 2 == 0 ? 1 : -1) * ((i + 1) / 2) * Step);
            var place = wing.Root.Leading.Towards(wing.Root.Trailing, fraction);
            var x = place.X * view.Scale;
            places.Add(new(x, view.TopAt(x) ?? (place.Z * view.Scale)));
        }

        return places.ToImmutable();
    }

    private static string ThrustText(ArrangedThrust thrust)
    {
        var down = $"{Measure.Angle(Math.Abs(thrust.Down))} {(thrust.Down < 0 ? "up" : "down")}";
        return $"thrust {down}, {Measure.Angle(Math.Abs(thrust.Right))} {(thrust.Right < 0 ? "left" : "right")}";
    }

    private static void AddLengths(ArrangementViews views, ViewSketch view, LengthOrder order)
    {
        var rows = new DimensionRows(view, view.LineBounds.MinY - Clear, -view.RowPitch, isUpright: false);
        if (order is LengthOrder.ChordsFirst or LengthOrder.BareChordsFirst)
        {
            AddChords(views, view, rows, isNamed: order == LengthOrder.ChordsFirst);
            AddMoment(views, view, rows, isNamed: true);
        }
        else
        {
            AddMoment(views, view, rows, isNamed: order != LengthOrder.BareMomentFirst);
            if (order != LengthOrder.NoChords)
            {
                AddChords(views, view, rows, isNamed: true);
            }
        }

        Point2 front = view.At(views.Overall.From, views.Body.NoseLower), rear = view.At(views.Overall.To, 0);
        rows.Add(at => view.Level(front, rear, at, views.Overall.Length, "length over all"));
    }

    private static void AddMoment(ArrangementViews views, ViewSketch view, DimensionRows rows, bool isNamed)
    {
        if (views.Tailplane is { } tail)
        {
            Point3 from = views.Wing.MeanQuarter, to = tail.MeanQuarter;
            rows.Add(at => view.Level(
                view.At(from.X, from.Z), view.At(to.X, to.Z), at, to.X - from.X, isNamed ? "tail moment distance" : ""));
            rows.Close();
        }
    }

    private static void AddChords(ArrangementViews views, ViewSketch view, DimensionRows rows, bool isNamed)
    {
        var leading = views.Wing.Root.Leading;
        Point2 nose = view.At(views.Body.From, views.Body.NoseLower), front = view.At(leading.X, leading.Z);
        if (front.X - nose.X > 1)
        {
            rows.Add(at => view.Level(nose, front, at, leading.X - views.Body.From));
        }

        Add(views.Wing, "root chord");
        if (views.Tailplane is { } tail)
        {
            Add(tail, "chord");
        }

        rows.Close();

        void Add(ArrangedWing wing, string name)
        {
            var (from, to) = wing.Root;
            rows.Add(at => view.Along(view.At(from.X, from.Z), view.At(to.X, to.Z), at, wing.RootChord, isNamed ? name : ""));
        }
    }

    private enum LengthOrder
    {
        ChordsFirst,
        BareChordsFirst,
        MomentFirst,
        BareMomentFirst,
        NoChords,
    }
}
