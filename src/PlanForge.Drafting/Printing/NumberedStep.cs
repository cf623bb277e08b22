using PlanForge.Drafting.Conventions;
using PlanForge.Drafting.Lettering;
using PlanForge.Drafting.Measures;
using PlanForge.Drafting.Model;
using PlanForge.Drafting.PartDrawings;

namespace PlanForge.Drafting.Printing;

/// <summary>A numbered paragraph of an instruction.</summary>
internal static class NumberedStep
{
    /// <summary>Distance between steps, mm.</summary>
    public const double Gap = 1.5;

    private const double Height = LetteringSizes.Least;
    private const double Indent = 6;

    /// <summary>Draws a step downwards from the origin, its first baseline at y = 0.</summary>
    /// <param name="number">Its number.</param>
    /// <param name="text">Its text.</param>
    /// <param name="width">The room, mm.</param>
    /// <param name="below">How much its last line lacks of the depth of a letter with a tail, mm.</param>
    public static Sketch Draw(int number, string text, double width, out double below)
    {
        var sketch = new Sketch();
        sketch.Text(Layer.Notes, Measure.Number(number, 0) + ".", new(0, 0), Height);
        var (y, last) = (0.0, 0.0);
        foreach (var line in TextWrap.Lines(text, width - Indent, Height))
        {
            sketch.Text(Layer.Notes, line, new(Indent, y), Height);
            last = y;
            y -= LetteringSizes.PitchOf(line, Height);
        }

        below = sketch.Bounds.MinY - (last - (StrokeAlphabet.Descent * Height));
        return sketch;
    }
}
