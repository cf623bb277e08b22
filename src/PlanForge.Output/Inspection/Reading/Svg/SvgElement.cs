using System.Xml;

namespace PlanForge.Output.Inspection.Reading.Svg;

/// <summary>The start tag of an element: its name, its attributes and where they stand.</summary>
internal sealed class SvgElement
{
    private readonly Dictionary<string, (string Value, int Line, int Column)> _attributes = new(StringComparer.Ordinal);
    private readonly Dictionary<string, string> _style = new(StringComparer.Ordinal);
    private readonly SvgText _text;

    /// <summary>Takes the element the reader stands on; the reader stands on it again after.</summary>
    public SvgElement(XmlReader reader, SvgText text)
    {
        var lines = (IXmlLineInfo)reader;
        _text = text;
        Name = reader.LocalName;
        At = new(lines.LineNumber, Math.Max(1, lines.LinePosition - 1));
        while (reader.MoveToNextAttribute())
        {
            if (reader.NamespaceURI.Length == 0)
            {
                _attributes[reader.LocalName] = (reader.Value, lines.LineNumber, lines.LinePosition);
            }
        }

        reader.MoveToElement();
        foreach (var part in (this["style"] ?? "").Split(';'))
        {
            var colon = part.IndexOf(':', StringComparison.Ordinal);
            if (colon > 0)
            {
                _style[part[..colon].Trim()] = part[(colon + 1)..].Trim();
            }
        }
    }

    public string Name { get; }

    public TextPlace At { get; }

    /// <summary>The value of an attribute, or null.</summary>
    public string? this[string attribute] => _attributes.TryGetValue(attribute, out var found) ? found.Value : null;

    /// <summary>A property of style, from the style attribute before the attribute of its name; null when neither is there.</summary>
    public string? Property(string name) => (_style.TryGetValue(name, out var value) ? value : this[name]) is { } text && text != "inherit" ? text : null;

    /// <summary>The place of a character in the value of an attribute that is there.</summary>
    public Func<int, TextPlace> PlacesIn(string attribute)
    {
        var (_, line, column) = _attributes[attribute];
        var start = _text.ValueAfter(line, column);
        return index => _text.PlaceOf(Math.Min(_text.Text.Length, start + index));
    }
}
