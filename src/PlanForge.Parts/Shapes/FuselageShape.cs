using System.Collections.Immutable;
using PlanForge.Airframe;
using PlanForge.Airframe.Inputs;
using PlanForge.Geometry;

namespace PlanForge.Parts.Shapes;

/// <summary>The finished outside of the fuselage, and its inside within the skins. Starboard half; port mirrors it in y = 0.</summary>
public sealed class FuselageShape
{
    // Ends of the bays, for the search alone: that answers for the bay it finds.
    private readonly double[] _ends;
    private readonly Recorded<ImmutableArray<FuselageBay>> _bays;

    private FuselageShape(FuselageDescription description, InputLog log)
    {
        var stations = log.Record(() => description.Stations);
        Skin = new(description.Skin, log);
        ImmutableArray<Recorded<double>> knots = [.. stations.Unnoted.Select(station => log.RecordNumber(() => station.Station))];
        _ends = [.. knots.Select(knot => knot.Unnoted)];
        var runs = new FuselageRuns(stations.Unnoted, log);
        var bays = ImmutableArray.CreateBuilder<FuselageBay>(knots.Length - 1);
        for (var i = 0; i < knots.Length - 1; i++)
        {
            bays.Add(new(i, knots[i], knots[i + 1], runs.Of(i)));
        }

        _bays = log.Record(() =>
        {
            stations.Inputs.Use();
            return bays.MoveToImmutable();
        });
        Skins = new(this);
    }

    /// <summary>Thickness of the skins.</summary>
    public FuselageSkin Skin { get; }

    /// <summary>Station of the nose, mm.</summary>
    public double From => Bays[0].From;

    /// <summary>Station of the tail end, mm.</summary>
    public double To => Bays[^1].To;

    internal ImmutableArray<FuselageBay> Bays => _bays.Value;

    /// <summary>The surfaces inside the skins.</summary>
    internal FuselageInside Skins { get; }

    /// <summary>Builds the fuselage.</summary>
    public static FuselageShape Of(FuselageDescription description) => new(description, new InputLog());

    /// <summary>Builds the fuselage of a description that a log watches; each of its bays knows what it was made from.</summary>
    internal static FuselageShape Of(FuselageDescription description, InputLog log) => new(description, log);

    /// <summary>The bay that holds a station; the first or last bay for stations outside the body.</summary>
    internal FuselageBay BayAt(double station)
    {
        int low = 0, high = _ends.Length - 2;
        while (low < high)
        {
            var middle = (low + high) / 2;
            if (station < _ends[middle + 1])
            {
                high = middle;
            }
            else
            {
                low = middle + 1;
            }
        }

        var bay = Bays[low];
        bay.UseEnds();
        return bay;
    }

    /// <summary>Half-breadth of the outside at a station and height, mm.</summary>
    public double HalfBreadthAt(double station, double height) => BayAt(station).At(station).HalfBreadthAt(height).Value;

    /// <summary>Height of the top on the centre line at a station, mm.</summary>
    public double UpperAt(double station)
    {
        var bay = BayAt(station);
        return bay.Curves.Upper.At(bay.Span, station).Value;
    }

    /// <summary>Height of the bottom on the centre line at a station, mm.</summary>
    public double LowerAt(double station)
    {
        var bay = BayAt(station);
        return bay.Curves.Lower.At(bay.Span, station).Value;
    }

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
