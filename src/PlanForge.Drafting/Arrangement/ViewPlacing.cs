using System.Collections.Immutable;
using PlanForge.Drafting.Conventions;
using PlanForge.Drafting.Model;
using PlanForge.Geometry;

namespace PlanForge.Drafting.Arrangement;

/// <summary>Places three views in line with each other, and a table in the corner they leave free, beside or below them.</summary>
internal sealed class ViewPlacing
{
    private const double Gap = 8;
    private const int MostColumns = 4;

    // Notes in narrower columns are ragged.
    private const double LeastNoteWidth = 60;

    private readonly Sketch _sketch = new();
    private readonly Bounds2 _side;
    private readonly Bounds2 _plan;
    private readonly Bounds2 _front;
    private readonly bool _isFirst;

    public ViewPlacing(Sketch side, Sketch plan, Sketch front, ProjectionAngle projection)
    {
        _isFirst = projection == ProjectionAngle.First;

        // The plan keeps the side view's stations, the front view its heights: each moves along one axis only.
        double low = Math.Min(side.Bounds.MinY, front.Bounds.MinY), high = Math.Max(side.Bounds.MaxY, front.Bounds.MaxY);
        var planMove = new Vector2(0, _isFirst ? low - Gap - plan.Bounds.MaxY : high + Gap - plan.Bounds.MinY);
        var frontMove = new Vector2(_isFirst ? side.Bounds.MaxX + Gap - front.Bounds.MinX : side.Bounds.MinX - Gap - front.Bounds.MaxX, 0);
        _sketch.Add(side, default);
        _sketch.Add(plan, planMove);
        _sketch.Add(front, frontMove);
        (_side, _plan, _front) = (side.Bounds, plan.Bounds.MovedBy(planMove), front.Bounds.MovedBy(frontMove));
    }

    private Bounds2 Views => _sketch.Bounds;

    /// <summary>Views, table and notes in the middle of a space; null where they do not fit.</summary>
    public PlacedArrangement? With(FigureTable figures, NoteLines notes, Bounds2 space)
    {
        if (Views.Width > space.Width || Views.Height > space.Height)
        {
            return null;
        }

        for (var columns = 1; columns <= MostColumns; columns++)
        {
            var table = figures.Draw(columns);
            foreach (var corner in Corners(table.Bounds))
            {
                var tablePlace = At(table, corner);
                if (IsOnView(tablePlace))
                {
                    continue;
                }

                foreach (var (noteCorner, width) in NoteCorners(tablePlace))
                {
                    var text = notes.Draw(width);
                    var notePlace = At(text, noteCorner);
                    var all = Views.Joined(tablePlace).Joined(notePlace);
                    if (all.Width <= space.Width && all.Height <= space.Height && !notePlace.Touches(tablePlace) && !IsOnView(notePlace))
                    {
                        return Placed(space.Centre - all.Centre, (table, corner), (text, noteCorner));
                    }
                }
            }
        }

        return null;
    }

    private bool IsOnView(Bounds2 place) => place.Touches(_side) || place.Touches(_plan) || place.Touches(_front);

    // Upper left corners the table may have: across from the plan under (over) the front view, beside all, below all.
    private IEnumerable<Point2> Corners(Bounds2 table)
    {
        if (_isFirst)
        {
            var left = Math.Max(_plan.MaxX + Gap, Views.MaxX - table.Width);
            yield return new(left, (left > _side.MaxX + Gap ? _front.MinY : Math.Min(_side.MinY, _front.MinY)) - Gap);
        }
        else
        {
            var left = Math.Min(_plan.MinX - Gap - table.Width, Views.MinX);
            var top = (left + table.Width < _side.MinX - Gap ? _front.MaxY : Math.Max(_side.MaxY, _front.MaxY)) + Gap + table.Height;
            yield return new(left, Math.Max(_plan.MaxY, top));
        }

        yield return new(Views.MaxX + Gap, Views.MaxY);
        yield return new(Views.MinX, Views.MinY - Gap);
    }

    // Upper left corners and widths of the notes: under the table, beside it under the plan, under all.
    private IEnumerable<(Point2 Corner, double Width)> NoteCorners(Bounds2 table)
    {
        const double UnderTable = 3;
        yield return (new(table.MinX, table.MinY - UnderTable), Math.Max(LeastNoteWidth, table.Width));
        if (_isFirst && table.MinX - Gap - Views.MinX >= LeastNoteWidth)
        {
            yield return (new(Views.MinX, _plan.MinY - Gap), table.MinX - Gap - Views.MinX);
        }

        var all = Views.Joined(table);
        yield return (new(all.MinX, all.MinY - UnderTable), all.Width);
    }

    private PlacedArrangement Placed(Vector2 move, params ReadOnlySpan<(Sketch Sketch, Point2 Corner)> blocks)
    {
        var whole = new Sketch();
        whole.Add(_sketch, move);
        foreach (var (block, corner) in blocks)
        {
            whole.Add(block, corner - UpperLeft(block) + move);
        }

        return new(whole, _side.MovedBy(move), _plan.MovedBy(move), _front.MovedBy(move));
    }

    private static Bounds2 At(Sketch block, Point2 corner) => block.Bounds.MovedBy(corner - UpperLeft(block));

    private static Point2 UpperLeft(Sketch block) => new(block.Bounds.MinX, block.Bounds.MaxY);
}

/// <summary>The placed arrangement.</summary>
/// <param name="Sketch">Everything.</param>
/// <param name="Side">The room of the side view.</param>
/// <param name="Plan">The room of the plan view.</param>
/// <param name="Front">The room of the front view.</param>
internal sealed record PlacedArrangement(Sketch Sketch, Bounds2 Side, Bounds2 Plan, Bounds2 Front)
{
    /// <summary>The views as a sheet lists them.</summary>
    public ImmutableArray<ScaledView> ScaledViews(double scale) =>
        [new("Side view", Side, scale), new("Plan view", Plan, scale), new("Front view", Front, scale)];
}
