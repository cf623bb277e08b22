using System.Collections.Immutable;
using PlanForge.Airframe;
using PlanForge.Drafting.Conventions;
using PlanForge.Drafting.Lettering;
using PlanForge.Drafting.Measures;
using PlanForge.Drafting.Model;
using PlanForge.Drafting.PartDrawings;
using PlanForge.Geometry;
using PlanForge.Parts;

namespace PlanForge.Drafting.Arrangement;

/// <summary>One view drawn to a scale: its lines, dimensions that show true sizes, and texts. Coordinates are paper mm, true mm times scale.</summary>
internal sealed class ViewSketch
{
    // Room round a view in which a text may look for its place, mm.
    private const double Around = 30;

    private readonly ImmutableArray<PartLine> _lines;

    public ViewSketch(ImmutableArray<PartLine> lines, double scale, DisplayUnit unit)
    {
        (Scale, Unit) = (scale, unit);
        _lines = [.. lines.Select(line => line with { Path = line.Path.Scaled(scale) })];
        foreach (var line in _lines)
        {
            Sketch.Stroke(LineConventions.LayerOf(line.Use), line.Path, LineConventions.StyleOf(line.Use));
            if (line.Use == LineUse.Centre && CentreLineSymbol.For(line.Path, TextHeight).FirstOrDefault() is { } sign)
            {
                Sketch.Text(sign.Layer, sign.Content, sign.At, sign.Height);
            }
        }

        LineBounds = Sketch.Bounds;
    }

    /// <summary>What is drawn.</summary>
    public Sketch Sketch { get; } = new();

    /// <summary>Drawn length over true length.</summary>
    public double Scale { get; }

    /// <summary>The unit lengths are shown in.</summary>
    public DisplayUnit Unit { get; }

    /// <summary>Height of dimensions, mm: inch fractions need more than plain texts.</summary>
    public double Height => LetteringSizes.For(new(Unit)).Body;

    /// <summary>Height of texts without fractions, mm.</summary>
    public static double TextHeight => LetteringSizes.Least;

    /// <summary>Distance of dimension lines from each other, mm: text, its lift and some air.</summary>
    public double RowPitch => (2 * Height) + 1;

    /// <summary>The room the view itself takes without dimensions and texts.</summary>
    public Bounds2 LineBounds { get; }

    /// <summary>A true place on the paper.</summary>
    public Point2 At(double across, double up) => new(across * Scale, up * Scale);

    /// <summary>The highest edge over a place across, or null where there is none.</summary>
    public double? TopAt(double across)
    {
        var ray = Path2.Line(new(across, LineBounds.MinY - 1), new(across, LineBounds.MaxY + 1));
        double? top = null;
        foreach (var line in _lines)
        {
            if (line.Use is LineUse.Edge or LineUse.Hidden)
            {
                foreach (var crossing in ray.IntersectionsWith(line.Path, 1e-6))
                {
                    top = Math.Max(top ?? crossing.Point.Y, crossing.Point.Y);
                }
            }
        }

        return top;
    }

    /// <summary>A level dimension between two places on the paper, the second to the right.</summary>
    /// <param name="from">One end.</param>
    /// <param name="to">The other end.</param>
    /// <param name="lineAt">Height of the dimension line on the paper.</param>
    /// <param name="trueLength">What it measures, mm.</param>
    /// <param name="name">What that is; left out where it finds no room.</param>
    public PartDimension.Linear Level(Point2 from, Point2 to, double lineAt, double trueLength, string name = "") =>
        Dimension(from, to, new(1, 0), lineAt - from.Y, trueLength, name);

    /// <summary>An upright dimension between two places on the paper, the second above the first; the line stands at a place across.</summary>
    public PartDimension.Linear Upright(Point2 from, Point2 to, double lineAt, double trueLength, string name = "") =>
        Dimension(from, to, new(0, 1), from.X - lineAt, trueLength, name);

    /// <summary>A dimension along the line between two places, from left to right; its line begins at a height.</summary>
    public PartDimension.Linear Along(Point2 from, Point2 to, double lineAt, double trueLength, string name = "") =>
        Dimension(from, to, (to - from).Unit(), lineAt - from.Y, trueLength, name);

    /// <summary>Draws a dimension.</summary>
    public void Draw(PartDimension.Linear dimension) => PlacedAnnotation.Draw(Sketch, dimension, dimension.Text ?? "", Height);

    /// <summary>Letters a text in the free place nearest to a wanted one, with a leader to a place when it has one; leaves it out where there is none.</summary>
    public void NearBy(string text, Point2 wanted, Point2? pointsAt = null)
    {
        const double Air = 1;
        var height = text.Contains(Fraction.Slash, StringComparison.Ordinal) ? Height : TextHeight;
        var extents = TextExtents.Of(text, default, height, 0);
        var area = Sketch.Bounds.Grown(Around);
        var occupancy = new Occupancy(area);
        foreach (var item in Sketch.Items)
        {
            occupancy.Mark(item);
        }

        if (occupancy.Find(extents.Width + (2 * Air), extents.Height + (2 * Air), wanted, _ => true) is not { } corner)
        {
            return;
        }

        var at = corner + new Vector2(Air - extents.MinX, Air - extents.MinY);
        if (pointsAt is { } target)
        {
            PlacedAnnotation.Draw(Sketch, new(target, at, text), height);
        }
        else
        {
            Sketch.Text(Layer.Notes, text, at, height);
        }
    }

    private PartDimension.Linear Dimension(Point2 from, Point2 to, Vector2 direction, double offset, double trueLength, string name)
    {
        var text = Measure.Length(trueLength, Unit);
        var named = name.Length == 0 ? text : $"{name} {text}";
        var room = Math.Abs((to - from).Dot(direction)) - 2;
        return new(from, to, direction, offset, StrokeAlphabet.WidthOf(named, Height) <= room ? named : text);
    }
}
