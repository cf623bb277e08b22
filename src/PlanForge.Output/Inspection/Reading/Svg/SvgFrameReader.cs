using PlanForge.Geometry;

namespace PlanForge.Output.Inspection.Reading.Svg;

/// <summary>Reads size and view box of the outermost element.</summary>
internal static class SvgFrameReader
{
    // Relative difference up to which two scales are the same: what numbers of six digits lose.
    private const double Alike = 1e-5;

    /// <summary>The map from the picture's numbers to mm; what keeps them from being millimetres is said.</summary>
    public static SvgMatrix Read(SvgElement root, CutFile file, FindingList findings)
    {
        var (width, height) = (SvgLength.Read(root["width"] ?? ""), SvgLength.Read(root["height"] ?? ""));
        var box = ViewBox(root, findings);
        if (width?.Millimetres is { } w && height?.Millimetres is { } h && w > 0 && h > 0)
        {
            file.Unit = width.Value.Unit;
            return WithSize(root, new(0, 0, w, h), box, file, findings);
        }

        findings.Fault(FindingCode.NoSize, root.At, "width and height have to be lengths such as 210mm; without them programs take 72, 90 or 96 units for an inch");
        var matrix = SvgMatrix.Scale(SvgLength.Pixel, SvgLength.Pixel);
        if (box is { } area)
        {
            matrix = matrix.After(SvgMatrix.Move(-area.MinX, -area.MinY));
            SetArea(file, root, new(0, 0, area.Width * SvgLength.Pixel, area.Height * SvgLength.Pixel));
        }

        return matrix;
    }

    private static SvgMatrix WithSize(SvgElement root, Bounds2 size, Bounds2? box, CutFile file, FindingList findings)
    {
        SetArea(file, root, size);
        if (box is not { } area)
        {
            findings.Warning(FindingCode.Scale, root.At, "without a viewBox the numbers are 96ths of an inch; give a viewBox with the size in mm");
            return SvgMatrix.Scale(SvgLength.Pixel, SvgLength.Pixel);
        }

        var (x, y) = (size.Width / area.Width, size.Height / area.Height);
        var isFree = root["preserveAspectRatio"]?.StartsWith("none", StringComparison.Ordinal) == true;
        if (Math.Abs(x - y) > Alike * Math.Max(x, y))
        {
            findings.Fault(FindingCode.Scale, root.At, FormattableString.Invariant($"width and height ask for {x:0.####} and {y:0.####} mm a unit; both have to be the viewBox's own numbers in mm"));
        }
        else if (Math.Abs(x - 1) > Alike)
        {
            findings.Warning(FindingCode.Scale, root.At, FormattableString.Invariant($"the viewBox scales: a unit is {x:0.#####} mm; give it the numbers of width and height in mm"));
        }

        // The picture is scaled evenly to fit and put in the middle (SVG 1.1, 7.8; from memory).
        var even = Math.Min(x, y);
        var (scaleX, scaleY) = isFree ? (x, y) : (even, even);
        return SvgMatrix.Move((size.Width - (scaleX * area.Width)) / 2, (size.Height - (scaleY * area.Height)) / 2)
            .After(SvgMatrix.Scale(scaleX, scaleY)).After(SvgMatrix.Move(-area.MinX, -area.MinY));
    }

    private static void SetArea(CutFile file, SvgElement root, Bounds2 area) => (file.Area, file.AreaPlace) = (area, root.At);

    private static Bounds2? ViewBox(SvgElement root, FindingList findings)
    {
        if (root["viewBox"] is not { } text)
        {
            return null;
        }

        var numbers = new SvgNumbers(text);
        Span<double> values = stackalloc double[4];
        numbers.SkipSpace();
        var isRead = true;
        for (var i = 0; i < 4 && isRead; i++)
        {
            isRead = numbers.TryNumber(out values[i]);
            numbers.SkipComma();
        }

        if (isRead && numbers.IsAtEnd && values[2] > 0 && values[3] > 0)
        {
            return new(values[0], values[1], values[0] + values[2], values[1] + values[3]);
        }

        findings.Fault(FindingCode.Syntax, root.PlacesIn("viewBox")(0), $"a viewBox is four numbers, the last two over 0, not {Words.Quote(text)}");
        return null;
    }
}
