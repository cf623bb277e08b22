using CsCheck;

namespace PlanForge.Airframe.Tests;

/// <summary>Generators that pick from given values.</summary>
internal static class Choice
{
    public static Gen<T> Of<T>(params T[] values) => Gen.Int[0, values.Length - 1].Select(i => values[i]);
}
