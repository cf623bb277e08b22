namespace PlanForge.Output.Inspection.Reading.Svg;

/// <summary>Reads a <c>transform</c> attribute (SVG 1.1, 7.6; from memory).</summary>
internal static class SvgTransformList
{
    /// <summary>The map, or null with the place in the text that is at fault.</summary>
    public static SvgMatrix? Read(string text, out int fault)
    {
        var result = SvgMatrix.Identity;
        var numbers = new SvgNumbers(text);
        Span<double> values = stackalloc double[6];
        numbers.SkipSpace();
        while (!numbers.IsAtEnd)
        {
            fault = numbers.Position;
            var name = numbers.Word();
            numbers.SkipSpace();
            if (numbers.IsAtEnd || numbers.Next != '(')
            {
                return null;
            }

            numbers.Skip();
            numbers.SkipSpace();
            var count = 0;
            while (!numbers.IsAtEnd && numbers.Next != ')')
            {
                if (count == values.Length || !numbers.TryNumber(out values[count++]))
                {
                    fault = numbers.Position;
                    return null;
                }

                numbers.SkipComma();
            }

            if (numbers.IsAtEnd || Of(name, values[..count]) is not { } map)
            {
                return null;
            }

            result = result.After(map);
            numbers.Skip();
            numbers.SkipComma();
        }

        fault = 0;
        return result;
    }

    private static SvgMatrix? Of(ReadOnlySpan<char> name, ReadOnlySpan<double> values) => (name.ToString(), values.Length) switch
    {
        ("matrix", 6) => new(values[0], values[1], values[2], values[3], values[4], values[5]),
        ("translate", 1) => SvgMatrix.Move(values[0], 0),
        ("translate", 2) => SvgMatrix.Move(values[0], values[1]),
        ("scale", 1) => SvgMatrix.Scale(values[0], values[0]),
        ("scale", 2) => SvgMatrix.Scale(values[0], values[1]),
        ("rotate", 1) => SvgMatrix.Turn(values[0]),
        ("rotate", 3) => SvgMatrix.Move(values[1], values[2]).After(SvgMatrix.Turn(values[0])).After(SvgMatrix.Move(-values[1], -values[2])),
        ("skewX", 1) => new(1, 0, Math.Tan(values[0] * Math.PI / 180), 1, 0, 0),
        ("skewY", 1) => new(1, Math.Tan(values[0] * Math.PI / 180), 0, 1, 0, 0),
        _ => null,
    };
}
