using System.Globalization;
using PlanForge.Drafting.Model;
using PlanForge.Output.Bytes;

namespace PlanForge.Output.Pdf;

/// <summary>
/// The viewports by which measuring tools of viewers read true millimetres (ISO 32000-1, 12.9): one over the page, then one
/// for each view to a scale; where several hold a point, the last counts.
/// </summary>
internal static class PageMeasures
{
    /// <summary>Writes the measure that all pages share: drawing units are true millimetres.</summary>
    /// <param name="file">The file it goes to.</param>
    /// <param name="number">Its reserved number.</param>
    /// <param name="frame">From any page's millimetres to points.</param>
    public static void WriteTrueSize(PdfFile file, int number, PageFrame frame)
    {
        AppendMeasure(file.Begin(number), "1:1 mm", 1, frame);
        file.End();
    }

    /// <summary>Appends a page's entry.</summary>
    /// <param name="text">Where it goes.</param>
    /// <param name="page">The page.</param>
    /// <param name="frame">From the page's millimetres to points.</param>
    /// <param name="trueSize">The number of the measure that all pages share.</param>
    public static void Append(ByteText text, Page page, PageFrame frame, int trueSize)
    {
        BeginViewport(text.Append("/VP [ "u8), "True size").AppendBox(page.Width, page.Height)
            .Append(" /Measure "u8).AppendReference(trueSize).Append(" >>"u8);
        foreach (var view in page.ScaledViews)
        {
            frame.AppendCorners(BeginViewport(text.Append("\n"u8), view.Name).Append("["u8), view.Place).Append("] /Measure "u8);
            AppendMeasure(text, RatioOf(view.Scale) + " mm", view.Scale, frame);
            text.Append(" >>"u8);
        }

        text.Append(" ]"u8);
    }

    private static ByteText BeginViewport(ByteText text, string name) =>
        text.Append("<< /Type /Viewport /Name "u8).AppendString(name).Append(" /BBox "u8);

    private static void AppendMeasure(ByteText text, string ratio, double scale, PageFrame frame)
    {
        text.Append("<< /Type /Measure /Subtype /RL /R "u8).AppendString(ratio);
        AppendAxis(text, " /X"u8, frame.PointsAcross * scale);
        if (frame.PointsAcross != frame.PointsUp)
        {
            // With two axes of their own, both in millimetres: one is one of the other.
            AppendAxis(text, " /Y"u8, frame.PointsUp * scale);
            text.Append(" /CYX 1"u8);
        }

        text.Append("\n/D [ << /Type /NumberFormat /U (mm) /C 1 /D 100 >> ] /A [ << /Type /NumberFormat /U (mm\\262) /C 1 /D 1 >> ] >>"u8);
    }

    private static void AppendAxis(ByteText text, ReadOnlySpan<byte> key, double pointsPerMillimetre) => text.Append(key)
        .Append(" [ << /Type /NumberFormat /U (mm) /C "u8).Append(1 / pointsPerMillimetre, Decimals.Most).Append(" /D 100 >> ]"u8);

    /// <summary>A scale the way drawings write it: 1:5 or 2:1.</summary>
    private static string RatioOf(double scale) => scale <= 1
        ? string.Create(CultureInfo.InvariantCulture, $"1:{1 / scale:0.###}")
        : string.Create(CultureInfo.InvariantCulture, $"{scale:0.###}:1");
}
