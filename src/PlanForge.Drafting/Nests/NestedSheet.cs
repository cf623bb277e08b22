using System.Collections.Immutable;
using PlanForge.Airframe;
using PlanForge.Geometry;
using PlanForge.Parts;

namespace PlanForge.Drafting.Nests;

/// <summary>A sheet of stock, or what is left of one, with the parts that are cut from it.</summary>
/// <remarks>Coordinates: x along the sheet's length, which is the grain, y along its width, origin at the lower left corner, mm.</remarks>
/// <param name="Stock">The stock it is taken from.</param>
/// <param name="Number">Its number among the sheets of this stock, from 1; remnants are counted by themselves.</param>
/// <param name="IsRemnant">True for a rectangle left over, not a whole sheet.</param>
/// <param name="Width">Size across the grain, along y, mm.</param>
/// <param name="Length">Size along the grain, along x, mm.</param>
/// <param name="Parts">The parts on it, in the order they were laid out; at least one.</param>
public sealed record NestedSheet(
    StockDescription Stock, int Number, bool IsRemnant, double Width, double Length, ImmutableArray<NestedPart> Parts)
{
    /// <summary>What a builder calls it: <c>balsa 3, sheet 2</c> or <c>balsa 3, remnant 1</c>.</summary>
    public string Title => FormattableString.Invariant($"{Stock.Name}, {(IsRemnant ? "remnant" : "sheet")} {Number}");

    /// <summary>Area of wood in the parts, openings taken off, mm².</summary>
    public double PartArea => Sum(static contour => contour.SignedArea);

    /// <summary>Area inside the outlines of the parts, openings included, mm².</summary>
    public double OutlineArea => Sum(static contour => Math.Max(0, contour.SignedArea));

    /// <summary>Part area over the area of the sheet, 0 to 1.</summary>
    public double Yield => PartArea / (Width * Length);

    /// <summary>Outline area over the area of the sheet, 0 to 1.</summary>
    public double OutlineYield => OutlineArea / (Width * Length);

    /// <summary>How much of the length is used, mm: to the end of the last part and the margin after it.</summary>
    public double UsedLength
    {
        get
        {
            var end = 0.0;
            foreach (var part in Parts)
            {
                end = Math.Max(end, part.Bounds.MaxX);
            }

            return Math.Min(Length, end + Stock.Margin);
        }
    }

    private double Sum(Func<Path2, double> measure)
    {
        var sum = 0.0;
        foreach (var part in Parts)
        {
            foreach (var contour in NestedPart.ContoursOf(part.Part))
            {
                sum += measure(contour);
            }
        }

        return sum;
    }
}

/// <summary>One copy of a part on its sheet.</summary>
/// <param name="Part">The part.</param>
/// <param name="Copy">Which of its copies, from 1 to its quantity.</param>
/// <param name="Placement">The turn and move from the part's coordinates to the sheet's; never mirrored.</param>
public sealed record NestedPart(Part Part, int Copy, Placement2 Placement)
{
    /// <summary>The smallest upright rectangle around it on the sheet.</summary>
    public Bounds2 Bounds
    {
        get
        {
            var bounds = Bounds2.Empty;
            foreach (var contour in Contours())
            {
                bounds = bounds.Joined(contour.Bounds);
            }

            return bounds;
        }
    }

    /// <summary>Its cut lines on the sheet: outlines anticlockwise, openings clockwise.</summary>
    public IEnumerable<Path2> Contours()
    {
        foreach (var contour in ContoursOf(Part))
        {
            yield return contour.Placed(Placement);
        }
    }

    /// <summary>The closed cut lines of a part, in its own coordinates.</summary>
    internal static IEnumerable<Path2> ContoursOf(Part part)
    {
        foreach (var line in part.Lines)
        {
            if (line.Use == LineUse.Cut && line.Path.IsClosed)
            {
                yield return line.Path;
            }
        }
    }
}
