using System.Collections.Immutable;
using PlanForge.Geometry;
using PlanForge.Parts.Shapes;
using PlanForge.Parts.Wording;

namespace PlanForge.Parts.Joints;

/// <summary>What is said of the joint's side view: lengths above, formers below, heights at both ends, places in a table.</summary>
internal static class JointTexts
{
    // First row of dimensions beyond the view, and from row to row, mm: room for inch fractions.
    private const double FirstRow = 9;
    private const double Row = 9;

    public static void Add(RiggedAirframe airframe, JointSideView view, PartSketch sketch)
    {
        var bounds = Outlines(view).Aggregate(Bounds2.Empty, (all, path) => all.Joined(path.Bounds));
        AddLengths(view, sketch);
        AddFormers(airframe, view, bounds, sketch);
        AddHeights(view, sketch);
        AddNames(airframe, view, sketch);
        AddTable(airframe, view, sketch);
        AddNotes(airframe, view, sketch);
    }

    private static Path2[] Outlines(JointSideView view) => [view.Body.Far, view.Body.Near, view.Body.Uncut, view.Section];

    // Along the chord line, above: what stands out in front and the bolts' place in the first row, the chord in the second.
    private static void AddLengths(JointSideView view, PartSketch sketch)
    {
        Point2 leading = JointSideView.Flat(view.Root.Leading), trailing = JointSideView.Flat(view.Root.Trailing);
        var along = (trailing - leading).Unit();

        // Rows run along the chord: the first is clear of whatever stands highest above it.
        var first = FirstRow + Outlines(view).SelectMany(path => path.Flattened(0.5)).Max(point => (point - leading).Dot(along.Left));
        if (view.Dowel is { } dowel)
        {
            Along(new(dowel.FrontStation, dowel.HeightAt(dowel.FrontStation)), leading, 0);
        }

        if (view.Bolt is { } bolt)
        {
            Along(leading + (along * bolt.OnChord), trailing, 0);
        }

        Along(leading, trailing, 1);

        void Along(Point2 from, Point2 to, int row)
        {
            // All lines of a row lie on one line, whatever height they are taken from.
            var offset = first + (row * Row) - (from - leading).Dot(along.Left);
            sketch.Dimension(new PartDimension.Linear(from, to, along, offset));
        }
    }

    // Below: from front face to front face, the leading edge among them.
    private static void AddFormers(RiggedAirframe airframe, JointSideView view, Bounds2 bounds, PartSketch sketch)
    {
        const double Apart = 2;
        var leading = view.Root.Leading.X;
        var stations = new List<double> { leading, view.Root.Trailing.X };
        foreach (var former in airframe.Description.Formers)
        {
            if (former.Station > view.Body.From && former.Station < view.Body.To)
            {
                stations.Add(former.Station);
            }
        }

        stations.Sort();
        var line = bounds.MinY - FirstRow;
        for (var i = 1; i < stations.Count; i++)
        {
            if (stations[i] - stations[i - 1] >= Apart)
            {
                Point2 from = new(stations[i - 1], bounds.MinY), to = new(stations[i], bounds.MinY);
                sketch.Across(from, to, line - bounds.MinY);
            }
        }
    }

    // Above the datum line: the dowels' axis at the cross-former's front face on the left, the trailing edge on the right.
    private static void AddHeights(JointSideView view, PartSketch sketch)
    {
        const double Clear = 8;
        const double Foot = 4;
        var trailing = view.Root.Trailing;
        Up(trailing.X, trailing.Z, view.Body.To + Clear);
        if (view.Dowel is { } dowel)
        {
            Up(dowel.FrontStation, dowel.HeightAt(dowel.FrontStation), view.Body.From - Clear);
        }

        void Up(double station, double height, double at)
        {
            // The lower end is taken from the datum line just inside of the dimension line, so that no extension runs along it.
            var foot = new Point2(at > station ? at - Foot : at + Foot, 0);
            var place = new Point2(station, height);
            var (low, high) = height >= 0 ? (foot, place) : (place, foot);
            sketch.Up(low, high, low.X - at);
        }
    }

    private static void AddNames(RiggedAirframe airframe, JointSideView view, PartSketch sketch)
    {
        var text = airframe.Text;
        var isHigh = airframe.WingSide == WingSide.Lower;
        foreach (var former in airframe.Description.Formers)
        {
            if (former.Station > view.Body.From && former.Station < view.Body.To)
            {
                var rear = former.Station + former.Thickness;
                var height = isHigh
                    ? airframe.Body.LowerAt(rear) + airframe.Body.Skin.Bottom + 4
                    : airframe.Body.UpperAt(rear) - airframe.Body.Skin.Top - 6.5;
                var isAtEnd = rear > view.Body.To - 8;
                sketch.Label(
                    former.Name, new(isAtEnd ? former.Station - 1.5 : rear + 1.5, height), isAtEnd ? Anchor.End : Anchor.Start);
            }
        }

        sketch.Label("datum line", new(view.Body.To + 13, -1.25), Anchor.Start);
        var (leading, trailing) = (JointSideView.Flat(view.Root.Leading), JointSideView.Flat(view.Root.Trailing));
        var along = trailing - leading;
        var rise = leading.Y - trailing.Y;
        sketch.Label(
            $"incidence {MeasureText.Angle(airframe.Wing.Incidence)}, rise {text.Coarse(rise)}",
            leading + (along * 0.38) + (along.Unit().Left * 3.5),
            Anchor.Middle,
            along.Angle);
    }

    private static void AddTable(RiggedAirframe airframe, JointSideView view, PartSketch sketch)
    {
        var text = airframe.Text;
        var rows = new List<ImmutableArray<string>>();
        var root = view.Root;
        Add("leading edge", root.Leading.X, root.Leading.Z);
        Add("trailing edge", root.Trailing.X, root.Trailing.Z);
        sketch.Figure("joint.trailing_edge.station", "Wing joint, station of the root trailing edge", root.Trailing.X, FigureQuantity.Length);
        sketch.Figure("joint.trailing_edge.height", "Wing joint, height of the root trailing edge", root.Trailing.Z, FigureQuantity.Length);
        if (view.Dowel is { } dowel)
        {
            Add("dowel axis, front end", dowel.FrontStation, dowel.HeightAt(dowel.FrontStation));
            foreach (var former in airframe.Description.Formers.Where(former => former.IsCrossFormer))
            {
                var rear = former.Station + former.Thickness;
                Add($"dowel axis, {former.Name} front face", former.Station, dowel.HeightAt(former.Station));
                Add($"dowel axis, {former.Name} rear face", rear, dowel.HeightAt(rear));
            }
        }

        if (view.Bolt is { } bolt)
        {
            Add("bolt axis, wing surface", bolt.Seat.X, bolt.Seat.Z);
            Add("bolt axis, plate near face", bolt.StationAt(bolt.NearFace), bolt.NearFace);
            Add("bolt axis, plate far face", bolt.StationAt(bolt.FarFace), bolt.FarFace);
        }

        var line = airframe.SaddleLine!.Points;
        Add("saddle line, front end", line[0].Outer.X, line[0].Outer.Z);
        Add("saddle line, rear end", line[^1].Outer.X, line[^1].Outer.Z);
        sketch.Table($"Places in the joint ({text.UnitName})", ["place", "station", "height"], rows);

        void Add(string name, double station, double height) => rows.Add([name, text.Coarse(station), text.Coarse(height)]);
    }

    private static void AddNotes(RiggedAirframe airframe, JointSideView view, PartSketch sketch)
    {
        var text = airframe.Text;
        sketch.Note("Seen from port: wing cut at the centre line, saddle line of the outer face, dashed that of the inner.");
        var tape = airframe.Description.Saddle.SeatTape;
        if (tape > 0)
        {
            sketch.Note($"Seat tape between wing and saddle: {text.FineWithUnit(tape)}.");
        }

        if (view.Bolt is { Fastener: var fastener })
        {
            sketch.Note($"Bolt {fastener.Thread} square to the chord line: wing drilled {fastener.DrillNames.Clearance}, plate {fastener.DrillNames.Tapping}.");
        }
    }
}
