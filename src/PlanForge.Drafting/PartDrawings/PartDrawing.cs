using System.Collections.Immutable;
using PlanForge.Drafting.Model;
using PlanForge.Geometry;
using PlanForge.Parts;

namespace PlanForge.Drafting.PartDrawings;

/// <summary>One part drawn at true size with all that is said about it.</summary>
/// <param name="Part">The part, as described (not turned).</param>
/// <param name="IsTurned">True when it was turned a quarter to the left.</param>
/// <param name="Items">What is drawn, in the part's own coordinates (turned when <paramref name="IsTurned"/>).</param>
/// <param name="Bounds">The smallest upright rectangle around the ink.</param>
public sealed record PartDrawing(Part Part, bool IsTurned, ImmutableArray<DrawingItem> Items, Bounds2 Bounds);
