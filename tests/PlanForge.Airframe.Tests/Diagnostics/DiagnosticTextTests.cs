using PlanForge.Airframe.Diagnostics;

namespace PlanForge.Airframe.Tests.Diagnostics;

public class DiagnosticTextTests
{
    [Fact]
    public void A_finding_is_shown_with_its_line_and_carets_below_the_place() => Assert.Equal(
        """
        oxbow.yaml:2:8: error: `chord` is 0 mm; it must be over 0 mm
        chord: 0 mm
               ^^^^
        """.ReplaceLineEndings("\n"),
        Render("name: Oxbow\nchord: 0 mm\n", 2, 8, 4, "`chord` is 0 mm; it must be over 0 mm"));

    [Theory]
    [InlineData("a: 1\nb: 2", 2, 4, 1, "b: 2\n   ^")]
    [InlineData("a: 1\r\nb: 2\r\n", 2, 4, 1, "b: 2\n   ^")]
    [InlineData("a: 1\rb: 2\r", 2, 4, 1, "b: 2\n   ^")]
    [InlineData("\uFEFFa: 1\n", 1, 4, 1, "a: 1\n   ^")]
    [InlineData("\ta:\t1\n", 1, 5, 1, "\ta:\t1\n\t  \t^")]
    [InlineData("a:\n", 1, 3, 1, "a:\n  ^")]
    [InlineData("a: 1\n", 1, 4, 90, "a: 1\n   ^")]
    [InlineData("a: 1\n", 1, 90, 1, "a: 1\n    ^")]
    [InlineData("a: 🙂 1\n", 1, 7, 1, "a: 🙂 1\n     ^")]
    [InlineData("a: e\u0301 1\n", 1, 7, 1, "a: e\u0301 1\n     ^")]
    [InlineData("a: \u001b[31m1\n", 1, 9, 1, "a: \uFFFD[31m1\n        ^")]
    public void Carets_stand_below_the_place(string text, int line, int column, int length, string expected) =>
        Assert.Equal($"oxbow.yaml:{line}:{column}: error: wrong\n{expected}", Render(text, line, column, length, "wrong"));

    [Fact]
    public void A_long_line_is_shown_around_the_place()
    {
        var text = new string('a', 200) + "WRONG" + new string('b', 200);
        Assert.Equal(
            [
                "oxbow.yaml:1:201: error: wrong",
                "…" + new string('a', 32) + "WRONG" + new string('b', 59) + "…",
                new string(' ', 33) + "^^^^^",
            ],
            Render(text, 1, 201, 5, "wrong").Split('\n'));
    }

    [Fact]
    public void A_long_line_is_shown_to_its_end_when_the_place_is_near()
    {
        var lines = Render(new string('a', 200) + "WRONG", 1, 201, 5, "wrong").Split('\n');
        Assert.Equal(["…" + new string('a', 91) + "WRONG", new string(' ', 92) + "^^^^^"], lines[1..]);
    }

    [Fact]
    public void A_window_cuts_no_character_in_two()
    {
        var lines = Render(string.Concat(Enumerable.Repeat("🙂", 100)) + "WRONG" + string.Concat(Enumerable.Repeat("🙂", 100)), 1, 201, 5, "wrong").Split('\n');
        Assert.Equal("…" + string.Concat(Enumerable.Repeat("🙂", 16)) + "WRONG" + string.Concat(Enumerable.Repeat("🙂", 29)) + "…", lines[1]);
    }

    [Theory]
    [InlineData(0, 0)]
    [InlineData(3, 1)]
    public void A_finding_without_a_line_is_its_message(int line, int column)
    {
        var finding = Diagnostic.Warning(new("oxbow.yaml", line, column), "odd");
        Assert.Equal(finding.ToString(), DiagnosticText.Render(finding, DiagnosticText.Lines("a: 1\n")));
    }

    [Fact]
    public void A_finding_about_the_whole_file_has_no_line() =>
        Assert.Equal("oxbow.yaml: warning: odd", Diagnostic.Warning(SourcePosition.WholeFile("oxbow.yaml"), "odd").ToString());

    private static string Render(string text, int line, int column, int length, string message) =>
        DiagnosticText.Render(Diagnostic.Error(new("oxbow.yaml", line, column, length), message), DiagnosticText.Lines(text));
}
