using System.Collections.Immutable;
using PlanForge.Geometry;

namespace PlanForge.Drafting.Lettering;

/// <summary>A letter as pen strokes, for capitals of height 1 standing on y = 0.</summary>
/// <param name="Advance">Distance from its left edge to where the next letter starts, letter gap included.</param>
/// <param name="Strokes">Open or closed paths the pen follows; empty for a space.</param>
public sealed record Glyph(double Advance, ImmutableArray<Path2> Strokes);
