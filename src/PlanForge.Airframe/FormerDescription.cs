using System.Collections.Immutable;
using PlanForge.Airframe.Diagnostics;
using PlanForge.Airframe.Format;
using PlanForge.Airframe.Inputs;

namespace PlanForge.Airframe;

#pragma warning disable CS1591 // The parameters of each record say what its properties are.

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
    SourcePosition At) : IDescribed<FormerDescription>
{
    public string Name { get => Origin.Read(field, FormerFormat.Name); init; } = Name;

    public double Station { get => Origin.Read(field, FormerFormat.Station); init; } = Station;

    public double Thickness { get => Origin.Read(field, FormerFormat.Thickness); init; } = Thickness;

    public string Material { get => Origin.Read(field, FormerFormat.Material); init; } = Material;

    public GrainDirection Grain { get => Origin.Read(field, FormerFormat.Grain); init; } = Grain;

    public bool IsCrossFormer { get => Origin.Read(field, FormerFormat.Role); init; } = IsCrossFormer;

    public EdgeBevelDescription? Bevel { get => Origin.Given(field, FormerFormat.Bevel); init; } = Bevel;

    public ImmutableArray<OpeningDescription> Openings { get => Origin.Members(field, FormerFormat.Openings); init; } = Openings;

    public LighteningDescription? Lightening { get => Origin.Given(field, FormerFormat.Lightening); init; } = Lightening;

    public ImmutableArray<SlotDescription> Slots { get => Origin.Members(field, FormerFormat.Slots); init; } = Slots;

    public ImmutableArray<TabDescription> Tabs { get => Origin.Members(field, FormerFormat.Tabs); init; } = Tabs;

    internal Origin Origin { get; init; }

    public FormerDescription Watched(InputLog log) => this with
    {
        Origin = Origin.Watched(log),
        Allowance = Allowance.Watched(log),
        Openings = Openings.Watched(log),
        Slots = Slots.Watched(log),
        Tabs = Tabs.Watched(log),
        Bevel = Bevel?.Watched(log),
        Lightening = Lightening?.Watched(log),
    };
}

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
public readonly record struct AllowanceDescription(double Upper, double Lower, double Side)
{
    public double Upper { get => Origin.Read(field, FormerFormat.UpperAllowance); init; } = Upper;

    public double Lower { get => Origin.Read(field, FormerFormat.LowerAllowance); init; } = Lower;

    public double Side { get => Origin.Read(field, FormerFormat.SideAllowance); init; } = Side;

    internal Origin Origin { get; init; }

    internal AllowanceDescription Watched(InputLog log) => this with { Origin = Origin.Watched(log) };
}

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
public sealed record EdgeBevelDescription(FormerEdge Edge, FormerFace Face, double Angle, SourcePosition At)
{
    public FormerEdge Edge { get => Origin.Read(field, FormerFormat.BevelEdge); init; } = Edge;

    public FormerFace Face { get => Origin.Read(field, FormerFormat.BevelFace); init; } = Face;

    public double Angle { get => Origin.Read(field, FormerFormat.BevelAngle); init; } = Angle;

    internal Origin Origin { get; init; }

    internal EdgeBevelDescription Watched(InputLog log) => this with { Origin = Origin.Watched(log) };
}

/// <summary>An opening: a rectangle with rounded corners, or a circle when both sizes equal twice the corner radius.</summary>
/// <param name="Across">y of its middle, mm; an opening off the centre line is made on both sides.</param>
/// <param name="Height">z of its middle, mm.</param>
/// <param name="Width">Size across, mm, over 0.</param>
/// <param name="Depth">Size up, mm, over 0.</param>
/// <param name="CornerRadius">Radius of the corners, mm, 0 to half the smaller size.</param>
/// <param name="At">Where it stands.</param>
public sealed record OpeningDescription(
    double Across, double Height, double Width, double Depth, double CornerRadius, SourcePosition At) : IDescribed<OpeningDescription>
{
    public double Across { get => Origin.Read(field, FormerFormat.Across); init; } = Across;

    public double Height { get => Origin.Read(field, FormerFormat.Height); init; } = Height;

    public double Width { get => Origin.Read(field, FormerFormat.Width, FormerFormat.Diameter); init; } = Width;

    public double Depth { get => Origin.Read(field, FormerFormat.Depth, FormerFormat.Diameter); init; } = Depth;

    public double CornerRadius { get => Origin.Read(field, FormerFormat.CornerRadius, FormerFormat.Diameter); init; } = CornerRadius;

    internal Origin Origin { get; init; }

    public OpeningDescription Watched(InputLog log) => this with { Origin = Origin.Watched(log) };
}

/// <summary>A lightening opening that follows the outline.</summary>
/// <param name="Rim">Width of the rim that remains, mm, over 0.</param>
/// <param name="CornerRadius">Radius of the opening's inside corners, mm, 0 or more.</param>
/// <param name="At">Where it stands.</param>
public sealed record LighteningDescription(double Rim, double CornerRadius, SourcePosition At)
{
    public double Rim { get => Origin.Read(field, FormerFormat.Rim); init; } = Rim;

    public double CornerRadius { get => Origin.Read(field, FormerFormat.InsideRadius); init; } = CornerRadius;

    internal Origin Origin { get; init; }

    internal LighteningDescription Watched(InputLog log) => this with { Origin = Origin.Watched(log) };
}

/// <summary>A rectangular slot, made on both sides when off the centre line.</summary>
/// <param name="Across">y of its middle, mm.</param>
/// <param name="Height">z of its middle, mm.</param>
/// <param name="Width">Size across, mm, over 0.</param>
/// <param name="Depth">Size up, mm, over 0.</param>
/// <param name="At">Where it stands.</param>
public sealed record SlotDescription(double Across, double Height, double Width, double Depth, SourcePosition At) : IDescribed<SlotDescription>
{
    public double Across { get => Origin.Read(field, FormerFormat.Across); init; } = Across;

    public double Height { get => Origin.Read(field, FormerFormat.Height); init; } = Height;

    public double Width { get => Origin.ReadAll(field, FormerFormat.SlotSheet); init; } = Width;

    public double Depth { get => Origin.ReadAll(field, FormerFormat.SlotSheet); init; } = Depth;

    internal Origin Origin { get; init; }

    public SlotDescription Watched(InputLog log) => this with { Origin = Origin.Watched(log) };

    /// <summary>The sheet of stock that <see cref="Width"/> follows, by its name, or null.</summary>
    public string? WidthSheet { get => Origin.Read(field, FormerFormat.SlotSheet); init; }

    /// <summary>The sheet of stock that <see cref="Depth"/> follows, by its name, or null.</summary>
    public string? DepthSheet { get => Origin.Read(field, FormerFormat.SlotSheet); init; }
}

/// <summary>A rectangular tab on both sides, or on the upper or lower edge.</summary>
/// <param name="Edge">Which edge it stands on.</param>
/// <param name="Position">Middle of the tab along the edge: height for a side, y for upper and lower, mm.</param>
/// <param name="Width">Size along the edge, mm, over 0.</param>
/// <param name="Depth">How far it stands out, mm, over 0.</param>
/// <param name="At">Where it stands.</param>
public sealed record TabDescription(TabEdge Edge, double Position, double Width, double Depth, SourcePosition At) : IDescribed<TabDescription>
{
    public TabEdge Edge { get => Origin.Read(field, FormerFormat.TabEdge); init; } = Edge;

    public double Position { get => Origin.Read(field, FormerFormat.TabPosition); init; } = Position;

    public double Width { get => Origin.Read(field, FormerFormat.TabWidth); init; } = Width;

    public double Depth { get => Origin.Read(field, FormerFormat.TabDepth, FormerFormat.TabThrough); init; } = Depth;

    internal Origin Origin { get; init; }

    public TabDescription Watched(InputLog log) => this with { Origin = Origin.Watched(log) };

    /// <summary>The sheet of stock that <see cref="Depth"/> follows, by its name, or null.</summary>
    public string? DepthSheet { get => Origin.Read(field, FormerFormat.TabThrough); init; }
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
