using System.Collections.Immutable;
using PlanForge.Airframe.Diagnostics;
using PlanForge.Airframe.Format;
using PlanForge.Airframe.Inputs;

namespace PlanForge.Airframe;

#pragma warning disable CS1591 // The parameters of each record say what its properties are.

/// <summary>How the saddles are cut.</summary>
/// <param name="SeatTape">Thickness of the tape between wing and saddle, mm, 0 or more.</param>
/// <param name="Sanding">Sanding allowance: a second line this far into the wing's side of the saddle line, mm, 0 or more.</param>
/// <param name="Depth">How deep the template is below (low wing: above) the saddle line, mm, over 0.</param>
/// <param name="Abrasive">Thickness of the abrasive on the sanding form, mm, 0 or more.</param>
/// <param name="FormHeight">Height of the sanding form, mm, over 0.</param>
/// <param name="From">Station where the saddle begins, mm, or null for the leading edge.</param>
/// <param name="To">Station where the saddle ends, mm, or null for the trailing edge.</param>
/// <param name="At">Where it stands.</param>
public sealed record SaddleDescription(
    double SeatTape,
    double Sanding,
    double Depth,
    double Abrasive,
    double FormHeight,
    double? From,
    double? To,
    SourcePosition At)
{
    public double SeatTape { get => Origin.Read(field, FittingFormat.SeatTape); init; } = SeatTape;

    public double Sanding { get => Origin.Read(field, FittingFormat.Sanding); init; } = Sanding;

    public double Depth { get => Origin.Read(field, FittingFormat.SaddleDepth); init; } = Depth;

    public double Abrasive { get => Origin.Read(field, FittingFormat.Abrasive); init; } = Abrasive;

    public double FormHeight { get => Origin.Read(field, FittingFormat.FormHeight); init; } = FormHeight;

    public double? From { get => Origin.Read(field, FittingFormat.SaddleFrom); init; } = From;

    public double? To { get => Origin.Read(field, FittingFormat.SaddleTo); init; } = To;

    internal Origin Origin { get; init; }

    internal SaddleDescription Watched(InputLog log) => this with { Origin = Origin.Watched(log) };
}

/// <summary>Wing dowels at the leading edge, parallel to the root chord line, one each side of the centre line.</summary>
/// <param name="Diameter">Measured diameter, mm, over 0.</param>
/// <param name="Spacing">Distance between the two axes, mm; 0 for a single dowel on the centre line.</param>
/// <param name="AboveChord">Height of the axes above the root chord line, mm.</param>
/// <param name="Protrusion">How far they stand out ahead of the leading edge of the root, mm, over 0.</param>
/// <param name="Fit">How much wider than the dowel the hole is, mm, 0 or more.</param>
/// <param name="At">Where it stands.</param>
public sealed record DowelsDescription(
    double Diameter, double Spacing, double AboveChord, double Protrusion, double Fit, SourcePosition At)
{
    public double Diameter { get => Origin.Read(field, FittingFormat.DowelDiameter); init; } = Diameter;

    public double Spacing { get => Origin.Read(field, FittingFormat.Spacing); init; } = Spacing;

    public double AboveChord { get => Origin.Read(field, FittingFormat.AboveChord); init; } = AboveChord;

    public double Protrusion { get => Origin.Read(field, FittingFormat.Protrusion); init; } = Protrusion;

    public double Fit { get => Origin.Read(field, FittingFormat.Fit); init; } = Fit;

    internal Origin Origin { get; init; }

    internal DowelsDescription Watched(InputLog log) => this with { Origin = Origin.Watched(log) };
}

/// <summary>Wing bolts near the trailing edge, square to the root chord line.</summary>
/// <param name="Thread">Thread designation from the tables: M3 to M8, or 4-40, 6-32, 8-32, 10-24, 10-32, 1/4-20.</param>
/// <param name="Spacing">Distance between the two axes, mm; 0 for a single bolt on the centre line.</param>
/// <param name="AheadOfTrailingEdge">Distance of the axes from the root trailing edge along the chord, mm, over 0.</param>
/// <param name="Plate">The plate that takes the thread.</param>
/// <param name="At">Where it stands.</param>
public sealed record BoltsDescription(
    string Thread, double Spacing, double AheadOfTrailingEdge, BoltPlateDescription Plate, SourcePosition At)
{
    public string Thread { get => Origin.Read(field, FittingFormat.Thread); init; } = Thread;

    public double Spacing { get => Origin.Read(field, FittingFormat.Spacing); init; } = Spacing;

    public double AheadOfTrailingEdge { get => Origin.Read(field, FittingFormat.AheadOfTrailingEdge); init; } = AheadOfTrailingEdge;

    internal Origin Origin { get; init; }

    internal BoltsDescription Watched(InputLog log) => this with
    {
        Origin = Origin.Watched(log),
        Plate = Plate.Watched(log),
    };
}

/// <summary>The plate across the body that takes the wing bolts, parallel to the datum line.</summary>
/// <param name="Material">What it is cut from.</param>
/// <param name="Thickness">Measured thickness, mm, over 0.</param>
/// <param name="Length">Its size fore and aft, mm, over 0, centred on the bolts.</param>
/// <param name="Gap">Clear distance between the wing's surface at the bolts and the near face of the plate, mm, 0 or more.</param>
/// <param name="At">Where it stands.</param>
public sealed record BoltPlateDescription(string Material, double Thickness, double Length, double Gap, SourcePosition At)
{
    public string Material { get => Origin.Read(field, FittingFormat.PlateMaterial); init; } = Material;

    public double Thickness { get => Origin.Read(field, FittingFormat.PlateThickness); init; } = Thickness;

    public double Length { get => Origin.Read(field, FittingFormat.PlateLength); init; } = Length;

    public double Gap { get => Origin.Read(field, FittingFormat.Gap); init; } = Gap;

    internal Origin Origin { get; init; }

    internal BoltPlateDescription Watched(InputLog log) => this with { Origin = Origin.Watched(log) };
}

/// <summary>The incidence shims to make.</summary>
/// <param name="From">Least change of incidence, radians.</param>
/// <param name="To">Greatest change of incidence, radians.</param>
/// <param name="Step">Step between shims, radians, over 0. The change of zero makes no shim.</param>
/// <param name="Width">Width of a shim strip, mm, over 0.</param>
/// <param name="At">Where it stands.</param>
public sealed record ShimsDescription(double From, double To, double Step, double Width, SourcePosition At)
{
    public double From { get => Origin.Read(field, FittingFormat.ShimsFrom); init; } = From;

    public double To { get => Origin.Read(field, FittingFormat.ShimsTo); init; } = To;

    public double Step { get => Origin.Read(field, FittingFormat.ShimStep); init; } = Step;

    public double Width { get => Origin.Read(field, FittingFormat.ShimWidth); init; } = Width;

    internal Origin Origin { get; init; }

    internal ShimsDescription Watched(InputLog log) => this with { Origin = Origin.Watched(log) };
}

/// <summary>The line of thrust.</summary>
/// <param name="Down">Down-thrust, radians, nose of the shaft down positive.</param>
/// <param name="Right">Side-thrust, radians, to starboard positive.</param>
/// <param name="Mount">The motor mount's bolts, or null: then no washers are worked out.</param>
/// <param name="At">Where it stands.</param>
public sealed record ThrustLineDescription(double Down, double Right, MountDescription? Mount, SourcePosition At)
{
    public double Down { get => Origin.Read(field, FittingFormat.Down); init; } = Down;

    public double Right { get => Origin.Read(field, FittingFormat.Right); init; } = Right;

    public MountDescription? Mount { get => Origin.Given(field, FittingFormat.Mount); init; } = Mount;

    internal Origin Origin { get; init; }

    internal ThrustLineDescription Watched(InputLog log) => this with
    {
        Origin = Origin.Watched(log),
        Mount = Mount?.Watched(log),
    };
}

/// <summary>The four bolts of a motor mount: the corners of a rectangle on the firewall, its middle on the shaft.</summary>
/// <param name="Across">Distance of the bolts across (y), mm, over 0.</param>
/// <param name="Up">Distance of the bolts up (z), mm, over 0.</param>
/// <param name="At">Where it stands.</param>
public sealed record MountDescription(double Across, double Up, SourcePosition At)
{
    public double Across { get => Origin.Read(field, FittingFormat.MountAcross); init; } = Across;

    public double Up { get => Origin.Read(field, FittingFormat.MountUp); init; } = Up;

    internal Origin Origin { get; init; }

    internal MountDescription Watched(InputLog log) => this with { Origin = Origin.Watched(log) };
}

/// <summary>How the set-up is measured at the bench.</summary>
/// <param name="PinsOutboardOfSide">How far outside the body sides the pins stand, mm, 0 or more.</param>
/// <param name="Clearance">Height above the board of whatever hangs lowest, mm, 0 or more: the body, a former left long, the wing.</param>
/// <param name="Cradles">The two cradles that hold the body.</param>
/// <param name="LevelRests">Where on the wing the level rests stand.</param>
/// <param name="CordStation">Station of the pin at the tail for the equal-cord check, mm, or null for the body's last station.</param>
/// <param name="At">Where it stands.</param>
public sealed record BenchDescription(
    double PinsOutboardOfSide,
    double Clearance,
    CradlesDescription Cradles,
    LevelRestsDescription LevelRests,
    double? CordStation,
    SourcePosition At)
{
    public double PinsOutboardOfSide { get => Origin.ReadWithin(field, BenchFormat.Pins, BenchFormat.OutboardOfSide); init; } = PinsOutboardOfSide;

    public double Clearance { get => Origin.Read(field, BenchFormat.Clearance); init; } = Clearance;

    public double? CordStation { get => Origin.Read(field, BenchFormat.Cord); init; } = CordStation;

    internal Origin Origin { get; init; }

    internal BenchDescription Watched(InputLog log) => this with
    {
        Origin = Origin.Watched(log),
        Cradles = Cradles.Watched(log),
        LevelRests = LevelRests.Watched(log),
    };
}

/// <summary>The cradles that hold the body with its datum line parallel to the board.</summary>
/// <param name="Front">Station of the front cradle's front face, mm, or null to have it chosen.</param>
/// <param name="Rear">Station of the rear cradle's front face, mm, or null to have it chosen.</param>
/// <param name="Material">What cradles, feet, level rests and drilling guides are cut from.</param>
/// <param name="Thickness">Its measured thickness, mm, over 0; the slots of the feet are cut to it.</param>
/// <param name="Foot">Length of a foot fore and aft, mm, over 0.</param>
/// <param name="At">Where it stands.</param>
public sealed record CradlesDescription(
    double? Front, double? Rear, string Material, double Thickness, double Foot, SourcePosition At)
{
    public double? Front { get => Origin.Read(field, BenchFormat.FrontCradle); init; } = Front;

    public double? Rear { get => Origin.Read(field, BenchFormat.RearCradle); init; } = Rear;

    public string Material { get => Origin.Read(field, BenchFormat.CradleMaterial); init; } = Material;

    public double Thickness { get => Origin.Read(field, BenchFormat.CradleThickness); init; } = Thickness;

    public double Foot { get => Origin.Read(field, BenchFormat.Foot); init; } = Foot;

    internal Origin Origin { get; init; }

    internal CradlesDescription Watched(InputLog log) => this with { Origin = Origin.Watched(log) };
}

/// <summary>Where on the wing level rests stand: distances from the centre line, mm, over 0.</summary>
/// <param name="Root">The inner place, or null for that of the pins.</param>
/// <param name="Tip">The outer place, or null for nine tenths of the half span.</param>
/// <param name="At">Where it stands.</param>
public sealed record LevelRestsDescription(double? Root, double? Tip, SourcePosition At)
{
    public double? Root { get => Origin.Read(field, BenchFormat.RootRest); init; } = Root;

    public double? Tip { get => Origin.Read(field, BenchFormat.TipRest); init; } = Tip;

    internal Origin Origin { get; init; }

    internal LevelRestsDescription Watched(InputLog log) => this with { Origin = Origin.Watched(log) };
}

/// <summary>A sheet of material on hand.</summary>
/// <param name="Name">Its unique name.</param>
/// <param name="Material">What it is.</param>
/// <param name="Thickness">Measured thickness, mm, over 0.</param>
/// <param name="Width">Size across the grain, mm, over 0.</param>
/// <param name="Length">Size along the grain, mm, over 0.</param>
/// <param name="OnHand">How many whole sheets there are, 0 or more, or null for as many as are needed.</param>
/// <param name="Margin">Edge of the sheet that is left free of parts, mm, 0 or more; under half of every size.</param>
/// <param name="Spacing">Least distance between the cut lines of two parts, mm, 0 or more.</param>
/// <param name="Remnants">Rectangles left over of this stock, in the order they are to be used up.</param>
/// <param name="At">Where it stands.</param>
public sealed record StockDescription(
    string Name,
    string Material,
    double Thickness,
    double Width,
    double Length,
    int? OnHand,
    double Margin,
    double Spacing,
    ImmutableArray<StockRemnant> Remnants,
    SourcePosition At) : IDescribed<StockDescription>
{
    public string Name { get => Origin.Read(field, WorkshopFormat.StockName); init; } = Name;

    public string Material { get => Origin.Read(field, WorkshopFormat.StockMaterial); init; } = Material;

    public double Thickness { get => Origin.Read(field, WorkshopFormat.StockThickness); init; } = Thickness;

    public double Width { get => Origin.Read(field, WorkshopFormat.StockSize); init; } = Width;

    public double Length { get => Origin.Read(field, WorkshopFormat.StockSize); init; } = Length;

    public int? OnHand { get => Origin.Read(field, WorkshopFormat.StockOnHand); init; } = OnHand;

    public double Margin { get => Origin.Read(field, WorkshopFormat.StockMargin); init; } = Margin;

    public double Spacing { get => Origin.Read(field, WorkshopFormat.StockSpacing); init; } = Spacing;

    public ImmutableArray<StockRemnant> Remnants { get => Origin.Read(field, WorkshopFormat.StockRemnants); init; } = Remnants;

    internal Origin Origin { get; init; }

    public StockDescription Watched(InputLog log) => this with { Origin = Origin.Watched(log) };

    /// <summary>True when this is what a part of some material is cut from; case and blanks around it do not count.</summary>
    public bool IsOf(string material) => string.Equals(Material.Trim(), material?.Trim(), StringComparison.OrdinalIgnoreCase);
}

/// <summary>A rectangle left over of a sheet.</summary>
/// <param name="Width">Size across the grain, mm, over 0.</param>
/// <param name="Length">Size along the grain, mm, over 0.</param>
/// <param name="At">Where it stands.</param>
public sealed record StockRemnant(double Width, double Length, SourcePosition At);

/// <summary>What to draw on.</summary>
/// <param name="Paper">The paper.</param>
/// <param name="IsPortrait">True for upright sheets; rolls always lie across.</param>
/// <param name="IsThirdAngle">True for views in third-angle projection, else they are in first angle.</param>
/// <param name="HasBothUnits">True when dimensions show the other system of units too.</param>
/// <param name="Tiles">The small papers that the sheets are printed on in tiles.</param>
/// <param name="At">Where it stands.</param>
public sealed record SheetsDescription(
    PaperDescription Paper,
    bool IsPortrait,
    bool IsThirdAngle,
    bool HasBothUnits,
    ImmutableArray<TileDescription> Tiles,
    SourcePosition At)
{
    public PaperDescription Paper { get => Origin.Read(field, WorkshopFormat.Paper); init; } = Paper;

    public bool IsPortrait { get => Origin.Read(field, WorkshopFormat.Orientation); init; } = IsPortrait;

    public bool IsThirdAngle { get => Origin.Read(field, WorkshopFormat.Projection); init; } = IsThirdAngle;

    public bool HasBothUnits { get => Origin.Read(field, WorkshopFormat.Lengths); init; } = HasBothUnits;

    public ImmutableArray<TileDescription> Tiles { get => Origin.Read(field, WorkshopFormat.Tiles); init; } = Tiles;

    internal Origin Origin { get; init; }

    internal SheetsDescription Watched(InputLog log) => this with { Origin = Origin.Watched(log) };
}

/// <summary>Paper by its name, or by its size.</summary>
/// <param name="Name">A standard name, or the size as written.</param>
/// <param name="Width">One edge, mm, over 0; null for a standard name.</param>
/// <param name="Height">The other edge, mm, over 0; null for a standard name.</param>
public sealed record PaperDescription(string Name, double? Width, double? Height);

/// <summary>Paper that the sheets are printed on in tiles.</summary>
/// <param name="Paper">The paper; no roll.</param>
/// <param name="Margin">The edge that the printer leaves white, mm, 0 or more.</param>
/// <param name="Overlap">How much two neighbours show of each other, mm, 0 or more.</param>
/// <param name="At">Where it stands.</param>
public sealed record TileDescription(PaperDescription Paper, double Margin, double Overlap, SourcePosition At);
