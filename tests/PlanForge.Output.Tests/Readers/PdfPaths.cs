using PlanForge.Geometry;
using PlanForge.Output.Tests.Curves;
using UglyToad.PdfPig.Content;
using UglyToad.PdfPig.Core;

namespace PlanForge.Output.Tests.Readers;

/// <summary>The paths of a PDF page as PdfPig sees them, from points back to millimetres.</summary>
internal static class PdfPaths
{
    /// <summary>Millimetres of a number of points: an inch is 72 points and 25.4 mm.</summary>
    public static double Millimetres(double points) => points * 25.4 / 72;

    public static IEnumerable<Polyline> Contours(Page page) => page.Paths.SelectMany(path => path).Select(Contour);

    private static Polyline Contour(PdfSubpath subpath)
    {
        var points = new List<Point2>();
        foreach (var command in subpath.Commands)
        {
            switch (command)
            {
                case PdfSubpath.Move move:
                    points.Add(Point(move.Location));
                    break;
                case PdfSubpath.Line line:
                    points.Add(Point(line.To));
                    break;
                case PdfSubpath.CubicBezierCurve curve:
                    points.AddRange(Flattened(
                        points[^1], Point(curve.FirstControlPoint), Point(curve.SecondControlPoint), Point(curve.EndPoint)));
                    break;
            }
        }

        return new(points, subpath.Commands.Any(command => command is PdfSubpath.Close));
    }

    /// <summary>A chord over 1/n of the parameter strays at most 1/8 of the greatest second derivative over n².</summary>
    private static IEnumerable<Point2> Flattened(Point2 start, Point2 first, Point2 second, Point2 end)
    {
        var curvature = 6 * Math.Max(((start - first) - (first - second)).Length, ((first - second) - (second - end)).Length);
        var steps = Math.Max(1, (int)Math.Ceiling(Math.Sqrt(curvature / 8 / Polyline.Sagitta)));
        return Enumerable.Range(1, steps).Select(i => Bezier.PointAt(start, first, second, end, (double)i / steps));
    }

    private static Point2 Point(PdfPoint point) => new(Millimetres(point.X), Millimetres(point.Y));
}
