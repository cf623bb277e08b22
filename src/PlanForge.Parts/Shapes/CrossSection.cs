using PlanForge.Geometry;

namespace PlanForge.Parts.Shapes;

/// <summary>A cross-section of the outside with the rate of change of its values along the body (parameter u is the station).</summary>
/// <remarks>
/// A rectangle with quarter-ellipse corners, scaled across linearly with height where the sides lean. The starboard half is
/// travelled from the bottom centre to the top centre through five <see cref="Zone"/>s, each with a parameter v from 0 to 1.
/// </remarks>
internal readonly record struct CrossSection(
    Dual UpperBreadth,
    Dual LowerBreadth,
    Dual Upper,
    Dual Lower,
    Dual UpperAcross,
    Dual UpperUp,
    Dual LowerAcross,
    Dual LowerUp)
{
    // A corner smaller than this (mm) is a sharp edge: its own zone would have no direction.
    private const double SharpCorner = 1e-6;

    /// <summary>True when the zone has an extent at this station.</summary>
    public bool Has(Zone zone) => zone switch
    {
        Zone.LowerCorner => LowerAcross.Value > SharpCorner && LowerUp.Value > SharpCorner,
        Zone.UpperCorner => UpperAcross.Value > SharpCorner && UpperUp.Value > SharpCorner,
        Zone.Bottom => LowerBreadth.Value - LowerAcross.Value > SharpCorner,
        Zone.Top => UpperBreadth.Value - UpperAcross.Value > SharpCorner,
        _ => Upper.Value - UpperUp.Value - Lower.Value - LowerUp.Value > SharpCorner,
    };

    /// <summary>The half-breadth of the straight, possibly leaning side line at a height.</summary>
    public Dual LeanAt(Dual height)
    {
        var fraction = (height - Lower) / (Upper - Lower);
        return LowerBreadth + ((UpperBreadth - LowerBreadth) * fraction);
    }

    /// <summary>
    /// The half-breadth of the outside at a height. Above the top and below the bottom it runs on, shrinking by the distance
    /// to them, so that it is continuous.
    /// </summary>
    public Dual HalfBreadthAt(Dual height) =>
        height.Value > Upper.Value ? HalfBreadthWithin(Upper) - (height - Upper)
        : height.Value < Lower.Value ? HalfBreadthWithin(Lower) - (Lower - height)
        : HalfBreadthWithin(height);

    /// <summary>A point of the outside in a zone, (y, z), mm. Flat zones run on past v = 0 and 1.</summary>
    public (Dual Y, Dual Z) At(Zone zone, Dual v)
    {
        switch (zone)
        {
            case Zone.Bottom:
                return (v * (LowerBreadth - LowerAcross), Lower);
            case Zone.Top:
                return ((1 - v) * (UpperBreadth - UpperAcross), Upper);
            case Zone.Side:
                var foot = Lower + LowerUp;
                var height = foot + (v * (Upper - UpperUp - foot));
                return (LeanAt(height), height);
            case Zone.LowerCorner:
                var lowerAngle = v * (Math.PI / 2);
                var lowerZ = Lower + (LowerUp * (1 - Dual.Cos(lowerAngle)));
                return (LeanAt(lowerZ) * (1 - (LowerAcross * (1 - Dual.Sin(lowerAngle)) / LowerBreadth)), lowerZ);
            default:
                var upperAngle = v * (Math.PI / 2);
                var upperZ = Upper - (UpperUp * (1 - Dual.Sin(upperAngle)));
                return (LeanAt(upperZ) * (1 - (UpperAcross * (1 - Dual.Cos(upperAngle)) / UpperBreadth)), upperZ);
        }
    }

    private Dual HalfBreadthWithin(Dual height)
    {
        var lean = LeanAt(height);
        var intoUpper = height - (Upper - UpperUp);
        if (intoUpper.Value > 0 && Has(Zone.UpperCorner))
        {
            return lean * (1 - (UpperAcross * (1 - Round(intoUpper / UpperUp)) / UpperBreadth));
        }

        var intoLower = Lower + LowerUp - height;
        return intoLower.Value > 0 && Has(Zone.LowerCorner)
            ? lean * (1 - (LowerAcross * (1 - Round(intoLower / LowerUp)) / LowerBreadth))
            : lean;
    }

    // Height of the unit quarter circle over t in [0, 1]; clamped so that rounding past the end is not a number no more.
    private static Dual Round(Dual t)
    {
        var rest = 1 - (t * t);
        return rest.Value <= 0 ? 0 : Dual.Sqrt(rest);
    }
}
