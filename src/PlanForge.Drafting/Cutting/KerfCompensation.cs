using System.Collections.Immutable;
using PlanForge.Drafting.Conventions;
using PlanForge.Drafting.Model;
using PlanForge.Drafting.PartDrawings;
using PlanForge.Geometry;
using PlanForge.Geometry.Offsets;
using PlanForge.Geometry.Regions;
using PlanForge.Parts;

namespace PlanForge.Drafting.Cutting;

/// <summary>Moves the lines that are cut by half the kerf into the waste, so that what is left has the size that was drawn.</summary>
public static class KerfCompensation
{
    // A place that is kept lies half a kerf from its new line, at the sharpest corner that is not rounded four times as far.
    private const double FarthestInKerfs = Offsetter.MitreLimit / 2;

    // How far the contour may stray when short segments are taken out, mm: a tenth of what the drawings promise.
    private const double Crumb = 1e-3;

    // Shares of a segment's length at which its new line is looked for; the corners move more than half the kerf.
    private static ReadOnlySpan<double> Probes => [0, 0.25, 0.5, 0.75];

    /// <summary>
    /// The same drawing with outlines larger and openings smaller by half the kerf all round: radii of arcs change by exactly
    /// that, corners stay sharp. Scored and engraved lines stay where they are.
    /// </summary>
    /// <param name="drawing">A drawing at true size; its cut lines are closed.</param>
    /// <param name="kerf">Full width that the cutter burns away, mm, 0 or more.</param>
    /// <param name="lost">Where, in the drawing's coordinates, something is narrower than the kerf; null when nothing is.</param>
    /// <returns>The compensated drawing, or null when a place is lost.</returns>
    /// <exception cref="ArgumentException">A cut line is open.</exception>
    public static CutDrawing? Of(CutDrawing drawing, double kerf, out Point2? lost)
    {
        ArgumentNullException.ThrowIfNull(drawing);
        ArgumentOutOfRangeException.ThrowIfNegative(kerf);
        lost = null;
        var items = ImmutableArray.CreateBuilder<DrawingItem>(drawing.Drawing.Items.Length);
        var contours = new List<Path2>();
        foreach (var item in drawing.Drawing.Items)
        {
            if (item is DrawingItem.Stroke { Layer: Layer.Cut } cut)
            {
                contours.Add(cut.Path);
            }
            else
            {
                items.Add(item);
            }
        }

        var material = Region2.FromContours(FillRule.EvenOdd, contours);
        var grown = Offsetter.Offset(material, kerf / 2, CornerStyle.Sharp);
        lost = LostPlace(material, grown, kerf);
        if (lost is not null)
        {
            return null;
        }

        items.InsertRange(0, grown.Contours.Select(path => new DrawingItem.Stroke(Layer.Cut, CrumbFilter.Clean(path, CutDrawings.ShortestSegment, Crumb), LineConventions.StyleOf(LineUse.Cut))));
        return drawing with { Drawing = new(items.ToImmutable()), Kerf = kerf };
    }

    /// <summary>
    /// A place of the old contours that has no line any more: openings, slots and gaps narrower than the kerf, and where a
    /// neck that narrow parts an opening in two.
    /// </summary>
    private static Point2? LostPlace(Region2 material, Region2 grown, double kerf)
    {
        var lines = new NearLines(grown);
        Point2? swallowed = null;
        foreach (var contour in material.Contours)
        {
            for (var i = 0; i < contour.SegmentCount; i++)
            {
                var segment = contour.SegmentAt(i);
                foreach (var share in Probes)
                {
                    var place = segment.PointAt(share);
                    if (!lines.HasWithin(place, (FarthestInKerfs * kerf) + Region2.SnapDistance))
                    {
                        return place;
                    }

                    // The material lies on the left, the new line half a kerf to the right.
                    if (share == 0.5 && swallowed is null && !lines.HasWithin(place - (segment.DirectionAt(share).Left * (kerf / 2)), kerf / 100))
                    {
                        swallowed = place;
                    }
                }
            }
        }

        return grown.Contours.Count() == material.Contours.Count() ? null : swallowed ?? material.Bounds.Centre;
    }

    /// <summary>The lines of a region, asked for places that follow each other along them.</summary>
    private sealed class NearLines(Region2 region)
    {
        private readonly List<(Segment2 Segment, Bounds2 Bounds)> _lines =
            [.. region.Contours.SelectMany(contour => contour.Segments).Select(segment => (segment, segment.Bounds))];

        private int _last;

        public bool HasWithin(Point2 place, double distance)
        {
            for (var i = 0; i < _lines.Count; i++)
            {
                var index = (_last + i) % _lines.Count;
                var (segment, bounds) = _lines[index];
                if (bounds.Grown(distance).Contains(place) && segment.DistanceTo(place) <= distance)
                {
                    _last = index;
                    return true;
                }
            }

            return false;
        }
    }
}
