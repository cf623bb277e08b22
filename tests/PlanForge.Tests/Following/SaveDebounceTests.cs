using CsCheck;
using PlanForge.Following;

namespace PlanForge.Tests.Following;

public sealed class SaveDebounceTests
{
    [Fact]
    public void Nothing_is_due_before_a_change() => Assert.Null(new SaveDebounce().Due);

    [Fact]
    public void A_change_is_due_after_the_pause()
    {
        var debounce = new SaveDebounce();
        debounce.Changed(At(500));

        Assert.Equal(At(600), debounce.Due);
    }

    [Fact]
    public void Every_further_change_begins_the_pause_anew()
    {
        var debounce = new SaveDebounce();
        debounce.Changed(At(500));
        debounce.Changed(At(580));
        debounce.Changed(At(640));

        Assert.Equal(At(740), debounce.Due);
    }

    [Fact]
    public void A_file_that_is_never_left_alone_is_drawn_after_a_second()
    {
        var debounce = new SaveDebounce();
        for (var time = 0; time < 5000; time += 50)
        {
            debounce.Changed(At(time));
        }

        Assert.Equal(At(1000), debounce.Due);
    }

    [Fact]
    public void What_is_settled_is_due_no_more()
    {
        var debounce = new SaveDebounce();
        debounce.Changed(At(0));
        debounce.Settle();

        Assert.Null(debounce.Due);
        Assert.False(debounce.IsPending);
    }

    [Fact]
    public void A_description_that_is_gone_is_waited_for_no_longer_than_a_second()
    {
        var debounce = new SaveDebounce();
        debounce.Changed(At(0));

        Assert.True(debounce.WaitOn(At(100)));
        Assert.Equal(At(200), debounce.Due);
        Assert.True(debounce.WaitOn(At(950)));
        Assert.Equal(At(1000), debounce.Due);
        Assert.False(debounce.WaitOn(At(1000)));
    }

    // Whatever comes in, in whatever order: never sooner than the pause after the last change unless a second after the first has passed.
    [Fact]
    public void Due_is_the_pause_after_the_last_change_or_a_second_after_the_first() => Gen.Int[0, 3000].Array[1, 30].Sample(times =>
    {
        Array.Sort(times);
        var debounce = new SaveDebounce();
        foreach (var time in times)
        {
            debounce.Changed(At(time));
        }

        Assert.Equal(At(Math.Min(times[^1] + 100, times[0] + 1000)), debounce.Due);
    });

    private static TimeSpan At(int milliseconds) => TimeSpan.FromMilliseconds(milliseconds);
}
