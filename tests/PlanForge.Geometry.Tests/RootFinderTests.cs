using CsCheck;

namespace PlanForge.Geometry.Tests;

public sealed class RootFinderTests
{
    // Oracle: MathNet.Numerics' own Brent and the closed forms.
    [Fact]
    public void Known_roots_are_found()
    {
        // The Dottie number, cos x = x (OEIS A003957).
        Assert.Equal(0.73908513321516064, Root(x => Math.Cos(x) - x, 0, 1), 1e-14);
        Assert.Equal(Math.Cbrt(2), Root(x => (x * x * x) - 2, 0, 2), 1e-14);
        Assert.Equal(Math.PI, Root(Math.Sin, 3, 4), 1e-14);
        Assert.Equal(
            MathNet.Numerics.RootFinding.Brent.FindRoot(x => Math.Exp(x) - (3 * x * x), 3, 4, 1e-14),
            Root(x => Math.Exp(x) - (3 * x * x), 3, 4),
            1e-12);
    }

    // A root where the function is flat, and one where it is steep, are the hard cases of interpolation.
    [Fact]
    public void Flat_and_steep_roots_are_found()
    {
        Assert.Equal(0.3, Root(x => Math.Pow(x - 0.3, 9), -1, 2), 1e-9);
        Assert.Equal(0.3, Root(x => Math.Cbrt(x - 0.3), -1, 2), 1e-12);
        Assert.Equal(0.3, Root(x => x < 0.3 ? -1e-12 : 1, -1, 2), 1e-12);
    }

    [Fact]
    public void Planted_root_of_a_cubic_is_found_and_nothing_is_asked_outside_the_interval() => Gen.Select(
        Shapes.Fine(-1, 1), Shapes.Fine(2, 9), Shapes.Fine(-9, -2)).Check(
        500,
        sample =>
        {
            var (root, above, below) = sample;
            var found = RootFinder.Bracketed(
                x =>
                {
                    Assert.InRange(x, -1.5, 1.5);
                    return (x - root) * (x - above) * (x - below);
                },
                -1.5,
                1.5,
                1e-12);

            Assert.Equal(root, Assert.NotNull(found), 1e-11);
        });

    [Fact]
    public void Root_at_an_end_is_found()
    {
        Assert.Equal(1, Root(x => x - 1, 1, 4), 1e-12);
        Assert.Equal(4, Root(x => x - 4, 1, 4), 1e-12);
    }

    [Fact]
    public void Without_a_change_of_sign_or_a_number_there_is_no_root()
    {
        Assert.Null(RootFinder.Bracketed(x => (x * x) + 1, -1, 2, 1e-9));
        Assert.Null(RootFinder.Bracketed(x => -1 - (x * x), -1, 2, 1e-9));
        Assert.Null(RootFinder.Bracketed(x => x < 0 ? double.NaN : x, -1, 2, 1e-9));
        Assert.Null(RootFinder.Bracketed(x => x < 0 ? double.NaN : -x, -1, 2, 1e-9));
        Assert.Null(RootFinder.Bracketed(x => x > 0 ? double.NaN : -1, -1, 2, 1e-9));
    }

    private static double Root(Func<double, double> function, double low, double high) =>
        Assert.NotNull(RootFinder.Bracketed(function, low, high, 1e-15));
}
