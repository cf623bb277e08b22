using PlanForge.Airframe.Diagnostics;

namespace PlanForge.Parts;

/// <summary>A kind of part: one folder with its geometry, its flat lines and its figures.</summary>
public interface IPartKind
{
    /// <summary>What sheets call the kind, such as <c>Formers</c>.</summary>
    string Title { get; }

    /// <summary>Makes all parts of this kind, in the order of the description.</summary>
    /// <param name="airframe">Wing and body brought together.</param>
    /// <param name="findings">Takes warnings and errors; a part with an error is left out.</param>
    IEnumerable<Part> Make(RiggedAirframe airframe, ICollection<Diagnostic> findings);
}
