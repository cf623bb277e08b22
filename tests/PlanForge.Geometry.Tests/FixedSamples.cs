using System.Globalization;
using CsCheck;

namespace PlanForge.Geometry.Tests;

/// <summary>Checks properties on the same samples in every run, where CsCheck's own loop fixes the first one only.</summary>
internal static class FixedSamples
{
    /// <summary>Checks a property of some samples; a failure names the sample.</summary>
    public static void Check<T>(this Gen<T> generator, int count, Action<T> property)
    {
        var random = new PCG(stream: 1, seed: 1420);
        for (var i = 0; i < count; i++)
        {
            var sample = generator.Generate(random, null, out _);
            try
            {
                property(sample);
            }
            catch (Exception failure)
            {
                throw new InvalidOperationException(
                    string.Create(CultureInfo.InvariantCulture, $"Sample {i} of {count}, {sample}: {failure.Message}"), failure);
            }
        }
    }

    /// <summary>Checks a property of pairs.</summary>
    public static void Check<T1, T2>(this Gen<(T1, T2)> generator, int count, Action<T1, T2> property) =>
        generator.Check(count, sample => property(sample.Item1, sample.Item2));
}
