using PlanForge.Airframe.Diagnostics;
using PlanForge.Geometry;
using PlanForge.Geometry.Regions;

namespace PlanForge.Parts.Bench.Setup;

/// <summary>Two cradles that hold the body with its datum line parallel to the board, and the feet they stand on.</summary>
public sealed class CradleParts : IPartKind
{
    // Common practice, no source: less wood than this under the body breaks.
    private const double LeastWood = 15;

    /// <inheritdoc/>
    public string Title => "Cradles";

    /// <inheritdoc/>
    public IEnumerable<Part> Make(RiggedAirframe airframe, ICollection<Diagnostic> findings)
    {
        var cradles = airframe.Description.Bench.Cradles;
        var foot = JigSizes.Of(airframe.Description.DisplayUnit).FootHeight;
        var made = new List<Part>();
        foreach (var (name, station) in new (string, Func<RiggedAirframe, double>)[] { ("front", CradleStations.FrontOf), ("rear", CradleStations.RearOf) })
        {
            // What it warns of goes into no part.
            airframe.Inputs.InputsOf(() => CheckPlace(name, station(airframe), airframe, findings));
            if (ShapeGuard.Make(airframe, $"the {name} cradle", cradles.At, findings, () => Cradle(airframe, name, station(airframe), foot, findings)) is { } cradle)
            {
                made.Add(cradle);
            }
        }

        if (made.Count > 0)
        {
            var isSure = airframe.Inputs.Record(() => IsSureOfWood(airframe));
            if (ShapeGuard.Make(airframe, "the feet of the cradles", cradles.At, findings, () =>
            {
                isSure.Inputs.Use();
                return Foot(airframe, foot, 2 * made.Count);
            }) is { } feet)
            {
                // Their number follows from the cradles that could be made.
                made.Add(isSure.Unnoted ? feet : made.Aggregate(feet, (part, cradle) => part with { Inputs = part.Inputs.With(cradle.Inputs) }));
            }
        }

        return made;
    }

    // The body stands the clearance above the board at its lowest place, give or take what is between two probes: more anywhere else.
    private static bool IsSureOfWood(RiggedAirframe airframe) => airframe.Description.Bench.Clearance > LeastWood + 1;

    private static void CheckPlace(string name, double station, RiggedAirframe airframe, ICollection<Diagnostic> findings)
    {
        var (cradles, text) = (airframe.Description.Bench.Cradles, airframe.Text);
        var end = station + cradles.Thickness;
        var place = $"the {name} cradle at station {text.CoarseWithUnit(station)}";
        if (CradleStations.LowWing(airframe) is { } wing && station < wing.To && end > wing.From)
        {
            findings.Add(Diagnostic.Warning(
                cradles.At,
                $"{place} stands under the wing, which takes stations {text.CoarseWithUnit(wing.From)} to {text.CoarseWithUnit(wing.To)}: it cannot hold the body with the wing on"));
        }

        foreach (var former in airframe.Description.Formers)
        {
            if (BoardHeight.HangsTo(former, airframe) is not null && station < former.Station + former.Thickness && end > former.Station)
            {
                findings.Add(Diagnostic.Warning(
                    cradles.At, $"{place} stands under former {former.Name}, which is left long below: move one of them"));
            }
        }
    }

    private Part? Cradle(RiggedAirframe airframe, string name, double station, double foot, ICollection<Diagnostic> findings)
    {
        var board = -BoardHeight.OfDatum(airframe);
        var (cradles, text) = (airframe.Description.Bench.Cradles, airframe.Text);
        if (CradleOutline.Of(airframe, station, board) is not { } outline || outline.Bottom - board < LeastWood)
        {
            findings.Add(Diagnostic.Warning(
                airframe.Description.Bench.At,
                $"no {name} cradle is made: at station {text.CoarseWithUnit(station)} less than {text.CoarseWithUnit(LeastWood)} of wood would remain under the body; raise bench: clearance"));
            return null;
        }

        var sketch = new PartSketch();
        var slotAt = (outline.HalfOpening + outline.HalfWidth) / 2;
        foreach (var contour in WithSlots(outline, slotAt, cradles.Thickness, foot).Contours)
        {
            sketch.Line(LineUse.Cut, contour);
        }

        CradleTexts.Add(airframe, name, station, outline, slotAt, foot, sketch);
        return sketch.AsCut($"cradle-{name}", Title, name == "front" ? "Front cradle" : "Rear cradle", cradles.Material, cradles.Thickness, Math.PI / 2) with { Station = station };
    }

    private static Region2 WithSlots(CradleOutline outline, double slotAt, double width, double foot)
    {
        Region2 Slot(double middle) => Region2.FromContours(
            FillRule.NonZero,
            [Path2.Rectangle(new(middle - (width / 2), outline.Board - 1, middle + (width / 2), outline.Board + (foot / 2)))]);
        return outline.Wood.Difference(Slot(slotAt)).Difference(Slot(-slotAt));
    }

    // Standing on the board: x fore and aft from the cradle, y up from the board; the slot opens upward.
    private Part Foot(RiggedAirframe airframe, double height, int quantity)
    {
        var cradles = airframe.Description.Bench.Cradles;
        double half = Math.Max(cradles.Foot, 4 * cradles.Thickness) / 2, slot = cradles.Thickness / 2;
        var sketch = new PartSketch();
        sketch.Line(LineUse.Cut, Path2.Polygon(
            new Point2(-half, 0), new(half, 0), new(half, height), new(slot, height), new(slot, height / 2), new(-slot, height / 2), new(-slot, height), new(-half, height)));
        sketch.Across(new(-half, 0), new(half, 0), -1);
        sketch.Across(new(-slot, height), new(slot, height), 1);
        sketch.Up(new(half, 0), new(half, height), -1);
        sketch.Up(new(-half, height / 2), new(-half, height), 1, airframe.Text.Size(height / 2));
        sketch.Note("Two to a cradle, slot over slot, both edges on the board; glue square.");
        sketch.Figure("cradles.foot.length", "Cradles, length of a foot", 2 * half, FigureQuantity.Length);
        return sketch.AsCut("cradle-foot", Title, "Foot of a cradle", cradles.Material, cradles.Thickness, 0, quantity);
    }
}
