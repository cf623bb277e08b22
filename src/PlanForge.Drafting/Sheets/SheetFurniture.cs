using PlanForge.Drafting.Model;
using PlanForge.Geometry;

namespace PlanForge.Drafting.Sheets;

/// <summary>
/// What every sheet of a set carries besides its drawings: frame, title block, revision table, check bars and notes. What several sheets
/// have alike is drawn once.
/// </summary>
/// <param name="options">What the sheets say and are drawn on.</param>
/// <param name="notes">The lines above the title strip.</param>
internal sealed class SheetFurniture(PlanOptions options, FootNotes notes)
{
    private readonly TitleBlock _title = new(options);
    private readonly Dictionary<SheetLayout, (Sketch Frame, Sketch Bars)> _drawn = [];
    private readonly Dictionary<(Bounds2 Room, LinesUsed Used), Sketch> _notes = [];

    /// <summary>Draws it all.</summary>
    /// <param name="sketch">The sheet.</param>
    /// <param name="layout">Where everything stands.</param>
    /// <param name="title">What the title block says of this sheet.</param>
    /// <param name="used">What is on it that the notes must explain.</param>
    public void Draw(Sketch sketch, SheetLayout layout, SheetTitle title, LinesUsed used)
    {
        if (!_drawn.TryGetValue(layout, out var drawn))
        {
            _drawn[layout] = drawn = (Frame(layout), Bars(layout));
        }

        sketch.Add(drawn.Frame);
        _title.Draw(sketch, layout.TitleBlock, title);
        if (!layout.Revisions.IsEmpty)
        {
            RevisionTable.Draw(sketch, new(layout.Revisions.MinX, layout.Revisions.MinY), options.Issue.Revisions);
        }

        sketch.Add(drawn.Bars);
        if (!_notes.TryGetValue((layout.FootNotes, used), out var lines))
        {
            _notes[(layout.FootNotes, used)] = lines = new();
            notes.Draw(lines, layout.FootNotes, used);
        }

        sketch.Add(lines);
    }

    private static Sketch Frame(SheetLayout layout)
    {
        var sketch = new Sketch();
        SheetFrame.Draw(sketch, layout);
        return sketch;
    }

    private static Sketch Bars(SheetLayout layout)
    {
        var sketch = new Sketch();
        CheckBars.DrawPanel(sketch, layout.CheckPanel);
        CheckBars.DrawColumn(sketch, layout.CheckColumn);
        return sketch;
    }
}
