using PlanForge.Airframe;
using PlanForge.Parts.Shapes;

namespace PlanForge.Parts.Rigging;

/// <summary>The tailplane as a wing of one straight panel a side.</summary>
internal static class TailplaneShape
{
    /// <summary>
    /// Builds the tailplane; null where there is none. An incidence measured on an underside that is convex counts as the
    /// chord line's: no straight line rests there.
    /// </summary>
    public static WingShape? Of(TailplaneDescription? tail) => tail is null
        ? null
        : WingShape.Of(
            new(
                WingPlacement.High,
                tail.LeadingEdge,
                tail.Incidence,
                tail.Root,
                [new(tail.Span / 2, 0, tail.Tip, tail.Sweep, 0, tail.At)],
                tail.At),
            ChordIncidence.Of(tail.Incidence, tail.Root.Section) ?? tail.Incidence.Angle);
}
