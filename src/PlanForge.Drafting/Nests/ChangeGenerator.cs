namespace PlanForge.Drafting.Nests;

/// <summary>Numbers without a visible rule, the same on every run: xorshift with 64 bits (Marsaglia 2003, from memory).</summary>
internal sealed class ChangeGenerator
{
    private ulong _state = 0x9E3779B97F4A7C15;

    /// <summary>A number from 0 up to but without <paramref name="count"/>.</summary>
    public int Below(int count)
    {
        _state ^= _state << 13;
        _state ^= _state >> 7;
        _state ^= _state << 17;
        return (int)((_state >> 33) % (ulong)count);
    }
}
