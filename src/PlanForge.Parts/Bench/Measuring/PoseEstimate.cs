using System.Collections.Immutable;
using PlanForge.Airframe.Measuring;

namespace PlanForge.Parts.Bench.Measuring;

/// <summary>An unknown of the pose as the readings show it.</summary>
/// <param name="Unknown">Which unknown; signs and units: <see cref="WingPose"/>.</param>
/// <param name="Value">The best estimate; 0 when it is not settled.</param>
/// <param name="HalfWidth">Half the width of its 95 % interval, or null when the readings leave it open.</param>
/// <param name="Lack">What readings are lacking; empty when it is settled.</param>
public readonly record struct PoseEstimate(PoseUnknown Unknown, double Value, double? HalfWidth, string Lack)
{
    /// <summary>True when the readings settle it.</summary>
    public bool IsSettled => HalfWidth is not null;

    internal static ImmutableArray<PoseEstimate> Of(PoseFit fit, MeasuringRound round)
    {
        var estimates = ImmutableArray.CreateBuilder<PoseEstimate>(WingPose.Count);
        for (var i = 0; i < WingPose.Count; i++)
        {
            var unknown = (PoseUnknown)i;
            var half = fit.HalfWidths[i];
            if (unknown == PoseUnknown.Height && half is not null)
            {
                half = round.Board.Knowledge switch
                {
                    BoardKnowledge.Unknown => null,
                    BoardKnowledge.AsDrawn => half,
                    _ => fit.HeightWithBoard,
                };
            }

            estimates.Add(half is null ? new(unknown, 0, null, LackOf(unknown)) : new(unknown, fit.Pose[unknown], half, ""));
        }

        return estimates.MoveToImmutable();
    }

    private static string LackOf(PoseUnknown unknown) => unknown switch
    {
        PoseUnknown.Incidence => "needs the height of a front and of a rear pin",
        PoseUnknown.Roll => "needs heights on the left (port) and on the right (starboard)",
        PoseUnknown.Warp => "needs the heights of all four pins; until then it is taken to be true",
        PoseUnknown.Height => "needs heights of pins, and the height of the datum line above the board (board_offset)",
        _ => "needs the cord to both tips",
    };
}
