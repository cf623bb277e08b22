using System.Collections.Immutable;
using PlanForge.Airframe.Building;
using PlanForge.Airframe.Diagnostics;
using PlanForge.Airframe.Format;
using PlanForge.Airframe.Inputs;

namespace PlanForge.Airframe;

#pragma warning disable CS1591 // The parameters of each record say what its properties are.

/// <summary>
/// A whole airframe as its description gives it: checked, immutable, all lengths in millimetres and all angles in radians.
/// </summary>
/// <remarks>
/// Axes: x is the station, aft positive; y is starboard positive; z is the height above the fuselage datum line. Every
/// record that a message may have to blame carries <c>At</c>, the place in the description it came from; two records that
/// differ only in <c>At</c> describe the same thing.
/// </remarks>
/// <param name="Name">The design's name; also the output folder's.</param>
/// <param name="Issue">What the title block says besides: revision, owner and who else signs.</param>
/// <param name="Notes">Free lines for the sheets.</param>
/// <param name="DisplayUnit">The unit lengths are shown in: the description's own.</param>
/// <param name="Parameters">The named parameters in the order of their names: their order in the file says nothing.</param>
/// <param name="Wing">The wing.</param>
/// <param name="Fuselage">The fuselage.</param>
/// <param name="Formers">The formers in the order of the file; names are unique.</param>
/// <param name="Saddle">How the saddles are cut.</param>
/// <param name="Dowels">The wing dowels, or null.</param>
/// <param name="Bolts">The wing bolts, or null.</param>
/// <param name="Tailplane">The tailplane, or null.</param>
/// <param name="Shims">Which incidence shims to make.</param>
/// <param name="ThrustLine">Down- and side-thrust, or null.</param>
/// <param name="Bench">How the set-up on the building board is measured.</param>
/// <param name="Stock">Sheets of material on hand.</param>
/// <param name="Sheets">What to draw on.</param>
/// <param name="Cutter">What the cutting machine needs to know.</param>
public sealed record AirframeDescription(
    string Name,
    IssueDescription Issue,
    ImmutableArray<string> Notes,
    DisplayUnit DisplayUnit,
    ImmutableArray<NamedParameter> Parameters,
    WingDescription Wing,
    FuselageDescription Fuselage,
    ImmutableArray<FormerDescription> Formers,
    SaddleDescription Saddle,
    DowelsDescription? Dowels,
    BoltsDescription? Bolts,
    TailplaneDescription? Tailplane,
    ShimsDescription Shims,
    ThrustLineDescription? ThrustLine,
    BenchDescription Bench,
    ImmutableArray<StockDescription> Stock,
    SheetsDescription Sheets,
    CutterDescription Cutter)
{
    /// <summary>What was measured on the wood and is contained here, with the design before; null where nothing was.</summary>
    public AsBuiltDescription? AsBuilt { get => Origin.Given(field, AirframeFormat.AsBuilt); init; }

    public string Name { get => Origin.Read(field, AirframeFormat.Name); init; } = Name;

    public ImmutableArray<string> Notes { get => Origin.Read(field, AirframeFormat.Notes); init; } = Notes;

    public DisplayUnit DisplayUnit { get => Origin.Read(field, AirframeFormat.Units); init; } = DisplayUnit;

    public ImmutableArray<FormerDescription> Formers { get => Origin.Members(field, AirframeFormat.Formers); init; } = Formers;

    public DowelsDescription? Dowels { get => Origin.GivenWithin(field, AirframeFormat.Retention, FittingFormat.Dowels); init; } = Dowels;

    public BoltsDescription? Bolts { get => Origin.GivenWithin(field, AirframeFormat.Retention, FittingFormat.Bolts); init; } = Bolts;

    public TailplaneDescription? Tailplane { get => Origin.Given(field, AirframeFormat.Tailplane); init; } = Tailplane;

    public ThrustLineDescription? ThrustLine { get => Origin.Given(field, AirframeFormat.ThrustLine); init; } = ThrustLine;

    public ImmutableArray<StockDescription> Stock { get => Origin.Members(field, AirframeFormat.Stock); init; } = Stock;

    /// <summary>Parameters whose values were given from outside the file, in the order of their names: what is made of it does not follow the file alone.</summary>
    public ImmutableArray<NamedParameter> Overrides { get; init; } = [];

    internal Origin Origin { get; init; }

    /// <summary>The same description, whose readings a log notes.</summary>
    /// <param name="log">The log of whoever makes something from it.</param>
    public AirframeDescription Watched(InputLog log) => this with
    {
        Origin = Origin.Watched(log),
        Issue = Issue.Watched(log),
        Wing = Wing.Watched(log),
        Fuselage = Fuselage.Watched(log),
        Saddle = Saddle.Watched(log),
        Shims = Shims.Watched(log),
        Bench = Bench.Watched(log),
        Sheets = Sheets.Watched(log),
        Cutter = Cutter.Watched(log),
        Formers = Formers.Watched(log),
        Stock = Stock.Watched(log),
        Dowels = Dowels?.Watched(log),
        Bolts = Bolts?.Watched(log),
        Tailplane = Tailplane?.Watched(log),
        ThrustLine = ThrustLine?.Watched(log),
        AsBuilt = AsBuilt?.Watched(log),
    };
}

/// <summary>Who issued a design and in which state it is: fields of the title block, as given. Empty where not given.</summary>
/// <param name="Revision">The revision letter or number.</param>
/// <param name="Owner">Legal owner.</param>
/// <param name="Creator">Who made it.</param>
/// <param name="Approver">Who approved it.</param>
/// <param name="Date">Date of issue.</param>
/// <param name="Revisions">The revision table, oldest first.</param>
/// <param name="Fingerprint">The fingerprint of all values of the description.</param>
/// <param name="Fields">Where name, revision, owner, creator, approver and date stand, in this order.</param>
public sealed record IssueDescription(
    string Revision,
    string Owner,
    string Creator,
    string Approver,
    string Date,
    ImmutableArray<RevisionDescription> Revisions,
    Fingerprint Fingerprint,
    ImmutableArray<SourcePosition> Fields)
{
    public string Revision { get => Origin.Read(field, AirframeFormat.Revision); init; } = Revision;

    public string Owner { get => Origin.Read(field, AirframeFormat.Owner); init; } = Owner;

    public string Creator { get => Origin.Read(field, AirframeFormat.Creator); init; } = Creator;

    public string Approver { get => Origin.Read(field, AirframeFormat.Approver); init; } = Approver;

    public string Date { get => Origin.Read(field, AirframeFormat.IssueDate); init; } = Date;

    public ImmutableArray<RevisionDescription> Revisions { get => Origin.Read(field, AirframeFormat.Revisions); init; } = Revisions;

    internal Origin Origin { get; init; }

    internal IssueDescription Watched(InputLog log) => this with { Origin = Origin.Watched(log) };
}

/// <summary>A row of the revision table.</summary>
/// <param name="Revision">Its letter or number.</param>
/// <param name="Change">What was changed.</param>
/// <param name="Date">When, or empty.</param>
/// <param name="By">By whom, or empty.</param>
/// <param name="At">Where it stands.</param>
public sealed record RevisionDescription(string Revision, string Change, string Date, string By, SourcePosition At);

/// <summary>The unit a bare number in the description has and lengths are shown in.</summary>
public enum DisplayUnit
{
    /// <summary>Millimetres.</summary>
    Millimetre,

    /// <summary>Centimetres.</summary>
    Centimetre,

    /// <summary>Inches, shown as fractions.</summary>
    Inch,
}

/// <summary>A named parameter after evaluation.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Value">Its value: mm, rad or a plain number by <paramref name="Dimension"/>.</param>
/// <param name="Dimension">What kind of value it is.</param>
/// <param name="At">Where it stands.</param>
public sealed record NamedParameter(string Name, double Value, Dimension Dimension, SourcePosition At);

/// <summary>The dimension of a value in the description.</summary>
public enum Dimension
{
    /// <summary>A plain number.</summary>
    Number,

    /// <summary>A length, millimetres inside.</summary>
    Length,

    /// <summary>An angle, radians inside.</summary>
    Angle,

    /// <summary>A mass, grams inside.</summary>
    Mass,
}
