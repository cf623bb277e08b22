using System.Runtime.CompilerServices;
using PlanForge.Airframe.Format;

namespace PlanForge.Airframe.Inputs;

/// <summary>An input as it is noted: places and keys are told apart by being the same object, which is all that is needed and quick.</summary>
internal readonly struct InputKey(Place place, Key? outer, Key? key, InputKind kind) : IEquatable<InputKey>
{
    private readonly Place _place = place;
    private readonly Key? _outer = outer;
    private readonly Key? _key = key;
    private readonly InputKind _kind = kind;

    /// <summary>Compares without looking for how: that costs a millisecond on a cold start.</summary>
    public static IEqualityComparer<InputKey> Comparer { get; } = new ByObject();

    /// <inheritdoc/>
    public bool Equals(InputKey other) => _place == other._place && _outer == other._outer && _key == other._key && _kind == other._kind;

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is InputKey other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() =>
        (((RuntimeHelpers.GetHashCode(_place) * 31) + RuntimeHelpers.GetHashCode(_key)) * 31) + RuntimeHelpers.GetHashCode(_outer) + (int)_kind;

    private sealed class ByObject : IEqualityComparer<InputKey>
    {
        public bool Equals(InputKey x, InputKey y) => x.Equals(y);

        public int GetHashCode(InputKey obj) => obj.GetHashCode();
    }
}
