using PlanForge.Parts.Wording;

namespace PlanForge.Parts.Bench.Setup;

/// <summary>What is marked, measured and said on a cradle.</summary>
internal static class CradleTexts
{
    private const double Overhang = 5;

    // The level lines carry their names outside the wood on the starboard side.
    private const double LabelledOverhang = 24;

    // A bevel of less, radians, is sanded by itself: a quarter of a degree.
    private const double LeastBevel = Math.PI / 180 / 4;

    /// <summary>Adds marks, sizes, notes and figures.</summary>
    public static void Add(
        RiggedAirframe airframe, string name, double station, CradleOutline outline, double slotAt, double foot, PartSketch sketch)
    {
        var text = airframe.Text;
        var thickness = airframe.Description.Bench.Cradles.Thickness;
        AddMarks(name, station, outline, slotAt, text, sketch);
        AddSizes(outline, slotAt, foot, sketch);
        sketch.Note("Seen from the tail: port on the left. The lower edge stands on the board, the datum line is parallel to it.");
        sketch.Note($"Front face at station {text.CoarseWithUnit(station)}. No padding in the opening: it would lift the body.");
        AddBevel(outline, thickness, sketch);
        var key = $"cradles.{name}";
        var title = $"Cradle, {name}";
        sketch.Figure($"{key}.station", $"{title}: station of its front face", station, FigureQuantity.Length);
        sketch.Figure($"{key}.datum", $"{title}: datum line above the board", -outline.Board, FigureQuantity.Length);
        sketch.Figure($"{key}.opening", $"{title}: width of the opening between the arms", 2 * outline.HalfOpening, FigureQuantity.Length);
        sketch.Figure($"{key}.seat", $"{title}: lowest point of the opening above the board", outline.Bottom - outline.Board, FigureQuantity.Length);
        sketch.Figure($"{key}.bevel_bottom", $"{title}: bevel of the bottom", outline.BottomBevel(thickness), FigureQuantity.Angle);
        sketch.Figure($"{key}.bevel_side", $"{title}: bevel of the sides", outline.SideBevel(thickness), FigureQuantity.Angle);
    }

    private static void AddMarks(string name, double station, CradleOutline outline, double slotAt, MeasureText text, PartSketch sketch)
    {
        var (width, board) = (outline.HalfWidth, outline.Board);
        sketch.Line(LineUse.Centre, new(0, board - Overhang), new(0, Math.Max(outline.Top, 0) + Overhang));
        sketch.Line(LineUse.Datum, new(-width - Overhang, 0), new(width + LabelledOverhang, 0));
        sketch.Label("datum line", new(width + 2, 1), Anchor.Start);
        sketch.Line(LineUse.Station, new(-width - Overhang, board), new(-width, board));
        sketch.Line(LineUse.Station, new(width, board), new(width + LabelledOverhang, board));
        sketch.Label("board", new(width + 8, board + 1), Anchor.Start);
        var middle = (board + outline.Bottom) / 2;

        // Either side of the centre line: a narrow cradle has no room for both on one.
        sketch.Engrave(name, new(-slotAt / 2, middle));
        sketch.Engrave(text.Coarse(station), new(slotAt / 2, middle), 2.5);
        sketch.Label("port", new(-width + 1.5, outline.Top - 4), Anchor.Start);
        sketch.Label("starboard", new(width - 1.5, outline.Top - 4), Anchor.End);
    }

    private static void AddSizes(CradleOutline outline, double slotAt, double foot, PartSketch sketch)
    {
        var (half, width, board) = (outline.HalfOpening, outline.HalfWidth, outline.Board);
        sketch.Across(new(-width, board), new(width, board), -1);
        sketch.Across(new(-slotAt, board), new(slotAt, board), -1);
        sketch.Across(new(-half, outline.Top), new(half, outline.Top), 1);
        sketch.Up(new(-width, board), new(-width, 0), 1);
        sketch.Up(new(-width, board), new(0, outline.Bottom), 1);
        sketch.Up(new(slotAt, board), new(slotAt, board + (foot / 2)), -1);
    }

    private static void AddBevel(CradleOutline outline, double thickness, PartSketch sketch)
    {
        double bottom = outline.BottomBevel(thickness), side = outline.SideBevel(thickness);
        if (Math.Abs(bottom) < LeastBevel && Math.Abs(side) < LeastBevel)
        {
            return;
        }

        sketch.Note(
            $"Cut square, to the larger outline: the body touches below at the {Face(bottom)} face and leaves the wood there by {MeasureText.Angle(Math.Abs(bottom))}, "
                + $"at the sides at the {Face(side)} face, by {MeasureText.Angle(Math.Abs(side))}. Do not pack the gap.");
    }

    private static string Face(double bevel) => bevel >= 0 ? "rear" : "front";
}
