namespace PlanForge.Airframe.Tests.Reading;

public class LineEndTests
{
    public static IEnumerable<TheoryDataRow<BrokenDescription>> All =>
    [
        .. BrokenYamlTests.Texts,
        .. BrokenKeysTests.Texts,
        .. BrokenValuesTests.Texts,
        .. BrokenExpressionsTests.Texts,
        .. BrokenRelationsTests.Errors,
        .. BrokenRelationsTests.Warnings,
    ];

    [Fact]
    public void Positions_do_not_depend_on_the_kind_of_line_end() => Assert.All(All, row =>
    {
        var description = row.Data;
        Assert.Equal(description.Expected, (description with { Text = description.Text.Replace("\n", "\r\n", StringComparison.Ordinal) }).Findings());
        Assert.Equal(description.Expected, (description with { Text = description.Text.Replace('\n', '\r') }).Findings());
    });

    [Fact]
    public void Positions_do_not_count_a_byte_order_mark() => Assert.All(
        All, row => Assert.Equal(row.Data.Expected, (row.Data with { Text = "\uFEFF" + row.Data.Text }).Findings()));

    // Comment and characters of two units in front move columns and offsets apart from each other.
    [Fact]
    public void Positions_follow_lines_added_in_front() => Assert.All(All, row => Assert.Equal(
        row.Data.Expected.Select(Moved),
        (row.Data with { Text = "# 🙂 é ° ½\n\n" + row.Data.Text }).Findings()));

    private static string Moved(string finding)
    {
        var colon = finding.IndexOf(':', StringComparison.Ordinal);
        var line = int.Parse(finding[..colon], System.Globalization.CultureInfo.InvariantCulture);
        return line == 0 ? finding : FormattableString.Invariant($"{line + 2}{MovedReference(finding[colon..])}");
    }

    // Messages that name another line move with it.
    private static string MovedReference(string message)
    {
        const string Reference = " in line ";
        var at = message.IndexOf(Reference, StringComparison.Ordinal);
        if (at < 0)
        {
            return message;
        }

        var start = at + Reference.Length;
        var end = start;
        while (end < message.Length && char.IsAsciiDigit(message[end]))
        {
            end++;
        }

        var line = int.Parse(message[start..end], System.Globalization.CultureInfo.InvariantCulture);
        return FormattableString.Invariant($"{message[..start]}{line + 2}{message[end..]}");
    }
}
