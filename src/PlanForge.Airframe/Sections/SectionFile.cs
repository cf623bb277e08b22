using System.Collections.Immutable;
using PlanForge.Airframe.Diagnostics;

namespace PlanForge.Airframe.Sections;

/// <summary>What came of reading a coordinate file.</summary>
/// <param name="Section">The section, or null when there is an error among the findings.</param>
/// <param name="Diagnostics">Errors and warnings, in the order of the file.</param>
public sealed record SectionFileResult(Section? Section, ImmutableArray<Diagnostic> Diagnostics);

/// <summary>Coordinate files (<c>.dat</c>) in both public layouts.</summary>
/// <remarks>
/// <para>
/// Either one list from the trailing edge over one surface to the leading edge and back along the other, or two counts and two
/// lists. A title may precede them. Either surface may come first and either list may run either way; numbers may stand in
/// chords, percent or any length; blanks, tabs, commas or semicolons part them; # starts a remark; an open trailing edge stays
/// open.
/// </para>
/// <para>
/// When the outline passes by the origin and ends beside the x axis, the x axis is the chord line and the coordinates are only
/// divided by the chord. Otherwise the chord runs from the listed point farthest from the trailing edge to the middle of the
/// trailing edge; the section is moved, turned and scaled to it, and a warning says so.
/// </para>
/// <para>Layouts: as described with the UIUC airfoil coordinates database.</para>
/// </remarks>
public static class SectionFile
{
    // The shape is known long before, and the work must stay bounded whatever the file.
    private const int GreatestPointCount = 4000;

    // Two surfaces of four points that share the foremost one.
    private const int LeastPointCount = 7;

    /// <summary>Reads the text of a coordinate file. Never throws, whatever the text holds.</summary>
    /// <param name="fileName">The file's name as the user gave it; its bare name is the section's when the file has no title.</param>
    /// <param name="text">The file's content.</param>
    public static SectionFileResult Read(string fileName, string text)
    {
        var findings = new List<Diagnostic>();
        var scan = SectionFileScan.Of(fileName, text, findings);
        CheckCount(fileName, scan, findings);
        var section = findings.Count == 0 ? SectionOf(fileName, scan, findings) : null;
        return new(section, InOrder(findings));
    }

    // Findings of one line stay in the order they were made in.
    private static ImmutableArray<Diagnostic> InOrder(List<Diagnostic> findings) =>
        findings.Count < 2 ? [.. findings] : [.. findings.OrderBy(finding => finding.At.Line)];

    private static void CheckCount(string fileName, SectionFileScan scan, List<Diagnostic> findings)
    {
        var count = scan.Rows.Count + scan.FaultyRowCount;
        if (count == 0)
        {
            findings.Add(Diagnostic.Error(SourcePosition.WholeFile(fileName), "there are no coordinates in this file"));
        }
        else if (count < LeastPointCount)
        {
            findings.Add(Diagnostic.Error(SourcePosition.WholeFile(fileName), FormattableString.Invariant(
                $"{count} points are too few for a section: at least {LeastPointCount} are needed")));
        }
        else if (count > GreatestPointCount)
        {
            findings.Add(Diagnostic.Error(SourcePosition.WholeFile(fileName), FormattableString.Invariant(
                $"{count} points are more than a section needs: at most {GreatestPointCount} are read")));
        }
    }

    private static PointSection? SectionOf(string fileName, SectionFileScan scan, List<Diagnostic> findings)
    {
        if (SurfaceLists.Outline(scan.Rows, findings) is not { } rows)
        {
            return null;
        }

        if (SectionAxes.Of(rows) is not { } axes)
        {
            findings.Add(Diagnostic.Error(
                SourcePosition.WholeFile(fileName), "the points have no chord: no leading edge lies ahead of a trailing edge"));
            return null;
        }

        var outline = axes.InChords(rows);
        var foremost = OutlineCheck.Foremost(outline);
        OutlineCheck.Check(rows, outline, foremost, findings);
        if (findings.Count > 0)
        {
            return null;
        }

        if (axes.Finding is { } finding)
        {
            findings.Add(finding);
        }

        var name = scan.Title.Length > 0 ? scan.Title : SectionTitle.Of(Path.GetFileNameWithoutExtension(fileName));
        return PointSection.Through(name, outline, foremost);
    }
}
