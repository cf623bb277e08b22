using System.Collections.Immutable;
using PlanForge.Geometry;
using PlanForge.Parts.Shapes;

namespace PlanForge.Parts.Saddles;

/// <summary>The whole saddle line of the starboard side as exact points from front to rear.</summary>
/// <remarks>
/// Where the line passes a joint of the wing or a fold of the body it has a corner: there two points follow each other at
/// the same place with the two directions.
/// </remarks>
/// <param name="solver">Finds points between those solved.</param>
/// <param name="solved">The points solved.</param>
internal sealed class SaddleLine(SaddleSolver solver, SolvedLine solved)
{
    /// <summary>The points, front to rear.</summary>
    public ImmutableArray<SaddlePoint> Points => solved.Points;

    /// <summary>Station of the front end on the outer face, mm.</summary>
    public double From => Points[0].Outer.X;

    /// <summary>Station of the rear end on the outer face, mm.</summary>
    public double To => Points[^1].Outer.X;

    /// <summary>True when the front end is where the wing's surface leaves the body, not where it was asked for.</summary>
    public bool IsCutShortInFront => solved.IsCutShortInFront;

    /// <summary>The same of the rear end.</summary>
    public bool IsCutShortBehind => solved.IsCutShortBehind;

    /// <summary>Solves the line.</summary>
    /// <param name="wing">The wing.</param>
    /// <param name="body">The fuselage.</param>
    /// <param name="side">The wing's surface that meets the body.</param>
    /// <param name="seatTape">Thickness of the tape on the seat, mm.</param>
    /// <param name="from">Station of the front end, or null for the leading edge.</param>
    /// <param name="to">Station of the rear end, or null for the trailing edge.</param>
    /// <returns>The line, cut short where it would leave the body; null where no part of it lies on the body.</returns>
    public static SaddleLine? Solve(WingShape wing, FuselageShape body, WingSide side, double seatTape, double? from, double? to)
    {
        var solver = new SaddleSolver(wing, body, side, seatTape);
        return SolvedLine.Of(solver, body, from, to) is { } solved ? new(solver, solved) : null;
    }

    /// <summary>Points at even steps along the station, the ends themselves among them.</summary>
    /// <param name="count">How many, at least 2.</param>
    public ImmutableArray<SaddlePoint> Spread(int count) =>
    [
        Points[0],
        .. Enumerable.Range(1, count - 2).Select(i => AtStation(From + ((To - From) * i / (count - 1)))!),
        Points[^1],
    ];

    /// <summary>The point at a station of the outer face, or null outside the line.</summary>
    public SaddlePoint? AtStation(double station)
    {
        // The round nose may lie a trace before its own end: search the piece that passes the station going aft.
        for (var i = 1; i < Points.Length; i++)
        {
            if (Points[i - 1].Outer.X <= station && station <= Points[i].Outer.X)
            {
                var w = RootFinder.Bracketed(v => solver.At(v)!.Outer.X - station, Points[i - 1].W, Points[i].W, 1e-14);
                return w is { } found ? solver.At(found) : Points[i];
            }
        }

        return null;
    }
}
