using System.Collections.Frozen;

namespace PlanForge.Output.Inspection.Reading.Svg;

/// <summary>What the elements of SVG mean for cutting.</summary>
internal static class SvgElementKinds
{
    private static readonly FrozenSet<string> Shapes =
        FrozenSet.Create(StringComparer.Ordinal, "path", "rect", "circle", "ellipse", "line", "polyline", "polygon");

    private static readonly FrozenSet<string> Groups = FrozenSet.Create(StringComparer.Ordinal, "g", "a", "switch", "svg");

    // Nothing in them is drawn where they stand.
    private static readonly FrozenSet<string> Unseen = FrozenSet.Create(
        StringComparer.Ordinal, "defs", "title", "desc", "metadata", "symbol", "marker", "pattern", "linearGradient", "radialGradient", "view");

    private static readonly FrozenDictionary<string, (string Code, string Advice)> Forbidden = new Dictionary<string, (string, string)>
    {
        ["text"] = (FindingCode.Text, "text vanishes where its font is missing; write it as single strokes"),
        ["image"] = (FindingCode.Image, "a picture is no line to cut; take it out"),
        ["use"] = (FindingCode.Insert, "not every program follows a reference; write the lines themselves"),
        ["clipPath"] = (FindingCode.Clip, "what is clipped away is cut all the same; draw only what is to be cut"),
        ["mask"] = (FindingCode.Clip, "what is masked is cut all the same; draw only what is to be cut"),
        ["filter"] = (FindingCode.Clip, "a filter changes what is seen, not what is cut; take it out"),
        ["style"] = (FindingCode.Style, "not every program reads style rules; give each element its stroke and fill"),
        ["script"] = (FindingCode.ForbiddenEntity, "a program has no place in a cut file; take it out"),
        ["foreignObject"] = (FindingCode.ForbiddenEntity, "it is no line to cut; take it out"),
        ["animate"] = (FindingCode.ForbiddenEntity, "what moves cannot be cut; take it out"),
        ["animateTransform"] = (FindingCode.ForbiddenEntity, "what moves cannot be cut; take it out"),
        ["set"] = (FindingCode.ForbiddenEntity, "what moves cannot be cut; take it out"),
    }.ToFrozenDictionary();

    public static bool IsShape(string name) => Shapes.Contains(name);

    public static bool IsGroup(string name) => Groups.Contains(name);

    /// <summary>Says what is wrong with an element that is neither shape nor group.</summary>
    /// <returns>True when lines of it may be missing now.</returns>
    public static bool Report(SvgElement element, FindingList findings)
    {
        if (Unseen.Contains(element.Name))
        {
            return false;
        }

        if (!Forbidden.TryGetValue(element.Name, out var known))
        {
            findings.Fault(FindingCode.UnknownEntity, element.At, $"<{Words.Quote(element.Name).Trim('`')}> is no element known here; only path, rect, circle, line, polyline and polygon are sure to be cut");
            return true;
        }

        if (known.Code == FindingCode.Style)
        {
            findings.Warning(known.Code, element.At, $"<{element.Name}>: {known.Advice}");
        }
        else
        {
            findings.Fault(known.Code, element.At, $"<{element.Name}>: {known.Advice}");
        }

        return known.Code == FindingCode.Insert;
    }
}
