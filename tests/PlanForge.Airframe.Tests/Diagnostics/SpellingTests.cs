using PlanForge.Airframe.Diagnostics;

namespace PlanForge.Airframe.Tests.Diagnostics;

public class SpellingTests
{
    private static readonly string[] Known = ["chord", "section", "leading_edge", "A4", "tip"];

    [Theory]
    [InlineData("chord", "chord")]
    [InlineData("cord", "chord")]
    [InlineData("chrod", "chord")]
    [InlineData("CHORD", "chord")]
    [InlineData("leadingedge", "leading_edge")]
    [InlineData("leading-egde", "leading_edge")]
    [InlineData("tips", "tip")]
    [InlineData("top", "tip")]
    [InlineData("a4", "A4")]
    [InlineData("A3", null)]
    [InlineData("sweep", null)]
    [InlineData("t", null)]
    [InlineData("", null)]
    public void A_near_word_is_found_and_a_far_one_is_not(string written, string? meant) => Assert.Equal(meant, Spelling.Near(written, Known));

    [Fact]
    public void The_first_of_equally_near_words_is_taken() => Assert.Equal("upper", Spelling.Near("upser", ["upper", "unser"]));
}
