using PlanForge.Airframe;
using PlanForge.Geometry;
using PlanForge.Parts.Dowels;
using PlanForge.Parts.Wording;

namespace PlanForge.Parts.Bench.Setup;

/// <summary>Two plates that make a drilling guide: held apart, their holes lie on the dowels' axes behind the cross-former.</summary>
internal static class DowelGuides
{
    // Wood around the holes, in dowel diameters.
    private const double Margin = 2.5;

    /// <summary>Both plates for one cross-former: the near one lies against its rear face.</summary>
    public static IEnumerable<Part> Of(RiggedAirframe airframe, FormerDescription former, DowelAxis axis, string kind)
    {
        var thickness = airframe.Description.Bench.Cradles.Thickness;
        var face = former.Station + former.Thickness;
        var near = face + (thickness / 2);
        var far = near + thickness + JigSizes.Of(airframe.Description.DisplayUnit).PlatesApart;

        // Both plates have one outline, so that their edges flush put the holes where they belong.
        var (low, high) = (Math.Min(axis.HeightAt(near), axis.HeightAt(far)), Math.Max(axis.HeightAt(near), axis.HeightAt(far)));
        var margin = Margin * axis.Dowels.Diameter;
        var half = Math.Max(axis.Across + margin, 20);
        var outline = new Bounds2(-half, low - margin, half, high + margin);
        yield return Plate(airframe, former, axis, kind, "near", near, outline);
        yield return Plate(airframe, former, axis, kind, "far", far, outline);
    }

    // Seen from the tail, x starboard, y the height above the datum line, like the former.
    private static Part Plate(
        RiggedAirframe airframe, FormerDescription former, DowelAxis axis, string kind, string name, double station, Bounds2 outline)
    {
        var (text, cradles) = (airframe.Text, airframe.Description.Bench.Cradles);
        var sketch = new PartSketch();
        var hole = axis.HoleAt(station);
        var face = axis.HeightAt(former.Station + former.Thickness);
        sketch.Line(LineUse.Cut, Path2.Rectangle(outline));
        sketch.Line(LineUse.Centre, new(0, outline.MinY - 4), new(0, outline.MaxY + 4));
        sketch.Line(LineUse.Station, new(outline.MinX - 4, face), new(outline.MaxX + 4, face));
        bool[] sides = axis.Across > 0 ? [false, true] : [false];
        foreach (var isPort in sides)
        {
            sketch.Line(LineUse.Cut, hole.Contour(isPort));
        }

        sketch.Engrave(name, new(axis.Across > 0 ? 0 : outline.MinX + 8, outline.MaxY - 6));
        sketch.Up(new(outline.MinX, outline.MinY), new(-axis.Across, hole.Centre.Y), 1);
        if (axis.Across > 0)
        {
            sketch.Across(new(-axis.Across, hole.Centre.Y), new(axis.Across, hole.Centre.Y), -1);
        }

        sketch.Hole(hole.Centre, hole.Across, new(outline.MaxX + 8, outline.MaxY), DowelTexts.Hole(axis, text));
        var drop = hole.Centre.Y - face;
        sketch.Note(
            $"Glue both plates to a block of {text.CoarseWithUnit(JigSizes.Of(text.Unit).PlatesApart)}, edges flush; clamp the near one to the rear face of {former.Name}, centre lines together, the level line through the middles of its holes.");
        sketch.Note(
            $"The axis rises {MeasureText.Angle(axis.Rise)} towards the nose: here the hole lies {text.FineWithUnit(Math.Abs(drop))} {(drop > 0 ? "above" : "below")} the former's (level line).");
        sketch.Figure($"drill_guide.{name}.drop", $"Drilling guide, {name} plate: hole above that of the former", drop, FigureQuantity.Length);
        return sketch.AsCut($"drill-guide-{former.Name}-{name}", kind, $"Drilling guide for {former.Name}, {name} plate", cradles.Material, cradles.Thickness, 0);
    }
}
