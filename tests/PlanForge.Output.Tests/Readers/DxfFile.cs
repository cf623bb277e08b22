using System.Globalization;
using System.Text;
using PlanForge.Geometry;

namespace PlanForge.Output.Tests.Readers;

/// <summary>A group code and its value.</summary>
internal readonly record struct DxfTag(int Code, string Value)
{
    public double Number => double.Parse(Value, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture);
}

/// <summary>One object of a DXF file: the tags from a 0 to the next.</summary>
internal sealed record DxfObject(string Kind, IReadOnlyList<DxfTag> Tags)
{
    /// <summary>The only value under a code.</summary>
    public string this[int code] => Tags.Single(tag => tag.Code == code).Value;

    public double Number(int code) => Tags.Single(tag => tag.Code == code).Number;

    public IEnumerable<double> Numbers(int code) => Tags.Where(tag => tag.Code == code).Select(tag => tag.Number);

    /// <summary>Its own handle: 5, or 105 on a dimension style.</summary>
    public string? Handle => Tags.Where(tag => tag.Code == (Kind == "DIMSTYLE" ? 105 : 5)).Select(tag => tag.Value).SingleOrDefault();
}

/// <summary>
/// A small strict reader of DXF in text form, by the published rules of the format: pairs of lines, sections of objects.
/// It shares no code with the writer.
/// </summary>
internal sealed class DxfFile
{
    public DxfFile(byte[] bytes)
    {
        var text = Encoding.ASCII.GetString(bytes);
        Assert.EndsWith("\r\n", text, StringComparison.Ordinal);
        var lines = text[..^2].Split("\r\n");
        Assert.True(lines.Length % 2 == 0 && !lines.Any(line => line.Contains('\n', StringComparison.Ordinal)));
        var all = lines.Chunk(2).Select(pair => new DxfTag(int.Parse(pair[0], NumberStyles.None, CultureInfo.InvariantCulture), pair[1])).ToList();
        Remarks = [.. all.Where(tag => tag.Code == 999).Select(tag => tag.Value)];
        Tags = [.. all.Where(tag => tag.Code != 999)];
        Assert.Equal(new(0, "EOF"), Tags[^1]);
        string? section = null;
        for (var i = 0; i < Tags.Count - 1;)
        {
            if (Tags[i] == new DxfTag(0, "SECTION"))
            {
                Assert.Null(section);
                section = Tags[i + 1].Value;
                Sections.Add(section, []);
                i += 2;
                if (section == "HEADER")
                {
                    i = ReadHeader(i);
                }

                continue;
            }

            Assert.Equal(0, Tags[i].Code);
            Assert.NotNull(section);
            var end = i + 1;
            while (Tags[end].Code != 0)
            {
                end++;
            }

            if (Tags[i].Value == "ENDSEC")
            {
                section = null;
            }
            else
            {
                Sections[section].Add(new(Tags[i].Value, [.. Tags.Skip(i + 1).Take(end - i - 1)]));
            }

            i = end;
        }
    }

    /// <summary>All tags but the remarks, which mean nothing to a reader.</summary>
    public IReadOnlyList<DxfTag> Tags { get; }

    public IReadOnlyList<string> Remarks { get; }

    public Dictionary<string, List<DxfObject>> Sections { get; } = [];

    public Dictionary<string, List<DxfTag>> Header { get; } = [];

    public IReadOnlyList<DxfObject> Entities => Sections["ENTITIES"];

    /// <summary>The entities in the form of R2000: R12 has the vertices of a polyline in objects of their own.</summary>
    public IReadOnlyList<DxfObject> Plain
    {
        get
        {
            var plain = new List<DxfObject>();
            foreach (var entity in Entities)
            {
                switch (entity.Kind)
                {
                    case "POLYLINE":
                        Assert.Equal("1", entity[66]);
                        plain.Add(new("LWPOLYLINE", [new(8, entity[8]), new(70, entity[70])]));
                        break;
                    case "VERTEX":
                        Assert.Equal(plain[^1][8], entity[8]);
                        plain[^1] = plain[^1] with { Tags = [.. plain[^1].Tags, .. entity.Tags.Where(tag => tag.Code is 10 or 20 or 42)] };
                        break;
                    case "SEQEND":
                        var count = plain[^1].Tags.Count(tag => tag.Code == 10).ToString(CultureInfo.InvariantCulture);
                        plain[^1] = plain[^1] with { Tags = [.. plain[^1].Tags, new(90, count)] };
                        break;
                    default:
                        plain.Add(entity);
                        break;
                }
            }

            return plain;
        }
    }

    public IEnumerable<DxfObject> Objects => Sections.Values.SelectMany(section => section);

    /// <summary>The geometry of an entity by the definitions of the format (bulge: tangent of a quarter of the included angle).</summary>
    public static Polyline Contour(DxfObject entity)
    {
        switch (entity.Kind)
        {
            case "LINE":
                return new([new(entity.Number(10), entity.Number(20)), new(entity.Number(11), entity.Number(21))], IsClosed: false);
            case "CIRCLE":
                return new([.. Polyline.OnArc(new(entity.Number(10), entity.Number(20)), entity.Number(40), 0, 2 * Math.PI)], IsClosed: true);
            case "ARC":
                var centre = new Point2(entity.Number(10), entity.Number(20));
                var (radius, from) = (entity.Number(40), entity.Number(50) * Math.PI / 180);
                var sweep = (entity.Number(51) * Math.PI / 180) - from;
                sweep += sweep < 0 ? 2 * Math.PI : 0;
                return new([centre + (Vector2.FromAngle(from) * radius), .. Polyline.OnArc(centre, radius, from, sweep)], IsClosed: false);
            case "LWPOLYLINE":
                return FromPolyline(entity);
            default:
                throw new InvalidOperationException($"{entity.Kind} has no place in a cut file.");
        }
    }

    private static Polyline FromPolyline(DxfObject entity)
    {
        var isClosed = entity[70] == "1";
        var vertices = new List<(Point2 Point, double Bulge)>();
        foreach (var tag in entity.Tags)
        {
            switch (tag.Code)
            {
                case 10:
                    vertices.Add((new(tag.Number, 0), 0));
                    break;
                case 20:
                    vertices[^1] = (new(vertices[^1].Point.X, tag.Number), 0);
                    break;
                case 42:
                    vertices[^1] = (vertices[^1].Point, tag.Number);
                    break;
            }
        }

        Assert.Equal(entity[90], vertices.Count.ToString(CultureInfo.InvariantCulture));
        var points = new List<Point2> { vertices[0].Point };
        for (var i = 0; i < vertices.Count - (isClosed ? 0 : 1); i++)
        {
            var (start, bulge) = vertices[i];
            var end = vertices[(i + 1) % vertices.Count].Point;
            if (Math.Abs(bulge) * (end - start).Length / 2 < 1e-5)
            {
                points.Add(end);
                continue;
            }

            // Included angle 4 atan b; radius = half chord / sin(angle / 2); the centre lies on the bisector of the chord.
            var angle = 4 * Math.Atan(bulge);
            var half = (end - start).Length / 2;
            var radius = half / Math.Sin(Math.Abs(angle) / 2);
            var centre = start.Towards(end, 0.5) + ((end - start).Unit().Left * (half / Math.Tan(angle / 2)));
            points.AddRange(Polyline.OnArc(centre, radius, (start - centre).Angle, angle));
        }

        return new(points, isClosed);
    }

    private int ReadHeader(int index)
    {
        var name = "";
        for (; Tags[index].Code != 0; index++)
        {
            if (Tags[index].Code == 9)
            {
                name = Tags[index].Value;
                Header.Add(name, []);
            }
            else
            {
                Header[name].Add(Tags[index]);
            }
        }

        return index;
    }
}
