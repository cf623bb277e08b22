using System.Xml;

namespace PlanForge.Output.Inspection.Reading.Svg;

/// <summary>Reads SVG: its size, groups, transforms and shapes. No document type, no outside resource is ever followed.</summary>
internal sealed class SvgFileReader
{
    private const string Namespace = "http://www.w3.org/2000/svg";

    // Groups in groups; a real drawing has a dozen.
    private const int GreatestDepth = 200;

    private readonly SvgText _text;
    private readonly CutFile _file;
    private readonly FindingList _findings;
    private readonly SvgShapes _shapes;
    private readonly Stack<SvgScope> _scopes = new();
    private bool _saidTransform;

    private SvgFileReader(string text, CutFile file, FindingList findings)
    {
        (_file, _findings) = (file, findings);

        // As XML ends lines; other signs that end a line in a text stay.
        _text = new(text.Replace("\r\n", "\n", StringComparison.Ordinal).Replace('\r', '\n'));
        _shapes = new(file, findings);
    }

    /// <summary>Reads what can be read; what cannot is said.</summary>
    public static void Read(string text, CutFile file, FindingList findings)
    {
        file.Format = "SVG";
        new SvgFileReader(text, file, findings).Read();
    }

    private void Read()
    {
        var settings = new XmlReaderSettings
        {
            DtdProcessing = DtdProcessing.Prohibit,
            XmlResolver = null,
            IgnoreComments = true,
            IgnoreProcessingInstructions = true,
            IgnoreWhitespace = true,
        };
        try
        {
            using var reader = XmlReader.Create(new StringReader(_text.Text), settings);
            ReadDocument(reader);
        }
        catch (XmlException fault)
        {
            _file.IsIncomplete = true;
            var isDocumentType = fault.Message.Contains("DTD", StringComparison.Ordinal);
            var at = fault.LineNumber < 1 ? TextPlace.WholeFile : new TextPlace(fault.LineNumber, Math.Max(1, fault.LinePosition));
            _findings.Fault(
                FindingCode.Syntax, isDocumentType ? _text.PlaceOf(Math.Max(0, _text.Text.IndexOf("<!DOCTYPE", StringComparison.Ordinal))) : at,
                isDocumentType ? "a document type is never read; take the line with <!DOCTYPE out" : $"this is no well-formed XML: {Reason(fault)}");
        }
    }

    // The place is said already, and what the file holds must not drive a terminal.
    private static string Reason(XmlException fault)
    {
        var message = fault.Message;
        var place = message.LastIndexOf(" Line ", StringComparison.Ordinal);
        Span<char> shown = (place < 0 ? message : message[..place]).TrimEnd('.').ToCharArray();
        for (var i = 0; i < shown.Length; i++)
        {
            shown[i] = char.IsControl(shown[i]) || char.IsSurrogate(shown[i]) ? '\uFFFD' : shown[i];
        }

        return new(shown[..Math.Min(shown.Length, 200)]);
    }

    private void ReadDocument(XmlReader reader)
    {
        reader.MoveToContent();
        if (reader.LocalName != "svg" || reader.NamespaceURI != Namespace)
        {
            var lines = (IXmlLineInfo)reader;
            _findings.Fault(FindingCode.Syntax, new(lines.LineNumber, Math.Max(1, lines.LinePosition - 1)), $"the outermost element has to be svg with xmlns=\"{Namespace}\"");
            _file.IsIncomplete = true;
            return;
        }

        var root = new SvgElement(reader, _text);
        _scopes.Push(SvgScope.Outermost(SvgFrameReader.Read(root, _file, _findings)));
        Enter(reader, root);
        while (reader.Read())
        {
            // Passing over an element ends on the node after it, which has to be looked at too.
            while (!IsLookedInto(reader))
            {
                reader.Skip();
            }
        }
    }

    // False for an element of which nothing more is to be read.
    private bool IsLookedInto(XmlReader reader)
    {
        if (reader.NodeType == XmlNodeType.EndElement && _scopes.Count > 1)
        {
            _scopes.Pop();
        }

        return reader.NodeType != XmlNodeType.Element || (reader.NamespaceURI == Namespace && IsEntered(reader));
    }

    private bool IsEntered(XmlReader reader)
    {
        var element = new SvgElement(reader, _text);
        if (SvgElementKinds.IsGroup(element.Name) && _scopes.Count <= GreatestDepth)
        {
            if (element.Name == "svg")
            {
                _findings.Fault(FindingCode.ForbiddenEntity, element.At, "a picture in the picture has a scale of its own; write its lines themselves");
            }

            Enter(reader, element);
            return true;
        }

        if (SvgElementKinds.IsShape(element.Name))
        {
            AddShape(element, Inner(element));
        }
        else if (SvgElementKinds.IsGroup(element.Name))
        {
            _file.IsIncomplete = true;
            _findings.Fault(FindingCode.TooLarge, element.At, FormattableString.Invariant($"groups stand in groups more than {GreatestDepth} deep; what is in this one was not looked at"));
        }
        else if (!_scopes.Peek().IsHidden)
        {
            _file.IsIncomplete |= SvgElementKinds.Report(element, _findings);
        }

        return false;
    }

    private void Enter(XmlReader reader, SvgElement group)
    {
        if (!reader.IsEmptyElement)
        {
            var scope = Inner(group);
            _scopes.Push(group.Name == "g" && group["id"] is { Length: > 0 } id ? scope.In(id) : scope);
        }
    }

    private SvgScope Inner(SvgElement element)
    {
        var scope = _scopes.Peek();
        var isHidden = scope.IsHidden || element.Property("display") == "none" || element.Property("visibility") is "hidden" or "collapse";
        var matrix = scope.Matrix;
        if (element["transform"] is { } text)
        {
            matrix = matrix.After(TransformOf(element, text));
        }

        foreach (var property in (ReadOnlySpan<string>)["clip-path", "mask", "filter"])
        {
            if (!isHidden && element.Property(property) is { } value && value != "none")
            {
                _findings.Fault(FindingCode.Clip, element.At, $"{property}: what is clipped, masked or filtered is cut all the same; draw only what is to be cut");
            }
        }

        return scope with
        {
            Matrix = matrix,
            IsHidden = isHidden,
            Stroke = element.Property("stroke") ?? scope.Stroke,
            Fill = element.Property("fill") ?? scope.Fill,
        };
    }

    private SvgMatrix TransformOf(SvgElement element, string text)
    {
        if (SvgTransformList.Read(text, out var position) is not { } matrix)
        {
            _findings.Fault(FindingCode.Syntax, element.PlacesIn("transform")(position), $"no transform can be read here; right would be translate(10 20)");
            _file.IsIncomplete = true;
            return SvgMatrix.Identity;
        }

        if (!_saidTransform)
        {
            _saidTransform = true;
            _findings.Warning(FindingCode.Transform, element.At, "here and perhaps after it there are transforms; write the places themselves, not every program moves them right");
        }

        return matrix;
    }

    private void AddShape(SvgElement element, SvgScope scope)
    {
        if (scope.IsHidden)
        {
            return;
        }

        if (scope.Stroke == "none")
        {
            var what = scope.Fill == "none" ? "has neither a line nor an area to see" : "has an area but no line; machines engrave that, or leave it out";
            _findings.Warning(FindingCode.Style, element.At, $"this {element.Name} {what}; give it a stroke and fill=\"none\"");
        }
        else if (!_file.Colours.Contains(scope.Stroke) && _file.Colours.Count < 100)
        {
            _file.Colours.Add(scope.Stroke);
        }

        _shapes.Add(element, scope);
    }
}
