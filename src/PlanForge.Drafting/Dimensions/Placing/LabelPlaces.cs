using PlanForge.Geometry;

namespace PlanForge.Drafting.Dimensions.Placing;

/// <summary>
/// Finds the place for a text that belongs where it stands: there, or moved a little along or across its line of reading.
/// </summary>
internal sealed class LabelPlaces
{
    // Farther from its own place than this, mm, a label would seem to belong to something else: it needs a leader then.
    private const double Reach = 14;
    private const double Step = 1;
    private const double TextOnLine = 40;

    // Less than a step across: a label does not leave the line it stands on, but makes room beside others.
    private const double TextNearLine = 1.2;

    // Across the reading a label leaves its line; along it, it stays at it.
    private const double Across = 1.5;

    private static readonly (double Along, double Up, double Cost)[] Moves = AllMoves();

    private readonly Obstacles _obstacles;

    public LabelPlaces(Obstacles obstacles) => _obstacles = obstacles;

    /// <summary>The best start of a label near its own place and its cost in mm; null where no text may stand.</summary>
    /// <param name="ink">The text.</param>
    /// <param name="at">The wanted start of the baseline.</param>
    /// <param name="angle">Direction of reading, radians.</param>
    public (Point2 At, double Cost)? Find(TextInk ink, Point2 at, double angle)
    {
        var along = Vector2.FromAngle(angle);
        (Point2 At, double Cost)? best = null;
        foreach (var move in Moves)
        {
            if (best is { } found && move.Cost >= found.Cost)
            {
                break;
            }

            var place = at + (along * move.Along) + (along.Left * move.Up);
            var box = ink.At(place, angle);
            if (!_obstacles.IsFree(box))
            {
                continue;
            }

            var (through, near) = _obstacles.LinesAt(box);
            var cost = move.Cost + (TextOnLine * through) + (TextNearLine * near);
            best = best is { } other && other.Cost <= cost ? best : (place, cost);
        }

        return best;
    }

    private static (double Along, double Up, double Cost)[] AllMoves()
    {
        const int Steps = (int)(Reach / Step);
        var moves = new List<(double Along, double Up, double Cost)>();
        for (var i = -Steps; i <= Steps; i++)
        {
            for (var j = -Steps; j <= Steps; j++)
            {
                var cost = Math.Sqrt((i * i) + (Across * Across * j * j)) * Step;
                if (cost <= Reach)
                {
                    moves.Add((i * Step, j * Step, cost));
                }
            }
        }

        // Equal costs in a fixed order: to the right and up before to the left and down.
        moves.Sort((a, b) => a.Cost != b.Cost ? a.Cost.CompareTo(b.Cost) : a.Up != b.Up ? b.Up.CompareTo(a.Up) : b.Along.CompareTo(a.Along));
        return [.. moves];
    }
}
