using PlanForge.Airframe;
using PlanForge.Geometry;
using PlanForge.Parts.Dowels;
using PlanForge.Parts.Wording;

namespace PlanForge.Parts.Formers;

/// <summary>
/// The sizes of a former: overall, heights from the level line, and where its holes, openings, slots, tabs and notches lie and
/// how large they are. Heights of features stand on the right, their distances from the centre line above.
/// </summary>
internal static class FormerDimensions
{
    // Which side of the measured points the dimension stands on; see PartDimension.Linear.
    private const double Above = 1;
    private const double Below = -1;
    private const double AtLeft = 1;
    private const double AtRight = -1;

    // A size under this, mm, is not shown: a feature on the line itself.
    private const double Least = 0.05;

    private const double CrossSize = 8;

    /// <summary>Adds all dimensions.</summary>
    public static void Add(RiggedAirframe airframe, FormerDescription former, FormerOutline outline, FormerBlank blank, double level, PartSketch sketch)
    {
        var frame = new Frame(blank.Wood.Bounds, level, airframe.Text, sketch);
        AddOverall(frame);
        AddDowels(airframe, former, frame);
        AddOpenings(former, frame);
        AddSlots(former, frame);
        AddTabs(former, outline, frame);
        AddNotches(airframe, former, outline, blank, frame);
        AddLightening(former, blank, frame);
    }

    private static void AddOverall(Frame frame)
    {
        var (bounds, level) = (frame.Bounds, frame.Level);
        frame.Sketch.Across(new(bounds.MinX, bounds.MinY), new(bounds.MaxX, bounds.MinY), Below);
        frame.Sketch.Up(new(bounds.MinX, bounds.MinY), new(bounds.MinX, bounds.MaxY), AtLeft);
        frame.Sketch.Up(new(bounds.MinX, bounds.MinY), new(bounds.MinX, level), AtLeft);
        frame.Sketch.Up(new(bounds.MinX, level), new(bounds.MinX, bounds.MaxY), AtLeft);
    }

    private static void AddDowels(RiggedAirframe airframe, FormerDescription former, Frame frame)
    {
        if (DowelAxis.Through(former, airframe) is not { } axis)
        {
            return;
        }

        var centre = axis.HoleAt(former.Station + (former.Thickness / 2)).Centre;
        frame.HeightOf(centre);
        frame.DistanceOf(centre);
        if (axis.Across > 0)
        {
            frame.Sketch.Across(new(-centre.X, centre.Y), centre, Above);
        }

        frame.Sketch.Hole(
            centre, (axis.Dowels.Diameter + axis.Dowels.Fit) / 2, frame.BesideUpper, DowelTexts.Hole(axis, airframe.Text));
    }

    private static void AddOpenings(FormerDescription former, Frame frame)
    {
        foreach (var opening in former.Openings)
        {
            var centre = new Point2(Math.Abs(opening.Across), opening.Height);
            var count = opening.Across == 0 ? "" : "2 × ";
            frame.HeightOf(centre);
            frame.DistanceOf(centre);
            frame.Sketch.Cross(LineUse.Centre, centre, Math.Min(CrossSize, Math.Min(opening.Width, opening.Depth) / 2));
            if (opening.CornerRadius > 0 && opening.Width == opening.Depth && opening.CornerRadius * 2 >= opening.Width)
            {
                frame.Sketch.Hole(centre, opening.CornerRadius, frame.BesideLower, count + frame.Text.Diameter(opening.Width));
                continue;
            }

            // The arrow ends at the middle of the lower right corner's arc.
            var inset = opening.CornerRadius * (1 - Math.Sqrt(0.5));
            var corner = centre + new Vector2((opening.Width / 2) - inset, inset - (opening.Depth / 2));
            var radius = opening.CornerRadius > 0 ? ", " + frame.Text.Radius(opening.CornerRadius) : "";
            frame.Sketch.Leader(corner, frame.BesideLower, $"{count}{frame.Text.Size(opening.Width)} × {frame.Text.Size(opening.Depth)}{radius}");
        }
    }

    private static void AddSlots(FormerDescription former, Frame frame)
    {
        foreach (var slot in former.Slots)
        {
            var centre = new Point2(Math.Abs(slot.Across), slot.Height);
            frame.HeightOf(centre);
            frame.DistanceOf(centre);
            frame.Sketch.Leader(
                centre + new Vector2(slot.Width / 2, -slot.Depth / 2),
                frame.BesideLower,
                $"{(slot.Across == 0 ? "" : "2 × ")}slot {frame.Text.Size(slot.Width)} × {frame.Text.Size(slot.Depth)}");
        }
    }

    private static void AddTabs(FormerDescription former, FormerOutline outline, Frame frame)
    {
        foreach (var tab in former.Tabs)
        {
            var size = $"tab {frame.Text.Size(tab.Width)} × {frame.Text.Size(tab.Depth)}";
            if (tab.Edge == TabEdge.Side)
            {
                if (FormerFeatures.Reach(outline.Net, new(0, tab.Position), new(1, 0)) is { } y)
                {
                    var tip = new Point2(y + tab.Depth, tab.Position);
                    frame.HeightOf(tip);
                    frame.Sketch.Leader(tip + new Vector2(0, -tab.Width / 4), frame.BesideLower, "2 × " + size);
                }

                continue;
            }

            var up = tab.Edge == TabEdge.Upper ? 1 : -1;
            var middle = FormerFeatures.Middle(outline.Net);
            if (FormerFeatures.Reach(outline.Net, new(tab.Position, middle), new(0, up)) is { } z)
            {
                var tip = new Point2(tab.Position, middle + (up * (z + tab.Depth)));
                frame.DistanceOf(tip);
                frame.Sketch.Leader(tip + new Vector2(tab.Width / 4, 0), up > 0 ? frame.BesideUpper : frame.BesideLower, size);
            }
        }
    }

    // Notches of one size share one leader.
    private static void AddNotches(RiggedAirframe airframe, FormerDescription former, FormerOutline outline, FormerBlank blank, Frame frame)
    {
        var groups = new List<(double Across, double Up, int Count, Point2 At)>();
        foreach (var longeron in airframe.Description.Fuselage.Longerons)
        {
            if (FormerFeatures.NotchCorner(former, outline, longeron) is not { } corner || blank.Wood.DistanceToBoundary(corner) > Least)
            {
                continue;
            }

            var count = longeron.Place is LongeronPlace.Keel or LongeronPlace.Crown ? 1 : 2;
            var group = groups.FindIndex(other => other.Across == longeron.Across && other.Up == longeron.Up);
            if (group < 0)
            {
                groups.Add((longeron.Across, longeron.Up, count, corner));
            }
            else
            {
                groups[group] = groups[group] with { Count = groups[group].Count + count };
            }
        }

        foreach (var (across, up, count, at) in groups)
        {
            var number = count > 1 ? FormattableString.Invariant($"{count} × ") : "";
            frame.Sketch.Leader(
                at, at.Y > frame.Level ? frame.BesideUpper : frame.BesideLower, $"{number}notch {frame.Text.Size(across)} × {frame.Text.Size(up)}");
        }
    }

    private static void AddLightening(FormerDescription former, FormerBlank blank, Frame frame)
    {
        if (former.Lightening is not { } lightening)
        {
            return;
        }

        // The lightening is the largest opening; its lowest corner on the right shows the radius.
        Path2? largest = null;
        foreach (var part in blank.Wood.Parts)
        {
            foreach (var opening in part.Openings)
            {
                largest = largest is null || Math.Abs(opening.SignedArea) > Math.Abs(largest.SignedArea) ? opening : largest;
            }
        }

        if (largest is null)
        {
            return;
        }

        var corner = largest.SegmentAt(0).PointAt(0.5);
        foreach (var segment in largest.Segments)
        {
            var middle = segment.PointAt(0.5);
            corner = middle.X - middle.Y > corner.X - corner.Y ? middle : corner;
        }

        var radius = lightening.CornerRadius > 0 ? ", " + frame.Text.Radius(lightening.CornerRadius) : "";
        frame.Sketch.Leader(corner, frame.BesideLower, $"rim {frame.Text.Size(lightening.Rim)}{radius}");
    }

    /// <summary>What all dimensions of a former start from.</summary>
    private sealed record Frame(Bounds2 Bounds, double Level, MeasureText Text, PartSketch Sketch)
    {
        public Point2 BesideUpper => new(Bounds.MaxX + 8, Bounds.MaxY + 4);

        public Point2 BesideLower => new(Bounds.MaxX + 8, Bounds.MinY - 4);

        /// <summary>From the level line up or down to a place.</summary>
        public void HeightOf(Point2 place)
        {
            if (Math.Abs(place.Y - Level) > Least)
            {
                Sketch.Up(new(Bounds.MaxX, Level), place, AtRight);
            }
        }

        /// <summary>From the centre line to a place.</summary>
        public void DistanceOf(Point2 place)
        {
            if (Math.Abs(place.X) > Least)
            {
                Sketch.Across(new(0, Bounds.MaxY), place, Above);
            }
        }
    }
}
