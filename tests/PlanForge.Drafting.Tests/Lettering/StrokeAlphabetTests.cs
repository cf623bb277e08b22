using PlanForge.Drafting.Lettering;
using PlanForge.Geometry;

namespace PlanForge.Drafting.Tests.Lettering;

public class StrokeAlphabetTests
{
    // ISO 3098-0 type B as quoted in shared/check-values.md section 5 (C2: confirmed in a secondary source only):
    // stroke h/10, small letters 7/10 h, letter gap 2/10 h, word gap 6/10 h; for h = 3.5: 0.35, 2.5 (2.45), 0.7, 2.1 mm.
    private const double Height = 3.5;
    private const double Stroke = 0.35;
    private const double SmallLetters = 2.45;
    private const double LetterGap = 0.7;
    private const double WordGap = 2.1;
    private const double Rounding = 1e-9;

    // Glyphs are drawn on points given to 1e-4 of the height: an arc may end that much off its extreme.
    private const double Grid = 2e-4;

    [Fact]
    public void Every_promised_character_is_drawn()
    {
        foreach (var character in Repertoire.Drawn)
        {
            Assert.True(StrokeAlphabet.Find(character) is { Strokes.Length: > 0 }, $"U+{(int)character:X4} {character}");
        }
    }

    [Fact]
    public void Spaces_have_no_strokes_and_advance()
    {
        foreach (var space in " \u00A0\u202F")
        {
            Assert.True(StrokeAlphabet.Find(space) is { Strokes.IsEmpty: true, Advance: > 0 });
        }
    }

    [Fact]
    public void A_character_outside_the_alphabet_is_a_hollow_box()
    {
        Assert.Null(StrokeAlphabet.Find('漢'));
        var box = StrokeAlphabet.GlyphOf('漢');
        Assert.True(Assert.Single(box.Strokes).IsClosed);
    }

    [Fact]
    public void Capitals_and_figures_stand_on_the_baseline_and_are_one_height_tall()
    {
        // Q has a tail under the line; J and all others stand on it.
        foreach (var character in "ABCDEFGHIJKLMNOPRSTUVWXYZ0123456789")
        {
            var bounds = StrokeAlphabet.GlyphOf(character).Bounds;
            Assert.Equal(0, bounds.MinY, Grid);
            Assert.Equal(1, bounds.MaxY, Grid);
        }
    }

    [Fact]
    public void Small_letters_without_ascender_have_the_height_of_ISO_3098()
    {
        foreach (var character in "acegmnopqrsuvwxyz")
        {
            Assert.Equal(SmallLetters, StrokeAlphabet.GlyphOf(character).Bounds.MaxY * Height, Grid);
        }

        foreach (var character in "bdfhkl")
        {
            Assert.Equal(Height, StrokeAlphabet.GlyphOf(character).Bounds.MaxY * Height, Grid);
        }

        foreach (var character in "gjpqy")
        {
            // Tail 0.3 h: the task's own figure, common practice, no source.
            Assert.Equal(-0.3 * Height, StrokeAlphabet.GlyphOf(character).Bounds.MinY * Height, Grid);
        }
    }

    [Fact]
    public void Ink_of_neighbouring_letters_is_a_letter_gap_apart()
    {
        var letters = TextExtentsOfEach("HH");
        Assert.Equal(LetterGap, letters[1].MinX - letters[0].MaxX, Rounding);
    }

    [Fact]
    public void Ink_of_neighbouring_words_is_a_word_gap_apart()
    {
        var letters = TextExtentsOfEach("H H");
        Assert.Equal(WordGap, letters[1].MinX - letters[0].MaxX, Rounding);
    }

    [Fact]
    public void Pen_is_a_tenth_of_the_height() => Assert.Equal(Stroke, StrokeAlphabet.StrokeWidth * Height, Rounding);

    [Fact]
    public void Every_letter_lies_in_its_advance_box_and_starts_at_its_left_edge()
    {
        foreach (var character in Repertoire.Drawn)
        {
            var glyph = StrokeAlphabet.GlyphOf(character);
            Assert.Equal(0, glyph.Bounds.MinX, Rounding);
            Assert.Equal(glyph.Advance - StrokeAlphabet.LetterGap - StrokeAlphabet.StrokeWidth, glyph.Bounds.MaxX, Rounding);
        }
    }

    [Fact]
    public void Lines_of_accented_letters_at_the_pitch_of_ISO_3098_do_not_touch()
    {
        // Baseline pitch with accents: 19/10 h (same source as above).
        var bounds = Repertoire.Drawn.Select(c => StrokeAlphabet.GlyphOf(c).Bounds).Aggregate((a, b) => a.Joined(b));
        Assert.True(bounds.Height + StrokeAlphabet.StrokeWidth <= 1.9, $"{bounds.MinY} to {bounds.MaxY}");
    }

    [Fact]
    public void No_two_characters_look_the_same()
    {
        // Characters that are the same sign by meaning, and letters of other scripts or times that share a shape.
        var shared = new[] { "µμ", "'|", "Ðð", "ĐÐ" };
        var seen = new Dictionary<string, char>();
        foreach (var character in Repertoire.Drawn)
        {
            var strokes = string.Join('|', StrokeAlphabet.GlyphOf(character).Strokes.Select(s => string.Join(' ', s.Vertices)));
            if (!seen.TryAdd(strokes, character))
            {
                Assert.Contains(shared, pair => pair.Contains(character) && pair.Contains(seen[strokes]));
            }
        }
    }

    [Fact]
    public void Every_stroke_has_length()
    {
        foreach (var character in Repertoire.Drawn)
        {
            Assert.All(StrokeAlphabet.GlyphOf(character).Strokes, stroke => Assert.True(stroke.Length > 0.05, character.ToString()));
        }
    }

    private static List<Bounds2> TextExtentsOfEach(string text) =>
        [.. TextLayout.Of(text).Glyphs.Select(
            g => TextExtents.Of(g.Character.ToString(), Point2.Origin + ((g.At - Point2.Origin) * Height), Height, 0))];
}
