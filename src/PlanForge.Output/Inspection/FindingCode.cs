namespace PlanForge.Output.Inspection;

/// <summary>The words for the kinds of findings.</summary>
public static class FindingCode
{
    /// <summary>The text is no DXF or SVG, or breaks its grammar.</summary>
    public const string Syntax = "syntax";

    /// <summary>The file, or what it holds, is more than is read.</summary>
    public const string TooLarge = "too-large";

    /// <summary>A file with nothing to cut.</summary>
    public const string Empty = "empty";

    /// <summary>Ends that nearly meet.</summary>
    public const string Gap = "gap";

    /// <summary>A contour on a cut layer with ends.</summary>
    public const string OpenContour = "open-contour";

    /// <summary>More than two lines end in one point.</summary>
    public const string Branch = "branch";

    /// <summary>Equal gaps in line with their contours, left to hold the parts.</summary>
    public const string HoldingTabs = "holding-tabs";

    /// <summary>The same stretch twice.</summary>
    public const string Duplicate = "duplicate";

    /// <summary>Two contours cross or touch.</summary>
    public const string Crossing = "crossing";

    /// <summary>A contour crosses or touches itself.</summary>
    public const string SelfCrossing = "self-crossing";

    /// <summary>A segment without length.</summary>
    public const string ZeroLength = "zero-length";

    /// <summary>A segment too short to be meant.</summary>
    public const string TinySegment = "tiny-segment";

    /// <summary>A curve crumbled into chords.</summary>
    public const string Crumbs = "crumbs";

    /// <summary>Cut edges so near each other that what is between burns.</summary>
    public const string Narrow = "narrow";

    /// <summary>A hole too small for the thickness.</summary>
    public const string SmallHole = "small-hole";

    /// <summary>Lines outside the sheet, or outside what the file says is its area.</summary>
    public const string OutsideSheet = "outside-sheet";

    /// <summary>Extents in the header that are not those of the drawing.</summary>
    public const string Extents = "extents";

    /// <summary>Text, which vanishes where its font is missing.</summary>
    public const string Text = "text";

    /// <summary>A spline, which every program cuts otherwise.</summary>
    public const string Spline = "spline";

    /// <summary>An ellipse.</summary>
    public const string Ellipse = "ellipse";

    /// <summary>An area filled with lines.</summary>
    public const string Hatch = "hatch";

    /// <summary>A reference to a block or to another element.</summary>
    public const string Insert = "insert";

    /// <summary>An element that is no line to cut.</summary>
    public const string ForbiddenEntity = "forbidden-entity";

    /// <summary>An element that is not known.</summary>
    public const string UnknownEntity = "unknown-entity";

    /// <summary>Lines out of the plane of the sheet.</summary>
    public const string NotFlat = "not-flat";

    /// <summary>No units, or none a length can be made of.</summary>
    public const string Units = "units";

    /// <summary>A size that speaks for wrong units.</summary>
    public const string Size = "size";

    /// <summary>A layer that is used but not in the table.</summary>
    public const string LayerMissing = "layer-missing";

    /// <summary>A layer's name that not every program reads.</summary>
    public const string LayerName = "layer-name";

    /// <summary>Lines on a layer that is switched off.</summary>
    public const string LayerOff = "layer-off";

    /// <summary>A border that would be cut.</summary>
    public const string Frame = "frame";

    /// <summary>A picture without a size in mm or in.</summary>
    public const string NoSize = "no-size";

    /// <summary>Numbers that are no millimetres: a view box or a transform that scales.</summary>
    public const string Scale = "scale";

    /// <summary>An element with a transform.</summary>
    public const string Transform = "transform";

    /// <summary>A picture made of pixels.</summary>
    public const string Image = "image";

    /// <summary>Clipping, masks, filters: what is seen is not what is cut.</summary>
    public const string Clip = "clip";

    /// <summary>Béziers, which are cut as each program takes them apart.</summary>
    public const string Bezier = "bezier";

    /// <summary>Style rules apart from the elements, or areas without a line.</summary>
    public const string Style = "style";
}
