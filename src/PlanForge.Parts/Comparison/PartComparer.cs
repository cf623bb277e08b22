using System.Collections.Immutable;
using PlanForge.Geometry;
using PlanForge.Geometry.Deviations;

namespace PlanForge.Parts.Comparison;

/// <summary>Holds a part against an earlier version of itself.</summary>
internal static class PartComparer
{
    private static readonly LineUse[] Shape = [LineUse.Cut, LineUse.Trim, LineUse.Edge, LineUse.Score, LineUse.Hidden];

    private static readonly LineUse[] Marks = [LineUse.Centre, LineUse.Datum, LineUse.Station, LineUse.Neighbour];

    public static PartComparison Compare(Part old, Part now)
    {
        var figures = FigureChange.Between(old.Figures, now.Figures);
        var hasOtherTexts = !HasSameTexts(old, now);
        var isOtherwiseMade = old.Making != now.Making || old.Material != now.Material || old.Quantity != now.Quantity
            || Math.Abs(old.Thickness - now.Thickness) > LineChange.Tolerance || old.GrainAngle != now.GrainAngle;
        if (now.Making == Making.View)
        {
            // Its lines are not at true size: how far they moved says nothing.
            var isDrawnAnew = hasOtherTexts || isOtherwiseMade || old.Fingerprint?.Code != now.Fingerprint?.Code;
            return new(old, now, isDrawnAnew ? PartState.Changed : PartState.Same) { Figures = figures, HasOtherTexts = isDrawnAnew };
        }

        if (!old.Pieces.IsEmpty && !now.Pieces.IsEmpty)
        {
            return WithPieces(new(old, now, PartState.Same) { Figures = figures, HasOtherTexts = hasOtherTexts, IsOtherwiseMade = isOtherwiseMade });
        }

        // A template that is laid on wood is its axes as much as its lines, and off where it moved against them.
        var (uses, others) = now.Fitted is null ? (Shape, Marks) : ([.. Shape, LineUse.Centre], Marks[1..]);
        ImmutableArray<PartLine> oldLines = WorkedLines.Of(old), newLines = WorkedLines.Of(now);
        var shape = LineChange.Between(oldLines, newLines, uses).ToList();
        var move = shape.Count > 0 && now.Fitted is null ? MoveBetween(oldLines, newLines, uses) : null;
        var marks = LineChange.Between(oldLines, newLines, others).ToList();
        var hasMoved = move is not null || marks.Count > 0 || figures.Length > 0 || HasOtherStation(old, now) || !HasSamePlaces(old, now);
        var isChanged = isOtherwiseMade || (shape.Count > 0 && move is null);
        var state = isChanged ? PartState.Changed : hasMoved ? PartState.Moved : hasOtherTexts ? PartState.Changed : PartState.Same;
        var comparison = new PartComparison(old, now, state)
        {
            Figures = figures,
            HasOtherTexts = hasOtherTexts,
            IsOtherwiseMade = isOtherwiseMade,
            Move = isChanged ? default : move ?? default,
            Lines = [.. (isChanged ? shape : []).Concat(marks).Select(line => line.Use)],
        };
        return isChanged ? comparison with { Largest = LargestOf(shape), Wood = WoodOf(old, now, shape) } : comparison;
    }

    // Where a piece lies in the set says nothing.
    private static PartComparison WithPieces(PartComparison set)
    {
        ImmutableArray<PieceComparison> pieces = [.. PieceComparison.Between(set.Old!, set.New!)];
        var differing = pieces.Where(piece => piece.Comparison.State != PartState.Same).ToList();
        var isSame = differing.Count == 0 && set.Figures.IsEmpty && set is { HasOtherTexts: false, IsOtherwiseMade: false };
        var largest = differing.Where(piece => piece.Comparison.Largest is not null).MaxBy(piece => piece.Comparison.Largest!.Value.Distance);
        return set with
        {
            State = isSame ? PartState.Same : PartState.Changed,
            Pieces = pieces,
            Lines = differing.Count > 0 ? [LineUse.Cut] : [],
            Largest = largest is { Comparison.Largest: { } found, Origin: var corner } && differing.TrueForAll(piece => piece.Comparison.Largest is not null)
                ? new(found.Distance, corner + (found.At - Point2.Origin), corner + (found.Nearest - Point2.Origin))
                : null,
        };
    }

    private static Deviation? LargestOf(List<LineChange> shape)
    {
        var all = shape.Where(line => line.Largest is not null).Select(line => line.Largest!.Value).ToList();
        return all.Count > 0 ? all.MaxBy(deviation => deviation.Distance) : null;
    }

    private static OutlineDeviation? WoodOf(Part old, Part now, List<LineChange> shape)
    {
        EdgedShape before = WorkedLines.ShapeOf(old), after = WorkedLines.ShapeOf(now);
        var isCutAnew = shape.Any(line => line.Use == LineUse.Cut && line.Largest is not null);
        return isCutAnew && before.Contours.Concat(after.Contours).All(path => path.IsClosed)
            ? OutlineDeviation.Of(before, after, LineChange.Tolerance, PartComparison.Threshold)
            : null;
    }

    // The move that brings the old shape over the new one; null when none does.
    private static Vector2? MoveBetween(ImmutableArray<PartLine> old, ImmutableArray<PartLine> now, LineUse[] uses)
    {
        var (before, after) = (BoundsOf(old, uses), BoundsOf(now, uses));
        if (before.IsEmpty || Math.Abs(before.Width - after.Width) > 2 * LineChange.Same || Math.Abs(before.Height - after.Height) > 2 * LineChange.Same)
        {
            return null;
        }

        var move = after.Centre - before.Centre;
        var moved = Placement2.MovedBy(move);
        var lines = old.Where(line => uses.Contains(line.Use)).Select(line => line with { Path = line.Path.Placed(moved) });
        return LineChange.Between([.. lines], now, uses).Any() ? null : move;
    }

    private static Bounds2 BoundsOf(ImmutableArray<PartLine> lines, LineUse[] uses) =>
        lines.Where(line => uses.Contains(line.Use)).Aggregate(Bounds2.Empty, (bounds, line) => bounds.Joined(line.Path.Bounds));

    private static bool HasSameTexts(Part old, Part now) =>
        old.Title == now.Title
        && old.Labels.Select(label => label.Text).SequenceEqual(now.Labels.Select(label => label.Text))
        && old.Notes.SequenceEqual(now.Notes)
        && old.Tables.Length == now.Tables.Length
        && old.Tables.Zip(now.Tables).All(pair => HasSameCells(pair.First, pair.Second));

    private static bool HasSameCells(PartTable old, PartTable now) =>
        old.Title == now.Title && old.Header.SequenceEqual(now.Header) && old.Rows.Length == now.Rows.Length
        && old.Rows.Zip(now.Rows).All(pair => pair.First.SequenceEqual(pair.Second));

    private static bool HasOtherStation(Part old, Part now) =>
        old.Station is null != now.Station is null || Math.Abs((old.Station ?? 0) - (now.Station ?? 0)) > LineChange.Same;

    // Engraved texts are part of the wood; others may be laid out anew.
    private static bool HasSamePlaces(Part old, Part now)
    {
        var (before, after) = (old.Labels.Where(label => label.IsEngraved).ToList(), now.Labels.Where(label => label.IsEngraved).ToList());
        return before.Count == after.Count && before.Zip(after).All(pair => pair.First.At.DistanceTo(pair.Second.At) <= LineChange.Same);
    }
}
