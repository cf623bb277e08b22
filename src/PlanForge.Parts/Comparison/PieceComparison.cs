using PlanForge.Geometry;

namespace PlanForge.Parts.Comparison;

/// <summary>A piece of a set in two designs, held against itself.</summary>
/// <param name="Name">What the piece is.</param>
/// <param name="Comparison">What became of it, as if it were a part of its own whose lower left corner is the origin.</param>
/// <param name="Origin">Where that corner lies in the set: in the new one, in the old one for a piece that is gone.</param>
public sealed record PieceComparison(string Name, PartComparison Comparison, Point2 Origin)
{
    internal static IEnumerable<PieceComparison> Between(Part old, Part now)
    {
        var before = old.Pieces.ToDictionary(piece => piece.Name, StringComparer.Ordinal);
        foreach (var piece in now.Pieces)
        {
            var part = Alone(now, piece);
            yield return new(
                piece.Name,
                before.Remove(piece.Name, out var was) ? PartComparer.Compare(Alone(old, was), part) : new(null, part, PartState.New),
                CornerOf(piece));
        }

        foreach (var piece in old.Pieces.Where(piece => before.ContainsKey(piece.Name)))
        {
            yield return new(piece.Name, new(Alone(old, piece), null, PartState.Gone), CornerOf(piece));
        }
    }

    private static Part Alone(Part set, SetPiece piece) => set with
    {
        Title = piece.Name,
        Lines = [new(LineUse.Cut, piece.Outline.Placed(Placement2.MovedBy(Point2.Origin - CornerOf(piece))))],
        Labels = [],
        Dimensions = [],
        Tables = [],
        Notes = [],
        Figures = [],
        Pieces = [],
    };

    private static Point2 CornerOf(SetPiece piece) => new(piece.Outline.Bounds.MinX, piece.Outline.Bounds.MinY);
}
