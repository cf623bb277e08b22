using System.Diagnostics;
using System.Globalization;
using System.Text;
using PlanForge.Output.Inspection;

namespace PlanForge.Output.Tests.Inspection;

public sealed class InspectionLimitTests
{
    private const int UsualCount = 3000;

    // Far above what it takes on a busy machine, far below a quadratic search or an endless loop.
    private static readonly TimeSpan Longest = TimeSpan.FromSeconds(60);

    private static int FuzzCount =>
        int.TryParse(Environment.GetEnvironmentVariable("PLANFORGE_FUZZ"), CultureInfo.InvariantCulture, out var count) ? count : UsualCount;

    [Fact]
    public void No_file_makes_the_inspector_throw_hang_or_speak_of_places_that_are_not_there()
    {
        var seeds = CutFileCorpus.FilesOf("Broken").Concat(CutFileCorpus.FilesOf("Clean")).Select(file => (Path.GetFileName(file), File.ReadAllBytes(file))).ToArray();
        for (var i = 0; i < FuzzCount; i++)
        {
            var random = new Random(i);
            var (name, content) = seeds[random.Next(seeds.Length)];
            Check(name, Mutated(content, seeds[random.Next(seeds.Length)].Item2, random), i);
        }
    }

    // Heaps of lines in the shapes that defeat simple searches: a grid of parts, one spiral of chords, lines all across each
    // other, one point, one line drawn over and over.
    [Theory]
    [InlineData("squares")]
    [InlineData("spiral")]
    [InlineData("star")]
    [InlineData("point")]
    [InlineData("pile")]
    public void Fifty_thousand_lines_are_inspected_without_hanging(string heap)
    {
        var text = new StringBuilder();
        for (var i = 0; i < 50_000; i++)
        {
            var (x1, y1, x2, y2) = heap switch
            {
                "squares" => Square(i),
                "spiral" => (Spiral(i).X, Spiral(i).Y, Spiral(i + 1).X, Spiral(i + 1).Y),
                "star" => (-1000 * Math.Cos(i), -1000 * Math.Sin(i), 1000 * Math.Cos(i), 1000 * Math.Sin(i)),
                "point" => (0.0, 0.0, 0.0, 0.0),
                _ => (0.0, 0.0, 100.0 + (i * 1e-3), 0.0),
            };
            text.Append(CutFileText.Invariant($"0\nLINE\n8\nCUT\n10\n{x1:F4}\n20\n{y1:F4}\n11\n{x2:F4}\n21\n{y2:F4}\n"));
        }

        var file = CutFileText.Dxf([text.ToString()]);
        var start = Stopwatch.GetTimestamp();
        var result = CutFileInspector.Inspect("heap.dxf", file, new());

        Assert.True(Stopwatch.GetElapsedTime(start) < Longest, $"{heap}: {Stopwatch.GetElapsedTime(start).TotalSeconds:F1} s");
        Assert.Equal(heap == "squares", result.Findings.IsEmpty);
    }

    [Fact]
    public void File_that_is_too_large_is_refused() => Assert.Equal(
        [FindingCode.TooLarge], CutFileInspector.Inspect("a.dxf", new byte[CutFileInspector.GreatestSize + 1], new()).Findings.Select(finding => finding.Code));

    [Fact]
    public void Groups_without_end_are_refused()
    {
        var groups = string.Concat(Enumerable.Repeat("<g>", 100_000)) + string.Concat(Enumerable.Repeat("</g>", 100_000));
        var result = CutFileInspector.Inspect("a.svg", CutFileText.Svg([groups, "<circle r=\"30\"/>"]), new());

        Assert.Equal([FindingCode.TooLarge], result.Findings.Select(finding => finding.Code));
        Assert.Equal(1, result.Summary.Layers.Single().ContourCount);
    }

    [Fact]
    public void Of_one_kind_a_few_dozen_are_listed_and_the_others_counted()
    {
        var dots = Enumerable.Range(0, 1000).Select(i => CutFileText.Invariant($"0\nPOINT\n8\nCUT\n10\n{i}\n20\n0\n"));
        var result = CutFileInspector.Inspect("a.dxf", CutFileText.Dxf(dots), new());

        Assert.InRange(result.Findings.Length, 20, 60);
        Assert.Equal("and 960 more of this kind", result.Findings[^1].Text);
    }

    [Fact]
    public void Format_is_seen_by_the_content_where_the_ending_is_missing()
    {
        Assert.Equal("SVG", CutFileInspector.Inspect("part", CutFileText.Svg(["<rect width=\"60\" height=\"40\"/>"]), new()).Summary.Format);
        Assert.Equal("DXF AC1015", CutFileInspector.Inspect("part", CutFileText.Dxf([CutFileText.Circle(new(0, 0), 30)]), new()).Summary.Format);
    }

    [Theory]
    [InlineData(0.0)]
    [InlineData(-1.0)]
    [InlineData(double.NaN)]
    public void Thickness_is_over_zero(double thickness) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => CutFileInspector.Inspect("a.dxf", [], new(thickness)));

    private static (double, double, double, double) Square(int i)
    {
        var (x, y) = (i / 4 % 112 * 10, i / 4 / 112 * 10);
        return (i % 4) switch
        {
            0 => (x, y, x + 5, y),
            1 => (x + 5, y, x + 5, y + 5),
            2 => (x + 5, y + 5, x, y + 5),
            _ => (x, y + 5, x, y),
        };
    }

    private static (double X, double Y) Spiral(int i) => ((100 + (i * 0.004)) * Math.Cos(i * 0.01), (100 + (i * 0.004)) * Math.Sin(i * 0.01));

    private static void Check(string name, byte[] content, int number)
    {
        var start = Stopwatch.GetTimestamp();
        InspectionResult result;
        try
        {
            result = CutFileInspector.Inspect(name, content, new(3, new(300, 200)));
        }
        catch (Exception fault)
        {
            throw new InvalidOperationException($"file {number}, {name}:\n{Encoding.Latin1.GetString(content)}", fault);
        }

        Assert.True(Stopwatch.GetElapsedTime(start) < Longest, $"file {number}, {name}, takes too long");
        var lines = content.Count(character => character == '\n') + content.Count(character => character == '\r') + 1;
        Assert.All(result.Findings, finding =>
        {
            Assert.InRange(finding.Line, 0, lines);
            Assert.Equal(finding.Line > 0, finding.Column > 0);
            Assert.InRange(finding.Text.Length, 1, 500);
            Assert.DoesNotContain(finding.Text, character => char.IsControl(character));
            Assert.DoesNotContain("NaN mm", finding.Text, StringComparison.Ordinal);
            Assert.DoesNotContain("(NaN", finding.Text, StringComparison.Ordinal);
        });
    }

    private static byte[] Mutated(byte[] content, byte[] other, Random random)
    {
        var bytes = content.ToList();
        for (var i = random.Next(1, 7); i > 0 && bytes.Count > 0; i--)
        {
            var (at, length) = (random.Next(bytes.Count), random.Next(1, 20));
            length = Math.Min(length, bytes.Count - at);
            switch (random.Next(6))
            {
                case 0:
                    bytes.RemoveRange(at, length);
                    break;
                case 1:
                    bytes[at] = (byte)random.Next(256);
                    break;
                case 2:
                    bytes.InsertRange(at, bytes.GetRange(at, length));
                    break;
                case 3:
                    bytes[at] = "0123456789.-eEMLACSZ<>&\n"u8[random.Next(24)];
                    break;
                case 4:
                    var from = random.Next(other.Length);
                    bytes.InsertRange(at, other[from..Math.Min(other.Length, from + 60)]);
                    break;
                default:
                    bytes.InsertRange(at, Encoding.ASCII.GetBytes(new[] { "1e308", "-1e-308", "9999999", "NaN", "0", "1e5", "\r" }[random.Next(7)]));
                    break;
            }
        }

        return [.. bytes];
    }
}
