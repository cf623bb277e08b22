using System.Collections.Immutable;
using PlanForge.Geometry;
using PlanForge.Parts;

namespace PlanForge.Drafting.PartDrawings;

/// <summary>A part turned a quarter to the left, so that a tall one lies across the sheet.</summary>
internal static class TurnedPart
{
    private const double Quarter = Math.PI / 2;
    private const string Note = "Drawn turned a quarter to the left.";

    public static Part Of(Part part)
    {
        var turn = Placement2.TurnedBy(Quarter);
        var lines = ImmutableArray.CreateBuilder<PartLine>(part.Lines.Length);
        foreach (var line in part.Lines)
        {
            lines.Add(line with { Path = line.Path.Placed(turn) });
        }

        var labels = ImmutableArray.CreateBuilder<PartLabel>(part.Labels.Length);
        foreach (var label in part.Labels)
        {
            labels.Add(label with { At = turn.Apply(label.At), Angle = label.Angle + Quarter });
        }

        var dimensions = ImmutableArray.CreateBuilder<PartDimension>(part.Dimensions.Length);
        foreach (var dimension in part.Dimensions)
        {
            dimensions.Add(Turned(dimension, turn));
        }

        return part with
        {
            GrainAngle = part.GrainAngle + Quarter,
            Lines = lines.MoveToImmutable(),
            Labels = labels.MoveToImmutable(),
            Dimensions = dimensions.MoveToImmutable(),
            Notes = part.Notes.Add(Note),
        };
    }

    private static PartDimension Turned(PartDimension dimension, Placement2 turn) => dimension switch
    {
        PartDimension.Linear linear => linear with
        {
            From = turn.Apply(linear.From),
            To = turn.Apply(linear.To),
            Direction = turn.Apply(linear.Direction),
        },
        PartDimension.Leader leader => leader with { At = turn.Apply(leader.At), TextAt = turn.Apply(leader.TextAt) },
        _ => throw new ArgumentOutOfRangeException(nameof(dimension), dimension, "A dimension is linear or a leader."),
    };
}
