using System.Collections.Immutable;
using PlanForge.Airframe.Diagnostics;

namespace PlanForge.Airframe.Measuring;

/// <summary>What was measured at the building board: one round after the other, the last one counts.</summary>
/// <param name="Design">File name of the description that was built from, or null.</param>
/// <param name="DesignAt">Where that name stands.</param>
/// <param name="Tolerance">What is still in order.</param>
/// <param name="Rounds">The rounds in the order of the file, at least one.</param>
public sealed record BenchMeasurements(
    string? Design, SourcePosition DesignAt, BenchTolerance Tolerance, ImmutableArray<MeasuringRound> Rounds);

/// <summary>How far a wing may sit off and still be in order.</summary>
/// <param name="Across">Height of one side's pins against the other's, mm, over 0.</param>
/// <param name="Rise">Height of the front pin over the rear one against the drawn one, mm, over 0.</param>
/// <param name="Square">Cord to one tip against the cord to the other, mm, over 0.</param>
/// <param name="Thrust">Thrust line, down or sideways, radians, over 0; a quarter of a degree unless given (common practice, no source).</param>
public sealed record BenchTolerance(double Across, double Rise, double Square, double Thrust = Math.PI / 720);

/// <summary>One round of measuring.</summary>
/// <param name="Name">What the builder calls it.</param>
/// <param name="Pins">Heights of the pins above the board; any of the four.</param>
/// <param name="Tips">Heights of the tips above the board; any of the two.</param>
/// <param name="TipEdge">The edge of the tips that heights and cords are taken to.</param>
/// <param name="Cord">Where the cords start, or null when there are none.</param>
/// <param name="Cords">Lengths of the cords to the tips; any of the two.</param>
/// <param name="Board">Height of the datum line above the board.</param>
/// <param name="Resolution">Step of the rule that was read, mm, over 0: a reading is within half of it.</param>
/// <param name="Scatter">Standard deviation of one reading besides that step, mm, 0 or more; null when it is not known.</param>
/// <param name="At">Where the round stands.</param>
public sealed record MeasuringRound(
    string Name,
    ImmutableArray<PinHeight> Pins,
    ImmutableArray<TipReading> Tips,
    WingEdge TipEdge,
    CordStart? Cord,
    ImmutableArray<TipReading> Cords,
    BoardOffset Board,
    double Resolution,
    double? Scatter,
    SourcePosition At)
{
    /// <summary>What was read at the tailplane, or null.</summary>
    public TailReadings? Tailplane { get; init; }

    /// <summary>What was read at the motor's shaft, or null.</summary>
    public ThrustReadings? Thrust { get; init; }
}

/// <summary>A length read at the board.</summary>
/// <param name="Value">The length, mm, over 0.</param>
/// <param name="At">Where it stands.</param>
public readonly record struct MeasuredLength(double Value, SourcePosition At);

/// <summary>Heights read at one pin.</summary>
/// <param name="Edge">Front or rear pin.</param>
/// <param name="Hand">On which side.</param>
/// <param name="Across">Distance from the centre line where it is not the planned one, mm, over 0; else null.</param>
/// <param name="Heights">The readings above the board, at least one.</param>
public sealed record PinHeight(WingEdge Edge, Hand Hand, double? Across, ImmutableArray<MeasuredLength> Heights);

/// <summary>Lengths read at one tip.</summary>
/// <param name="Hand">Which tip.</param>
/// <param name="Lengths">The readings, at least one.</param>
public sealed record TipReading(Hand Hand, ImmutableArray<MeasuredLength> Lengths);

/// <summary>The place on the centre line that the cords start from.</summary>
/// <param name="Station">Its station, mm.</param>
/// <param name="Height">Its height above the datum line, mm.</param>
public readonly record struct CordStart(double Station, double Height);

/// <summary>What is known of the height of the datum line above the board.</summary>
/// <param name="Knowledge">Whether it is known.</param>
/// <param name="Measured">The height, mm, where it was measured.</param>
public readonly record struct BoardOffset(BoardKnowledge Knowledge, double Measured = 0);

/// <summary>Where the height of the datum line above the board comes from.</summary>
public enum BoardKnowledge
{
    /// <summary>It is not known: the datum line is parallel to the board, no more.</summary>
    Unknown,

    /// <summary>The cradles hold it as drawn.</summary>
    AsDrawn,

    /// <summary>It was measured.</summary>
    Measured,
}

/// <summary>A side of the airframe.</summary>
public enum Hand
{
    /// <summary>The left one, seen from the tail looking forward.</summary>
    Port,

    /// <summary>The right one.</summary>
    Starboard,
}

/// <summary>An edge of the wing.</summary>
public enum WingEdge
{
    /// <summary>The leading edge.</summary>
    Front,

    /// <summary>The trailing edge.</summary>
    Rear,
}
