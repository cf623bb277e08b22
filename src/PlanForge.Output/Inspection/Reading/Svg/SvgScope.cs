namespace PlanForge.Output.Inspection.Reading.Svg;

/// <summary>What an element hands on to those in it.</summary>
/// <param name="Matrix">From its user units to mm.</param>
/// <param name="Group">Ids of the groups around, outermost first, parted by slashes.</param>
/// <param name="GroupStroke">The colour of lines of the innermost group with an id.</param>
/// <param name="Stroke">The colour of lines.</param>
/// <param name="Fill">The colour of areas.</param>
/// <param name="IsHidden">True when nothing of it is seen.</param>
internal sealed record SvgScope(SvgMatrix Matrix, string Group, string GroupStroke, string Stroke, string Fill, bool IsHidden)
{
    // More of the groups' ids says no more about the layer.
    private const int LongestGroup = 100;

    /// <summary>What holds outside all elements: no line, black areas (SVG 1.1, 11; from memory).</summary>
    public static SvgScope Outermost(SvgMatrix matrix) => new(matrix, "", "none", "none", "black", false);

    /// <summary>The name of the layer for lines here: the groups, and the colour where the groups do not say it.</summary>
    public string LayerName => Group.Length == 0 ? Stroke : Stroke == GroupStroke ? Group : $"{Group} {Stroke}";

    /// <summary>The same in a group with an id.</summary>
    public SvgScope In(string id) =>
        Group.Length + id.Length > LongestGroup ? this : this with { Group = Group.Length == 0 ? id : $"{Group}/{id}", GroupStroke = Stroke };
}
