namespace PlanForge.Geometry.Tests;

public sealed class Bounds2Tests
{
    private static readonly Bounds2 Box = new(1, 2, 5, 10);

    [Fact]
    public void Empty_bounds_contain_nothing_and_are_neutral_in_joining()
    {
        Assert.True(Bounds2.Empty.IsEmpty);
        Assert.False(Bounds2.Empty.Contains(new(0, 0)));
        Assert.False(Bounds2.Empty.Touches(Box));
        Assert.Equal(Box, Bounds2.Empty.Joined(Box));
        Assert.Equal(Box, Box.Joined(Bounds2.Empty));
        Assert.True(Bounds2.Around([]).IsEmpty);
    }

    [Fact]
    public void Measures_are_those_of_the_corners()
    {
        Assert.Equal((4, 8), (Box.Width, Box.Height));
        Assert.Equal(new(3, 6), Box.Centre);
        Assert.Equal(Box, Bounds2.Around(new(5, 2), new(1, 10)));
        Assert.Equal(Box, Bounds2.Around([new(1, 7), new(5, 2), new(3, 10)]));
        Assert.Equal(new(-1, 0, 7, 12), Box.Grown(2));
        Assert.True(Box.Grown(-2.5).IsEmpty);
    }

    [Fact]
    public void Edges_belong_to_the_bounds()
    {
        Assert.True(Box.Contains(new(1, 10)));
        Assert.False(Box.Contains(new(1, 10.001)));
        Assert.True(Box.Touches(new(5, 10, 6, 11)));
        Assert.False(Box.Touches(new(5.001, 10, 6, 11)));
    }

    [Fact]
    public void Moved_bounds_keep_their_size_and_empty_ones_stay_empty()
    {
        Assert.Equal(new(-1, 5, 3, 13), Box.MovedBy(new(-2, 3)));
        Assert.True(Bounds2.Empty.MovedBy(new(-2, 3)).IsEmpty);
    }

    [Fact]
    public void Bounds_enclose_themselves_and_what_lies_inside_as_a_whole()
    {
        Assert.True(Box.Encloses(Box));
        Assert.True(Box.Encloses(new(2, 3, 5, 4)));
        Assert.False(Box.Encloses(Box with { MinX = 0.999 }));
        Assert.False(Box.Encloses(Box with { MinY = 1.999 }));
        Assert.False(Box.Encloses(Box with { MaxX = 5.001 }));
        Assert.False(Box.Encloses(Box with { MaxY = 10.001 }));
    }
}
