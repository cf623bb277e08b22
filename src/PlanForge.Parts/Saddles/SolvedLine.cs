using System.Collections.Immutable;
using PlanForge.Geometry;
using PlanForge.Parts.Shapes;

namespace PlanForge.Parts.Saddles;

/// <summary>A saddle line as solved: numbers alone, which hold as long as nothing changes that they were solved from.</summary>
/// <param name="Points">The points, front to rear.</param>
/// <param name="IsCutShortInFront">True when the front end is where the wing's surface leaves the body, not where it was asked for.</param>
/// <param name="IsCutShortBehind">The same of the rear end.</param>
internal sealed record SolvedLine(ImmutableArray<SaddlePoint> Points, bool IsCutShortInFront, bool IsCutShortBehind)
{
    // Points along w. Fewer would show in the arcs fitted through them (0.01 mm); more only cost time. With x = w² they crowd at the nose.
    private const int StepCount = 128;

    // Corners are located to this in w: 1e-10 of a chord or so.
    private const double CornerTolerance = 1e-11;

    /// <summary>Solves the line.</summary>
    /// <param name="solver">Finds its points.</param>
    /// <param name="body">The fuselage.</param>
    /// <param name="from">Station of the front end, or null for the leading edge.</param>
    /// <param name="to">Station of the rear end, or null for the trailing edge.</param>
    /// <returns>The line, cut short where it would leave the body; null where no part of it lies on the body.</returns>
    public static SolvedLine? Of(SaddleSolver solver, FuselageShape body, double? from, double? to)
    {
        var first = from is { } front ? ParameterAt(solver, front) : WingShape.Nose;
        var last = to is { } rear ? ParameterAt(solver, rear) : 1;
        if (!(last > first) || OnBody(solver, body, first, last) is not { } range)
        {
            return null;
        }

        var points = ImmutableArray.CreateBuilder<SaddlePoint>();
        SaddlePoint? before = null;
        for (var i = 0; i <= StepCount; i++)
        {
            if (solver.At(range.First + ((range.Last - range.First) * i / StepCount)) is not { } point)
            {
                return null;
            }

            if (before is { } old && (old.Panel != point.Panel || old.Bay != point.Bay))
            {
                AddCorners(solver, old, point, points);
            }

            points.Add(point);
            before = point;
        }

        return new(points.ToImmutable(), range.First > first, range.Last < last);
    }

    // The range of w whose points lie within the body's height and length: from the first such probe to the last, ends refined.
    private static (double First, double Last)? OnBody(SaddleSolver solver, FuselageShape body, double first, double last)
    {
        const int Probes = 32;
        double Inside(double w)
        {
            if (solver.At(w) is not { } point)
            {
                return -1;
            }

            var bay = body.BayAt(point.Outer.X);
            var section = bay.At(point.Outer.X);
            var withinHeight = Math.Min(section.Upper.Value - point.Outer.Z, point.Outer.Z - section.Lower.Value);

            // Only the end bays run on past the body.
            var behindNose = bay.Index == 0 ? point.Outer.X - bay.From : double.PositiveInfinity;
            var beforeTail = bay.Index == body.Bays.Length - 1 ? bay.To - point.Outer.X : double.PositiveInfinity;
            var withinLength = Math.Min(behindNose, beforeTail);
            return Math.Min(withinHeight, withinLength);
        }

        double At(int probe) => first + ((last - first) * probe / Probes);
        var front = 0;
        while (front <= Probes && Inside(At(front)) < 0)
        {
            front++;
        }

        if (front > Probes)
        {
            return null;
        }

        var rear = Probes;
        while (rear > front && Inside(At(rear)) < 0)
        {
            rear--;
        }

        var cutFirst = front == 0 ? first : RootFinder.Bracketed(Inside, At(front - 1), At(front), 1e-13) ?? At(front);
        var cutLast = rear == Probes ? last : RootFinder.Bracketed(Inside, At(rear), At(rear + 1), 1e-13) ?? At(rear);
        return cutLast > cutFirst ? (cutFirst, cutLast) : null;
    }

    private static double ParameterAt(SaddleSolver solver, double station)
    {
        double Ahead(double w) => solver.At(w) is { } point ? point.Outer.X - station : double.NaN;
        return Ahead(WingShape.Nose) >= 0 ? WingShape.Nose : RootFinder.Bracketed(Ahead, WingShape.Nose, 1, 1e-14) ?? 1;
    }

    // Halves the step until each change of panel or bay stands alone, then adds both its sides.
    private static void AddCorners(SaddleSolver solver, SaddlePoint a, SaddlePoint b, ImmutableArray<SaddlePoint>.Builder points)
    {
        while (b.W - a.W > CornerTolerance)
        {
            if (solver.At((a.W + b.W) / 2) is not { } middle)
            {
                return;
            }

            var isSameAsA = middle.Panel == a.Panel && middle.Bay == a.Bay;
            var isSameAsB = middle.Panel == b.Panel && middle.Bay == b.Bay;
            if (!isSameAsA && !isSameAsB)
            {
                AddCorners(solver, a, middle, points);
                points.Add(middle);
                a = middle;
            }
            else
            {
                (a, b) = isSameAsA ? (middle, b) : (a, middle);
            }
        }

        // Both sides of the corner stand at the same place: the step between them is the trace by which two panels miss.
        const double Visible = 1e-3;
        var place = a.Outer.Towards(b.Outer, 0.5);
        var isOnePlace = a.Outer.DistanceTo(b.Outer) < Visible;
        points.Add(isOnePlace ? a with { Outer = place } : a);
        points.Add(isOnePlace ? b with { Outer = place } : b);
    }
}
