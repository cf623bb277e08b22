using PlanForge.Airframe;

namespace PlanForge.Parts.Wording;

/// <summary>The units lengths are written in: one, or a second one in brackets after it.</summary>
/// <param name="Main">The unit of the description.</param>
/// <param name="IsBoth">True to write the other system's value in brackets: inches after millimetres or centimetres, millimetres
/// after inches.</param>
public readonly record struct ShownUnits(DisplayUnit Main, bool IsBoth = false)
{
    /// <summary>The unit in brackets, wanted or not.</summary>
    public DisplayUnit Other => Main == DisplayUnit.Inch ? DisplayUnit.Millimetre : DisplayUnit.Inch;

    /// <summary>True when a text may hold inches.</summary>
    public bool HasInches => IsBoth || Main == DisplayUnit.Inch;
}
