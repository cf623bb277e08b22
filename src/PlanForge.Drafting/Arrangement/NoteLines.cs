using System.Collections.Immutable;
using PlanForge.Drafting.Conventions;
using PlanForge.Drafting.Model;
using PlanForge.Drafting.PartDrawings;

namespace PlanForge.Drafting.Arrangement;

/// <summary>What is said under the views: the scale, how they stand, and what comes before the first flight.</summary>
internal sealed class NoteLines(string caption)
{
    private const double Height = LetteringSizes.Least;

    private static readonly ImmutableArray<string> Cautions =
    [
        "Check the balance before flight; fly under your country's and club's rules; they come first.",
        "Propellers maim: tie the model down and stand behind the disc before the motor can start.",
    ];

    /// <summary>Draws the lines downwards from the origin, broken at a width.</summary>
    public Sketch Draw(double width)
    {
        var sketch = new Sketch();
        var y = 0.0;
        foreach (var note in Cautions.Insert(0, caption))
        {
            foreach (var line in TextWrap.Lines(note, width, Height))
            {
                y -= LetteringSizes.PitchOf(line, Height);
                sketch.Text(Layer.Notes, line, new(0, y), Height);
            }
        }

        return sketch;
    }
}
