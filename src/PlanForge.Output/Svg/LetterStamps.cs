using PlanForge.Drafting.Lettering;

namespace PlanForge.Output.Svg;

/// <summary>The letters of several pictures, each written out once. For one thread.</summary>
public sealed class LetterStamps
{
    private readonly Dictionary<(Glyph Glyph, double Size, double Angle), LetterStamp> _stamps = [];

    /// <summary>The stamp of a letter.</summary>
    /// <param name="glyph">The letter; it has strokes.</param>
    /// <param name="size">Height of its capitals, mm.</param>
    /// <param name="angle">Direction of reading from the x axis, radians.</param>
    internal LetterStamp Of(Glyph glyph, double size, double angle)
    {
        if (!_stamps.TryGetValue((glyph, size, angle), out var stamp))
        {
            _stamps[(glyph, size, angle)] = stamp = new(glyph, size, angle);
        }

        return stamp;
    }
}
