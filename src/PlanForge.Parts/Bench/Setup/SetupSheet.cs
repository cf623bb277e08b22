using PlanForge.Airframe.Diagnostics;
using PlanForge.Parts.Shapes;
using PlanForge.Parts.Wording;

namespace PlanForge.Parts.Bench.Setup;

/// <summary>The sheet that lies beside the building board: what stands where, what to measure, and room for the readings.</summary>
public sealed class SetupSheet : IPartKind
{
    /// <inheritdoc/>
    public string Title => "Bench set-up";

    /// <inheritdoc/>
    public IEnumerable<Part> Make(RiggedAirframe airframe, ICollection<Diagnostic> findings)
    {
        var targets = SetupTargets.Of(airframe);
        var views = new SetupViews(airframe, targets);
        foreach (var make in new Func<Part>[]
        {
            () => View("bench-from-tail", "Set-up, seen from the tail", views.AddFromTail),
            () => View("bench-from-port", "Set-up, seen from the left (port)", views.AddFromPort),
            () => View("bench-from-above", "Set-up, seen from above", views.AddFromAbove),
            () => Readings(airframe, targets),
            () => Places(airframe, targets),
            () => View("bench-steps", "Steps at the board", sketch => AddSteps(airframe.WingSide, airframe.Text, sketch)),
            () => Angles(airframe, targets),
        })
        {
            if (ShapeGuard.Make(airframe, "the set-up", airframe.Description.Bench.At, findings, make) is { } part)
            {
                yield return part;
            }
        }
    }

    private Part View(string id, string title, Action<PartSketch> draw)
    {
        var sketch = new PartSketch();
        draw(sketch);
        return sketch.AsView(id, Title, title);
    }

    private Part Readings(RiggedAirframe airframe, SetupTargets targets)
    {
        var sketch = new PartSketch();
        var all = targets.All();
        SetupTables.AddTargets(all, airframe.Text, sketch);
        foreach (var target in all)
        {
            sketch.Figure(target.Key, $"Set-up, {target.Name}", target.Value, FigureQuantity.Length);
        }

        return sketch.AsView("bench-readings", Title, "Readings on the board");
    }

    private Part Places(RiggedAirframe airframe, SetupTargets targets)
    {
        var sketch = new PartSketch();
        SetupTables.AddPlaces(airframe, targets, sketch);
        if (targets.Tail is { } tail)
        {
            sketch.Figure("setup.tail.over", "Set-up, T1 to T3 along the datum line", tail.Over, FigureQuantity.Length);
        }

        return sketch.AsView("bench-places", Title, "Places on the board");
    }

    // Of a kind of its own: it goes with whatever comes next and leaves the set-up on one sheet.
    private static Part Angles(RiggedAirframe airframe, SetupTargets targets)
    {
        var sketch = new PartSketch();
        SetupTables.AddAngles(airframe, targets, sketch);
        return sketch.AsView("rigging-angles", "Rigging", "Rigging");
    }

    private static void AddSteps(WingSide side, MeasureText text, PartSketch sketch)
    {
        const double StepLength = 1;
        sketch.Note("Left and right as seen from the tail. Views are not to scale; heights are above the board, cradles at stations.");
        sketch.Note($"1. Level the board: a bubble level along, across and on both diagonals; a straightedge shows no light over {text.FineWithUnit(StepLength / 4)}.");
        sketch.Note("2. Draw the centre line and the cradles' stations on the board, stand the cradles on them, centre lines together, and pin the feet.");
        sketch.Note("3. Lay the body in, mark its datum line on both sides, and measure it above the board at both cradles, left and right. Do not go on before it agrees.");
        sketch.Note(side == WingSide.Lower
            ? "4. Put the wing on its dowels and saddles without force, its centre mark on the body's. Set the pins at the edges: P1 and P2 leading, P3 and P4 trailing, in the middle of its thickness."
            : "4. Hold the wing up to its saddles with the bolts, finger-tight, its centre mark on the body's. Set the pins at the edges: P1 and P2 leading, P3 and P4 trailing, in the middle of its thickness.");
        sketch.Note("5. Cords first: turn the wing until both are alike. Then heights, then rises; write them down before touching anything.");
        sketch.Note(side == WingSide.Lower
            ? "6. A corner that reads high: its saddle is high there, sand that place with the sanding form. A corner that reads low: sand the other three."
            : "6. A corner that reads low: its saddle is low there, sand that place with the sanding form. A corner that reads high: sand the other three.");
        sketch.Note("7. Measure again. Stop when all is within its tolerance: the last strokes spoil it.");
        sketch.Note("8. Tailplane: the same with T1 to T4, against the wing that fits by now. Level rests and a bubble level check every angle.");
    }
}
