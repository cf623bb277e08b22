using System.Globalization;
using System.Xml.Linq;
using PlanForge.Geometry;

namespace PlanForge.Output.Tests.Readers;

/// <summary>
/// An SVG file read by an XML parser and a strict reader of path data that knows M, L, A and Z, and their small letters for relative
/// coordinates. It shares no code with the writer.
/// </summary>
internal sealed class SvgFile
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    public SvgFile(byte[] bytes)
    {
        using var stream = new MemoryStream(bytes);
        Root = XDocument.Load(stream).Root!;
        Assert.Equal(Svg + "svg", Root.Name);
    }

    public XElement Root { get; }

    public double Width => Millimetres("width");

    public double Height => Millimetres("height");

    public IEnumerable<XElement> Groups => Root.Elements(Svg + "g");

    public string Title => Root.Element(Svg + "title")!.Value;

    /// <summary>The contours of a group, in order.</summary>
    public static IEnumerable<Polyline> Contours(XElement group) => group.Elements().SelectMany(OfElement);

    private static IEnumerable<Polyline> OfElement(XElement element)
    {
        if (element.Name.LocalName == "circle")
        {
            var centre = new Point2(Number(element.Attribute("cx")!.Value), Number(element.Attribute("cy")!.Value));
            return [new([.. Polyline.OnArc(centre, Number(element.Attribute("r")!.Value), 0, 2 * Math.PI)], IsClosed: true)];
        }

        Assert.Equal("path", element.Name.LocalName);
        return Read(element.Attribute("d")!.Value);
    }

    private static List<Polyline> Read(string data)
    {
        var contours = new List<Polyline>();
        var points = new List<Point2>();
        Point2 pen = default, start = default;
        for (var i = 0; i < data.Length;)
        {
            var command = data[i++];
            var end = i;
            while (end < data.Length && !char.IsAsciiLetter(data[end]))
            {
                end++;
            }

            var numbers = data[i..end].Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(Number).ToArray();
            i = end;
            var origin = char.IsAsciiLetterLower(command) ? pen : Point2.Origin;
            switch (char.ToUpperInvariant(command))
            {
                case 'M':
                    Assert.Equal(2, numbers.Length);
                    AddContour(isClosed: false);
                    points.Add(pen = start = To(origin, numbers));
                    break;
                case 'L':
                    Assert.Equal(2, numbers.Length);
                    points.Add(pen = To(origin, numbers));
                    break;
                case 'A':
                    Assert.Equal(7, numbers.Length);
                    var arcEnd = To(origin, numbers[5..]);
                    points.AddRange(Arc(pen, [.. numbers[..5], arcEnd.X, arcEnd.Y]));
                    pen = arcEnd;
                    break;
                case 'Z':
                    Assert.Empty(numbers);
                    AddContour(isClosed: true);
                    pen = start;
                    break;
                default:
                    throw new InvalidOperationException($"Path data hold '{command}'.");
            }
        }

        AddContour(isClosed: false);
        return contours;

        void AddContour(bool isClosed)
        {
            if (points.Count > 0)
            {
                contours.Add(new([.. points], isClosed));
                points.Clear();
            }
        }
    }

    private static Point2 To(Point2 origin, double[] numbers) => new(origin.X + numbers[0], origin.Y + numbers[1]);

    /// <summary>From ends to centre and angles: SVG 1.1, appendix F.6.5 (from memory), for circles.</summary>
    private static IEnumerable<Point2> Arc(Point2 start, double[] numbers)
    {
        var (radius, isLarge, isPositive) = (numbers[0], numbers[3] == 1, numbers[4] == 1);
        Assert.Equal(numbers[0], numbers[1]);
        Assert.Equal(0, numbers[2]);
        var end = new Point2(numbers[5], numbers[6]);
        var half = (start - end) / 2;
        radius = Math.Max(radius, half.Length);
        var factor = Math.Sqrt(Math.Max(0, (radius * radius) - half.LengthSquared) / half.LengthSquared) * (isLarge == isPositive ? -1 : 1);
        var centre = start.Towards(end, 0.5) + new Vector2(factor * half.Y, -factor * half.X);
        var from = (start - centre).Angle;
        var sweep = (end - centre).Angle - from;
        sweep += isPositive && sweep < 0 ? 2 * Math.PI : !isPositive && sweep > 0 ? -2 * Math.PI : 0;
        return Polyline.OnArc(centre, radius, from, sweep);
    }

    private double Millimetres(string attribute)
    {
        var text = Root.Attribute(attribute)!.Value;
        Assert.EndsWith("mm", text, StringComparison.Ordinal);
        return Number(text[..^2]);
    }

    private static double Number(string text) =>
        double.Parse(text, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture);
}
