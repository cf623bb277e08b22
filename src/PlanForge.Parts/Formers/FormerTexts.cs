using System.Collections.Immutable;
using PlanForge.Airframe;
using PlanForge.Geometry;
using PlanForge.Geometry.Fitting;
using PlanForge.Parts.Dowels;
using PlanForge.Parts.Wording;

namespace PlanForge.Parts.Formers;

/// <summary>Labels, dimensions, notes, the bevel table and the figures of a former.</summary>
internal static class FormerTexts
{
    /// <summary>Adds all texts.</summary>
    public static void Add(
        RiggedAirframe airframe, FormerDescription former, FormerOutline outline, FormerBlank blank, PartSketch sketch)
    {
        var text = airframe.Text;
        var bounds = blank.Wood.Bounds;
        var level = FormerLines.LevelOf(bounds, airframe.Description.DisplayUnit);
        sketch.Engrave(former.Name, NamePlace(blank, outline, level));
        FormerDimensions.Add(airframe, former, outline, blank, level, sketch);
        AddCutLineHeights(airframe, former, outline, bounds, sketch);
        AddBevels(airframe, former, outline, sketch);
        sketch.Note($"Seen from the tail. Front face at station {text.CoarseWithUnit(former.Station)}, rear face at {text.CoarseWithUnit(former.Station + former.Thickness)}.");
        if (blank.TrimLines.Length > 0)
        {
            sketch.Note($"Cut to the outline; the allowance is trimmed to the inner line after fitting ({AllowanceText(text, former.Allowance)}).");
        }

        if (former.Bevel is { } bevel)
        {
            sketch.Note($"{(bevel.Edge == FormerEdge.Upper ? "Upper" : "Lower")} edge bevelled {MeasureText.Angle(bevel.Angle)} on the {(bevel.Face == FormerFace.Front ? "front" : "rear")} face: {text.FineWithUnit(former.Thickness * Math.Tan(bevel.Angle))} over the thickness.");
        }

        AddDowelTexts(airframe, former, sketch);
        AddFigures(former, blank, sketch);
    }

    private static string AllowanceText(MeasureText text, AllowanceDescription allowance)
    {
        var parts = new List<string>();
        void Add(double value, string name)
        {
            if (value > 0)
            {
                parts.Add($"{name} {text.CoarseWithUnit(value)}");
            }
        }

        Add(allowance.Upper, "upper");
        Add(allowance.Lower, "lower");
        Add(allowance.Side, "sides");
        return string.Join(", ", parts);
    }

    // On wood: the first place from below upward that is clear of edges and lines.
    private static Point2 NamePlace(FormerBlank blank, FormerOutline outline, double level)
    {
        const double Room = 4;
        var wood = blank.Wood;
        var bounds = wood.Bounds;
        Point2? best = null;
        var clearest = 0.0;
        for (var row = 1; row < 12; row++)
        {
            for (var column = 0; column < 9; column++)
            {
                var place = new Point2(bounds.MinX + (bounds.Width * (column + 1.5) / 11), bounds.MinY + (bounds.Height * row / 12));
                if (!wood.Contains(place))
                {
                    continue;
                }

                // Clear of the centre line, the level line and the trim lines too.
                var clear = Math.Min(wood.DistanceToBoundary(place), Math.Abs(place.X));
                clear = Math.Min(clear, Math.Abs(place.Y - level));
                clear = Math.Min(clear, outline.Net.DistanceToBoundary(place));
                if (clear > Room)
                {
                    return place;
                }

                if (clear > clearest)
                {
                    (best, clearest) = (place, clear);
                }
            }
        }

        return best ?? bounds.Centre;
    }

    private static void AddCutLineHeights(RiggedAirframe airframe, FormerDescription former, FormerOutline outline, Bounds2 bounds, PartSketch sketch)
    {
        var text = airframe.Text;
        var rows = new List<ImmutableArray<string>>();
        Row(former.Station, "front", outline.FrontCut);
        Row(former.Station + former.Thickness, "rear", outline.RearCut);
        if (rows.Count > 0)
        {
            sketch.Table(
                $"Cut line at the wing, heights ({text.UnitName})", ["face", "at centre", "at side", "half-breadth"], rows);
        }

        void Row(double station, string face, ImmutableArray<CurveSample>? half)
        {
            if (half is not { } cut)
            {
                return;
            }

            // At the wood's own edge; where the wing ends before it, at the end of the cut line.
            var centre = cut[0].Point;
            var side = airframe.WingCutHeightAt(station, bounds.MaxX) is { } height ? new(bounds.MaxX, height) : cut[^1].Point;
            rows.Add([face, text.Fine(centre.Y), text.Fine(side.Y), text.Column(side.X)]);
            sketch.Figure($"former.{former.Name}.cut.{face}.centre", $"Former {former.Name}, {face} face: cut line height on the centre line", centre.Y, FigureQuantity.Length);
            sketch.Figure($"former.{former.Name}.cut.{face}.side", $"Former {former.Name}, {face} face: cut line height at the side", side.Y, FigureQuantity.Length);
        }
    }

    private static void AddBevels(RiggedAirframe airframe, FormerDescription former, FormerOutline outline, PartSketch sketch)
    {
        var text = airframe.Text;
        var rows = new List<ImmutableArray<string>>();
        var level = FormerFeatures.Middle(outline.Net);
        var (low, high) = (outline.Net.Bounds.MinY, outline.Net.Bounds.MaxY);
        foreach (var fraction in new[] { 0.2, 0.5, 0.8 })
        {
            var height = low + ((high - low) * fraction);
            Row($"side at {text.Column(height)}", $"side.{(int)(fraction * 100)}", new(0, height), new(1, 0));
        }

        Row("top", "top", new(0, level), new(0, 1));
        Row("bottom", "bottom", new(0, level), new(0, -1));
        if (rows.Count > 0)
        {
            sketch.Table($"Faces and bevels ({text.UnitName})", ["edge", "front", "rear", "bevel"], rows);
        }

        void Row(string name, string key, Point2 from, Vector2 direction)
        {
            if (FormerFeatures.Reach(outline.Front, from, direction) is not { } front
                || FormerFeatures.Reach(outline.Rear, from, direction) is not { } rear)
            {
                return;
            }

            // Sides show half-breadths, upper and lower edges heights.
            var (a, b) = direction.Y == 0 ? (front, rear) : (from.Y + (direction.Y * front), from.Y + (direction.Y * rear));
            var bevel = Math.Atan((front - rear) / former.Thickness);
            rows.Add([name, text.Fine(a), text.Fine(b), MeasureText.Angle(bevel)]);
            sketch.Figure($"former.{former.Name}.bevel.{key}", $"Former {former.Name}, bevel {name} (narrower at the rear: positive)", bevel, FigureQuantity.Angle);
        }
    }

    private static void AddDowelTexts(RiggedAirframe airframe, FormerDescription former, PartSketch sketch)
    {
        if (DowelAxis.Through(former, airframe) is not { } axis)
        {
            return;
        }

        var text = airframe.Text;
        var (front, rear) = (axis.HeightAt(former.Station), axis.HeightAt(former.Station + former.Thickness));
        sketch.Table(
            $"Dowel axes, heights above the datum line ({text.UnitName})",
            ["face", "station", "height"],
            [
                ["front", text.Column(former.Station), text.Fine(front)],
                ["rear", text.Column(former.Station + former.Thickness), text.Fine(rear)],
            ]);
        sketch.Note($"Drill {MeasureText.Angle(axis.Obliquity)} off square, {(axis.Rise >= 0 ? "rising towards the nose" : "falling towards the nose")}. Holes: {DowelTexts.Fit(axis, text)}.");
        sketch.Figure($"former.{former.Name}.dowel.front", $"Former {former.Name}, height of the dowel axes on the front face", front, FigureQuantity.Length);
        sketch.Figure($"former.{former.Name}.dowel.rear", $"Former {former.Name}, height of the dowel axes on the rear face", rear, FigureQuantity.Length);
    }

    private static void AddFigures(FormerDescription former, FormerBlank blank, PartSketch sketch)
    {
        var bounds = blank.Wood.Bounds;
        sketch.Figure($"former.{former.Name}.width", $"Former {former.Name}, width as cut", bounds.Width, FigureQuantity.Length);
        sketch.Figure($"former.{former.Name}.height", $"Former {former.Name}, height as cut", bounds.Height, FigureQuantity.Length);
        sketch.Figure($"former.{former.Name}.area", $"Former {former.Name}, area of wood", blank.Wood.Area, FigureQuantity.Area);
    }
}
