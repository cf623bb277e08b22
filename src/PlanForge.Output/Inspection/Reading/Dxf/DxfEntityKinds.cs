using System.Collections.Frozen;

namespace PlanForge.Output.Inspection.Reading.Dxf;

/// <summary>The entities that must not be in a cut file, and what would be right.</summary>
internal static class DxfEntityKinds
{
    private static readonly FrozenDictionary<string, (string Code, string Advice)> Known = new Dictionary<string, (string, string)>
    {
        ["TEXT"] = (FindingCode.Text, "text vanishes where its font is missing; write it as single strokes"),
        ["MTEXT"] = (FindingCode.Text, "text vanishes where its font is missing; write it as single strokes"),
        ["ATTRIB"] = (FindingCode.Text, "text vanishes where its font is missing; write it as single strokes"),
        ["ATTDEF"] = (FindingCode.Text, "text vanishes where its font is missing; write it as single strokes"),
        ["SPLINE"] = (FindingCode.Spline, "each program takes a spline apart in its own way; write arcs and lines"),
        ["HELIX"] = (FindingCode.Spline, "each program takes a spline apart in its own way; write arcs and lines"),
        ["ELLIPSE"] = (FindingCode.Ellipse, "not every machine cuts an ellipse; write arcs"),
        ["HATCH"] = (FindingCode.Hatch, "a hatch is cut line by line; take it out"),
        ["MPOLYGON"] = (FindingCode.Hatch, "a hatch is cut line by line; take it out"),
        ["SOLID"] = (FindingCode.Hatch, "a filled area has no line to cut; write its outline"),
        ["INSERT"] = (FindingCode.Insert, "a block may be missing or scaled where the file is read; write its lines themselves"),
        ["DIMENSION"] = (FindingCode.ForbiddenEntity, "dimensions get cut too; take it out"),
        ["ARC_DIMENSION"] = (FindingCode.ForbiddenEntity, "dimensions get cut too; take it out"),
        ["LARGE_RADIAL_DIMENSION"] = (FindingCode.ForbiddenEntity, "dimensions get cut too; take it out"),
        ["LEADER"] = (FindingCode.ForbiddenEntity, "leaders get cut too; take it out"),
        ["MULTILEADER"] = (FindingCode.ForbiddenEntity, "leaders get cut too; take it out"),
        ["TOLERANCE"] = (FindingCode.ForbiddenEntity, "dimensions get cut too; take it out"),
        ["POINT"] = (FindingCode.ForbiddenEntity, "a point has no length to cut; mark holes by circles"),
        ["MLINE"] = (FindingCode.ForbiddenEntity, "it is many lines in one; write its lines themselves"),
        ["RAY"] = (FindingCode.ForbiddenEntity, "it has no end; write a line"),
        ["XLINE"] = (FindingCode.ForbiddenEntity, "it has no end; write a line"),
        ["TRACE"] = (FindingCode.ForbiddenEntity, "a filled area has no line to cut; write its outline"),
        ["SHAPE"] = (FindingCode.ForbiddenEntity, "a shape is kept in another file; write its lines themselves"),
        ["VIEWPORT"] = (FindingCode.ForbiddenEntity, "it is a window on paper, no line; take it out"),
        ["IMAGE"] = (FindingCode.Image, "a picture is no line to cut; take it out"),
        ["WIPEOUT"] = (FindingCode.ForbiddenEntity, "it hides lines that are cut all the same; take it out"),
        ["3DFACE"] = (FindingCode.ForbiddenEntity, "it lies in space; a sheet is cut along plane lines"),
        ["3DSOLID"] = (FindingCode.ForbiddenEntity, "it lies in space; a sheet is cut along plane lines"),
        ["BODY"] = (FindingCode.ForbiddenEntity, "it lies in space; a sheet is cut along plane lines"),
        ["REGION"] = (FindingCode.ForbiddenEntity, "few programs read it; write its outline"),
        ["MESH"] = (FindingCode.ForbiddenEntity, "it lies in space; a sheet is cut along plane lines"),
        ["SURFACE"] = (FindingCode.ForbiddenEntity, "it lies in space; a sheet is cut along plane lines"),
        ["ACAD_TABLE"] = (FindingCode.Text, "tables get cut too; take it out"),
        ["VERTEX"] = (FindingCode.Syntax, "a vertex stands here without its POLYLINE"),
    }.ToFrozenDictionary();

    /// <summary>Says what is wrong with an entity that is neither line nor arc.</summary>
    public static void Report(string kind, TextPlace at, string layer, FindingList findings)
    {
        if (Known.TryGetValue(kind, out var known))
        {
            findings.Fault(known.Code, at, $"{kind} on layer {Words.Quote(layer)}: {known.Advice}");
        }
        else
        {
            findings.Fault(FindingCode.UnknownEntity, at, $"{Words.Quote(kind)} is no entity known here; only LINE, ARC, CIRCLE, LWPOLYLINE and POLYLINE are sure to be cut");
        }
    }
}
