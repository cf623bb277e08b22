using System.Collections.Immutable;
using System.Globalization;
using PlanForge.Airframe.Diagnostics;
using PlanForge.Airframe.Reading;

namespace PlanForge.Drafting.Cutting;

/// <summary>Reads a shop's profile, in YAML, in the order in which the shop works.</summary>
/// <remarks>
/// <code>
/// operations:
///   engrave:     {layer: ENGRAVE, colour: 3, stroke: "#00ff00"}
///   score:       {layer: SCORE, colour: 5, stroke: "#0000ff"}
///   cut_inside:  {layer: INNER, colour: 1, stroke: "#ff0000"}
///   cut_outside: {layer: OUTER, colour: 7, stroke: "#000000"}
///   notes:       {layer: NOTES_NOT_CUT, colour: 8, stroke: "#808080"}
/// </code>
/// An operation that is left out is left out of the files; both cuts are needed. Both cuts may share a layer, as may engraving
/// and scoring; nothing else may, since everything on a layer is done alike.
/// </remarks>
public static class CutProfileFile
{
    private const string List = "operations";
    private const string Layer = "layer";
    private const string Colour = "colour";
    private const string Stroke = "stroke";

    private static readonly ImmutableArray<string> Keys = [Layer, Colour, Stroke];

    // In the order of the members of CutOperation.
    private static readonly ImmutableArray<string> Names = ["engrave", "score", "cut_inside", "cut_outside", "notes"];

    /// <summary>The profile; null when something is wrong, which the findings say with file, line and column.</summary>
    /// <param name="file">The file's name, for the findings.</param>
    /// <param name="text">Its text.</param>
    public static (CutProfile? Profile, ImmutableArray<Diagnostic> Findings) Read(string file, string text)
    {
        var read = NamedEntries.Read(file, text, List, Keys);
        if (!read.Findings.IsEmpty)
        {
            return (null, read.Findings);
        }

        var wrong = ImmutableArray.CreateBuilder<Diagnostic>();
        var styles = new List<(OperationStyle Style, SourcePosition At)>();
        foreach (var entry in read.Entries)
        {
            if (StyleOf(entry, wrong) is { } style)
            {
                CheckSharing(style, entry, styles, wrong);
                styles.Add((style, entry.At));
            }
        }

        foreach (var needed in (ReadOnlySpan<CutOperation>)[CutOperation.CutInside, CutOperation.CutOutside])
        {
            if (wrong.Count == 0 && !styles.Exists(known => known.Style.Operation == needed))
            {
                wrong.Add(Diagnostic.Error(new(file, 1, 1), $"`{List}` lacks `{Names[(int)needed]}`: nothing could be cut out"));
            }
        }

        return wrong.Count > 0 ? (null, wrong.ToImmutable()) : (new([.. styles.Select(known => known.Style)]), []);
    }

    private static OperationStyle? StyleOf(NamedEntry entry, ImmutableArray<Diagnostic>.Builder wrong)
    {
        var before = wrong.Count;
        var operation = Names.IndexOf(entry.Name);
        if (operation < 0)
        {
            var known = string.Join(", ", Names.Select(name => $"`{name}`"));
            wrong.Add(Diagnostic.Error(entry.At, Spelling.Near(entry.Name, Names) is { } near
                ? $"there is no operation `{entry.Name}`; did you mean `{near}`?"
                : $"there is no operation `{entry.Name}`; there are {known}"));
        }

        var layer = entry.Values[Layer];
        if (!OperationStyle.IsLayerName(layer.Text))
        {
            wrong.Add(Diagnostic.Error(
                layer.At, $"`{Layer}` must be 1 to {OperationStyle.LongestLayer} ASCII letters, digits, hyphens and underscores: other names are lost in old readers"));
        }

        var colour = entry.Values[Colour];
        if (!int.TryParse(colour.Text, NumberStyles.None, CultureInfo.InvariantCulture, out var index) || index is < 1 or > OperationStyle.GreatestColour)
        {
            wrong.Add(Diagnostic.Error(colour.At, $"`{Colour}` must be a colour index of DXF, a whole number from 1 to {OperationStyle.GreatestColour}"));
        }

        var stroke = entry.Values[Stroke];
        var rgb = 0;
        if (stroke.Text.Length != 7 || stroke.Text[0] != '#'
            || !int.TryParse(stroke.Text.AsSpan(1), NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture, out rgb))
        {
            wrong.Add(Diagnostic.Error(stroke.At, $"`{Stroke}` must be a colour such as \"#ff0000\", in quotes"));
        }

        return wrong.Count > before ? null : new((CutOperation)operation, layer.Text, index, rgb);
    }

    private static void CheckSharing(
        OperationStyle style, NamedEntry entry, List<(OperationStyle Style, SourcePosition At)> known, ImmutableArray<Diagnostic>.Builder wrong)
    {
        foreach (var (other, at) in known)
        {
            var name = Names[(int)other.Operation];
            var isSameLayer = string.Equals(style.Layer, other.Layer, StringComparison.OrdinalIgnoreCase);
            if (IsDoneAlike(style.Operation, other.Operation))
            {
                if (isSameLayer && style.Colour != other.Colour)
                {
                    wrong.Add(Diagnostic.Error(
                        entry.Values[Colour].At, $"the layer `{style.Layer}` has the colour {other.Colour} in line {at.Line}; a layer has one colour"));
                }
            }
            else if (isSameLayer)
            {
                wrong.Add(Diagnostic.Error(
                    entry.Values[Layer].At, $"`{name}` is on the layer `{other.Layer}` already: everything on a layer is done alike"));
            }
            else if (style.Stroke == other.Stroke)
            {
                wrong.Add(Diagnostic.Error(
                    entry.Values[Stroke].At, $"`{name}` has the stroke \"#{other.Stroke:x6}\" already: machines tell SVG strokes apart by their colour"));
            }
        }
    }

    private static bool IsDoneAlike(CutOperation a, CutOperation b) => (Math.Min((int)a, (int)b), Math.Max((int)a, (int)b)) is
        ((int)CutOperation.Engrave, (int)CutOperation.Score) or ((int)CutOperation.CutInside, (int)CutOperation.CutOutside);
}
