using System.Globalization;
using System.Text;
using PlanForge.Geometry;

namespace PlanForge.Output.Tests.Inspection;

/// <summary>Plain cut files written here, not by the product's writers: one entity after the other, each a text to be mutated.</summary>
internal static class CutFileText
{
    public static byte[] Dxf(IEnumerable<string> entities, int units = 4) => Encoding.UTF8.GetBytes(
        $"0\nSECTION\n2\nHEADER\n9\n$ACADVER\n1\nAC1015\n9\n$INSUNITS\n70\n{units}\n0\nENDSEC\n0\nSECTION\n2\nTABLES\n0\nTABLE\n2\nLAYER\n70\n1\n"
        + "0\nLAYER\n2\nCUT\n70\n0\n62\n7\n0\nENDTAB\n0\nENDSEC\n0\nSECTION\n2\nENTITIES\n" + string.Concat(entities) + "0\nENDSEC\n0\nEOF\n");

    public static byte[] Svg(IEnumerable<string> elements) => Encoding.UTF8.GetBytes(
        "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"1000mm\" height=\"1000mm\" viewBox=\"-500 -500 1000 1000\">\n<g id=\"cut\" fill=\"none\" stroke=\"black\">\n"
        + string.Join('\n', elements) + "\n</g>\n</svg>\n");

    /// <summary>A line or an arc by itself.</summary>
    public static string Entity(Segment2 segment)
    {
        if (segment.IsLine)
        {
            return Invariant($"0\nLINE\n8\nCUT\n10\n{segment.Start.X:F6}\n20\n{segment.Start.Y:F6}\n11\n{segment.End.X:F6}\n21\n{segment.End.Y:F6}\n");
        }

        var (from, to) = segment.Bulge > 0 ? (segment.Start, segment.End) : (segment.End, segment.Start);
        var centre = segment.Centre;
        return Invariant($"0\nARC\n8\nCUT\n10\n{centre.X:F8}\n20\n{centre.Y:F8}\n40\n{segment.Radius:F8}\n50\n{Degrees(from - centre):F9}\n51\n{Degrees(to - centre):F9}\n");
    }

    public static string Polyline(Path2 path) => Invariant($"0\nLWPOLYLINE\n8\nCUT\n90\n{path.Vertices.Length}\n70\n{(path.IsClosed ? 1 : 0)}\n")
        + string.Concat(path.Vertices.Select(vertex => Invariant($"10\n{vertex.Point.X:F6}\n20\n{vertex.Point.Y:F6}\n42\n{vertex.Bulge:F9}\n")));

    public static string Circle(Point2 centre, double radius) => Invariant($"0\nCIRCLE\n8\nCUT\n10\n{centre.X:F6}\n20\n{centre.Y:F6}\n40\n{radius:F6}\n");

    public static string SvgCircle(Point2 centre, double radius) => Invariant($"<circle cx=\"{centre.X:F6}\" cy=\"{centre.Y:F6}\" r=\"{radius:F6}\"/>");

    /// <summary>A path with arcs as SVG writes them: the larger arc and the positive turn are flags.</summary>
    public static string Path(Path2 path)
    {
        var data = new StringBuilder(Invariant($"M{path.Start.X:F6},{path.Start.Y:F6}"));
        foreach (var segment in path.Segments)
        {
            data.Append(segment.IsLine
                ? Invariant($"L{segment.End.X:F6},{segment.End.Y:F6}")
                : Invariant($"A{segment.Radius:F6},{segment.Radius:F6},0,{(Math.Abs(segment.Bulge) > 1 ? 1 : 0)},{(segment.Bulge > 0 ? 1 : 0)},{segment.End.X:F6},{segment.End.Y:F6}"));
        }

        return $"<path d=\"{data}{(path.IsClosed ? "Z" : "")}\"/>";
    }

    public static string Invariant(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);

    private static double Degrees(Vector2 direction) => (direction.Angle + (2 * Math.PI)) % (2 * Math.PI) * 180 / Math.PI;
}
