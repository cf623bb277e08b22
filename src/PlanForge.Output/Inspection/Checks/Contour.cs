using PlanForge.Geometry;
using PlanForge.Output.Inspection.Reading;

namespace PlanForge.Output.Inspection.Checks;

/// <summary>Lines and arcs that follow each other end to end.</summary>
internal sealed class Contour
{
    public Contour(FileLayer layer, List<ContourSegment> segments, bool isClosed)
    {
        (Layer, Segments, IsClosed) = (layer, segments, isClosed);
        var (bounds, at) = (Bounds2.Empty, segments[0].At);
        foreach (var piece in segments)
        {
            bounds = bounds.Joined(piece.Segment.Bounds);
            Length += piece.Segment.Length;
            CutLength += piece.IsBridge ? 0 : piece.Segment.Length;
            at = !piece.IsBridge && piece.At.IsBefore(at) ? piece.At : at;
        }

        (Bounds, At) = (bounds, at);
    }

    public FileLayer Layer { get; }

    /// <summary>In order of travel.</summary>
    public List<ContourSegment> Segments { get; }

    /// <summary>True when the last segment leads to the first; gaps and tabs are bridged.</summary>
    public bool IsClosed { get; }

    /// <summary>Where its first line stands in the file.</summary>
    public TextPlace At { get; }

    public Bounds2 Bounds { get; }

    /// <summary>The length along it, bridges included, mm.</summary>
    public double Length { get; }

    /// <summary>The length of what is drawn, mm.</summary>
    public double CutLength { get; }

    /// <summary>The enclosed area, mm², 0 for an open one.</summary>
    public double Area
    {
        get
        {
            var area = 0.0;
            var origin = Segments[0].Segment.Start;
            foreach (var piece in Segments)
            {
                area += ((piece.Segment.Start - origin).Cross(piece.Segment.End - origin) / 2) + piece.Segment.CapArea;
            }

            return IsClosed ? Math.Abs(area) : 0;
        }
    }

    /// <summary>The segment before or after one, or null at an end.</summary>
    public ContourSegment? Neighbour(int index, int step)
    {
        var next = index + step;
        return next >= 0 && next < Segments.Count ? Segments[next] : IsClosed ? Segments[(next + Segments.Count) % Segments.Count] : null;
    }

    /// <summary>How far two places on it are apart along it, mm, the shorter way round.</summary>
    public double Apart(double from, double to)
    {
        var straight = Math.Abs(to - from);
        return IsClosed ? Math.Min(straight, Length - straight) : straight;
    }
}

/// <summary>A segment of a contour, in the contour's direction of travel.</summary>
/// <param name="Segment">The line or arc.</param>
/// <param name="At">Where it stands in the file.</param>
/// <param name="IsChord">True for a piece of a curve that was taken apart here.</param>
/// <param name="IsBridge">True for what is not drawn: a gap or a holding tab.</param>
/// <param name="From">The length along the contour at which it begins, mm.</param>
internal readonly record struct ContourSegment(Segment2 Segment, TextPlace At, bool IsChord, bool IsBridge, double From);
