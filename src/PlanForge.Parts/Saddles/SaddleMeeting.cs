using PlanForge.Airframe.Diagnostics;
using PlanForge.Parts.Shapes;

namespace PlanForge.Parts.Saddles;

/// <summary>Says in words where wing and body do not meet as a saddle needs.</summary>
internal static class SaddleMeeting
{
    /// <summary>Adds what is wrong with the saddle line; false when there is none.</summary>
    public static bool Check(RiggedAirframe airframe, ICollection<Diagnostic> findings)
    {
        var wing = airframe.Description.Wing;
        if (airframe.SaddleLine is not { } line)
        {
            findings.Add(Diagnostic.Error(wing.At, Miss(airframe)));
            return false;
        }

        var surface = SurfaceName(airframe);
        var text = airframe.Text;
        if (line.IsCutShortInFront)
        {
            findings.Add(Diagnostic.Warning(
                wing.At,
                $"the saddle begins only at station {text.CoarseWithUnit(line.From)}, where the {surface} comes within the body"));
        }

        if (line.IsCutShortBehind)
        {
            findings.Add(Diagnostic.Warning(
                wing.At,
                $"the saddle ends already at station {text.CoarseWithUnit(line.To)}, where the {surface} leaves the body"));
        }

        return true;
    }

    private static string SurfaceName(RiggedAirframe airframe) =>
        airframe.WingSide == WingSide.Lower ? "wing's underside" : "wing's upper side";

    // Looks at the middle of the root chord, on the centre line, for words that help.
    private static string Miss(RiggedAirframe airframe)
    {
        var (text, body) = (airframe.Text, airframe.Body);
        var root = airframe.Wing.At(0, airframe.WingSide, 0, Math.Sqrt(0.5)).Point;
        var place = $"at station {text.CoarseWithUnit(root.X)} it lies at height {text.CoarseWithUnit(root.Z)}";
        if (root.X < body.From || root.X > body.To)
        {
            return $"the {SurfaceName(airframe)} does not meet the body: {place}, but the body runs from station "
                + $"{text.CoarseWithUnit(body.From)} to {text.CoarseWithUnit(body.To)}";
        }

        return airframe.Wing.HalfSpan < body.HalfBreadthAt(root.X, root.Z)
            ? $"the {SurfaceName(airframe)} does not reach the body's sides: the half wing is {text.CoarseWithUnit(airframe.Wing.HalfSpan)} "
                + $"long, the body's half-breadth there {text.CoarseWithUnit(body.HalfBreadthAt(root.X, root.Z))}"
            : $"the {SurfaceName(airframe)} does not meet the body's sides: {place}, but the body there lies between heights "
                + $"{text.CoarseWithUnit(body.LowerAt(root.X))} and {text.CoarseWithUnit(body.UpperAt(root.X))}";
    }
}
