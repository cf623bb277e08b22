using PlanForge.Drafting.Lettering;
using PlanForge.Drafting.Model;
using PlanForge.Geometry;

namespace PlanForge.Drafting.Dimensions.Placing;

/// <summary>A rectangle in any direction around the ink of a text or an arrow head.</summary>
/// <param name="Corner">The corner at the start of reading, below.</param>
/// <param name="Along">Unit direction of reading.</param>
/// <param name="Width">Extent along it, mm.</param>
/// <param name="Height">Extent square to it, mm.</param>
internal readonly record struct TextBox(Point2 Corner, Vector2 Along, double Width, double Height)
{
    /// <summary>The room of a drawn text.</summary>
    public static TextBox Of(DrawingItem.Text text) => new TextInk(text.Content, text.Height).At(text.At, text.Angle);

    /// <summary>The middle.</summary>
    public Point2 Centre => Corner + (Along * (Width / 2)) + (Along.Left * (Height / 2));

    /// <summary>The smallest upright rectangle around it.</summary>
    public Bounds2 Bounds
    {
        get
        {
            var (along, up) = (Along * Width, Along.Left * Height);
            return Bounds2.Around(Corner, Corner + along + up).Including(Corner + along).Including(Corner + up);
        }
    }

    /// <summary>True when less than a clear distance lies between two boxes on every axis that could part them.</summary>
    /// <remarks>
    /// Separating axis theorem: two convex shapes are apart exactly when they are apart along the normal of one of their sides.
    /// </remarks>
    public bool Overlaps(TextBox other, double clear) =>
        !IsApart(Along, other, clear) && !IsApart(Along.Left, other, clear)
        && !IsApart(other.Along, other, clear) && !IsApart(other.Along.Left, other, clear);

    /// <summary>True when a straight line comes nearer to the box than a clear distance (measured square to its sides).</summary>
    public bool Meets(Point2 start, Point2 end, double clear)
    {
        var (low, high) = (0.0, 1.0);
        var (from, way) = (start - Corner, end - start);
        return Clip(from.Dot(Along), way.Dot(Along), -clear, Width + clear, ref low, ref high)
            && Clip(from.Dot(Along.Left), way.Dot(Along.Left), -clear, Height + clear, ref low, ref high);
    }

    private bool IsApart(Vector2 axis, TextBox other, double clear)
    {
        var between = Math.Abs((other.Centre - Centre).Dot(axis));
        return between > HalfAlong(axis) + other.HalfAlong(axis) + clear;
    }

    private double HalfAlong(Vector2 axis) => (Math.Abs(Along.Dot(axis)) * Width / 2) + (Math.Abs(Along.Left.Dot(axis)) * Height / 2);

    private static bool Clip(double from, double way, double least, double most, ref double low, ref double high)
    {
        if (way == 0)
        {
            return from >= least && from <= most;
        }

        var (enter, leave) = ((least - from) / way, (most - from) / way);
        low = Math.Max(low, Math.Min(enter, leave));
        high = Math.Min(high, Math.Max(enter, leave));
        return low <= high;
    }
}

/// <summary>The ink of a text before it has a place: measured once, then tried in many places.</summary>
internal readonly record struct TextInk
{
    private readonly Bounds2 _ink;

    public TextInk(string text, double height)
    {
        Text = text;
        Height = height;
        Width = StrokeAlphabet.WidthOf(text, height);
        var ink = TextExtents.Of(text, Point2.Origin, height, 0);
        _ink = ink.IsEmpty ? new(0, 0, 0, 0) : ink;
    }

    /// <summary>The text, one line.</summary>
    public string Text { get; }

    /// <summary>Height of capitals, mm.</summary>
    public double Height { get; }

    /// <summary>Length from the start of the first letter to the end of the last, mm.</summary>
    public double Width { get; }

    /// <summary>How far tails and fractions reach below the baseline, mm, at least 0.</summary>
    public double Depth => Math.Max(0, -_ink.MinY - (StrokeAlphabet.StrokeWidth / 2 * Height));

    /// <summary>The room taken with the baseline starting at a place.</summary>
    public TextBox At(Point2 start, double angle)
    {
        var along = Vector2.FromAngle(angle);
        return new(start + (along * _ink.MinX) + (along.Left * _ink.MinY), along, _ink.Width, _ink.Height);
    }
}
