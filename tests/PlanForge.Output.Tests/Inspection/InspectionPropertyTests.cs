using PlanForge.Geometry;
using PlanForge.Output.Inspection;

namespace PlanForge.Output.Tests.Inspection;

/// <summary>Sound parts stay without findings, and every slip put into them is found.</summary>
public sealed class InspectionPropertyTests
{
    private const int Count = 300;

    [Fact]
    public void Sound_parts_have_no_findings_however_they_are_written()
    {
        for (var seed = 0; seed < Count; seed++)
        {
            var part = RandomContours.Of(seed);
            Assert.Equal([], CodesOf(CutFileText.Dxf(part.Entities(new(seed))), "part.dxf"));
            Assert.Equal([], CodesOf(CutFileText.Dxf([CutFileText.Polyline(part.Outline), CutFileText.Circle(part.Middle, part.HoleRadius)]), "part.dxf"));
            Assert.Equal([], CodesOf(CutFileText.Svg([CutFileText.Path(part.Outline), CutFileText.Path(Path2.Circle(part.Middle, part.HoleRadius))]), "part.svg"));
        }
    }

    // The cut length is known without the product's reader: of the outline by its segments, of the hole by 2 pi r.
    [Fact]
    public void Length_of_the_cut_is_that_of_the_part_in_both_formats()
    {
        for (var seed = 0; seed < Count; seed++)
        {
            var part = RandomContours.Of(seed);
            var length = part.Outline.Length + (2 * Math.PI * part.HoleRadius);
            byte[][] files = [CutFileText.Dxf(part.Entities(new(seed))), CutFileText.Svg([CutFileText.Path(part.Outline), CutFileText.SvgCircle(part.Middle, part.HoleRadius)])];
            foreach (var file in files)
            {
                var layer = Assert.Single(CutFileInspector.Inspect("part", file, new()).Summary.Layers);
                Assert.Equal((2, 0, true), (layer.ContourCount, layer.OpenCount, layer.IsCut));
                Assert.Equal(length, layer.Length, 1e-4);
            }
        }
    }

    [Theory]
    [InlineData("remove a segment", FindingCode.OpenContour)]
    [InlineData("move an end by 0.2 mm", FindingCode.Gap)]
    [InlineData("duplicate an entity", FindingCode.Duplicate)]
    [InlineData("scale by 25.4", FindingCode.Size)]
    [InlineData("add a spline", FindingCode.Spline)]
    [InlineData("add a line without length", FindingCode.ZeroLength)]
    [InlineData("add a hole over the outline", FindingCode.Crossing)]
    [InlineData("add a hole 0.5 mm from the other", FindingCode.Narrow)]
    [InlineData("forget the units", FindingCode.Units)]
    public void Every_slip_is_found(string slip, string code)
    {
        for (var seed = 0; seed < Count; seed++)
        {
            var random = new Random(seed);
            var found = CodesOf(Slipped(slip, RandomContours.Of(seed), random), "part.dxf");

            Assert.True(found.Contains(code), $"{slip}, part {seed}: found {string.Join(", ", found)}");
        }
    }

    [Fact]
    public void Holding_tabs_are_a_note_and_no_fault()
    {
        for (var seed = 0; seed < Count; seed++)
        {
            var random = new Random(seed);
            var part = RandomContours.Of(seed);
            var width = 0.3 + (2.7 * random.NextDouble());
            var pieces = part.Outline.Segments.SelectMany((segment, i) => i % 2 == 0 ? WithGap(segment, width) : [segment]);
            var result = CutFileInspector.Inspect("part.dxf", CutFileText.Dxf(pieces.Select(CutFileText.Entity)), new());

            var note = Assert.Single(result.Findings);
            Assert.Equal((FindingSeverity.Note, FindingCode.HoldingTabs), (note.Severity, note.Code));
            Assert.StartsWith($"{(part.Outline.SegmentCount + 1) / 2} gaps of ", note.Text, StringComparison.Ordinal);
            Assert.Equal((1, 0), (result.Summary.Layers[0].ContourCount, result.Summary.Layers[0].OpenCount));
        }
    }

    private static byte[] Slipped(string slip, RandomContours part, Random random)
    {
        var entities = part.Entities(random);
        var (chosen, last) = (random.Next(entities.Count - 1), entities.Count - 1);
        switch (slip)
        {
            case "remove a segment":
                entities.RemoveAt(chosen);
                break;
            case "move an end by 0.2 mm":
                var segments = part.Outline.Segments.ToArray();
                var moved = Array.FindIndex(segments, segment => segment.IsLine);
                var towards = Vector2.FromAngle(random.NextDouble() * 2 * Math.PI) * 0.2;
                segments[moved < 0 ? 0 : moved] = segments[moved < 0 ? 0 : moved] with { End = segments[moved < 0 ? 0 : moved].End + towards };
                entities = [.. segments.Select(CutFileText.Entity)];
                break;
            case "duplicate an entity":
                entities.Insert(random.Next(last), entities[random.Next(entities.Count)]);
                break;
            case "scale by 25.4":
                entities = [CutFileText.Polyline(Scaled(part.Outline, 25.4))];
                break;
            case "add a spline":
                entities.Insert(chosen, "0\nSPLINE\n8\nCUT\n70\n8\n71\n3\n");
                break;
            case "add a line without length":
                entities.Insert(chosen, CutFileText.Entity(new(part.Outline.Start, part.Outline.Start, 0)));
                break;
            case "add a hole over the outline":
                entities.Insert(chosen, CutFileText.Circle(part.Outline.SegmentAt(0).PointAt(0.2 + (0.6 * random.NextDouble())), 3));
                break;
            case "add a hole 0.5 mm from the other":
                entities.Insert(chosen, CutFileText.Circle(part.Middle + (Vector2.FromAngle(random.NextDouble() * 6) * (part.HoleRadius + 3.5)), 3));
                break;
        }

        return CutFileText.Dxf(entities, slip == "forget the units" ? 0 : 4);
    }

    private static Path2 Scaled(Path2 path, double factor) =>
        Path2.Closed(path.Vertices.Select(vertex => vertex with { Point = new(vertex.Point.X * factor, vertex.Point.Y * factor) }));

    private static Segment2[] WithGap(Segment2 segment, double width)
    {
        var half = width / segment.Length / 2;
        return [segment.Part(0, 0.5 - half), segment.Part(0.5 + half, 1)];
    }

    private static string[] CodesOf(byte[] file, string name) =>
        [.. CutFileInspector.Inspect(name, file, new()).Findings.Select(finding => finding.Code)];
}
