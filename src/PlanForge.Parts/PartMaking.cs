using PlanForge.Airframe.Diagnostics;

namespace PlanForge.Parts;

/// <summary>Makes single parts, unless nothing that they are made from has changed since an earlier run.</summary>
internal static class PartMaking
{
    /// <summary>Makes a part: what is read meanwhile are its inputs, and of no other part.</summary>
    /// <param name="airframe">What it is made from.</param>
    /// <param name="what">What it is; every run calls it the same.</param>
    /// <param name="findings">Takes what <paramref name="make"/> finds.</param>
    /// <param name="make">Makes it, or gives null after adding an error.</param>
    public static Part? Make(RiggedAirframe airframe, string what, ICollection<Diagnostic> findings, Func<Part?> make)
    {
        var making = airframe.Kept.NameOf(what);
        if (airframe.Kept.Unchanged(making) is { } known)
        {
            airframe.Kept.Remember(making, known);
            return known;
        }

        var findingCount = findings.Count;
        var made = airframe.Inputs.Record(make);
        if (made.Unnoted is not { } part)
        {
            // That there is none may matter to what is made after it.
            made.Inputs.Use();
            return null;
        }

        // What is said of a part names places in the text, which any edit moves: it is said anew each time.
        if (findings.Count == findingCount)
        {
            airframe.Kept.Remember(making, part);
        }

        return part with { Inputs = made.Inputs.ToSet() };
    }
}
