using System.Collections.Immutable;
using PlanForge.Airframe.Diagnostics;

namespace PlanForge.Airframe;

/// <summary>A cross-section frame inside the skins.</summary>
/// <param name="Name">Its unique name.</param>
/// <param name="Station">x of its front face, mm.</param>
/// <param name="Thickness">Measured sheet thickness, mm, over 0; the rear face lies this far aft.</param>
/// <param name="Material">What it is cut from.</param>
/// <param name="Grain">Direction of the grain on the part.</param>
/// <param name="IsCrossFormer">True for the former that takes the wing dowels.</param>
/// <param name="Allowance">Extra wood left on purpose.</param>
/// <param name="Bevel">An edge cut at an angle, or null.</param>
/// <param name="Openings">Openings cut through it.</param>
/// <param name="Lightening">A large opening that leaves a rim, or null.</param>
/// <param name="Slots">Slots cut through it or into its edge.</param>
/// <param name="Tabs">Tabs standing out from its edge.</param>
/// <param name="At">Where it stands.</param>
public sealed record FormerDescription(
    string Name,
    double Station,
    double Thickness,
    string Material,
    GrainDirection Grain,
    bool IsCrossFormer,
    AllowanceDescription Allowance,
    EdgeBevelDescription? Bevel,
    ImmutableArray<OpeningDescription> Openings,
    LighteningDescription? Lightening,
    ImmutableArray<SlotDescription> Slots,
    ImmutableArray<TabDescription> Tabs,
    SourcePosition At);

/// <summary>Direction of the wood's grain on a part.</summary>
public enum GrainDirection
{
    /// <summary>Across the body (or along the part's own length).</summary>
    Across,

    /// <summary>Upright.</summary>
    Upright,
}

/// <summary>Extra wood outside the finished edge, mm, 0 or more.</summary>
/// <param name="Upper">On the upper edge.</param>
/// <param name="Lower">On the lower edge.</param>
/// <param name="Side">On both sides.</param>
public readonly record struct AllowanceDescription(double Upper, double Lower, double Side);

/// <summary>An edge of a former.</summary>
public enum FormerEdge
{
    /// <summary>The upper edge.</summary>
    Upper,

    /// <summary>The lower edge.</summary>
    Lower,
}

/// <summary>A face of a former.</summary>
public enum FormerFace
{
    /// <summary>The face towards the nose.</summary>
    Front,

    /// <summary>The face towards the tail.</summary>
    Rear,
}

/// <summary>An edge that is bevelled on purpose.</summary>
/// <param name="Edge">Which edge.</param>
/// <param name="Face">The face on which wood is taken off.</param>
/// <param name="Angle">Angle between the bevel and the square edge, radians, over 0 and under 80 degrees.</param>
/// <param name="At">Where it stands.</param>
public sealed record EdgeBevelDescription(FormerEdge Edge, FormerFace Face, double Angle, SourcePosition At);

/// <summary>An opening: a rectangle with rounded corners, or a circle when both sizes equal twice the corner radius.</summary>
/// <param name="Across">y of its middle, mm; an opening off the centre line is made on both sides.</param>
/// <param name="Height">z of its middle, mm.</param>
/// <param name="Width">Size across, mm, over 0.</param>
/// <param name="Depth">Size up, mm, over 0.</param>
/// <param name="CornerRadius">Radius of the corners, mm, 0 to half the smaller size.</param>
/// <param name="At">Where it stands.</param>
public sealed record OpeningDescription(
    double Across, double Height, double Width, double Depth, double CornerRadius, SourcePosition At);

/// <summary>A lightening opening that follows the outline.</summary>
/// <param name="Rim">Width of the rim that remains, mm, over 0.</param>
/// <param name="CornerRadius">Radius of the opening's inside corners, mm, 0 or more.</param>
/// <param name="At">Where it stands.</param>
public sealed record LighteningDescription(double Rim, double CornerRadius, SourcePosition At);

/// <summary>A rectangular slot, made on both sides when off the centre line.</summary>
/// <param name="Across">y of its middle, mm.</param>
/// <param name="Height">z of its middle, mm.</param>
/// <param name="Width">Size across, mm, over 0.</param>
/// <param name="Depth">Size up, mm, over 0.</param>
/// <param name="At">Where it stands.</param>
public sealed record SlotDescription(double Across, double Height, double Width, double Depth, SourcePosition At)
{
    /// <summary>The sheet of stock that <see cref="Width"/> follows, by its name, or null.</summary>
    public string? WidthSheet { get; init; }

    /// <summary>The sheet of stock that <see cref="Depth"/> follows, by its name, or null.</summary>
    public string? DepthSheet { get; init; }
}

/// <summary>A rectangular tab on both sides, or on the upper or lower edge.</summary>
/// <param name="Edge">Which edge it stands on.</param>
/// <param name="Position">Middle of the tab along the edge: height for a side, y for upper and lower, mm.</param>
/// <param name="Width">Size along the edge, mm, over 0.</param>
/// <param name="Depth">How far it stands out, mm, over 0.</param>
/// <param name="At">Where it stands.</param>
public sealed record TabDescription(TabEdge Edge, double Position, double Width, double Depth, SourcePosition At)
{
    /// <summary>The sheet of stock that <see cref="Depth"/> follows, by its name, or null.</summary>
    public string? DepthSheet { get; init; }
}

/// <summary>Where a tab stands.</summary>
public enum TabEdge
{
    /// <summary>On both sides.</summary>
    Side,

    /// <summary>On the upper edge.</summary>
    Upper,

    /// <summary>On the lower edge.</summary>
    Lower,
}
