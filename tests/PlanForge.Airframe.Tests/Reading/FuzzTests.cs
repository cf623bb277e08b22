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

    private static int Count =>
        int.TryParse(Environment.GetEnvironmentVariable("PLANFORGE_FUZZ"), CultureInfo.InvariantCulture, out var count) ? count : UsualCount;

    [Fact]
    public void No_text_makes_the_reader_throw_hang_or_contradict_itself()
    {
        string[] seeds = [Description.Complete, BrokenDescription.Sound];
        for (var i = 0; i < Count; i++)
        {
            var random = new Random(i);
            Check(Mutation.Of(seeds[random.Next(seeds.Length)], 1 + random.Next(GreatestMutationCount), random), i);
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
        var lines = DiagnosticText.Lines(text);
        Assert.All(result.Diagnostics.Where(d => d.At.File == "complete.yaml"), finding =>
        {
            Assert.InRange(finding.At.Line, 0, lines.Count);
            if (finding.At.Line > 0)
            {
                Assert.InRange(finding.At.Column, 1, lines[finding.At.Line - 1].Length + 1);
                Assert.InRange(finding.At.Length, 1, Math.Max(1, lines[finding.At.Line - 1].Length - finding.At.Column + 1));
            }

            Assert.DoesNotContain('\n', finding.Message);
            Assert.InRange(finding.Message.Length, 1, 500);
            Assert.StartsWith(finding.ToString(), DiagnosticText.Render(finding, lines), StringComparison.Ordinal);
        });
        Assert.Distinct(result.Diagnostics);
    }
}
