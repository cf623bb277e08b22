namespace PlanForge.Geometry.Deviations;

/// <summary>A shape of material of whose outline only some edges count.</summary>
/// <param name="Contours">Its contours, none crossing another; points inside an odd number of them are material.</param>
/// <param name="Edges">The stretches of the contours that count.</param>
public sealed record EdgedShape(IReadOnlyList<Path2> Contours, IReadOnlyList<Path2> Edges);
