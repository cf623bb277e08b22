using System.Collections.Immutable;
using PlanForge.Airframe;
using PlanForge.Geometry;

namespace PlanForge.Parts.Shapes;

/// <summary>The finished outside of the fuselage, and its inside within the skins. Starboard half; port mirrors it in y = 0.</summary>
public sealed class FuselageShape
{
    private FuselageShape(FuselageDescription description)
    {
        Skin = description.Skin;
        var stations = description.Stations;
        var curves = FuselageCurves.Of(description);
        Bays = [.. stations.SkipLast(1).Select((station, i) =>
            new FuselageBay(i, station.Station, stations[i + 1].Station, curves))];
        Skins = new(this);
    }

    /// <summary>Thickness of the skins.</summary>
    public SkinDescription Skin { get; }

    /// <summary>Station of the nose, mm.</summary>
    public double From => Bays[0].From;

    /// <summary>Station of the tail end, mm.</summary>
    public double To => Bays[^1].To;

    internal ImmutableArray<FuselageBay> Bays { get; }

    /// <summary>The surfaces inside the skins.</summary>
    internal FuselageInside Skins { get; }

    /// <summary>Builds the fuselage.</summary>
    public static FuselageShape Of(FuselageDescription description) => new(description);

    /// <summary>The bay that holds a station; the first or last bay for stations outside the body.</summary>
    internal FuselageBay BayAt(double station)
    {
        int low = 0, high = Bays.Length - 1;
        while (low < high)
        {
            var middle = (low + high) / 2;
            if (station < Bays[middle].To)
            {
                high = middle;
            }
            else
            {
                low = middle + 1;
            }
        }

        return Bays[low];
    }

    /// <summary>Half-breadth of the outside at a station and height, mm.</summary>
    public double HalfBreadthAt(double station, double height) => BayAt(station).At(station).HalfBreadthAt(height).Value;

    /// <summary>Height of the top on the centre line at a station, mm.</summary>
    public double UpperAt(double station) => BayAt(station).At(station).Upper.Value;

    /// <summary>Height of the bottom on the centre line at a station, mm.</summary>
    public double LowerAt(double station) => BayAt(station).At(station).Lower.Value;

    /// <summary>The side as a surface over station (u) and height (v), by the functions of one bay.</summary>
    internal static Dual3 SideAt(FuselageBay bay, double station, double height)
    {
        Dual x = Dual.U(station), z = Dual.V(height);
        return new(x, bay.At(x).HalfBreadthAt(z), z);
    }

    /// <summary>The unit normal of a <see cref="SideAt"/> point that points out of the body to starboard.</summary>
    // u aft and v up: u × v = x × z points to port.
    internal static Vector3 OutwardNormal(Dual3 side) => -side.Normal;
}
