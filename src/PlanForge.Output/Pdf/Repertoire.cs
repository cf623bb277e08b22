using System.Collections.Immutable;
using PlanForge.Output.Bytes;

namespace PlanForge.Output.Pdf;

/// <summary>Every sign that some texts use, in a fixed order: characters by number, then fractions by spelling.</summary>
internal sealed class Repertoire
{
    // A table by character, in blocks of which only those are there that texts have characters of.
    private const int BlockLength = 256;

    private readonly ushort[]?[] _characterPlaces = new ushort[]?[(char.MaxValue + 1) / BlockLength];
    private readonly List<string> _fractions = [];
    private readonly int _characterCount;

    private readonly byte[] _name;

    /// <summary>Collects the signs of all texts.</summary>
    /// <param name="name">What content streams call its fonts; sheets and the pages' own drawings have fonts of their own.</param>
    /// <param name="drawings">The drawings with the texts.</param>
    public Repertoire(ReadOnlySpan<byte> name, IEnumerable<DrawingNeeds> drawings)
    {
        _name = name.ToArray();
        foreach (var drawing in drawings)
        {
            foreach (var sign in drawing.Signs)
            {
                Collect(sign);
            }
        }

        _fractions.Sort(StringComparer.Ordinal);
        var signs = ImmutableArray.CreateBuilder<string>(128);
        for (var block = 0; block < _characterPlaces.Length; block++)
        {
            var places = _characterPlaces[block] ?? [];
            for (var i = 0; i < places.Length; i++)
            {
                if (places[i] != 0)
                {
                    places[i] = (ushort)signs.Count;
                    signs.Add(((char)((block * BlockLength) + i)).ToString());
                }
            }
        }

        _characterCount = signs.Count;
        signs.AddRange(_fractions);
        Signs = signs.ToImmutable();
        All = string.Join('\n', signs);
    }

    /// <summary>All signs in one text: repertoires of one name with the same signs write the same.</summary>
    public string All { get; }

    /// <summary>The signs by place.</summary>
    public ImmutableArray<string> Signs { get; }

    /// <summary>Appends the name by which content streams refer to a font.</summary>
    public ByteText AppendResourceName(ByteText text, int font) => text.Append("/"u8).Append(_name).Append(font);

    /// <summary>The font of a sign, from 0, and its code there, 1 to 255. The sign must be one of the repertoire's.</summary>
    public (int Font, int Code) Find(string text, (int Start, int End) sign)
    {
        var place = PlaceOf(text, sign);
        return (place / StrokeFonts.SignsPerFont, (place % StrokeFonts.SignsPerFont) + 1);
    }

    /// <summary>The place of a sign, which must be one of the repertoire's.</summary>
    private int PlaceOf(string text, (int Start, int End) sign) => sign.End - sign.Start == 1
        ? _characterPlaces[text[sign.Start] / BlockLength]![text[sign.Start] % BlockLength]
        : _characterCount + _fractions.BinarySearch(text[sign.Start..sign.End], StringComparer.Ordinal);

    private void Collect(string sign)
    {
        if (sign is [var character])
        {
            var block = _characterPlaces[character / BlockLength] ??= new ushort[BlockLength];
            block[character % BlockLength] = 1;
        }
        else if (!_fractions.Contains(sign))
        {
            _fractions.Add(sign);
        }
    }
}
