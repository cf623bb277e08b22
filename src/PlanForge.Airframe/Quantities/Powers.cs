using System.Globalization;

namespace PlanForge.Airframe.Quantities;

/// <summary>The dimension of any intermediate result: how often length, angle and mass are multiplied into it.</summary>
/// <param name="OfLength">Power of length: 2 for an area.</param>
/// <param name="OfAngle">Power of angle. Angles count as a dimension here so that they cannot be mixed up with numbers.</param>
/// <param name="OfMass">Power of mass.</param>
internal readonly record struct Powers(int OfLength, int OfAngle, int OfMass)
{
    public static Powers Number => default;

    public static Powers Length => new(1, 0, 0);

    public static Powers Angle => new(0, 1, 0);

    public static Powers Mass => new(0, 0, 1);

    public static Powers operator +(Powers a, Powers b) => new(a.OfLength + b.OfLength, a.OfAngle + b.OfAngle, a.OfMass + b.OfMass);

    public static Powers operator -(Powers a, Powers b) => new(a.OfLength - b.OfLength, a.OfAngle - b.OfAngle, a.OfMass - b.OfMass);

    public static Powers Of(Dimension dimension) => dimension switch
    {
        Dimension.Length => Length,
        Dimension.Angle => Angle,
        Dimension.Mass => Mass,
        _ => Number,
    };

    /// <summary>The dimension whose square this is, or null when there is none.</summary>
    public Powers? Halved() => (OfLength | OfAngle | OfMass) % 2 != 0 ? null : new(OfLength / 2, OfAngle / 2, OfMass / 2);

    /// <summary>One of the four dimensions a value of the description can have, or null for areas and the like.</summary>
    public Dimension? ToDimension() => this switch
    {
        (0, 0, 0) => Dimension.Number,
        (1, 0, 0) => Dimension.Length,
        (0, 1, 0) => Dimension.Angle,
        (0, 0, 1) => Dimension.Mass,
        _ => null,
    };

    /// <summary>What to call a value of this dimension in a message, with its article.</summary>
    public string Noun() => this switch
    {
        (0, 0, 0) => "a plain number",
        (1, 0, 0) => "a length",
        (2, 0, 0) => "an area",
        (3, 0, 0) => "a volume",
        (0, 1, 0) => "an angle",
        (0, 0, 1) => "a mass",
        _ => "a value in " + string.Join("·", Factors()),
    };

    private IEnumerable<string> Factors()
    {
        foreach (var (power, unit) in new[] { (OfMass, "g"), (OfLength, "mm"), (OfAngle, "rad") })
        {
            if (power != 0)
            {
                yield return power == 1 ? unit : string.Create(CultureInfo.InvariantCulture, $"{unit}^{power}");
            }
        }
    }
}
