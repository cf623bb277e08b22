using PlanForge.Drafting.Lettering;
using PlanForge.Parts.Wording;

namespace PlanForge.Drafting.Conventions;

/// <summary>Heights of lettering on the sheets, mm: sizes of ISO 3098, none under 2.5.</summary>
/// <param name="Body">Dimensions, notes and tables.</param>
/// <param name="Name">Names on the parts.</param>
/// <param name="Title">Titles beside the parts.</param>
internal readonly record struct LetteringSizes(double Body, double Name, double Title)
{
    /// <summary>The least height that is drawn, mm.</summary>
    public const double Least = 2.5;

    /// <summary>The captions in the fields of the title block alone, mm: the least size of ISO 3098. Nobody works by them.</summary>
    public const double Caption = 1.8;

    // Line pitch in heights, ISO 3098-0: 15/10 and 19/10 where accents stand over capitals; the first a little freer for easy reading.
    private const double Pitch = 1.6;
    private const double AccentPitch = 1.9;
    private const double HighestPlain = 1.25;

    /// <summary>
    /// The sizes for sheets in some units: figures of inch fractions are 5/7 of the text, so the text is 3.5 to keep them at 2.5.
    /// </summary>
    public static LetteringSizes For(ShownUnits units) => units.HasInches ? new(3.5, 3.5, 5) : new(2.5, 3.5, 5);

    /// <summary>The distance of a line's baseline from the one above it, mm.</summary>
    public static double PitchOf(string line, double height)
    {
        var extents = TextExtents.Of(line, default, 1, 0);
        return height * (!extents.IsEmpty && extents.MaxY > HighestPlain ? AccentPitch : Pitch);
    }
}
