using PlanForge.Airframe.Format;

namespace PlanForge.Airframe.Reading;

/// <summary>
/// The values of a description as they were read, with its section files: to tell which of them are the same in another reading.
/// Where they stand, remarks and the spelling of units do not count; numbers count to the last bit.
/// </summary>
public sealed class ReadValues
{
    private readonly MappingValues _root;
    private readonly KeyValuePair<string, string>[] _files;
    private readonly List<ReadValue> _formers;

    internal ReadValues(MappingValues root, SectionFiles files) =>
        (_root, _files, _formers) = (root, [.. files.Texts], root.List(AirframeFormat.Formers));

    /// <summary>True when everything but the formers is the same.</summary>
    public bool IsSameButFormers(ReadValues other)
    {
        ArgumentNullException.ThrowIfNull(other);
        var formers = _root.Format.IndexOf(AirframeFormat.Formers);
        for (var i = 0; i < _root.Values.Length; i++)
        {
            if (i != formers && !AreSame(_root.Values[i], other._root.Values[i]))
            {
                return false;
            }
        }

        return _files.AsSpan().SequenceEqual(other._files);
    }

    /// <summary>True when a former is the same as one of another reading.</summary>
    /// <param name="index">Its place among the formers.</param>
    /// <param name="other">The other reading.</param>
    /// <param name="otherIndex">The other former's place there.</param>
    public bool IsSameFormer(int index, ReadValues other, int otherIndex)
    {
        ArgumentNullException.ThrowIfNull(other);
        return AreSame(_formers[index], other._formers[otherIndex]);
    }

    private static bool AreSame(ReadValue? one, ReadValue? other) => (one, other) switch
    {
        (null, null) => true,
        (NumberValue a, NumberValue b) => IsSame(a.Number, b.Number),
        (TextValue a, TextValue b) => a.Text == b.Text,
        (WordValue a, WordValue b) => a.Index == b.Index,
        (SizeValue a, SizeValue b) => IsSame(a.First, b.First) && IsSame(a.Second, b.Second),
        (PaperValue { Paper: var a }, PaperValue { Paper: var b }) => a.Name == b.Name && a.Width == b.Width && a.Height == b.Height,
        (ListValue a, ListValue b) => AreSame(a.Items, b.Items),
        (MappingValues a, MappingValues b) => a.Format == b.Format && AreSame(a.Values, b.Values),

        // In a description without errors only the parameters stand so: they were read apart, and count where they are used.
        (FailedValue, FailedValue) => true,
        _ => false,
    };

    private static bool AreSame(IReadOnlyList<ReadValue?> one, IReadOnlyList<ReadValue?> other)
    {
        if (one.Count != other.Count)
        {
            return false;
        }

        for (var i = 0; i < one.Count; i++)
        {
            if (!AreSame(one[i], other[i]))
            {
                return false;
            }
        }

        return true;
    }

    private static bool IsSame(double one, double other) => BitConverter.DoubleToInt64Bits(one) == BitConverter.DoubleToInt64Bits(other);
}
