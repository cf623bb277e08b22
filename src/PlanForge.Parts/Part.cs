using System.Collections.Immutable;
using PlanForge.Airframe;
using PlanForge.Airframe.Inputs;
using PlanForge.Geometry;

namespace PlanForge.Parts;

/// <summary>A thing to make or to hold against the wood, laid flat at true size. Knows nothing of paper or files.</summary>
/// <remarks>
/// Coordinates are the part's own, mm, y up; each kind says where its origin lies. A former is seen from the tail looking
/// forward: starboard on the right, heights upward. Everything a sheet shows of the part is here, so that a new kind of
/// part is a new folder and nothing else.
/// </remarks>
/// <param name="Id">Stable name made from the description's names, such as <c>former-F3</c>: lower-case kind, ASCII, usable in a file name.</param>
/// <param name="Kind">The kind's title, such as <c>Formers</c>; sheets keep a kind together.</param>
/// <param name="Title">What the builder calls it, such as <c>Former F3</c>.</param>
/// <param name="Making">Whether it is cut from a sheet or only printed.</param>
/// <param name="Material">What it is cut from, or empty for a paper template.</param>
/// <param name="Thickness">Sheet thickness, mm; 0 for a paper template.</param>
/// <param name="Quantity">How many to make, at least 1.</param>
/// <param name="GrainAngle">Direction of the grain from the x axis, radians, or null when it does not matter.</param>
/// <param name="Lines">All lines, cut contours included.</param>
/// <param name="Labels">Short texts at places on the part.</param>
/// <param name="Dimensions">Sizes worth showing.</param>
/// <param name="Tables">Tables beside the part.</param>
/// <param name="Notes">Sentences beside the part.</param>
/// <param name="Figures">Every computed number, for the report.</param>
public sealed record Part(
    string Id,
    string Kind,
    string Title,
    Making Making,
    string Material,
    double Thickness,
    int Quantity,
    double? GrainAngle,
    ImmutableArray<PartLine> Lines,
    ImmutableArray<PartLabel> Labels,
    ImmutableArray<PartDimension> Dimensions,
    ImmutableArray<PartTable> Tables,
    ImmutableArray<string> Notes,
    ImmutableArray<Figure> Figures)
{
    /// <summary>
    /// The fingerprint of the part as it was made, by which a builder tells whether wood or paper in hand is current; null on a part that
    /// was put together otherwise. A part that is turned or lettered anew keeps it.
    /// </summary>
    public Fingerprint? Fingerprint { get; init; }

    /// <summary>The station its front face stands at, mm; null on a part that stands at none of its own.</summary>
    public double? Station { get; init; }

    /// <summary>
    /// Of a template, the stretches of its cut lines that wood is worked to, where the others are no more than the paper's edges; empty when
    /// all are. Null where wood is worked to all of them.
    /// </summary>
    public ImmutableArray<Path2>? Fitted { get; init; }

    /// <summary>The pieces of a set that is drawn as one part; empty on a part that is one piece.</summary>
    public ImmutableArray<SetPiece> Pieces { get; init; } = [];

    /// <summary>The values of the description that it was made from, as recorded while it was made.</summary>
    public InputSet Inputs { get; init; } = InputSet.None;
}

/// <summary>A piece of a set.</summary>
/// <param name="Name">What it is, by which it is known among the others: such as the angle of a shim.</param>
/// <param name="Outline">Its cut line, closed.</param>
public sealed record SetPiece(string Name, Path2 Outline);

/// <summary>How a part comes into being.</summary>
public enum Making
{
    /// <summary>Cut from sheet: it gets a cut file of its own.</summary>
    Cut,

    /// <summary>Printed at true size and used as a paper template.</summary>
    Template,

    /// <summary>Printed to be read or written on: nothing is made from it, and its lines are not at true size.</summary>
    View,
}

/// <summary>A line on a part.</summary>
/// <param name="Use">What it means.</param>
/// <param name="Path">Where it runs; cut contours are closed, openings clockwise.</param>
public sealed record PartLine(LineUse Use, Path2 Path);

/// <summary>What a line on a part means; the drafting side chooses line type, width and layer by it.</summary>
public enum LineUse
{
    /// <summary>An edge the cutter or knife follows: outlines and openings. Closed on cut parts.</summary>
    Cut,

    /// <summary>A line scored or drawn into the part's face.</summary>
    Score,

    /// <summary>The finished edge inside an allowance: trim or sand to here.</summary>
    Trim,

    /// <summary>An edge on the far face, or otherwise out of sight.</summary>
    Hidden,

    /// <summary>A centre line or axis.</summary>
    Centre,

    /// <summary>The fuselage datum line, or a line parallel to it.</summary>
    Datum,

    /// <summary>A station or the place of another part.</summary>
    Station,

    /// <summary>The outline of a neighbouring part.</summary>
    Neighbour,

    /// <summary>A visible edge on a view of something that is not cut from here.</summary>
    Edge,

    /// <summary>A line of the part as it was before a change.</summary>
    Before,

    /// <summary>Hatching over wood that only the old part or only the new one has.</summary>
    Difference,
}

/// <summary>A short text on a part.</summary>
/// <param name="Text">The text, one line.</param>
/// <param name="At">The place it belongs to.</param>
/// <param name="Anchor">Which point of the text lies there.</param>
/// <param name="Angle">Direction of reading from the x axis, radians.</param>
/// <param name="Height">Height of capitals, mm; 2.5 where nothing else is wanted.</param>
/// <param name="IsEngraved">True when the text goes on the cut part too (as single strokes).</param>
public sealed record PartLabel(
    string Text, Point2 At, Anchor Anchor = Anchor.Middle, double Angle = 0, double Height = 2.5, bool IsEngraved = false);

/// <summary>Which point of a text lies on its place.</summary>
public enum Anchor
{
    /// <summary>The start of the baseline.</summary>
    Start,

    /// <summary>The middle of the text, both ways.</summary>
    Middle,

    /// <summary>The end of the baseline.</summary>
    End,
}

/// <summary>A size to show on a part.</summary>
public abstract record PartDimension
{
    private protected PartDimension()
    {
    }

    /// <summary>A distance between two points, measured along a direction.</summary>
    /// <param name="From">One end.</param>
    /// <param name="To">Other end.</param>
    /// <param name="Direction">Unit direction it is measured along: (1, 0) across, (0, 1) up, or along the points.</param>
    /// <param name="Offset">On which side the dimension line stands: positive to the left of the direction, negative to the right.
    /// How far is the drafting's choice.</param>
    /// <param name="Text">The text in place of the measured value, or null.</param>
    public sealed record Linear(Point2 From, Point2 To, Vector2 Direction, double Offset, string? Text = null) : PartDimension;

    /// <summary>A text with a leader that points at a place or a circle.</summary>
    /// <param name="At">Where the arrow points, or the middle of the circle.</param>
    /// <param name="TextAt">Where the text would best start; it may be moved to a free place.</param>
    /// <param name="Text">The text.</param>
    /// <param name="Radius">Radius of a circle that the arrow touches, mm; 0 for a place.</param>
    public sealed record Leader(Point2 At, Point2 TextAt, string Text, double Radius = 0) : PartDimension;
}

/// <summary>A small table beside a part.</summary>
/// <param name="Title">What it lists.</param>
/// <param name="Header">Column heads with their units.</param>
/// <param name="Rows">Cells as shown; every row as long as the header.</param>
/// <param name="BlankColumns">How many columns at the right are left blank to be written in with a pencil; their cells are empty.</param>
public sealed record PartTable(
    string Title, ImmutableArray<string> Header, ImmutableArray<ImmutableArray<string>> Rows, int BlankColumns = 0);
