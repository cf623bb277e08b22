using System.Runtime.CompilerServices;

namespace PlanForge.Geometry;

/// <summary>
/// Results of one step of the work, kept by what they were made from, so that a run after a small change makes only what is new. What
/// a run did not ask for is let go when it ends.
/// </summary>
/// <remarks>
/// The key must hold everything the result depends on: then a run that keeps nothing and one that keeps much give the same. May be used
/// from several threads; two that ask for the same at once may both make it, and the first result stands.
/// </remarks>
/// <typeparam name="TKey">What results are made from.</typeparam>
/// <typeparam name="TResult">What is kept.</typeparam>
public sealed class Kept<TKey, TResult>
    where TKey : notnull
{
    private readonly Lock _lock = new();
    private Dictionary<TKey, TResult> _earlier = [];
    private Dictionary<TKey, TResult> _asked = [];

    /// <summary>The kept result of a key, else the one that is made now.</summary>
    public TResult Of(TKey key, Func<TResult> make)
    {
        ArgumentNullException.ThrowIfNull(make);
        lock (_lock)
        {
            if (_asked.TryGetValue(key, out var known) || (_earlier.Remove(key, out known) && _asked.TryAdd(key, known)))
            {
                return known;
            }
        }

        var made = make();
        lock (_lock)
        {
            return _asked.TryAdd(key, made) ? made : _asked[key];
        }
    }

    /// <summary>Ends a run: what nobody asked for since the last end is let go.</summary>
    public void EndRun()
    {
        lock (_lock)
        {
            _earlier = _asked;
            _asked = [];
        }
    }
}

/// <summary>A thing as a key: only itself is equal to it, not another with the same content.</summary>
/// <param name="Thing">The thing.</param>
public readonly record struct Itself<T>(T Thing)
    where T : class
{
    /// <inheritdoc/>
    public bool Equals(Itself<T> other) => ReferenceEquals(Thing, other.Thing);

    /// <inheritdoc/>
    public override int GetHashCode() => RuntimeHelpers.GetHashCode(Thing);
}
