using System.Collections.Immutable;

namespace PlanForge.Drafting.Model;

/// <summary>Type and width of a line.</summary>
/// <param name="Type">The pattern of dashes.</param>
/// <param name="Width">Width, mm, over 0: one of the ISO 128 widths.</param>
public readonly record struct LineStyle(LineType Type, double Width)
{
    /// <summary>
    /// Lengths of dashes and gaps in turn, mm, beginning with a dash; empty for a continuous line.
    /// Source: ISO 128-2 line elements in multiples of the width (secondary source: shared/check-values.md section 5).
    /// </summary>
    public ImmutableArray<double> Pattern
    {
        get
        {
            var width = Width;
            return Type switch
            {
                LineType.Dashed => [12 * width, 3 * width],
                LineType.LongDashedDotted => [24 * width, 3 * width, 0.5 * width, 3 * width],
                LineType.LongDashedDoubleDotted => [24 * width, 3 * width, 0.5 * width, 3 * width, 0.5 * width, 3 * width],
                _ => [],
            };
        }
    }
}

/// <summary>Line types of ISO 128-2, by its numbers.</summary>
public enum LineType
{
    /// <summary>No. 01: visible edges, dimensions.</summary>
    Continuous = 1,

    /// <summary>No. 02: hidden edges.</summary>
    Dashed = 2,

    /// <summary>No. 04: centre lines and axes.</summary>
    LongDashedDotted = 4,

    /// <summary>No. 05: neighbouring parts.</summary>
    LongDashedDoubleDotted = 5,
}
