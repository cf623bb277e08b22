using CsCheck;
using PlanForge.Drafting.Sheets;
using PlanForge.Geometry;

namespace PlanForge.Drafting.Tests.Sheets;

public class FreeRectanglesTests
{
    private const double Gap = 8;
    private const double Rounding = 1e-6;
    private static readonly Bounds2 Space = new(23, 60, 407, 284);
    private static readonly Bounds2 Taken = new(23, 60, 60, 180);

    [Fact]
    public void Rectangles_stay_in_the_space_clear_of_what_is_taken_and_a_gap_apart() =>
        Gen.Select(Gen.Double[5, 200], Gen.Double[5, 150]).Array[1, 40].Select(Gen.Bool).Sample(
            (sizes, fillsFromLeft) =>
            {
                var free = new FreeRectangles(Space, [Taken], Gap, fillsFromLeft);
                var placed = new List<Bounds2>();
                foreach (var (width, height) in sizes)
                {
                    var hasRoom = free.HasRoom(width, height);
                    var place = free.Place(width, height);
                    Assert.Equal(hasRoom, place is not null);
                    if (place is { } found)
                    {
                        Assert.Equal((width, height), (Math.Round(found.Width, 9), Math.Round(found.Height, 9)), Near);
                        Assert.True(found.MinX >= Space.MinX && found.MaxX <= Space.MaxX + Rounding);
                        Assert.True(found.MinY >= Space.MinY - Rounding && found.MaxY <= Space.MaxY);
                        Assert.False(Taken.Grown(-Rounding).Touches(found));
                        Assert.DoesNotContain(placed, other => other.Grown(Gap - Rounding).Touches(found));
                        placed.Add(found);
                    }
                }
            },
            iter: 300);

    [Fact]
    public void What_finds_no_place_would_overlap_wherever_it_stood() =>
        Gen.Select(Gen.Double[20, 160], Gen.Double[20, 110]).Array[5, 20].Sample(
            sizes =>
            {
                var free = new FreeRectangles(Space, [Taken], Gap);
                var placed = new List<Bounds2>();
                foreach (var (width, height) in sizes)
                {
                    if (free.Place(width, height) is { } place)
                    {
                        placed.Add(place.Grown(Gap));
                        continue;
                    }

                    // On a grid of 4 mm: no free place of that size, a little enlarged, was missed.
                    for (var x = Space.MinX; x + width <= Space.MaxX; x += 4)
                    {
                        for (var y = Space.MinY; y + height <= Space.MaxY; y += 4)
                        {
                            var spot = new Bounds2(x, y, x + width, y + height);
                            Assert.True(Taken.Touches(spot) || placed.Exists(spot.Touches), $"{spot} is free");
                        }
                    }
                }
            },
            iter: 60);

    [Fact]
    public void What_is_as_large_as_the_space_fits_once()
    {
        var free = new FreeRectangles(Space, [], Gap);
        Assert.NotNull(free.Place(Space.Width, Space.Height));
        Assert.Null(free.Place(5, 5));
        Assert.Null(free.Largest);
    }

    [Fact]
    public void On_a_sheet_the_next_stands_beside_on_a_roll_below()
    {
        var sheet = new FreeRectangles(Space, [], Gap);
        Assert.Equal(new(23, 184, 123, 284), sheet.Place(100, 100));
        Assert.Equal(new(131, 234, 181, 284), sheet.Place(50, 50));
        var roll = new FreeRectangles(Space, [], Gap, fillsFromLeft: true);
        Assert.Equal(new(23, 184, 123, 284), roll.Place(100, 100));
        Assert.Equal(new(23, 126, 73, 176), roll.Place(50, 50));
    }

    [Fact]
    public void A_row_of_equal_squares_fills_the_space_as_arithmetic_says()
    {
        // (384 + 8) / (40 + 8) = 8.17 across, (224 + 8) / (40 + 8) = 4.83 down.
        var free = new FreeRectangles(Space, [], Gap);
        var count = 0;
        while (free.Place(40, 40) is not null)
        {
            count++;
        }

        Assert.Equal(32, count);
    }

    private static bool Near((double, double) expected, (double, double) actual) =>
        Math.Abs(expected.Item1 - actual.Item1) < Rounding && Math.Abs(expected.Item2 - actual.Item2) < Rounding;
}
