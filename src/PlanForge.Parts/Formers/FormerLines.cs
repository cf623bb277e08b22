using PlanForge.Airframe;
using PlanForge.Geometry;
using PlanForge.Geometry.Regions;
using PlanForge.Parts.Dowels;
using PlanForge.Parts.Wording;

namespace PlanForge.Parts.Formers;

/// <summary>The lines of a former: what is cut, the faces, trim lines, the bevelled edge, centre and datum.</summary>
internal static class FormerLines
{
    // Two faces nearer than this (mm) are one line on paper; the table has the numbers.
    private const double Visible = 0.25;

    // Centre and datum lines stand out of the wood by this much, mm.
    private const double Overhang = 5;

    // The level line carries its name outside the wood on the starboard side.
    private const double LabelledOverhang = 24;

    /// <summary>Adds all lines.</summary>
    public static void Add(
        RiggedAirframe airframe, FormerDescription former, FormerOutline outline, FormerBlank blank, PartSketch sketch)
    {
        foreach (var contour in blank.Wood.Contours)
        {
            sketch.Line(LineUse.Cut, contour);
        }

        foreach (var trim in blank.TrimLines)
        {
            sketch.Line(LineUse.Trim, trim);
        }

        // Seen from the tail: the rear face is in front of the eye, the front face behind the wood.
        AddFace(outline.Rear, outline.Net, LineUse.Score, sketch);
        AddFace(outline.Front, outline.Net, LineUse.Hidden, sketch);
        AddEdgeBevel(former, outline, sketch);
        var bounds = blank.Wood.Bounds;
        sketch.Line(LineUse.Centre, new(0, bounds.MinY - Overhang), new(0, bounds.MaxY + Overhang));
        AddDatum(airframe, bounds, sketch);
        AddDowels(airframe, former, sketch);
    }

    /// <summary>Height of the level line drawn on a former: the datum line, or the nearest whole centimetre or quarter inch on the wood.</summary>
    public static double LevelOf(Bounds2 bounds, DisplayUnit unit)
    {
        const double Inset = 5;
        var grid = unit == DisplayUnit.Inch ? MeasureText.MillimetresPerInch / 4 : 10;
        return bounds.MinY < -Inset && bounds.MaxY > Inset ? 0
            : bounds.MinY >= -Inset ? Math.Ceiling((bounds.MinY + Inset) / grid) * grid
            : Math.Floor((bounds.MaxY - Inset) / grid) * grid;
    }

    private static void AddFace(Region2 face, Region2 net, LineUse use, PartSketch sketch)
    {
        foreach (var part in face.Parts)
        {
            if (part.Outer.Flattened(0.05).Any(point => net.DistanceToBoundary(point) > Visible))
            {
                sketch.Line(use, part.Outer);
            }
        }
    }

    // The bevel takes the edge down (or up) by thickness × tan(angle) on its face: that line, on the face it is on.
    private static void AddEdgeBevel(FormerDescription former, FormerOutline outline, PartSketch sketch)
    {
        if (former.Bevel is not { } bevel)
        {
            return;
        }

        var up = bevel.Edge == FormerEdge.Upper ? 1 : -1;
        var drop = former.Thickness * Math.Tan(bevel.Angle);
        foreach (var part in outline.Net.Parts)
        {
            if (OutlineEdge.Facing(part.Outer, new(0, up)) is { } edge)
            {
                var use = bevel.Face == FormerFace.Rear ? LineUse.Score : LineUse.Hidden;
                sketch.Line(use, edge.Placed(Placement2.MovedBy(new(0, -up * drop))));
            }
        }
    }

    private static void AddDatum(RiggedAirframe airframe, Bounds2 bounds, PartSketch sketch)
    {
        var level = LevelOf(bounds, airframe.Description.DisplayUnit);
        sketch.Line(LineUse.Datum, new(bounds.MinX - Overhang, level), new(bounds.MaxX + LabelledOverhang, level));
        var name = level == 0 ? "datum line"
            : level > 0 ? $"{airframe.Text.CoarseWithUnit(level)} above datum" : $"{airframe.Text.CoarseWithUnit(-level)} below datum";
        sketch.Label(name, new(bounds.MaxX + 2, level + 1), Anchor.Start);
    }

    // Both faces' holes as the axis makes them: the rear face's full, the front face's dashed; crosses to prick through.
    private static void AddDowels(RiggedAirframe airframe, FormerDescription former, PartSketch sketch)
    {
        if (DowelAxis.Through(former, airframe) is not { } axis)
        {
            return;
        }

        EllipticHole front = axis.HoleAt(former.Station), rear = axis.HoleAt(former.Station + former.Thickness);
        bool[] sides = axis.Across > 0 ? [false, true] : [false];
        foreach (var isPort in sides)
        {
            sketch.Line(LineUse.Hidden, front.Contour(isPort));
            sketch.Line(LineUse.Score, rear.Contour(isPort));
            var centre = front.Centre.Towards(rear.Centre, 0.5);
            sketch.Cross(LineUse.Centre, isPort ? new(-centre.X, centre.Y) : centre, (2 * front.Across) + 6);
        }
    }
}
