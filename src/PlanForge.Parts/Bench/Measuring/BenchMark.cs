using System.Collections.Immutable;
using PlanForge.Airframe.Measuring;
using PlanForge.Geometry;

namespace PlanForge.Parts.Bench.Measuring;

/// <summary>A length that was measured at the board: to a point of the wing.</summary>
/// <param name="Name">What it is called in messages, such as <c>front pin, left (port)</c>.</param>
/// <param name="Point">The point as drawn.</param>
/// <param name="Hand">Which half of the wing it belongs to.</param>
/// <param name="Readings">What was read, at least once.</param>
internal abstract record BenchMark(string Name, Point3 Point, Hand Hand, ImmutableArray<MeasuredLength> Readings)
{
    /// <summary>The mean of the readings, mm.</summary>
    public double Mean
    {
        get
        {
            var sum = 0.0;
            foreach (var reading in Readings)
            {
                sum += reading.Value;
            }

            return sum / Readings.Length;
        }
    }

    /// <summary>The length that a pose would give, mm.</summary>
    public abstract double Length(WingPose pose, Point3 pivot);

    /// <summary>How fast it changes with one of the unknowns.</summary>
    public abstract double Rate(PoseUnknown unknown, WingPose pose, Point3 pivot);
}

/// <summary>A height above the board.</summary>
/// <param name="Name">What it is called.</param>
/// <param name="Edge">The edge of the wing it is taken at.</param>
/// <param name="IsPin">True for a pin, false for a tip.</param>
/// <param name="Point">The point as drawn.</param>
/// <param name="Hand">Which half of the wing it belongs to.</param>
/// <param name="Board">How far the board lies below the datum line, mm; the drawn one where it is not known.</param>
/// <param name="Readings">What was read.</param>
internal sealed record HeightMark(
    string Name, WingEdge Edge, bool IsPin, Point3 Point, Hand Hand, double Board, ImmutableArray<MeasuredLength> Readings)
    : BenchMark(Name, Point, Hand, Readings)
{
    public override double Length(WingPose pose, Point3 pivot) => pose.Moved(pivot, Point, Hand).Z + Board;

    public override double Rate(PoseUnknown unknown, WingPose pose, Point3 pivot) => pose.Rate(unknown, pivot, Point, Hand).Z;
}

/// <summary>A cord from a place on the centre line to a tip.</summary>
/// <param name="Name">What it is called.</param>
/// <param name="From">Where the cord starts.</param>
/// <param name="Point">The tip as drawn.</param>
/// <param name="Hand">Which tip.</param>
/// <param name="Readings">What was read.</param>
internal sealed record CordMark(string Name, Point3 From, Point3 Point, Hand Hand, ImmutableArray<MeasuredLength> Readings)
    : BenchMark(Name, Point, Hand, Readings)
{
    public override double Length(WingPose pose, Point3 pivot) => From.DistanceTo(pose.Moved(pivot, Point, Hand));

    public override double Rate(PoseUnknown unknown, WingPose pose, Point3 pivot) =>
        (pose.Moved(pivot, Point, Hand) - From).Unit().Dot(pose.Rate(unknown, pivot, Point, Hand));
}
