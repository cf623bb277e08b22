using System.Collections.Immutable;
using PlanForge.Parts.Wording;

namespace PlanForge.Parts.Saddles;

/// <summary>The bevel table beside a saddle template, its notes, and the figures of the report.</summary>
internal static class SaddleTable
{
    private const int RowCount = 9;

    /// <summary>Adds table, notes and figures of one side.</summary>
    public static void Add(RiggedAirframe airframe, SaddleDevelopment flat, string hand, PartSketch sketch)
    {
        var text = airframe.Text;
        var line = flat.Line;
        var rows = new List<ImmutableArray<string>>();
        var key = $"saddle.{hand}";
        var points = airframe.Piece("the points of the bevel table", () => airframe.SaddleLine!.Spread(RowCount)).Value;
        for (var i = 0; i < RowCount; i++)
        {
            var point = points[i];
            rows.Add([
                text.Column(point.Outer.X - line.From),
                text.Column(point.Outer.X),
                text.Fine(point.Outer.Z),
                text.Fine(point.Inner.Z),
                MeasureText.Angle(point.Bevel)]);
            sketch.Figure($"{key}.bevel.{i}", $"Saddle {hand}, bevel at station {text.Coarse(point.Outer.X)}", point.Bevel, FigureQuantity.Angle);
        }

        sketch.Table(
            $"Saddle line, heights above the datum line ({text.UnitName})",
            ["from front", "station", "outside", "inside", "bevel"],
            rows);
        AddNotes(airframe, flat, sketch);
        AddFigures(flat, hand, key, sketch);
    }

    private static void AddNotes(RiggedAirframe airframe, SaddleDevelopment flat, PartSketch sketch)
    {
        var text = airframe.Text;
        var saddle = airframe.Description.Saddle;
        sketch.Note("Bevel: how far the seat falls towards the inside, from square to the side. Dashed: the line on the inside.");
        if (saddle.Sanding > 0)
        {
            sketch.Note($"Saw to the outline; sand to the line {text.CoarseWithUnit(saddle.Sanding)} inside it.");
        }

        if (saddle.SeatTape > 0)
        {
            sketch.Note($"Room for seat tape {text.CoarseWithUnit(saddle.SeatTape)} thick is included.");
        }

        const double Visible = 0.01;
        sketch.Note(flat.LeftoverError < Visible
            ? "The side unrolls exactly (to 0.01 mm over the template)."
            : $"The side is curved both ways: flat paper misses its length by up to {text.FineWithUnit(flat.LeftoverError)} along the other edge; trust the saddle line.");
    }

    private static void AddFigures(SaddleDevelopment flat, string hand, string key, PartSketch sketch)
    {
        var line = flat.Line;
        void Length(string name, string label, double value) =>
            sketch.Figure($"{key}.{name}", $"Saddle {hand}, {label}", value, FigureQuantity.Length);
        Length("from", "station of its front end", line.From);
        Length("to", "station of its rear end", line.To);
        Length("height.front", "height of its front end", line.Points[0].Outer.Z);
        Length("height.rear", "height of its rear end", line.Points[^1].Outer.Z);
        Length("edge_height", "height of the template's straight edge", flat.EdgeHeight);
        Length("leftover", "length lost by laying it flat", flat.LeftoverError);
    }
}
