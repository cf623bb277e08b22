using System.Globalization;
using System.Text;
using PlanForge.Airframe.Sections;
using PlanForge.Geometry;

namespace PlanForge.Airframe.Tests.Sections;

/// <summary>Writes coordinate files for tests, in the public layouts.</summary>
internal static class DatText
{
    /// <summary>Points of a surface at even steps of w, from the nose to the trailing edge.</summary>
    public static Point2[] Surface(Func<double, SectionPoint> surface, int intervals) =>
        [.. Enumerable.Range(0, intervals + 1).Select(i => surface((double)i / intervals)).Select(point => new Point2(point.X, point.Y))];

    /// <summary>One list from the trailing edge over the first surface to the nose and back along the second.</summary>
    public static string Loop(Point2[] first, Point2[] second, string? title = "Otter 9", string format = "0.0000000") =>
        (title is null ? "" : title + "\n") + Rows(first.Reverse().Concat(second.Skip(1)), format);

    /// <summary>Two counts and two lists.</summary>
    public static string Lists(Point2[] first, Point2[] second, string? title = "Otter 9", string format = "0.0000000") =>
        (title is null ? "" : title + "\n") + FormattableString.Invariant($"  {first.Length}.   {second.Length}.\n\n")
            + Rows(first, format) + "\n" + Rows(second, format);

    public static string Rows(IEnumerable<Point2> points, string format = "0.0000000")
    {
        var text = new StringBuilder();
        foreach (var point in points)
        {
            text.Append(CultureInfo.InvariantCulture, $" {point.X.ToString(format, CultureInfo.InvariantCulture)}  ")
                .Append(CultureInfo.InvariantCulture, $"{point.Y.ToString(format, CultureInfo.InvariantCulture)}\n");
        }

        return text.ToString();
    }

    /// <summary>The section of a text that is known to be good, without a word.</summary>
    public static Section Read(string text)
    {
        var result = SectionFile.Read("otter.dat", text);
        Assert.Empty(result.Diagnostics);
        return Assert.IsType<PointSection>(result.Section);
    }

    /// <summary>Greatest difference in x and y of two sections.</summary>
    public static double Difference(Section one, Section other)
    {
        var greatest = 0.0;
        for (var i = 0; i <= 400; i++)
        {
            var w = i / 400.0;
            foreach (var (a, b) in new[] { (one.Upper(w), other.Upper(w)), (one.Lower(w), other.Lower(w)) })
            {
                greatest = Math.Max(greatest, Math.Max(Math.Abs(a.X - b.X), Math.Abs(a.Y - b.Y)));
            }
        }

        return greatest;
    }
}
