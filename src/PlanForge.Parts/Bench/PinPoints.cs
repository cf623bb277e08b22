using PlanForge.Geometry;
using PlanForge.Parts.Shapes;

namespace PlanForge.Parts.Bench;

/// <summary>The four points at the wing's edges that are measured from the building board: starboard ones; port mirrors them.</summary>
/// <param name="Across">Distance of both pins from the centre line, mm.</param>
/// <param name="Front">The leading edge at the pins.</param>
/// <param name="Rear">The trailing edge at the pins (the middle of an open one).</param>
/// <param name="BoardBelowDatum">How far the board lies below the datum line, mm.</param>
public sealed record PinPoints(double Across, Point3 Front, Point3 Rear, double BoardBelowDatum)
{
    /// <summary>How much higher the front pin stands than the rear one, mm.</summary>
    public double Rise => Front.Z - Rear.Z;

    /// <summary>Height of the front pin above the board, mm.</summary>
    public double FrontAboveBoard => Front.Z + BoardBelowDatum;

    /// <summary>Height of the rear pin above the board, mm.</summary>
    public double RearAboveBoard => Rear.Z + BoardBelowDatum;

    /// <summary>
    /// The pins of an airframe. Both stand at the same distance from the centre line, outside the widest place of the body
    /// under the wing, so that dihedral does not enter their difference.
    /// </summary>
    public static PinPoints Of(RiggedAirframe airframe)
    {
        var across = AcrossOf(airframe);
        Point3 front = EdgeAt(airframe.Wing, across, 0), rear = EdgeAt(airframe.Wing, across, 1);
        return new(across, front, rear, BoardHeight.OfDatum(airframe));
    }

    /// <summary>Distance of the pins from the centre line, mm.</summary>
    internal static double AcrossOf(RiggedAirframe airframe) =>
        airframe.SaddleLine!.Points.Max(point => point.Outer.Y) + airframe.Description.Bench.PinsOutboardOfSide;

    /// <summary>The end of a wing's chord line at a distance y from the centre line: 0 is the leading edge, 1 the trailing edge.</summary>
    internal static Point3 EdgeAt(WingShape wing, double y, double fraction)
    {
        var it = wing.Panels[wing.PanelAt(y)];
        var cos = Math.Cos(it.Dihedral);
        var along = (y - it.Start.Y) / cos;

        // The edge of a twisted section leaves the panel's plane by up; its y then moves by −up sin: two rounds settle it.
        for (var round = 0; ; round++)
        {
            var own = it.OnChordLine(along, fraction);
            if (round == 6)
            {
                return wing.InPlace(own);
            }

            along += (y - own.Y) / cos;
        }
    }
}
