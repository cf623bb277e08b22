using CsCheck;
using PlanForge.Drafting.Sheets;
using PlanForge.Geometry;

namespace PlanForge.Drafting.Tests.Sheets;

public class SkylineTests
{
    private const double Gap = 8;
    private static readonly Bounds2 Space = new(23, 60, 407, 284);
    private static readonly FloorStep Step = new(23, 32, 180);

    [Fact]
    public void Rectangles_stay_in_the_space_above_the_floor_and_a_gap_apart() =>
        Gen.Select(Gen.Double[5, 200], Gen.Double[5, 150]).Array[1, 40].Sample(
            sizes =>
            {
                var skyline = new Skyline(Space, Gap, [Step]);
                var placed = new List<Bounds2>();
                foreach (var (width, height) in sizes)
                {
                    if (skyline.Place(width, height) is { } place)
                    {
                        Assert.Equal(width, place.Width, 1e-9);
                        Assert.Equal(height, place.Height, 1e-9);
                        Assert.True(place.MinX >= Space.MinX - 1e-6 && place.MaxX <= Space.MaxX + 1e-6);
                        Assert.True(place.MinY >= Space.MinY - 1e-6 && place.MaxY <= Space.MaxY + 1e-6);
                        Assert.True(place.MinX >= Step.MaxX - 1e-6 || place.MinY >= Step.Y - 1e-6);
                        Assert.DoesNotContain(placed, other => other.Grown(Gap - 1e-6).Touches(place));
                        placed.Add(place);
                    }
                }
            },
            iter: 300,
            seed: "000000000000F");

    [Fact]
    public void What_is_as_large_as_the_space_fits_once()
    {
        var skyline = new Skyline(Space, Gap, []);
        Assert.NotNull(skyline.Place(Space.Width, Space.Height));
        Assert.Null(skyline.Place(5, 5));
    }

    [Fact]
    public void The_first_stands_at_the_upper_left_the_next_beside_it()
    {
        var skyline = new Skyline(Space, Gap, []);
        Assert.Equal(new(23, 184, 123, 284), skyline.Place(100, 100));
        Assert.Equal(new(131, 234, 181, 284), skyline.Place(50, 50));
    }

    [Fact]
    public void A_tall_rectangle_stands_beside_the_step_in_the_floor() =>
        Assert.Equal(Step.MaxX, new Skyline(Space, Gap, [Step]).Place(100, 200)!.Value.MinX);

    [Fact]
    public void A_row_of_equal_squares_fills_the_space_as_arithmetic_says()
    {
        // (384 + 8) / (40 + 8) = 8.17 across, (224 + 8) / (40 + 8) = 4.83 down.
        var skyline = new Skyline(Space, Gap, []);
        var count = 0;
        while (skyline.Place(40, 40) is not null)
        {
            count++;
        }

        Assert.Equal(32, count);
    }
}
