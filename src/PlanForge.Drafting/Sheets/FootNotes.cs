using System.Collections.Immutable;
using PlanForge.Drafting.Conventions;
using PlanForge.Drafting.Lettering;
using PlanForge.Drafting.Model;
using PlanForge.Drafting.PartDrawings;
using PlanForge.Geometry;

namespace PlanForge.Drafting.Sheets;

/// <summary>The lines above the title strip: legend of the lines used, cautions, notes of the owner.</summary>
internal sealed class FootNotes
{
    private const string CutCaution =
        "Laser or router: smoke is harmful and wood catches fire. Use extraction, keep an extinguisher at hand, never leave the "
        + "machine alone, never cut PVC or vinyl. Local rules come first.";

    private const string BenchCaution =
        "Sanding dust and adhesives (CA, epoxy) harm lungs, eyes and skin: mask, goggles, fresh air. "
        + "The makers' sheets and local rules come first.";

    private const string Views = "Formers are drawn as seen from aft.";

    private const double Height = LetteringSizes.Least;
    private const double Gap = 2;
    private const double SampleLength = 14;
    private const double SampleGap = 2;
    private const double EntryGap = 6;

    private readonly ImmutableArray<string> _notes;
    private readonly LinesUsed _all;

    /// <summary>Makes the notes of a set of sheets.</summary>
    /// <param name="notes">Notes of the owner.</param>
    /// <param name="all">What the whole set has in it: every sheet keeps room for what any sheet has to say.</param>
    public FootNotes(ImmutableArray<string> notes, LinesUsed all) => (_notes, _all) = (notes, all);

    /// <summary>The height all notes of the set need at a width, mm.</summary>
    public double HeightFor(double width)
    {
        var sketch = Draw(width, _all);
        return sketch.Bounds.IsEmpty ? 0 : sketch.Bounds.Height + (2 * Gap);
    }

    /// <summary>Draws the notes that what is on a sheet calls for.</summary>
    public void Draw(Sketch sheet, Bounds2 room, LinesUsed used)
    {
        var sketch = Draw(room.Width, used);
        sheet.Add(sketch, new(room.MinX, room.MinY + Gap - sketch.Bounds.MinY));
    }

    private Sketch Draw(double width, LinesUsed used)
    {
        var sketch = new Sketch();
        var y = DrawLegend(sketch, width, used);
        y = used.HasCutParts ? DrawText(sketch, Views, width, y) : y;
        foreach (var note in _notes)
        {
            y = DrawText(sketch, note, width, y);
        }

        y = used.HasCutParts ? DrawText(sketch, CutCaution, width, y) : y;
        _ = used.HasBenchWork ? DrawText(sketch, BenchCaution, width, y) : y;
        return sketch;
    }

    private static double DrawLegend(Sketch sketch, double width, LinesUsed used)
    {
        var (x, y) = (0.0, 0.0);
        foreach (var use in LineConventions.Uses)
        {
            if (!used.Has(use))
            {
                continue;
            }

            var name = LineConventions.NameOf(use);
            var length = SampleLength + SampleGap + StrokeAlphabet.WidthOf(name, Height);
            if (x > 0 && x + length > width)
            {
                x = 0;
                y -= LetteringSizes.PitchOf(name, Height);
            }

            var middle = y - (Height / 2);
            sketch.Line(Layer.Frame, new(x, middle), new(x + SampleLength, middle), LineConventions.StyleOf(use));
            sketch.Text(Layer.Frame, name, new(x + SampleLength + SampleGap, y - Height), Height);
            x += length + EntryGap;
        }

        return x > 0 ? y - (1.8 * Height) : y;
    }

    private static double DrawText(Sketch sketch, string text, double width, double y)
    {
        foreach (var line in TextWrap.Lines(text, width, Height))
        {
            sketch.Text(Layer.Frame, line, new(0, y - Height), Height);
            y -= LetteringSizes.PitchOf(line, Height);
        }

        return y;
    }
}
