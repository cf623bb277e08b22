using System.Diagnostics;
using System.Globalization;
using PlanForge.Airframe.Diagnostics;
using PlanForge.Airframe.Reading;

namespace PlanForge.Airframe.Tests.Reading;

/// <summary>
/// Broken texts of every kind: sound descriptions with characters, lines and tokens deleted, swapped, doubled or replaced.
/// The variable PLANFORGE_FUZZ sets how many are tried.
/// </summary>
public class FuzzTests
{
    private const int UsualCount = 2000;
    private const int GreatestMutationCount = 6;

    // Reading one takes some 2 ms on a quiet machine; a busy one must not fail the test, an endless loop must.
    private static readonly TimeSpan Longest = TimeSpan.FromSeconds(10);

    private static readonly char[] Separators = [' ', '\n', ',', ':', '{', '}', '[', ']', '(', ')', '"', '\''];

    private static readonly string[] Fragments =
    [
        "{", "}", "[", "]", ":", ",", "- ", "? ", "\"", "'", "#", "&a ", "*a", "!!str ", "<<: ", "|\n", ">\n", "%", "@", "`", "\t", "\r", "\r\n",
        "\\", "\\x", "\"\\U99999999\"", "---\n", "...\n", "(", ")", "+", "-", "*", "/", "1/0", "1e999", "-0", "sqrt(", "max(", "1,5", "'' ", "°",
        "½", "naca ", ".dat", "body_width", "null", "~", "\0", "\uFEFF", "\u0085", "\u2028", "\uD800", "\uDC00", "🙂", "é", "\u202E", "mm", " in",
    ];

    private static int Count =>
        int.TryParse(Environment.GetEnvironmentVariable("PLANFORGE_FUZZ"), CultureInfo.InvariantCulture, out var count) ? count : UsualCount;

    [Fact]
    public void No_text_makes_the_reader_throw_hang_or_contradict_itself()
    {
        string[] seeds = [Description.Complete, BrokenDescription.Sound];
        for (var i = 0; i < Count; i++)
        {
            var random = new Random(i);
            var text = seeds[random.Next(seeds.Length)];
            for (var n = random.Next(GreatestMutationCount); n >= 0; n--)
            {
                text = Mutated(text, random);
            }

            Check(text, i);
        }
    }

    private static void Check(string text, int number)
    {
        var start = Stopwatch.GetTimestamp();
        ReadResult result;
        try
        {
            result = Description.Read(text);
        }
        catch (Exception fault)
        {
            throw new InvalidOperationException($"text {number} makes the reader throw:\n{text}", fault);
        }

        Assert.True(Stopwatch.GetElapsedTime(start) < Longest, $"text {number} takes too long:\n{text}");
        Assert.Equal(result.Airframe is null, result.Diagnostics.Any(d => d.Severity == Severity.Error));
        var lines = text.TrimStart('\uFEFF').ReplaceLineEndings("\n").Split('\n', '\r');
        Assert.All(result.Diagnostics.Where(d => d.At.File == "complete.yaml"), finding =>
        {
            Assert.InRange(finding.At.Line, 0, lines.Length + CountOfUnusualLineEnds(text));
            Assert.True(finding.At.Line == 0 ? finding.At.Column == 0 : finding.At is { Column: > 0, Length: > 0 }, $"text {number}: {finding}");
            Assert.DoesNotContain('\n', finding.Message);
            Assert.InRange(finding.Message.Length, 1, 500);
            Assert.StartsWith(finding.ToString(), DiagnosticText.Render(finding, text), StringComparison.Ordinal);
        });
        Assert.Distinct(result.Diagnostics);
    }

    private static int CountOfUnusualLineEnds(string text) => text.Count(c => c == '\r');

    private static string Mutated(string text, Random random)
    {
        if (text.Length == 0)
        {
            return Fragments[random.Next(Fragments.Length)];
        }

        var (from, to) = Stretch(text, random);
        var at = random.Next(text.Length + 1);
        return random.Next(7) switch
        {
            0 => text.Remove(from, to - from),
            1 => text.Insert(at, text[from..to]),
            2 => text.Insert(at, Fragments[random.Next(Fragments.Length)]),
            3 => text[..from] + Fragments[random.Next(Fragments.Length)] + text[to..],
            4 => text[..from] + (char)random.Next(0x10000) + text[to..],
            5 => text[..at],
            _ => Swapped(text, from, to, random),
        };
    }

    private static string Swapped(string text, int from, int to, Random random)
    {
        var (otherFrom, otherTo) = Stretch(text, random);
        return otherFrom < to ? text : text[..from] + text[otherFrom..otherTo] + text[to..otherFrom] + text[from..to] + text[otherTo..];
    }

    /// <summary>A character, a token or a line.</summary>
    private static (int From, int To) Stretch(string text, Random random)
    {
        var at = random.Next(text.Length);
        return random.Next(3) switch
        {
            0 => (at, at + 1),
            1 => (text.LastIndexOfAny(Separators, at) + 1, After(text.IndexOfAny(Separators, at), at)),
            _ => (text.LastIndexOf('\n', at) + 1, After(text.IndexOf('\n', at) + 1, at)),
        } is var (from, to) && from <= to ? (from, to) : (at, at + 1);

        int After(int found, int least) => found <= 0 ? text.Length : Math.Max(found, least);
    }
}
