using System.Collections.Immutable;
using PlanForge.Geometry.Regions;

namespace PlanForge.Geometry.Offsets;

/// <summary>One contour's offset before it is cleared of crossings.</summary>
/// <remarks>
/// Each segment moved along its normals and joined to the next: around the outside of a corner by an arc or a tip; on its
/// inside by going back to the corner itself, so that what is swept there keeps its sense. An arc that shrinks to nothing
/// goes through its centre for the same reason.
/// </remarks>
internal sealed class RawOffset
{
    // Neighbours that meet at less than this, radians, and whose offsets part by less than this, mm, are joined in one point
    // without a corner. Fitted curves are tangent to about 1e-6. Larger would cut real corners, smaller would leave crumbs.
    private const double GreatestSmoothTurn = 1e-5;
    private const double GreatestSmoothGap = 1e-4;

    // And only when both offsets are longer than the change at their ends by far.
    private const double LeastLengthShare = 0.1;

    private readonly Path2 _contour;
    private readonly double _distance;
    private readonly CornerStyle _corners;
    private readonly ImmutableArray<PathVertex>.Builder _vertices = ImmutableArray.CreateBuilder<PathVertex>();

    private RawOffset(Path2 contour, double distance, CornerStyle corners) =>
        (_contour, _distance, _corners) = (contour, distance, corners);

    /// <summary>The raw offset of a contour to its right (positive) or left (negative).</summary>
    public static Path2 Of(Path2 contour, double distance, CornerStyle corners)
    {
        var raw = new RawOffset(contour, distance, corners);
        var joint = new Joint(contour, contour.SegmentCount - 1, distance);
        for (var i = 0; i < contour.SegmentCount; i++)
        {
            var next = new Joint(contour, i, distance);
            raw.AddSegment(contour.SegmentAt(i), joint, next);
            raw.AddJoint(next);
            joint = next;
        }

        return Path2.Closed(raw._vertices);
    }

    private void AddSegment(in Segment2 segment, in Joint before, in Joint after)
    {
        if (segment.IsLine)
        {
            _vertices.Add(new(before.Start));
            _vertices.Add(new(after.End));
            return;
        }

        var radius = OffsetRadius(segment, _distance);
        if (radius <= 0)
        {
            _vertices.Add(new(before.Start));
            _vertices.Add(new(segment.Start));
            _vertices.Add(new(segment.Centre));
            _vertices.Add(new(segment.End));
            _vertices.Add(new(after.End));
            return;
        }

        // The offset arc turns as far as the arc does, and a little on or less where a smooth joint moves its ends.
        var extension = before.Extension + after.Extension;
        var bulge = Math.Abs(extension) <= Region2.SnapDistance
            ? segment.Bulge
            : Math.Sign(segment.Bulge) * Math.Tan((Math.Abs(segment.Sweep) + (extension / radius)) / 4);
        _vertices.Add(new(before.Start, bulge));
        _vertices.Add(new(after.End));
    }

    private void AddJoint(in Joint joint)
    {
        if (joint.IsSmooth)
        {
            return;
        }

        if (!joint.IsOutside)
        {
            _vertices.Add(new(joint.Corner));
        }
        else if (_corners == CornerStyle.Sharp && joint.Tip is { } tip)
        {
            _vertices.Add(new(tip));
        }
        else
        {
            _vertices[^1] = _vertices[^1] with { Bulge = Math.Tan(joint.Turn / 4) };
        }
    }

    // To the right an anticlockwise arc grows. 0 when nothing is left of the arc.
    private static double OffsetRadius(in Segment2 arc, double distance)
    {
        var radius = arc.Radius + (distance * Math.Sign(arc.Bulge));
        return radius > Region2.SnapDistance ? radius : 0;
    }

    private static double OffsetLength(in Segment2 segment, double distance) =>
        segment.IsLine ? segment.Length : OffsetRadius(segment, distance) * Math.Abs(segment.Sweep);

    /// <summary>What happens between a segment and the next one.</summary>
    private readonly struct Joint
    {
        private readonly Vector2 _normalSum;
        private readonly double _distance;

        public Joint(Path2 contour, int index, double distance)
        {
            var (arriving, leaving) = (contour.SegmentAt(index), contour.SegmentAt((index + 1) % contour.SegmentCount));
            var (before, after) = (arriving.DirectionAt(1), leaving.DirectionAt(0));
            _distance = distance;
            Corner = leaving.Start;
            _normalSum = -(before.Left + after.Left);
            Turn = Math.Atan2(before.Cross(after), before.Dot(after));

            // A path that turns right back may have a spike on either side; going around its point is right for both.
            if (Math.PI - Math.Abs(Turn) < GreatestSmoothTurn)
            {
                Turn = Math.CopySign(Turn, distance);
            }

            // A smooth joint leans the ends of both strips the same way. A strip much longer than that keeps its sense; one
            // that is not, or has come to its centre and leans no more, would leave a wedge between both that nothing covers.
            Extension = distance * Math.Tan(Turn / 2);
            IsSmooth = Math.Abs(Turn) < GreatestSmoothTurn
                && Math.Abs(Extension) < GreatestSmoothGap
                && Math.Abs(Extension) < LeastLengthShare * Math.Min(OffsetLength(arriving, distance), OffsetLength(leaving, distance));
            if (IsSmooth)
            {
                End = Start = Corner + (_normalSum.Unit() * distance);
            }
            else
            {
                (End, Start) = (Corner - (before.Left * distance), Corner - (after.Left * distance));
                Extension = 0;
            }
        }

        /// <summary>The corner of the contour.</summary>
        public Point2 Corner { get; }

        /// <summary>Where the offset of the arriving segment ends.</summary>
        public Point2 End { get; }

        /// <summary>Where the offset of the leaving segment starts.</summary>
        public Point2 Start { get; }

        /// <summary>The angle turned at the corner, radians, anticlockwise positive.</summary>
        public double Turn { get; }

        /// <summary>By how much a smooth joint lengthens its neighbours' offsets, mm; 0 at a corner.</summary>
        public double Extension { get; }

        /// <summary>True when both offsets are joined in one point.</summary>
        public bool IsSmooth { get; }

        /// <summary>True when the offset goes around the outside of the corner.</summary>
        public bool IsOutside => Turn * _distance > 0;

        /// <summary>Where the tangents of both offsets meet, or null when that is too far away.</summary>
        public Point2? Tip
        {
            get
            {
                // The sum of the unit normals is 2cos(turn/2) long; the tip lies distance/cos(turn/2) along it.
                var halfCosine = _normalSum.Length / 2;
                return halfCosine * Offsetter.MitreLimit >= 1
                    ? Corner + (_normalSum * (_distance / (2 * halfCosine * halfCosine)))
                    : null;
            }
        }
    }
}
