using MathNet.Numerics.LinearAlgebra;
using PlanForge.Airframe.Measuring;
using PlanForge.Geometry;
using PlanForge.Parts.Bench.Measuring;

namespace PlanForge.Parts.Tests.Bench.Measuring;

/// <summary>Fit, eigenvectors and Student's t against MathNet.Numerics.</summary>
public sealed class LeastSquaresTests
{
    private static readonly RiggedAirframe Oxbow = Designs.Rigged("oxbow-1420");

    // Six heights for four unknowns, repeated unevenly: the fit must be where MathNet's own QR of the weighted system finds no further step.
    [Fact]
    public void Fit_is_the_one_that_another_library_finds()
    {
        var random = new Random(3);
        var plan = Parts.Bench.PinPoints.Of(Oxbow);
        var pivot = Oxbow.Wing.InPlace(Point3.Origin);
        for (var i = 0; i < 100; i++)
        {
            double Error() => 4 * (random.NextDouble() - 0.5);
            var front = plan.FrontAboveBoard;
            var rear = plan.RearAboveBoard;
            var round = Readings.Round(
            [
                Readings.Pin(WingEdge.Front, Hand.Port, null, front + Error()),
                Readings.Pin(WingEdge.Front, Hand.Starboard, null, front + Error(), front + Error(), front + Error()),
                Readings.Pin(WingEdge.Rear, Hand.Port, null, rear + Error(), rear + Error()),
                Readings.Pin(WingEdge.Rear, Hand.Starboard, null, rear + Error()),
            ]) with
            {
                Tips = [Readings.Tip(Hand.Port, 210 + Error()), Readings.Tip(Hand.Starboard, 210 + Error(), 210 + Error())],
            };
            var marks = BenchMarks.Of(Oxbow, plan, round);
            var pose = PoseFit.Of(marks, pivot, 0.25, null).Pose;
            PoseUnknown[] sought = [PoseUnknown.Incidence, PoseUnknown.Roll, PoseUnknown.Warp, PoseUnknown.Height];
            var readings = marks.SelectMany(mark => mark.Readings.Select(reading => (mark, reading))).ToArray();

            // The rates by central differences, not by the code's own derivatives.
            const double Step = 1e-5;
            var rates = Matrix<double>.Build.Dense(readings.Length, sought.Length, (row, column) =>
                (readings[row].mark.Length(pose.Plus(sought[column], Step), pivot) - readings[row].mark.Length(pose.Plus(sought[column], -Step), pivot)) / (2 * Step));
            var off = Vector<double>.Build.Dense(readings.Length, row => readings[row].reading.Value - readings[row].mark.Length(pose, pivot));
            var further = rates.QR().Solve(off);

            Assert.All(further, change => Assert.Equal(0, change, 1e-6));
        }
    }

    [Fact]
    public void Eigenvectors_rebuild_the_matrix_and_the_values_are_those_of_another_library()
    {
        var random = new Random(4);
        for (var i = 0; i < 200; i++)
        {
            var root = Matrix<double>.Build.Dense(6, 6, (_, _) => random.NextDouble() - 0.5);
            var matrix = root * root.Transpose();
            var eigen = SymmetricEigen.Of(matrix.ToArray());
            var vectors = Matrix<double>.Build.DenseOfArray(eigen.Vectors);

            Assert.Equal(0, (vectors * Matrix<double>.Build.DenseOfDiagonalArray(eigen.Values) * vectors.Transpose() - matrix).L2Norm(), 1e-12);
            var expected = matrix.Evd(Symmetricity.Symmetric).EigenValues.Select(value => value.Real).Order().ToArray();
            var found = eigen.Values.Order().ToArray();
            for (var k = 0; k < 6; k++)
            {
                Assert.Equal(expected[k], found[k], 1e-12);
            }
        }
    }

    [Fact]
    public void Students_factors_are_those_of_another_library()
    {
        foreach (var freedom in new[] { 1, 2, 3, 4, 5, 8, 9, 30, 101, 1000 })
        {
            foreach (var outside in new[] { 0.05, 0.01, 6.334e-5 })
            {
                var factor = StudentT.Factor(freedom, outside);
                Assert.Equal(outside, 2 * MathNet.Numerics.Distributions.StudentT.CDF(0, 1, freedom, -factor), 1e-6 * outside);
            }
        }
    }
}
