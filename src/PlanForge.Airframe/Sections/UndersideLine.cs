using PlanForge.Geometry;

namespace PlanForge.Airframe.Sections;

/// <summary>The flat of a section's lower surface, or the straight line that touches it from below at two places.</summary>
/// <param name="Angle">
/// Inclination of the line to the chord line, radians: of a section whose chord is level, positive when the line's front end
/// is the higher one. The chord's incidence is the line's incidence less this angle.
/// </param>
/// <param name="Front">Where the line first touches the surface, in chords (x aft, y above the chord line).</param>
/// <param name="Rear">Where it last touches.</param>
public readonly record struct UndersideLine(double Angle, Point2 Front, Point2 Rear);
