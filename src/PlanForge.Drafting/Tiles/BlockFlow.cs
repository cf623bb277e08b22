using System.Collections.Immutable;
using PlanForge.Drafting.Conventions;
using PlanForge.Drafting.Model;
using PlanForge.Drafting.PartDrawings;
using PlanForge.Geometry;

namespace PlanForge.Drafting.Tiles;

/// <summary>Sets blocks one below the other and goes on to another page when one is full.</summary>
internal sealed class BlockFlow
{
    private static readonly ImmutableArray<string> Numerals = ["i", "ii", "iii", "iv", "v", "vi", "vii", "viii", "ix", "x"];

    private readonly TileLayout _layout;
    private readonly Bounds2 _space;
    private readonly List<(Sketch Sketch, ImmutableArray<ScaledView>.Builder Views)> _pages = [];
    private double _top;

    public BlockFlow(TileLayout layout)
    {
        const double Inset = 2;
        _layout = layout;
        _space = new(
            layout.Printable.MinX + TileLayout.ColumnWidth + Inset,
            layout.Strip.MaxY + Inset,
            layout.Printable.MaxX - Inset,
            layout.Printable.MaxY - Inset);
        Turn();
    }

    /// <summary>Width of the space, mm.</summary>
    public double Width => _space.Width;

    /// <summary>Height left on the page, mm.</summary>
    public double Room => _top - _space.MinY;

    /// <summary>Sets a block at the left, under the one before.</summary>
    /// <param name="block">The block, anywhere.</param>
    /// <param name="gap">Distance to the next block, mm.</param>
    /// <param name="views">Views in it that are not at true size.</param>
    public void Add(Sketch block, double gap, ImmutableArray<ScaledView> views = default)
    {
        if (_top - block.Bounds.Height < _space.MinY && _top < _space.MaxY)
        {
            Turn();
        }

        var move = new Vector2(_space.MinX - block.Bounds.MinX, _top - block.Bounds.MaxY);
        var (sketch, shown) = _pages[^1];
        sketch.Add(block, move);
        foreach (var view in views.IsDefault ? [] : views)
        {
            shown.Add(view with { Place = view.Place.MovedBy(move) });
        }

        _top -= block.Bounds.Height + gap;
    }

    /// <summary>The finished pages.</summary>
    public ImmutableArray<Page> Pages(SheetSet set)
    {
        var pages = ImmutableArray.CreateBuilder<Page>(_pages.Count);
        foreach (var (sketch, views) in _pages)
        {
            var numeral = pages.Count < Numerals.Length ? Numerals[pages.Count] : Measures.Measure.Number(pages.Count + 1, 0) + ".";
            DrawStrip(sketch, set, numeral);
            pages.Add(new(
                numeral,
                pages.Count == 0 ? "Read this first" : "Read this first, continued",
                _layout.Paper.Width,
                _layout.Paper.Height,
                new(sketch.Items),
                [],
                [],
                views.ToImmutable())
            {
                FreeLine = _layout.FreeLine,
            });
        }

        return pages.MoveToImmutable();
    }

    private void Turn()
    {
        _pages.Add((new(), ImmutableArray.CreateBuilder<ScaledView>()));
        _top = _space.MaxY;
    }

    private void DrawStrip(Sketch sketch, SheetSet set, string numeral)
    {
        var strip = _layout.Strip;
        PrintedEdges.Draw(sketch, _layout, strip.Width);
        var (text, height) = TextWrap.Fitted($"{numeral}  {set.Title}: read this first", strip.Width - 1, [3.5, LetteringSizes.Least]);
        sketch.Text(Layer.Frame, text, new(strip.MinX + 0.5, strip.MinY + 12), height);
    }
}
