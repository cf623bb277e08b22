namespace PlanForge.Parts.Bench.Measuring;

/// <summary>Eigenvalues and eigenvectors of a small symmetric matrix.</summary>
/// <remarks>Cyclic Jacobi turns: G. H. Golub, C. F. Van Loan, Matrix Computations, section 8.5 (from memory).</remarks>
internal sealed class SymmetricEigen
{
    // Six unknowns settle in five or six rounds; more than this means the numbers are not finite.
    private const int GreatestRoundCount = 60;

    private SymmetricEigen(double[] values, double[,] vectors) => (Values, Vectors) = (values, vectors);

    /// <summary>The eigenvalues, in no order.</summary>
    public double[] Values { get; }

    /// <summary>The eigenvectors, one a column.</summary>
    public double[,] Vectors { get; }

    /// <summary>Solves a matrix; it is not changed.</summary>
    public static SymmetricEigen Of(double[,] matrix)
    {
        var size = matrix.GetLength(0);
        var a = (double[,])matrix.Clone();
        var vectors = new double[size, size];
        for (var i = 0; i < size; i++)
        {
            vectors[i, i] = 1;
        }

        var trace = 0.0;
        for (var i = 0; i < size; i++)
        {
            trace += Math.Abs(a[i, i]);
        }

        // Elements below this are rounding: to turn them away would only make new ones.
        var least = 1e-16 * trace;
        for (var round = 0; round < GreatestRoundCount && OffDiagonal(a) > 0; round++)
        {
            for (var p = 0; p < size; p++)
            {
                for (var q = p + 1; q < size; q++)
                {
                    Turn(a, vectors, p, q, least);
                }
            }
        }

        var values = new double[size];
        for (var i = 0; i < size; i++)
        {
            values[i] = a[i, i];
        }

        return new(values, vectors);
    }

    private static void Turn(double[,] a, double[,] vectors, int p, int q, double least)
    {
        if (Math.Abs(a[p, q]) <= least)
        {
            a[p, q] = a[q, p] = 0;
            return;
        }

        var tau = (a[q, q] - a[p, p]) / (2 * a[p, q]);
        var t = (tau >= 0 ? 1 : -1) / (Math.Abs(tau) + Math.Sqrt(1 + (tau * tau)));
        var cos = 1 / Math.Sqrt(1 + (t * t));
        var sin = t * cos;
        var size = a.GetLength(0);
        for (var k = 0; k < size; k++)
        {
            (a[k, p], a[k, q]) = ((cos * a[k, p]) - (sin * a[k, q]), (sin * a[k, p]) + (cos * a[k, q]));
        }

        for (var k = 0; k < size; k++)
        {
            (a[p, k], a[q, k]) = ((cos * a[p, k]) - (sin * a[q, k]), (sin * a[p, k]) + (cos * a[q, k]));
            (vectors[k, p], vectors[k, q]) = ((cos * vectors[k, p]) - (sin * vectors[k, q]), (sin * vectors[k, p]) + (cos * vectors[k, q]));
        }
    }

    private static double OffDiagonal(double[,] a)
    {
        var sum = 0.0;
        for (var p = 0; p < a.GetLength(0); p++)
        {
            for (var q = p + 1; q < a.GetLength(0); q++)
            {
                sum += a[p, q] * a[p, q];
            }
        }

        return sum;
    }
}
