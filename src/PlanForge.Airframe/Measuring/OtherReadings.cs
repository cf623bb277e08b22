using System.Collections.Immutable;
using PlanForge.Airframe.Diagnostics;

namespace PlanForge.Airframe.Measuring;

/// <summary>What was read at the tailplane in a round; the wing's readings are beside it, for the decalage.</summary>
/// <param name="Pins">Heights of T1 to T4 above the board; any of the four.</param>
/// <param name="Cords">Lengths to the tailplane's tips; any of the two.</param>
/// <param name="From">Where they start on the centre line, or null for the wing's tips, each on its own side.</param>
/// <param name="TipEdge">The edge of the tailplane's tips that they are taken to.</param>
/// <param name="At">Where the readings stand.</param>
public sealed record TailReadings(
    ImmutableArray<PinHeight> Pins, ImmutableArray<TipReading> Cords, CordStart? From, WingEdge TipEdge, SourcePosition At);

/// <summary>What was read at a stick held to the motor's shaft in a round.</summary>
/// <param name="Over">The length between the two places of the stick, along the datum line, mm, over 0.</param>
/// <param name="Down">How much lower the front place stands than the rear one, mm; empty when it was not read.</param>
/// <param name="Right">How much farther to the right (starboard) it stands, mm; empty when it was not read.</param>
/// <param name="At">Where the readings stand.</param>
public sealed record ThrustReadings(
    double Over, ImmutableArray<MeasuredLength> Down, ImmutableArray<MeasuredLength> Right, SourcePosition At);
