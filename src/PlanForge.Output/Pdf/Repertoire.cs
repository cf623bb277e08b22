using System.Collections.Immutable;
using PlanForge.Drafting.Model;

namespace PlanForge.Output.Pdf;

/// <summary>Every sign that the texts of a document use, in a fixed order: characters by number, then fractions by spelling.</summary>
internal sealed class Repertoire
{
    private readonly ushort[] _characterPlaces = new ushort[char.MaxValue + 1];
    private readonly List<string> _fractions = [];
    private readonly int _characterCount;

    /// <summary>Collects the signs of all texts.</summary>
    public Repertoire(IEnumerable<Drawing> drawings)
    {
        foreach (var drawing in drawings)
        {
            foreach (var item in drawing.Items)
            {
                if (item is DrawingItem.Text text)
                {
                    Collect(text.Content);
                }
            }
        }

        _fractions.Sort(StringComparer.Ordinal);
        var signs = ImmutableArray.CreateBuilder<string>(128);
        for (var character = 0; character < _characterPlaces.Length; character++)
        {
            if (_characterPlaces[character] != 0)
            {
                _characterPlaces[character] = (ushort)signs.Count;
                signs.Add(((char)character).ToString());
            }
        }

        _characterCount = signs.Count;
        signs.AddRange(_fractions);
        Signs = signs.ToImmutable();
    }

    /// <summary>The signs by place.</summary>
    public ImmutableArray<string> Signs { get; }

    /// <summary>The place of a sign, which must be one of the document's.</summary>
    public int PlaceOf(string text, (int Start, int End) sign) => sign.End - sign.Start == 1
        ? _characterPlaces[text[sign.Start]]
        : _characterCount + _fractions.BinarySearch(text[sign.Start..sign.End], StringComparer.Ordinal);

    private void Collect(string text)
    {
        foreach (var (start, end) in Pdf.Signs.Of(text))
        {
            if (end - start == 1)
            {
                _characterPlaces[text[start]] = 1;
                continue;
            }

            var fraction = text[start..end];
            if (!_fractions.Contains(fraction))
            {
                _fractions.Add(fraction);
            }
        }
    }
}
