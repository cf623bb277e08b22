namespace PlanForge.Airframe.Quantities;

/// <summary>A unit that may stand after a number.</summary>
internal enum Unit
{
    /// <summary>No unit was written.</summary>
    None,

    Millimetre,
    Centimetre,
    Metre,
    Inch,
    Foot,
    Degree,
    Radian,
    Gram,
    Kilogram,
    Ounce,
    Pound,

    /// <summary>A hundredth, for proportions.</summary>
    Percent,
}
