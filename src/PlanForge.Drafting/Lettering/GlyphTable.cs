using System.Collections.Immutable;
using PlanForge.Drafting.Lettering.Alphabet;

namespace PlanForge.Drafting.Lettering;

/// <summary>Finds the line that defines a character and draws the glyph from it when it is first asked for.</summary>
/// <remarks>
/// A glyph follows from its line alone, so remembering it changes nothing that can be observed: two threads that draw the
/// same glyph at once draw equal ones, and either may be kept.
/// </remarks>
internal sealed class GlyphTable
{
    // Below this all characters of the European Latin letters lie; the few others are searched one by one.
    private const int DirectCount = 0x250;

    private readonly Entry?[] _direct = new Entry?[DirectCount];
    private readonly ImmutableArray<Entry> _others;
    private readonly Glyph _space = new(StrokeAlphabet.WordGap - StrokeAlphabet.LetterGap, []);

    public GlyphTable()
    {
        var others = ImmutableArray.CreateBuilder<Entry>(64);
        foreach (var sheet in (ReadOnlySpan<string>)[Letters.Text, Figures.Text, AccentedLetters.Text])
        {
            AddLines(sheet, others);
        }

        _others = others.ToImmutable();
    }

    /// <summary>The glyph of a character, or null where no line defines it.</summary>
    public Glyph? Find(char character)
    {
        if (EntryOf(character) is not { } entry)
        {
            return SpaceOf(character);
        }

        return entry.Drawn ??= GlyphPen.Draw(entry.Definition.Span, Find);
    }

    private Glyph? SpaceOf(char character) => character is ' ' or '\u00A0' or '\u202F' ? _space : null;

    private Entry? EntryOf(char character)
    {
        if (character < DirectCount)
        {
            return _direct[character];
        }

        foreach (var entry in _others)
        {
            if (entry.Character == character)
            {
                return entry;
            }
        }

        return null;
    }

    private void AddLines(string sheet, ImmutableArray<Entry>.Builder others)
    {
        for (var start = 0; start < sheet.Length;)
        {
            var end = sheet.IndexOf('\n', start);
            end = end < 0 ? sheet.Length : end;
            var entry = new Entry(sheet[start], sheet.AsMemory(start + 2, end - start - 2));
            if (entry.Character < DirectCount)
            {
                _direct[entry.Character] = entry;
            }
            else
            {
                others.Add(entry);
            }

            start = end + 1;
        }
    }

    private sealed class Entry(char character, ReadOnlyMemory<char> definition)
    {
        public char Character { get; } = character;

        public ReadOnlyMemory<char> Definition { get; } = definition;

        public Glyph? Drawn { get; set; }
    }
}
