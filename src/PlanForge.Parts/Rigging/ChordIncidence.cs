using PlanForge.Airframe;
using PlanForge.Airframe.Sections;

namespace PlanForge.Parts.Rigging;

/// <summary>The incidence of the chord line, whatever line the description measures it on.</summary>
public static class ChordIncidence
{
    /// <summary>Angle of the chord line to the datum line, radians, leading edge up positive.</summary>
    /// <param name="incidence">The incidence as described.</param>
    /// <param name="section">The section it is measured on.</param>
    /// <returns>The angle; null when it is measured on an underside that is convex, so that no line rests on it.</returns>
    public static double? Of(IncidenceDescription incidence, Section section) => incidence.Reference switch
    {
        IncidenceReference.Underside => section.Underside is { } underside ? incidence.Angle - underside.Angle : null,
        _ => incidence.Angle,
    };
}
