using System.Runtime.CompilerServices;

namespace PlanForge.Output.Bytes;

/// <summary>The one way numbers become text in every file: decimal point, no exponent, no trailing zeros, never <c>-0</c>.</summary>
/// <remarks>
/// Half of the writers' work is done here, and a run is over before the runtime would find that out by itself: the methods
/// ask to be compiled well at once.
/// </remarks>
internal static class Decimals
{
    /// <summary>The most decimals that can be asked for.</summary>
    public const int Most = 12;

    /// <summary>Room that the longest text needs: sign, 19 digits and the point.</summary>
    public const int MaxLength = 24;

    // 2^63: from here on the scaled number no longer fits a long.
    private const double ScaledLimit = 9223372036854775808.0;

    private static ReadOnlySpan<double> PowersOfTen => [1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12];

    /// <summary>Writes a number rounded to some decimals, halves away from zero, as ASCII.</summary>
    /// <param name="value">Finite, and below 9.2e18 once multiplied by ten to the power of <paramref name="decimals"/>.</param>
    /// <param name="decimals">0 to <see cref="Most"/>.</param>
    /// <param name="target">At least <see cref="MaxLength"/> bytes.</param>
    /// <returns>How many bytes were written.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The number is not finite or too large.</exception>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public static int Format(double value, int decimals, Span<byte> target)
    {
        var factor = PowersOfTen[decimals];
        var magnitude = Math.Abs(value);
        var scaled = magnitude * factor;
        if (!(scaled < ScaledLimit))
        {
            throw new ArgumentOutOfRangeException(nameof(value), value, "A drawing holds finite numbers of moderate size only.");
        }

        // The product is rounded itself: what it lost decides ties, and the fused operation gives that back exactly.
        var units = (long)scaled;
        if (Math.FusedMultiplyAdd(magnitude, factor, -(double)units) >= 0.5)
        {
            units++;
        }

        while (decimals > 0 && units % 10 == 0)
        {
            units /= 10;
            decimals--;
        }

        var length = 0;
        if (value < 0 && units != 0)
        {
            target[length++] = (byte)'-';
        }

        return length + Digits(units, decimals, target[length..]);
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private static int Digits(long units, int decimals, Span<byte> target)
    {
        Span<byte> backwards = stackalloc byte[MaxLength];
        var count = 0;
        for (var place = 0; units != 0 || place <= decimals; place++)
        {
            if (place == decimals && place > 0)
            {
                backwards[count++] = (byte)'.';
            }

            backwards[count++] = (byte)('0' + (units % 10));
            units /= 10;
        }

        for (var i = 0; i < count; i++)
        {
            target[i] = backwards[count - 1 - i];
        }

        return count;
    }
}
