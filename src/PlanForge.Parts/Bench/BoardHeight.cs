using PlanForge.Airframe;
using PlanForge.Parts.Shapes;

namespace PlanForge.Parts.Bench;

/// <summary>How high the datum line lies above the building board: one height for cradles, pins and everything else.</summary>
/// <remarks>
/// The lowest point of all is the clearance above the board: of the body's outside, of formers with wood left on below, of the wing.
/// </remarks>
internal static class BoardHeight
{
    // A fair bottom bends so little that between this many probes a bay it dips by microns.
    private const int ProbesPerBay = 48;

    private const int ProbesPerSection = 24;

    /// <summary>Height of the datum line above the board, mm.</summary>
    public static double OfDatum(RiggedAirframe airframe) => airframe.Description.Bench.Clearance - airframe.LowestPoint;

    /// <summary>Height above the datum line to which a former hangs out below the inside of the skins; null when nothing is left on there.</summary>
    public static double? HangsTo(FormerDescription former, RiggedAirframe airframe)
    {
        var extra = former.Allowance.Lower;
        foreach (var tab in former.Tabs)
        {
            extra = tab.Edge == TabEdge.Lower ? Math.Max(extra, tab.Depth) : extra;
        }

        return extra > 0
            ? Math.Min(InsideAt(airframe.Body, former.Station), InsideAt(airframe.Body, former.Station + former.Thickness)) - extra
            : null;
    }

    // The lowest place of the inside, on the centre line: of the corner where that leaves no flat.
    private static double InsideAt(FuselageShape body, double station)
    {
        var zone = body.BayAt(station).At(station).Has(Zone.Bottom) ? Zone.Bottom : Zone.LowerCorner;
        return body.Skins.InPlane(station, zone, 0).Y;
    }

    /// <summary>Height of the lowest point of all above the datum line, mm; the airframe keeps it.</summary>
    public static double LowestPoint(RiggedAirframe airframe)
    {
        var lowest = Math.Min(LowestOfBody(airframe.Body), LowestOfWing(airframe.Wing));
        foreach (var former in airframe.Description.Formers)
        {
            lowest = HangsTo(former, airframe) is { } height && height < lowest ? height : lowest;
        }

        return lowest;
    }

    private static double LowestOfBody(FuselageShape body)
    {
        var lowest = double.PositiveInfinity;
        foreach (var bay in body.Bays)
        {
            for (var i = 0; i <= ProbesPerBay; i++)
            {
                var station = bay.From + ((bay.To - bay.From) * i / ProbesPerBay);
                lowest = Math.Min(lowest, bay.Curves.Lower.At(bay.Span, station).Value);
            }
        }

        return lowest;
    }

    // Along a panel the surface is a ruled one, or nearly: its ends are its lowest.
    private static double LowestOfWing(WingShape wing)
    {
        var lowest = double.PositiveInfinity;
        for (var panel = 0; panel < wing.Panels.Length; panel++)
        {
            for (var i = 0; i <= ProbesPerSection; i++)
            {
                var w = Math.Max((double)i / ProbesPerSection, WingShape.Nose);
                lowest = Math.Min(lowest, wing.At(panel, WingSide.Lower, 0, w).Point.Z);
                lowest = Math.Min(lowest, wing.At(panel, WingSide.Lower, wing.Panels[panel].Length, w).Point.Z);
            }
        }

        return lowest;
    }
}
