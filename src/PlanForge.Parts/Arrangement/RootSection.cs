using System.Collections.Immutable;
using PlanForge.Geometry;
using PlanForge.Geometry.Fitting;
using PlanForge.Parts.Shapes;

namespace PlanForge.Parts.Arrangement;

/// <summary>The section in which the centre plane y = 0 cuts a wing: x the station, y the height.</summary>
internal static class RootSection
{
    private const int StepCount = 128;

    /// <summary>The outline from the trailing edge over the upper surface round the nose and back below; a trailing edge gap stays open.</summary>
    public static ImmutableArray<CurveSample> Outline(WingShape wing)
    {
        var upper = Surface(wing, WingSide.Upper, 0);
        var lower = Surface(wing, WingSide.Lower, 0);

        // The nose is one place for both surfaces: it is taken once, so that the curve runs round it without a corner, or, where it
        // is sharp, twice in a row, which makes one.
        Point2 nose = upper[0], above = upper[1], below = lower[1];
        var isSharp = (nose - above).Dot(below - nose) < 0;
        return SampledCurve.Through([.. upper.Reverse(), .. isSharp ? [nose] : ImmutableArray<Point2>.Empty, .. lower.AsSpan()[1..]]);
    }

    /// <summary>One surface moved out by the seat tape, from the nose to the trailing edge.</summary>
    public static ImmutableArray<Point2> Surface(WingShape wing, WingSide side, double seatTape)
    {
        var points = ImmutableArray.CreateBuilder<Point2>(StepCount + 1);
        for (var i = 0; i <= StepCount; i++)
        {
            var w = Math.Max(WingShape.Nose, (double)i / StepCount);
            var seat = wing.SeatAt(0, side, wing.RangeFrom(0, side, w, seatTape), w, seatTape);
            points.Add(new(seat.Point.X, seat.Point.Z));
        }

        return points.ToImmutable();
    }

    /// <summary>The closed path along an open outline: a trailing edge gap is bridged by a straight line.</summary>
    public static Path2 Closed(Path2 outline)
    {
        const double NoGap = 1e-9;
        return Path2.Closed(outline.Start.DistanceTo(outline.End) > NoGap ? outline.Vertices : outline.Vertices[..^1]);
    }
}
