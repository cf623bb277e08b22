using System.Globalization;

namespace PlanForge.Airframe.Building;

/// <summary>A thing that can be measured on the wood; equal values mean the same thing.</summary>
public abstract record MeasuredThing
{
    private protected MeasuredThing()
    {
    }

    /// <summary>Stable path of words for programs: <c>former.F3.station</c>.</summary>
    public abstract string Key { get; }

    /// <summary>What a builder calls it.</summary>
    /// <param name="length">Writes a length with its unit.</param>
    public abstract string Label(Func<double, string> length);

    private protected static string Plain(double number) => number.ToString("0.######", CultureInfo.InvariantCulture);
}

/// <summary>The station of a former's front face.</summary>
/// <param name="Former">The former's name.</param>
public sealed record FormerStation(string Former) : MeasuredThing
{
    /// <inheritdoc/>
    public override string Key => $"former.{Former}.station";

    /// <inheritdoc/>
    public override string Label(Func<double, string> length) => $"former {Former}, station of its front face";
}

/// <summary>The thickness of a former.</summary>
/// <param name="Former">The former's name.</param>
public sealed record FormerThickness(string Former) : MeasuredThing
{
    /// <inheritdoc/>
    public override string Key => $"former.{Former}.thickness";

    /// <inheritdoc/>
    public override string Label(Func<double, string> length) => $"former {Former}, thickness";
}

/// <summary>The thickness of a sheet of stock.</summary>
/// <param name="Sheet">The sheet's name.</param>
public sealed record SheetThickness(string Sheet) : MeasuredThing
{
    /// <inheritdoc/>
    public override string Key => $"stock.{Sheet}.thickness";

    /// <inheritdoc/>
    public override string Label(Func<double, string> length) => $"sheet {Sheet}, thickness";
}

/// <summary>The thickness of a skin along its normal.</summary>
/// <param name="Place">Which skin.</param>
public sealed record SkinThickness(SkinPlace Place) : MeasuredThing
{
    /// <inheritdoc/>
    public override string Key => $"skin.{Name}";

    /// <inheritdoc/>
    public override string Label(Func<double, string> length) => $"skin, {Name}";

    private string Name => Place switch { SkinPlace.Side => "side", SkinPlace.Top => "top", _ => "bottom" };
}

/// <summary>Where a skin is.</summary>
public enum SkinPlace
{
    /// <summary>The sides.</summary>
    Side,

    /// <summary>The top.</summary>
    Top,

    /// <summary>The bottom.</summary>
    Bottom,
}

/// <summary>A size of the fuselage's outside at a station.</summary>
/// <param name="Station">The station, mm.</param>
/// <param name="Size">Which size.</param>
public sealed record BodyExtent(double Station, BodySize Size) : MeasuredThing
{
    /// <inheritdoc/>
    public override string Key => $"fuselage.{Plain(Station)}.{Name}";

    /// <inheritdoc/>
    public override string Label(Func<double, string> length) =>
        $"fuselage at station {length(Station)}, {(Size == BodySize.Breadth ? Name : $"{Name} height")}";

    private string Name => Size switch { BodySize.Breadth => "breadth", BodySize.Upper => "upper", _ => "lower" };
}

/// <summary>A size of the body at a station.</summary>
public enum BodySize
{
    /// <summary>The greatest width over the outside, as callipers read it.</summary>
    Breadth,

    /// <summary>Height of the top on the centre line above the datum line.</summary>
    Upper,

    /// <summary>Height of the bottom on the centre line above the datum line.</summary>
    Lower,
}

/// <summary>The greatest thickness of a wing section.</summary>
/// <param name="Panel">The panel whose outer end it is, from 1; 0 is the root.</param>
public sealed record SectionThickness(int Panel) : MeasuredThing
{
    /// <inheritdoc/>
    public override string Key => $"wing.{WingEnd.Key(Panel)}.thickness";

    /// <inheritdoc/>
    public override string Label(Func<double, string> length) => $"{WingEnd.Label(Panel)}, thickness";
}

/// <summary>The chord of a wing section.</summary>
/// <param name="Panel">The panel whose outer end it is, from 1; 0 is the root.</param>
public sealed record SectionChord(int Panel) : MeasuredThing
{
    /// <inheritdoc/>
    public override string Key => $"wing.{WingEnd.Key(Panel)}.chord";

    /// <inheritdoc/>
    public override string Label(Func<double, string> length) => $"{WingEnd.Label(Panel)}, chord";
}

/// <summary>Names of the root and the panels' outer ends.</summary>
internal static class WingEnd
{
    public static string Key(int panel) => panel == 0 ? "root" : FormattableString.Invariant($"panel.{panel}.tip");

    public static string Label(int panel) => panel == 0 ? "wing root" : FormattableString.Invariant($"wing panel {panel}, tip");
}
