using System.Collections.Immutable;
using PlanForge.Airframe.Diagnostics;
using PlanForge.Airframe.Format;
using PlanForge.Airframe.Inputs;
using PlanForge.Geometry.Curves;

namespace PlanForge.Airframe;

#pragma warning disable CS1591 // The parameters of each record say what its properties are.

/// <summary>The fuselage as its finished outside, symmetric about y = 0.</summary>
/// <param name="Skin">Thickness of the skins along the surface normal.</param>
/// <param name="Stations">Cross-sections, ascending stations, at least two.</param>
/// <param name="Longerons">Longerons and stringers the formers are notched for.</param>
/// <param name="At">Where it stands.</param>
public sealed record FuselageDescription(
    SkinDescription Skin,
    ImmutableArray<FuselageStation> Stations,
    ImmutableArray<LongeronDescription> Longerons,
    SourcePosition At)
{
    public ImmutableArray<FuselageStation> Stations { get => Origin.Members(field, FuselageFormat.Stations); init; } = Stations;

    public ImmutableArray<LongeronDescription> Longerons { get => Origin.Members(field, FuselageFormat.Longerons); init; } = Longerons;

    internal Origin Origin { get; init; }

    internal FuselageDescription Watched(InputLog log) => this with
    {
        Origin = Origin.Watched(log),
        Skin = Skin.Watched(log),
        Stations = Stations.Watched(log),
        Longerons = Longerons.Watched(log),
    };

    /// <summary>How a value of the cross-sections runs along the body, mm over stations; each span is that between two stations.</summary>
    /// <param name="value">The value of a station, mm.</param>
    /// <exception cref="ArgumentException">There are fewer than two stations or they do not ascend.</exception>
    public StationCurve Along(Func<FuselageStation, double> value) => Through(Stations, value);

    /// <summary>The same through some neighbouring stations alone.</summary>
    /// <param name="stations">The stations, ascending, at least two.</param>
    /// <param name="value">The value of a station, mm.</param>
    /// <exception cref="ArgumentException">There are fewer than two stations or they do not ascend.</exception>
    public static StationCurve Through(ImmutableArray<FuselageStation> stations, Func<FuselageStation, double> value) => StationCurve.Through(
        [.. stations.Select(station => station.Station)],
        [.. stations.Select(value)],
        [.. stations.SkipLast(1).Select(station => station.RunAft == Run.Fair ? Span.Fair : Span.Straight)]);
}

/// <summary>Thickness of the skins, mm, 0 or more, along the surface normal.</summary>
/// <param name="Side">Sides.</param>
/// <param name="Top">Top.</param>
/// <param name="Bottom">Bottom.</param>
public readonly record struct SkinDescription(double Side, double Top, double Bottom)
{
    public double Side { get => Origin.Read(field, FuselageFormat.SkinSide); init; } = Side;

    public double Top { get => Origin.Read(field, FuselageFormat.SkinTop); init; } = Top;

    public double Bottom { get => Origin.Read(field, FuselageFormat.SkinBottom); init; } = Bottom;

    internal Origin Origin { get; init; }

    internal SkinDescription Watched(InputLog log) => this with { Origin = Origin.Watched(log) };
}

/// <summary>How the outside runs between two stations.</summary>
public enum Run
{
    /// <summary>Straight lines from station to station.</summary>
    Straight,

    /// <summary>A fair curve, as a batten bends: a cubic spline, tangent to straight runs beside it.</summary>
    Fair,
}

/// <summary>A cross-section of the outside.</summary>
/// <param name="Station">x, mm.</param>
/// <param name="UpperHalfBreadth">Half the width at the upper edge, mm, over 0.</param>
/// <param name="LowerHalfBreadth">Half the width at the lower edge, mm, over 0; differs from the upper where the sides lean.</param>
/// <param name="Upper">Height of the top on the centre line, mm.</param>
/// <param name="Lower">Height of the bottom on the centre line, mm, below <paramref name="Upper"/>.</param>
/// <param name="Shape">How the corners are rounded.</param>
/// <param name="RunAft">How the outside runs from here to the next station.</param>
/// <param name="At">Where it stands.</param>
public sealed record FuselageStation(
    double Station,
    double UpperHalfBreadth,
    double LowerHalfBreadth,
    double Upper,
    double Lower,
    SectionShape Shape,
    Run RunAft,
    SourcePosition At) : IDescribed<FuselageStation>
{
    public double Station { get => Origin.Read(field, FuselageFormat.Station); init; } = Station;

    public double UpperHalfBreadth { get => Origin.Read(field, FuselageFormat.HalfBreadth); init; } = UpperHalfBreadth;

    public double LowerHalfBreadth { get => Origin.Read(field, FuselageFormat.HalfBreadth); init; } = LowerHalfBreadth;

    public double Upper { get => Origin.Read(field, FuselageFormat.Upper); init; } = Upper;

    public double Lower { get => Origin.Read(field, FuselageFormat.Lower); init; } = Lower;

    public SectionShape Shape { get => Origin.Read(field, FuselageFormat.Shape); init; } = Shape;

    public Run RunAft { get => Origin.Read(field, FuselageFormat.RunAft); init; } = RunAft;

    internal Origin Origin { get; init; }

    public FuselageStation Watched(InputLog log) => this with { Origin = Origin.Watched(log) };
}

/// <summary>
/// The shape of a cross-section: a rectangle whose corners are quarter ellipses with these semi-axes. Zero makes a box,
/// equal values a rounded box; half the width and half the height make an ellipse.
/// </summary>
/// <param name="UpperAcross">Semi-axis across (y) of the upper corners, mm, 0 to the half-breadth.</param>
/// <param name="UpperUp">Semi-axis up (z) of the upper corners, mm.</param>
/// <param name="LowerAcross">Semi-axis across of the lower corners, mm.</param>
/// <param name="LowerUp">Semi-axis up of the lower corners, mm; with <paramref name="UpperUp"/> at most the height.</param>
/// <remarks>Leaning sides scale the whole shape across, linearly with height, so that corners stay tangent to the sides.</remarks>
public readonly record struct SectionShape(double UpperAcross, double UpperUp, double LowerAcross, double LowerUp);

/// <summary>A longeron or stringer inside the skin; formers carry a notch for it.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Place">Where it runs.</param>
/// <param name="Height">For <see cref="LongeronPlace.Side"/>: height of its middle line at the former, mm; else 0.</param>
/// <param name="Across">Its size across (y), mm, over 0.</param>
/// <param name="Up">Its size up (z), mm, over 0.</param>
/// <param name="At">Where it stands.</param>
public sealed record LongeronDescription(
    string Name, LongeronPlace Place, double Height, double Across, double Up, SourcePosition At) : IDescribed<LongeronDescription>
{
    public string Name { get => Origin.Read(field, FuselageFormat.LongeronName); init; } = Name;

    public LongeronPlace Place { get => Origin.Read(field, FuselageFormat.Place); init; } = Place;

    public double Height { get => Origin.Read(field, FuselageFormat.SideHeight); init; } = Height;

    public double Across { get => Origin.Read(field, FuselageFormat.LongeronSize); init; } = Across;

    public double Up { get => Origin.Read(field, FuselageFormat.LongeronSize); init; } = Up;

    internal Origin Origin { get; init; }

    public LongeronDescription Watched(InputLog log) => this with { Origin = Origin.Watched(log) };
}

/// <summary>Where a longeron runs.</summary>
public enum LongeronPlace
{
    /// <summary>In the upper corners.</summary>
    UpperCorner,

    /// <summary>In the lower corners.</summary>
    LowerCorner,

    /// <summary>Along the sides at a height.</summary>
    Side,

    /// <summary>Along the middle of the bottom.</summary>
    Keel,

    /// <summary>Along the middle of the top.</summary>
    Crown,
}
