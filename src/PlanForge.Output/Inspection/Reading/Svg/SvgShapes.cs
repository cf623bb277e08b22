using PlanForge.Geometry;

namespace PlanForge.Output.Inspection.Reading.Svg;

/// <summary>Makes lines and arcs of the shapes of SVG.</summary>
/// <param name="file">Takes them.</param>
/// <param name="findings">Takes what is at fault.</param>
internal sealed class SvgShapes(CutFile file, FindingList findings)
{
    private bool _saidBezier;

    /// <summary>Adds a shape.</summary>
    public void Add(SvgElement element, SvgScope scope)
    {
        var outline = new SvgOutline(scope.Matrix);
        var layer = file.LayerOf(scope.LayerName);
        switch (element.Name)
        {
            case "path":
                AddPath(element, outline, layer);
                break;
            case "rect":
                AddRectangle(element, outline);
                Finish(element, outline, layer, isClosed: true);
                break;
            case "circle" or "ellipse":
                AddEllipse(element, outline);
                Finish(element, outline, layer, isClosed: true);
                break;
            case "line":
                outline.AddLine(new(Number(element, "x1"), Number(element, "y1")), new(Number(element, "x2"), Number(element, "y2")), element.At);
                Finish(element, outline, layer, isClosed: false);
                break;
            default:
                if (AddPoints(element, outline))
                {
                    Finish(element, outline, layer, element.Name == "polygon");
                }

                break;
        }

        ReportCurves(element, outline);
    }

    private void AddPath(SvgElement element, SvgOutline outline, FileLayer layer)
    {
        if (element["d"] is not { } data)
        {
            findings.Fault(FindingCode.Syntax, element.At, "this path has no data; the attribute d is missing");
            return;
        }

        var places = element.PlacesIn("d");
        var fault = new SvgPathReader(outline, isClosed => Finish(element, outline, layer, isClosed), places).Read(data);
        if (fault is var (position, text))
        {
            findings.Fault(FindingCode.Syntax, places(position), text);
            file.IsIncomplete = true;
        }
    }

    private void AddRectangle(SvgElement element, SvgOutline outline)
    {
        var (x, y, w, h) = (Number(element, "x"), Number(element, "y"), Size(element, "width"), Size(element, "height"));
        var (rx, ry) = (element["rx"] is null ? double.NaN : Number(element, "rx"), element["ry"] is null ? double.NaN : Number(element, "ry"));
        (rx, ry) = (double.IsNaN(rx) ? ry : rx, double.IsNaN(ry) ? rx : ry);
        (rx, ry) = (double.IsNaN(rx) ? 0 : Math.Clamp(rx, 0, Math.Max(0, w / 2)), double.IsNaN(ry) ? 0 : Math.Clamp(ry, 0, Math.Max(0, h / 2)));
        if (!(w > 0 && h > 0))
        {
            return;
        }

        var (right, bottom) = (x + w, y + h);
        (rx, ry) = rx == 0 || ry == 0 ? (0, 0) : (rx, ry);
        var at = element.At;
        Line(new(x + rx, y), new(right - rx, y));
        Corner(new(right - rx, y), new(right, y + ry));
        Line(new(right, y + ry), new(right, bottom - ry));
        Corner(new(right, bottom - ry), new(right - rx, bottom));
        Line(new(right - rx, bottom), new(x + rx, bottom));
        Corner(new(x + rx, bottom), new(x, bottom - ry));
        Line(new(x, bottom - ry), new(x, y + ry));
        Corner(new(x, y + ry), new(x + rx, y));

        void Line(Point2 from, Point2 to)
        {
            if (from != to)
            {
                outline.AddLine(from, to, at);
            }
        }

        void Corner(Point2 from, Point2 to)
        {
            if (rx > 0)
            {
                SvgArc.Add(outline, from, to, new(rx, ry), 0, isLarge: false, isPositive: true, at);
            }
        }
    }

    private void AddEllipse(SvgElement element, SvgOutline outline)
    {
        var centre = new Point2(Number(element, "cx"), Number(element, "cy"));
        var radius = element.Name == "circle" ? Size(element, "r") : 0;
        var radii = element.Name == "circle" ? new Vector2(radius, radius) : new(Size(element, "rx"), Size(element, "ry"));
        if (radii.X > 0 && radii.Y > 0)
        {
            var right = centre + new Vector2(radii.X, 0);
            outline.AddArc(centre, radii, 0, 0, 2 * Math.PI, (right, right), element.At);
        }
    }

    private bool AddPoints(SvgElement element, SvgOutline outline)
    {
        var text = element["points"] ?? "";
        var numbers = new SvgNumbers(text);
        var last = default(Point2?);
        var first = default(Point2?);
        numbers.SkipSpace();
        while (!numbers.IsAtEnd && outline.Segments.Count <= CutFile.MostSegments)
        {
            var isRead = numbers.TryNumber(out var x);
            numbers.SkipComma();
            if (!isRead || !numbers.TryNumber(out var y))
            {
                findings.Fault(FindingCode.Syntax, element.PlacesIn("points")(numbers.Position), "points are pairs of numbers; one is missing here");
                file.IsIncomplete = true;
                return false;
            }

            numbers.SkipComma();
            var point = new Point2(x, y);
            if (last is { } from)
            {
                outline.AddLine(from, point, element.At);
            }

            (first, last) = (first ?? point, point);
        }

        if (element.Name == "polygon" && first != last)
        {
            outline.AddLine(last!.Value, first!.Value, element.At);
        }

        return true;
    }

    // Not a number where the text is at fault, so that nothing is drawn of it.
    private double Number(SvgElement element, string attribute)
    {
        if (element[attribute] is not { } text)
        {
            return 0;
        }

        if (SvgLength.Read(text)?.UserUnits is { } number)
        {
            return number;
        }

        findings.Fault(FindingCode.Syntax, element.PlacesIn(attribute)(0), $"{attribute} has to be a number, not {Words.Quote(text)}");
        file.IsIncomplete = true;
        return double.NaN;
    }

    private double Size(SvgElement element, string attribute)
    {
        var size = Number(element, attribute);
        if (size > 0 || double.IsNaN(size))
        {
            return size;
        }

        findings.Fault(FindingCode.ZeroLength, element.At, $"this {element.Name} has no {attribute} over 0, so there is nothing to cut");
        return 0;
    }

    private void Finish(SvgElement element, SvgOutline outline, FileLayer layer, bool isClosed)
    {
        var isRead = outline.Segments.TrueForAll(piece => !double.IsNaN(piece.Segment.Start.X + piece.Segment.Start.Y + piece.Segment.End.X + piece.Segment.End.Y));
        if (outline.Segments.Count > 0 && isRead && !file.Add(layer, outline.Segments[0].At, outline.Segments, isClosed))
        {
            findings.Fault(FindingCode.Size, element.At, $"this {element.Name} reaches farther than 1 km");
        }
    }

    private void ReportCurves(SvgElement element, SvgOutline outline)
    {
        if (outline.HasEllipse)
        {
            findings.Warning(FindingCode.Ellipse, element.At, "an ellipse, or a circle drawn out of round; not every machine cuts it, write arcs of circles");
        }

        if (outline.HasBezier && !_saidBezier)
        {
            _saidBezier = true;
            findings.Note(FindingCode.Bezier, element.At, "here and perhaps after it there are Béziers; arcs and lines are cut the same everywhere");
        }
    }
}
