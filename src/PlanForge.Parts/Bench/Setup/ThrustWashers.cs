using System.Collections.Immutable;
using PlanForge.Airframe;

namespace PlanForge.Parts.Bench.Setup;

/// <summary>The washers between firewall and motor mount that turn the shaft, mm: none at the bolt that needs least.</summary>
/// <param name="UpperPort">At the upper port bolt.</param>
/// <param name="UpperStarboard">At the upper starboard bolt.</param>
/// <param name="LowerPort">At the lower port bolt.</param>
/// <param name="LowerStarboard">At the lower starboard bolt.</param>
/// <remarks>
/// The shaft is square to the mount. Seen from the side it points down by the down-thrust d when the mount stands z tan d further
/// forward at height z; seen from above it points to starboard by the side-thrust r when it stands y tan r further back at y.
/// </remarks>
internal readonly record struct ThrustWashers(double UpperPort, double UpperStarboard, double LowerPort, double LowerStarboard)
{
    /// <summary>The washers of a mount.</summary>
    public static ThrustWashers Of(ThrustLineDescription thrust, MountDescription mount)
    {
        double up = mount.Up * Math.Tan(thrust.Down), across = mount.Across * Math.Tan(thrust.Right);

        // Above and to port the mount stands forward, by half of each; the least of the four becomes nothing.
        var least = (Math.Abs(up) + Math.Abs(across)) / 2;
        return new((up + across) / 2 + least, (up - across) / 2 + least, (across - up) / 2 + least, (-up - across) / 2 + least);
    }

    /// <summary>The four with their names.</summary>
    public ImmutableArray<(string Name, double Thickness)> Named =>
        [("upper port", UpperPort), ("upper starboard", UpperStarboard), ("lower port", LowerPort), ("lower starboard", LowerStarboard)];
}
