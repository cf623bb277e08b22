using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using PlanForge.Airframe.Sections;

namespace PlanForge.Airframe.Reading;

/// <summary>
/// The fingerprint of a description as values: remarks, the order of keys, the spelling of units, and parameters that make the same
/// numbers change nothing.
/// </summary>
internal sealed class ValueHash : IDisposable
{
    // A picometre: far below anything drawn, far above what the spelling of a unit moves the last digits.
    private const int Decimals = 9;

    private readonly IncrementalHash _hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);

    private ValueHash()
    {
    }

    /// <inheritdoc/>
    public void Dispose() => _hash.Dispose();

    /// <summary>The fingerprint of a whole description with its section files.</summary>
    public static Fingerprint Of(MappingValues root, SectionFiles files)
    {
        using var hash = new ValueHash();
        hash.Add(root);
        foreach (var (path, text) in files.Texts)
        {
            hash.Add(path);
            hash.AddCoordinates(path, text);
        }

        return new(hash._hash.GetHashAndReset());
    }

    /// <summary>A number as it counts: what the spelling of a unit moves in the last digits is rounded off.</summary>
    public static string Canonical(double number) =>
        (Math.Round(number, Decimals) + 0.0).ToString("R", CultureInfo.InvariantCulture);

    /// <summary>The hash of the coordinates in a section file.</summary>
    public static string OfCoordinates(string path, string text)
    {
        using var hash = new ValueHash();
        hash.AddCoordinates(path, text);
        return Convert.ToHexStringLower(hash._hash.GetHashAndReset());
    }

    private void Add(ReadValue value)
    {
        switch (value)
        {
            case NumberValue number:
                Add(number.Number);
                break;
            case TextValue text:
                Add(text.Text);
                break;
            case WordValue word:
                Add(word.Index);
                break;
            case SizeValue size:
                Add(size.First);
                Add(size.Second);
                break;
            case PaperValue { Paper: var paper }:
                Add(paper.Width is null ? paper.Name : "size");
                Add(paper.Width ?? 0);
                Add(paper.Height ?? 0);
                break;
            case ListValue list:
                Add(list.Items.Count);
                list.Items.ForEach(Add);
                break;
            case MappingValues mapping:
                AddMapping(mapping);
                break;
        }
    }

    // Parameters count where they are used: the mapping that defines them was read apart and stands here as a value that failed.
    private void AddMapping(MappingValues mapping)
    {
        Add(mapping.Format.Id);
        for (var i = 0; i < mapping.Values.Length; i++)
        {
            if (mapping.Values[i] is { } value and not FailedValue)
            {
                Add(mapping.Format.Keys[i].Name);
                Add(value);
            }
        }
    }

    private void AddCoordinates(string path, string text)
    {
        foreach (var row in SectionFileScan.Of(path, text, []).Rows)
        {
            Add(row.Point.X);
            Add(row.Point.Y);
        }
    }

    // Adding zero makes a minus zero that rounding left a plain one.
    private void Add(double number) =>
        Add(Canonical(number));

    // The length before the text: no two series of texts run together into the same bytes.
    private void Add(string text)
    {
        var bytes = Encoding.UTF8.GetBytes(text);
        Span<byte> length = stackalloc byte[sizeof(int)];
        System.Buffers.Binary.BinaryPrimitives.WriteInt32LittleEndian(length, bytes.Length);
        _hash.AppendData(length);
        _hash.AppendData(bytes);
    }
}
