using PlanForge.Airframe.Diagnostics;

namespace PlanForge.Parts.Joints;

/// <summary>The joint of wing and body in place at true size: what the other templates are to come together as.</summary>
public sealed class WingJointParts : IPartKind
{
    /// <inheritdoc/>
    public string Title => "Wing joint";

    /// <inheritdoc/>
    public IEnumerable<Part> Make(RiggedAirframe airframe, ICollection<Diagnostic> findings)
    {
        var at = airframe.Description.Wing.At;
        if (ShapeGuard.Make(airframe, "the wing joint's side view", at, findings, () => new JointSideView(airframe).Draw(Title)) is { } side)
        {
            yield return side;
        }

        if (ShapeGuard.Make(airframe, "the wing joint's cross-section", at, findings, () => new JointCrossSection(airframe).Draw(Title)) is { } section)
        {
            yield return section;
        }
    }
}
