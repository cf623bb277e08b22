namespace PlanForge.Output.Bytes;

/// <summary>A growing run of bytes to which the writers append ASCII text and numbers. No culture, no line end of its own.</summary>
internal sealed class ByteText
{
    private byte[] _bytes;

    /// <summary>Starts empty.</summary>
    /// <param name="capacity">Bytes to make room for at first; grows by itself.</param>
    public ByteText(int capacity = 4096) => _bytes = new byte[capacity];

    /// <summary>How many bytes have been appended.</summary>
    public int Length { get; private set; }

    /// <summary>What has been appended; valid until the next append.</summary>
    public ReadOnlySpan<byte> Written => _bytes.AsSpan(0, Length);

    /// <summary>Appends bytes as they are.</summary>
    public ByteText Append(ReadOnlySpan<byte> bytes)
    {
        Reserve(bytes.Length);
        bytes.CopyTo(_bytes.AsSpan(Length));
        Length += bytes.Length;
        return this;
    }

    /// <summary>Appends one byte.</summary>
    public ByteText Append(byte value)
    {
        Reserve(1);
        _bytes[Length++] = value;
        return this;
    }

    /// <summary>Appends an integer.</summary>
    public ByteText Append(int value) => Append(value, decimals: 0);

    /// <summary>Appends a number rounded to at most some decimals; see <see cref="Decimals.Format"/>.</summary>
    public ByteText Append(double value, int decimals)
    {
        Reserve(Decimals.MaxLength);
        Length += Decimals.Format(value, decimals, _bytes.AsSpan(Length));
        return this;
    }

    /// <summary>Appends an unsigned number in capital hexadecimal digits.</summary>
    /// <param name="value">The number.</param>
    /// <param name="digits">Fewest digits; zeros lead.</param>
    public ByteText AppendHex(uint value, int digits = 1)
    {
        for (var place = 7; place >= 0; place--)
        {
            var rest = value >> (4 * place);
            if (rest != 0 || place < digits)
            {
                Append("0123456789ABCDEF"u8[(int)(rest & 15)]);
            }
        }

        return this;
    }

    /// <summary>A copy of what has been appended.</summary>
    public byte[] ToArray() => Written.ToArray();

    private void Reserve(int more)
    {
        if (Length + more > _bytes.Length)
        {
            // Everything after what is written will be: it need not be cleared.
            var grown = GC.AllocateUninitializedArray<byte>(Math.Max(2 * _bytes.Length, Length + more));
            Written.CopyTo(grown);
            _bytes = grown;
        }
    }
}
