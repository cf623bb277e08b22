using PlanForge.Airframe.Diagnostics;
using PlanForge.Geometry;
using PlanForge.Geometry.Fitting;
using PlanForge.Geometry.Regions;

namespace PlanForge.Parts;

/// <summary>Turns shapes that degenerate into findings: surfaces that fold over themselves, values that run out of bounds.</summary>
internal static class ShapeGuard
{
    /// <summary>Makes a part as <see cref="PartMaking"/> does.</summary>
    /// <param name="airframe">What it is made from.</param>
    /// <param name="what">What it is, also for the message.</param>
    /// <param name="at">The place to blame.</param>
    /// <param name="findings">Takes an error when the shape cannot be drawn.</param>
    /// <param name="make">Makes it; may return null after adding an error of its own.</param>
    /// <returns>The part, or null after an error.</returns>
    public static Part? Make(RiggedAirframe airframe, string what, SourcePosition at, ICollection<Diagnostic> findings, Func<Part?> make)
    {
        string cause;
        try
        {
            var part = PartMaking.Make(airframe, what, findings, make);
            if (part is null || part.Lines.All(line => IsFinite(line.Path)))
            {
                return part;
            }

            cause = "its lines run out of all bounds";
        }
        catch (CurveException fault)
        {
            cause = $"its outline folds or breaks near ({Place(fault.At)}) mm";
        }
        catch (BoundaryException fault)
        {
            cause = $"its outline does not close near ({Place(fault.At)}) mm";
        }

        findings.Add(Diagnostic.Error(at, $"the shape of {what} degenerates: {cause}; look at the sizes and stations it depends on"));
        return null;
    }

    private static string Place(Point2 at) => FormattableString.Invariant($"{at.X:0.#}, {at.Y:0.#}");

    private static bool IsFinite(Path2 path)
    {
        // The bounds of an arc show a radius or bulge that is not finite, too.
        var bounds = path.Bounds;
        return double.IsFinite(bounds.MinX) && double.IsFinite(bounds.MinY) && double.IsFinite(bounds.MaxX) && double.IsFinite(bounds.MaxY)
            && double.IsFinite(path.Length);
    }
}
