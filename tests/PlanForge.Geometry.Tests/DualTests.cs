using CsCheck;

namespace PlanForge.Geometry.Tests;

public sealed class DualTests
{
    // Oracle: central differences of the same formula, whose own error is about 1e-9 here.
    [Theory]
    [InlineData("sum and difference")]
    [InlineData("product")]
    [InlineData("quotient")]
    [InlineData("root")]
    [InlineData("sine and cosine")]
    [InlineData("through")]
    public void Derivatives_are_those_of_finite_differences(string name)
    {
        Func<Dual, Dual, Dual> formula = name switch
        {
            "sum and difference" => (u, v) => u + 3 - (v - u) + -v,
            "product" => (u, v) => u * v * (u + 2) * 0.5,
            "quotient" => (u, v) => (u + v) / (1 + (u * u) + (v * v)),
            "root" => (u, v) => Dual.Sqrt(4 + (u * v)),
            "sine and cosine" => (u, v) => Dual.Sin(u * v) + (Dual.Cos(u) * Dual.Sin(v)),
            _ => (u, v) => (u * v).Through(Math.Exp(u.Value * v.Value), Math.Exp(u.Value * v.Value)),
        };

        Gen.Select(Shapes.Fine(-1.5, 1.5), Shapes.Fine(-1.5, 1.5)).Check(
            200,
            (u, v) =>
            {
                const double Step = 1e-5;
                double At(double x, double y) => formula(x, y).Value;
                var result = formula(Dual.U(u), Dual.V(v));

                Assert.Equal(At(u, v), result.Value, 1e-12);
                Assert.Equal((At(u + Step, v) - At(u - Step, v)) / (2 * Step), result.Du, 1e-7);
                Assert.Equal((At(u, v + Step) - At(u, v - Step)) / (2 * Step), result.Dv, 1e-7);
            });
    }

    [Fact]
    public void Constant_has_no_derivatives() => Assert.Equal(new Dual(2.5, 0, 0), (Dual)2.5);
}
