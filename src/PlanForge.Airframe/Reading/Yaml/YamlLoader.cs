using System.Text;
using PlanForge.Airframe.Diagnostics;
using YamlDotNet.Core;
using YamlDotNet.Core.Events;

namespace PlanForge.Airframe.Reading.Yaml;

/// <summary>Builds the tree of a description from the events of the YAML parser.</summary>
/// <remarks>
/// The YAML allowed is what a description needs: one document of mappings, lists and text. Aliases, anchors, tags, merge keys
/// and duplicate keys are refused where they stand; the rest of the file is still read. Events rather than the library's own
/// node model: both take the same 35 ms cold, 5 ms warm, and events are checked one by one, so that a file made to exhaust
/// the reader is stopped on the way.
/// </remarks>
internal sealed class YamlLoader
{
    // A description of a thousand lines has 60 KiB, 6 levels and 8 000 nodes.
    private const int GreatestSize = 1024 * 1024;
    private const int GreatestDepth = 32;
    private const int GreatestNodeCount = 100_000;

    // Untagged nodes carry this tag in the library's events.
    private const string NoTag = "?";
    private const string MergeKey = "<<";

    private readonly SourceText _source;
    private readonly DiagnosticList _diagnostics;
    private readonly Parser _parser;
    private readonly Stack<int> _openBrackets = [];
    private int _nodeCount;
    private int _lastIndex;

    private YamlLoader(SourceText source, DiagnosticList diagnostics)
    {
        _source = source;
        _diagnostics = diagnostics;
        _parser = new Parser(new StringReader(source.Text));
    }

    /// <summary>The root mapping; null, and an error reported, when the text has none.</summary>
    public static YamlMapping? Load(SourceText source, DiagnosticList diagnostics)
    {
        if (source.Text.Length > GreatestSize || Encoding.UTF8.GetByteCount(source.Text) > GreatestSize)
        {
            diagnostics.Error(SourcePosition.WholeFile(source.File), "the description is larger than 1 MiB");
            return null;
        }

        return ForbiddenCharacters.AreAbsent(source, diagnostics) ? new YamlLoader(source, diagnostics).LoadDocument() : null;
    }

    private YamlMapping? LoadDocument()
    {
        if (Next() is not StreamStart || Next() is not { } start)
        {
            return null;
        }

        if (start is not DocumentStart)
        {
            _diagnostics.Error(SourcePosition.WholeFile(_source.File), "the description is empty");
            return null;
        }

        if (Next() is not { } first || LoadNode(first, 1) is not { } root || Next() is not DocumentEnd || Next() is not { } after)
        {
            return null;
        }

        if (after is DocumentStart)
        {
            _diagnostics.Error(PositionOf(after), "a second document begins here; a file holds one description");
        }

        if (root is not YamlMapping mapping)
        {
            _diagnostics.Error(root.At, $"a description is a mapping of keys such as `planforge: 1`, not {root.Noun}");
            return null;
        }

        return mapping;
    }

    /// <summary>The node an event begins; null when reading has to stop.</summary>
    private YamlNode? LoadNode(ParsingEvent start, int depth)
    {
        if (++_nodeCount > GreatestNodeCount)
        {
            return Stop(start, $"the description has more than {GreatestNodeCount} values");
        }

        if (depth > GreatestDepth)
        {
            return Stop(start, $"the description is nested more than {GreatestDepth} levels deep");
        }

        if (start is AnchorAlias alias)
        {
            var at = PositionOf(alias);
            _diagnostics.Error(at, "aliases are not used in descriptions; name the value under `parameters` instead");
            return new YamlRefused(at);
        }

        if (start is not NodeEvent node)
        {
            // After a colon without a key the parser may end a mapping in the middle of an entry.
            return Stop(start, "a key or a value is missing before this");
        }

        RefuseProperties(node);
        return node switch
        {
            SequenceStart sequence => LoadList(sequence, depth),
            MappingStart mapping => LoadMapping(mapping, depth),
            _ => LoadScalar((Scalar)node),
        };
    }

    private YamlScalar LoadScalar(Scalar scalar)
    {
        var (start, end) = ((int)scalar.Start.Index, (int)scalar.End.Index);
        return new(_source.At(start, end), scalar.Value, new(_source, start, end, scalar.Style));
    }

    private YamlList? LoadList(SequenceStart start, int depth)
    {
        var items = new List<YamlNode>();
        Open(start, start.Style == SequenceStyle.Flow);
        while (true)
        {
            var next = Next();
            if (next is SequenceEnd end)
            {
                return new(Close(start, end, start.Style == SequenceStyle.Flow), items);
            }

            if (next is null || LoadNode(next, depth + 1) is not { } item)
            {
                return null;
            }

            items.Add(item);
        }
    }

    private YamlMapping? LoadMapping(MappingStart start, int depth)
    {
        var entries = new List<YamlEntry>();
        var lines = new Dictionary<string, int>(StringComparer.Ordinal);
        var isIncomplete = false;
        var isFlow = start.Style == MappingStyle.Flow;
        Open(start, isFlow);
        while (true)
        {
            var next = Next();
            if (next is MappingEnd end)
            {
                var at = isFlow || entries.Count == 0 ? Close(start, end, isFlow) : entries[0].Key.At;
                return new(at, entries, isIncomplete);
            }

            if (next is null || LoadNode(next, depth + 1) is not { } key
                || Next() is not { } second || LoadNode(second, depth + 1) is not { } value)
            {
                return null;
            }

            if (AcceptedKey(key, next, lines) is { } accepted)
            {
                entries.Add(new(accepted, value));
            }

            isIncomplete |= key is not YamlScalar { IsEmpty: false } || ((YamlScalar)key).Text == MergeKey;
        }
    }

    private YamlScalar? AcceptedKey(YamlNode key, ParsingEvent start, Dictionary<string, int> lines)
    {
        if (key is not YamlScalar scalar)
        {
            if (key is not YamlRefused)
            {
                _diagnostics.Error(key.At, $"a key must be plain text, not {key.Noun}");
            }
        }
        else if (scalar.IsEmpty)
        {
            _diagnostics.Error(scalar.At, "a key is missing before the colon");
        }
        else if (scalar.Text == MergeKey && start is Scalar { Style: ScalarStyle.Plain })
        {
            _diagnostics.Error(scalar.At, "merge keys are not used in descriptions; write the keys out");
        }
        else if (!lines.TryAdd(scalar.Text, scalar.At.Line))
        {
            _diagnostics.Error(scalar.At, $"{Quote.Text(scalar.Text)} is given twice; first in line {lines[scalar.Text]}");
        }
        else
        {
            return scalar;
        }

        return null;
    }

    private void RefuseProperties(NodeEvent node)
    {
        if (!node.Anchor.IsEmpty)
        {
            _diagnostics.Error(PositionOf(node), "anchors are not used in descriptions; name the value under `parameters` instead");
        }

        if (!node.Tag.IsEmpty && node.Tag.Value != NoTag)
        {
            _diagnostics.Error(PositionOf(node), "tags are not used in descriptions; the key says what its value is");
        }
    }

    /// <summary>The next event; null, and the fault reported, when the parser gives up.</summary>
    private ParsingEvent? Next()
    {
        try
        {
            if (!_parser.MoveNext() || _parser.Current is not { } current)
            {
                return null;
            }

            _lastIndex = (int)current.End.Index;
            return current;
        }
        catch (Exception fault) when (fault is not OutOfMemoryException)
        {
            // Besides its own exceptions the library throws InvalidOperationException for some unclosed brackets and
            // ArgumentException for impossible escapes. Whatever it throws, the text is what it cannot read.
            SyntaxFault.Report(fault, _source, _lastIndex, _openBrackets, _diagnostics);
            return null;
        }
    }

    private void Open(ParsingEvent start, bool isFlow)
    {
        if (isFlow)
        {
            _openBrackets.Push(BracketOf(start));
        }
    }

    private SourcePosition Close(ParsingEvent start, ParsingEvent end, bool isFlow)
    {
        if (!isFlow)
        {
            return PositionOf(start);
        }

        // The end event of a flow collection stands before its bracket.
        return _source.At(_openBrackets.Pop(), (int)end.End.Index + 1);
    }

    /// <summary>The offset of the bracket that opens a flow collection: it stands behind an anchor or tag.</summary>
    private int BracketOf(ParsingEvent start)
    {
        var bracket = start is SequenceStart ? '[' : '{';
        var at = (int)start.Start.Index;
        while (at < _source.Text.Length && _source.Text[at] != bracket)
        {
            at++;
        }

        return at;
    }

    private YamlNode? Stop(ParsingEvent place, string message)
    {
        _diagnostics.Error(PositionOf(place), message);
        return null;
    }

    private SourcePosition PositionOf(ParsingEvent place) => _source.At((int)place.Start.Index, (int)place.End.Index);
}
