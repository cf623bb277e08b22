using System.Collections.Immutable;
using System.Globalization;

namespace PlanForge.Drafting.Charts;

/// <summary>The marks of an axis at round numbers: 1, 2 or 5 times a power of ten apart.</summary>
/// <param name="Values">The marks in ascending order; the first and the last are the ends of the axis.</param>
/// <param name="Decimals">How many decimals tell them apart.</param>
public sealed record RoundTicks(ImmutableArray<double> Values, int Decimals)
{
    /// <summary>What stands at a mark: all with the same decimals.</summary>
    public string Text(double value) => value.ToString(FormattableString.Invariant($"F{Decimals}"), CultureInfo.InvariantCulture);

    // What is a whole number of steps but for the last digits is one.
    private const double Rounding = 1e-9;

    /// <summary>Marks that reach over a range, as many as there may be.</summary>
    /// <param name="least">The least value.</param>
    /// <param name="greatest">The greatest value, not under the least; one that is the same stands in the middle.</param>
    /// <param name="most">How many marks there may be, at least 3.</param>
    public static RoundTicks Over(double least, double greatest, int most)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(most, 3);
        if (greatest - least <= Math.Max(Math.Abs(least), Math.Abs(greatest)) * Rounding)
        {
            var room = least == 0 ? 1 : Math.Abs(least) / 10;
            (least, greatest) = (least - room, greatest + room);
        }

        for (var power = (int)Math.Floor(Math.Log10((greatest - least) / most)); ; power++)
        {
            foreach (var factor in (ReadOnlySpan<int>)[1, 2, 5])
            {
                // A power of ten under one is divided by, since a tenth has no exact number.
                double Times(double count) => power < 0 ? count * factor / Math.Pow(10, -power) : count * factor * Math.Pow(10, power);
                var step = Times(1);
                var first = Math.Floor((least / step) + Rounding);
                var last = Math.Ceiling((greatest / step) - Rounding);
                if (last - first + 1 <= most)
                {
                    var values = ImmutableArray.CreateBuilder<double>();
                    for (var i = first; i <= last; i++)
                    {
                        values.Add(Times(i) + 0.0);
                    }

                    return new(values.ToImmutable(), Math.Max(0, -power));
                }
            }
        }
    }
}
