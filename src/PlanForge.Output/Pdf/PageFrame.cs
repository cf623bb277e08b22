using PlanForge.Drafting.Model;
using PlanForge.Geometry;
using PlanForge.Output.Bytes;

namespace PlanForge.Output.Pdf;

/// <summary>From a page's millimetres to the points of its file: the same everywhere, or stretched about its middle for a printer.</summary>
internal readonly record struct PageFrame
{
    // Twelve decimals leave the far end of the longest page, 5 m away, right to a hundredth of a nanometre.
    private const int MatrixDecimals = 12;
    private const int BoxDecimals = 6;

    private readonly double _left;
    private readonly double _bottom;

    /// <summary>The frame of a page.</summary>
    /// <param name="page">The page.</param>
    /// <param name="correction">How it is stretched, or null.</param>
    public PageFrame(Page page, PrinterScale? correction)
    {
        var (x, y) = (correction?.X ?? 1, correction?.Y ?? 1);
        PointsAcross = x * PdfSyntax.PointsPerMillimetre;
        PointsUp = y * PdfSyntax.PointsPerMillimetre;
        _left = page.Width / 2 * (1 - x) * PdfSyntax.PointsPerMillimetre;
        _bottom = page.Height / 2 * (1 - y) * PdfSyntax.PointsPerMillimetre;
    }

    /// <summary>Points to a millimetre across the page.</summary>
    public double PointsAcross { get; }

    /// <summary>Points to a millimetre up the page.</summary>
    public double PointsUp { get; }

    /// <summary>Appends it as the matrix of a content stream.</summary>
    public ByteText AppendMatrix(ByteText text) => text.Append(PointsAcross, MatrixDecimals).Append(" 0 0 "u8)
        .Append(PointsUp, MatrixDecimals).Append(" "u8).Append(_left, MatrixDecimals).Append(" "u8).Append(_bottom, MatrixDecimals).Append(" cm"u8);

    /// <summary>Appends the four numbers of a rectangle in points: left, bottom, right, top.</summary>
    public ByteText AppendCorners(ByteText text, Bounds2 place) => text
        .Append(Across(place.MinX), BoxDecimals).Append(" "u8).Append(Up(place.MinY), BoxDecimals).Append(" "u8)
        .Append(Across(place.MaxX), BoxDecimals).Append(" "u8).Append(Up(place.MaxY), BoxDecimals);

    private double Across(double x) => (x * PointsAcross) + _left;

    private double Up(double y) => (y * PointsUp) + _bottom;
}
