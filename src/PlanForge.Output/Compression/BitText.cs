using PlanForge.Output.Bytes;

namespace PlanForge.Output.Compression;

/// <summary>Appends bits to bytes, the lowest bit of each byte first (RFC 1951, 3.1.1).</summary>
/// <param name="bytes">Where whole bytes go.</param>
internal sealed class BitText(ByteText bytes)
{
    private ulong _pending;
    private int _count;

    /// <summary>Appends the lowest bits of a value, lowest first.</summary>
    /// <param name="value">No bits set above the count.</param>
    /// <param name="count">0 to 32.</param>
    public void Append(uint value, int count)
    {
        _pending |= (ulong)value << _count;
        _count += count;
        while (_count >= 8)
        {
            bytes.Append((byte)_pending);
            _pending >>= 8;
            _count -= 8;
        }
    }

    /// <summary>Fills the last byte with zeros.</summary>
    public void Flush() => Append(0, (8 - _count) % 8);
}
