using System.Globalization;
using System.Text;
using CsCheck;
using PlanForge.Folders;

namespace PlanForge.Tests.Folders;

public sealed class HistoryTests
{
    private static readonly DrawnState First = new(
        "x", "A", "AAAA-AA", "0.1.0", [new("former-F1", "Former F1", true, "F1F1-00")], [new(1, "Formers", "S1S1-00", ["former-F1"])], ValuesOf(3));

    private static readonly DrawnState Second = First with { Fingerprint = "BBBB-BB", Parts = [First.Parts[0] with { Fingerprint = "F1F1-01" }], Values = ValuesOf(4) };

    // As a version wrote it that kept each state whole, without values.
    private const string WholeStates =
        """
        {
          "planforge": "0.1.0",
          "earlier": [
            {
              "planforge": "0.0.9",
              "design": "x",
              "revision": "",
              "fingerprint": "CCCC-CC",
              "parts": [
                {
                  "id": "former-F1",
                  "title": "Former F1",
                  "cut": true,
                  "fingerprint": "F1F1-02"
                }
              ],
              "sheets": []
            },
            {"planforge": "0.0.8", "design": 1}
          ]
        }

        """;

    // Lists of anything, each entry once.
    private static readonly Gen<DrawnState> AnyState = Gen.Select(
        Gen.Int[0, 9].Array[0, 8], Gen.Int[0, 9].Array[0, 4], Gen.Int[0, 9].Array[0, 8].Null(), Gen.Int[0, 3],
        (parts, sheets, values, fingerprint) => First with
        {
            Fingerprint = Text(fingerprint),
            Parts = [.. parts.Distinct().Select(part => new DrawnPart(Text(part), "", part % 2 == 0, ""))],
            Sheets = [.. sheets.Distinct().Select(sheet => new DrawnSheet(sheet, "", "", [Text(sheet)]))],
            Values = values is null ? null : new([.. values.Distinct().Select(value => $"{{\"path\":\"{value}\"}}")], []),
        });

    [Fact]
    public void There_is_none_while_nothing_else_was_drawn()
    {
        Assert.Null(History.After(null, default, First));
        Assert.Null(History.After(First, default, First));
    }

    [Fact]
    public void What_was_drawn_before_is_kept_and_read_back() => Assert.True(Assert.Single(History.Read(History.After(First, default, Second)!.Content, Second)).IsSameAs(First));

    [Fact]
    public void A_run_that_draws_the_same_changes_nothing()
    {
        var history = History.After(First, default, Second)!.Content;
        Assert.Equal(history.ToArray(), History.After(Second, history, Second)!.Content.ToArray());
    }

    [Fact]
    public void Every_state_that_was_ever_drawn_is_read_back_the_latest_first() => AnyState.Array[1, 20].Sample(
        drawn => Same(History.Read(Drawn(drawn), drawn[^1]), Past(drawn)),
        iter: 500);

    [Fact]
    public void A_run_adds_one_line_and_passes_the_others_on_byte_for_byte() => AnyState.Array[3, 12].Where(drawn => !drawn[^1].IsSameAs(drawn[^2])).Sample(
        drawn =>
        {
            string before = Encoding.UTF8.GetString(Drawn(drawn[..^1]).Span), after = Encoding.UTF8.GetString(Drawn(drawn).Span);
            return before.Length == 0 || after.EndsWith(before[before.IndexOf("    {", StringComparison.Ordinal)..], StringComparison.Ordinal);
        },
        iter: 200);

    [Fact]
    public void The_oldest_step_is_let_go_of_a_thousand()
    {
        DrawnState[] drawn = [.. Enumerable.Range(0, History.Greatest + 3).Select(number => First with { Fingerprint = Text(number) })];
        Assert.Equal(1000, History.Greatest);
        Assert.True(Same(History.Read(Drawn(drawn), drawn[^1]), Past(drawn).Take(History.Greatest)));
    }

    [Fact]
    public void States_that_were_kept_whole_are_read_and_kept_without_values()
    {
        var file = Encoding.UTF8.GetBytes(WholeStates);
        var state = Assert.Single(History.Read(file, First));
        Assert.Equal(("CCCC-CC", "F1F1-02", "0.0.9", null), (state.Fingerprint, state.Parts[0].Fingerprint, state.Version, state.Values));

        var next = History.After(First, file, Second)!.Content;
        Assert.Equal(["AAAA-AA", "CCCC-CC"], History.Read(next, Second).Select(it => it.Fingerprint));
        Assert.Equal(["CCCC-CC"], History.Read(History.After(First, file, First)!.Content, First).Select(it => it.Fingerprint));
    }

    [Fact]
    public void A_file_that_an_editor_set_anew_is_read_all_the_same()
    {
        DrawnState[] drawn = [First, Second, First, Second];
        using var document = System.Text.Json.JsonDocument.Parse(Drawn(drawn));
        foreach (var file in new[] { JsonText.Line(document.RootElement.WriteTo), Crlf(JsonText.Write(document.RootElement.WriteTo)) })
        {
            Assert.True(Same(History.Read(file, Second), Past(drawn)));
            Assert.True(Same(History.Read(History.After(Second, file, First)!.Content, First), Past([.. drawn, First])));
        }

        static byte[] Crlf(byte[] text) => Encoding.UTF8.GetBytes(Encoding.UTF8.GetString(text).Replace("\n", "\r\n", StringComparison.Ordinal));
    }

    [Fact]
    public void Of_a_file_that_was_cut_off_the_whole_lines_are_kept()
    {
        DrawnState[] drawn = [First, Second, First with { Revision = "B" }, Second];
        var file = Drawn(drawn)[..^40];
        Assert.True(Same(History.Read(file, Second), Past(drawn).Take(2)));
        Assert.True(Same(History.Read(History.After(Second, file, First)!.Content, First), Past([.. drawn, First]).Take(3)));
    }

    [Fact]
    public void Lines_of_another_branch_are_passed_over()
    {
        // As a merge leaves both in the file.
        var other = First with { Revision = "C" };
        var trunk = Lines(Drawn([First, Second, First]));
        var branch = Lines(Drawn([First, Second, other]));
        string[] merged = [.. trunk[..3], "<<<<<<< ours", trunk[3], "=======", branch[3], ">>>>>>> theirs", .. trunk[4..]];
        var states = History.Read(Encoding.UTF8.GetBytes(string.Join('\n', merged)), First);
        Assert.True(Same(states, [Second, First]));
    }

    [Theory]
    [InlineData("")]
    [InlineData("no JSON")]
    [InlineData("[]")]
    [InlineData("""{"earlier": 1}""")]
    [InlineData("""{"earlier": [{}]}""")]
    [InlineData("""{"steps_back": {}}""")]
    [InlineData("""{"steps_back": [1, [], {"planforge": "0.1.0", "later": ""}]}""")]
    [InlineData("""{"planforge": "0.1.0", "earlier": [{"planforge": "0.1.0", "design": 1}]}""")]
    public void Other_text_holds_no_history_and_stops_nobody(string text)
    {
        var file = Encoding.UTF8.GetBytes(text);
        Assert.Empty(History.Read(file, First));
        Assert.True(Assert.Single(History.Read(History.After(First, file, Second)!.Content, Second)).IsSameAs(First));
    }

    [Fact]
    public void Steps_that_ask_for_more_than_there_is_lead_nowhere()
    {
        var line = Lines(History.After(First, default, Second)!.Content)[3];
        foreach (var run in new[] { "[0,2]", "[1,1]", "[-1,1]", "[0,-1]", "[0]", "[0,1,2]", "[2147483647,2]", "[0.5,1]", "[\"0\",1]" })
        {
            var broken = Encoding.UTF8.GetBytes(line.Replace("[[0,1]]", $"[{run}]", StringComparison.Ordinal));
            Assert.NotEqual(line, Encoding.UTF8.GetString(broken));
            Assert.Null(StateDifference.Read(broken, Second));
        }
    }

    private static DrawnValues ValuesOf(int thickness) => new([$"{{\"path\":\"formers[F1].thickness\",\"kind\":\"length\",\"value\":\"{thickness}\",\"shown\":\"{thickness} mm\"}}"], []);

    private static ReadOnlyMemory<byte> Drawn(DrawnState[] states)
    {
        ReadOnlyMemory<byte> file = default;
        for (var i = 0; i < states.Length; i++)
        {
            file = History.After(i > 0 ? states[i - 1] : null, file, states[i])?.Content ?? default;
        }

        return file;
    }

    /// <summary>What was drawn before the last, the latest first, each run that drew the same once.</summary>
    private static IEnumerable<DrawnState> Past(DrawnState[] drawn)
    {
        for (var i = drawn.Length - 2; i >= 0; i--)
        {
            if (!drawn[i].IsSameAs(drawn[i + 1]))
            {
                yield return drawn[i];
            }
        }
    }

    private static bool Same(IEnumerable<DrawnState> states, IEnumerable<DrawnState> expected) =>
        states.Count() == expected.Count() && states.Zip(expected).All(pair => pair.First.IsSameAs(pair.Second));

    private static string[] Lines(ReadOnlyMemory<byte> file) => Encoding.UTF8.GetString(file.Span).Split('\n');

    private static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);
}
