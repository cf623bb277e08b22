using System.Collections.Immutable;
using System.Text;
using CsCheck;
using PlanForge.Folders;

namespace PlanForge.Tests.Folders;

public sealed class HistoryTests
{
    private static readonly DrawnState First = new("x", "A", "AAAA-AA", "0.1.0", [new("former-F1", "Former F1", true, "F1F1-00")], [new(1, "Formers", "S1S1-00", ["former-F1"])]);
    private static readonly DrawnState Second = First with { Fingerprint = "BBBB-BB", Parts = [First.Parts[0] with { Fingerprint = "F1F1-01" }] };

    [Fact]
    public void There_is_none_while_nothing_else_was_drawn()
    {
        Assert.Null(History.Next(null, [], First));
        Assert.Null(History.Next(First, [], First));
    }

    [Fact]
    public void What_was_drawn_before_is_kept_and_read_back() => Assert.True(Assert.Single(Read(History.Next(First, [], Second))).IsSameAs(First));

    [Fact]
    public void A_run_that_draws_the_same_changes_nothing()
    {
        var history = History.Next(First, [], Second)!;
        Assert.Equal(history.Content.ToArray(), History.Next(Second, Read(history), Second)!.Content.ToArray());
    }

    [Fact]
    public void Going_back_makes_the_present_no_past()
    {
        var back = Read(History.Next(Second, [First], First));
        Assert.True(Assert.Single(back).IsSameAs(Second));
    }

    [Fact]
    public void No_state_is_there_twice_and_the_latest_is_first_whatever_is_drawn() => Gen.Int[0, 5].Array[1, 40].Sample(
        drawn =>
        {
            DrawnState? before = null;
            ImmutableArray<DrawnState> earlier = [];
            foreach (var number in drawn)
            {
                var now = First with { Fingerprint = number.ToString(System.Globalization.CultureInfo.InvariantCulture) };
                earlier = Read(History.Next(before, earlier, now));
                before = now;
            }

            // Every other state that was ever drawn, by when it was drawn last.
            var expected = drawn.Reverse().Distinct().Where(number => number != drawn[^1]).Select(number => number.ToString(System.Globalization.CultureInfo.InvariantCulture));
            return earlier.Select(state => state.Fingerprint).SequenceEqual(expected);
        },
        iter: 500);

    [Theory]
    [InlineData("")]
    [InlineData("[]")]
    [InlineData("""{"earlier": 1}""")]
    [InlineData("""{"earlier": [{}]}""")]
    [InlineData("""{"planforge": "0.1.0", "earlier": [{"planforge": "0.1.0", "design": 1}]}""")]
    public void Other_text_holds_no_history(string text) => Assert.Empty(History.Read(Encoding.UTF8.GetBytes(text)));

    private static ImmutableArray<DrawnState> Read(OutputFile? file) => file is null ? [] : History.Read(file.Content);
}
