using PlanForge.Airframe.Quantities;
using static PlanForge.Airframe.Format.Presence;

namespace PlanForge.Airframe.Format;

/// <summary>The keys of what was measured on the wood.</summary>
internal static class AsBuiltFormat
{
    public static readonly Key<TextFormat> FormerName = new("name", TextFormat.Name, "The former's name.", Required);

    public static readonly Key<QuantityFormat> FormerStation = new("station", QuantityFormat.AnyLength,
        "Station of its front face.", Otherwise("as designed"));

    public static readonly Key<QuantityFormat> FormerThickness = new("thickness", QuantityFormat.PositiveLength,
        "Its thickness.", Otherwise("as its sheet measures, or as designed"));

    public static readonly MappingFormat Former = new("built-former", "a measured former", FormerName, FormerStation, FormerThickness);

    public static readonly Key<ListFormat> Formers = new("formers", new(() => Former), "Formers as they stand.");

    public static readonly Key<QuantityFormat> BodyStation = new("station", QuantityFormat.AnyLength,
        "Where it was measured: a station of the fuselage or any other within it.", Required);

    public static readonly Key<QuantityFormat> Breadth = new("breadth", QuantityFormat.PositiveLength,
        "Full width over the outside, as callipers read it.", Otherwise("as designed"));

    public static readonly Key<QuantityFormat> Upper = new("upper", QuantityFormat.AnyLength,
        "Height of the top on the centre line above the datum line.", Otherwise("as designed"));

    public static readonly Key<QuantityFormat> Lower = new("lower", QuantityFormat.AnyLength,
        "Height of the bottom on the centre line above the datum line.", Otherwise("as designed"));

    public static readonly MappingFormat Body = new("built-section", "a measured cross-section", BodyStation, Breadth, Upper, Lower);

    public static readonly Key<ListFormat> Fuselage = new("fuselage", new(() => Body), "Sizes of the finished outside of the fuselage.");

    public static readonly Key<QuantityFormat> SkinSide = new("side", QuantityFormat.PositiveLength, "The sides.", Otherwise("as designed"));

    public static readonly Key<QuantityFormat> SkinTop = new("top", QuantityFormat.PositiveLength, "The top.", Otherwise("as designed"));

    public static readonly Key<QuantityFormat> SkinBottom = new("bottom", QuantityFormat.PositiveLength, "The bottom.", Otherwise("as designed"));

    public static readonly Key<MappingFormat> Skin = new("skin", new("built-skin", "the measured skin", SkinSide, SkinTop, SkinBottom),
        "Thickness of the skins.");

    public static readonly Key<TextFormat> SheetName = new("name", TextFormat.Name, "The sheet's name.", Required);

    public static readonly Key<QuantityFormat> SheetThickness = new("thickness", QuantityFormat.PositiveLength,
        "Its thickness; parts of its material and designed thickness, and slots and tabs that name it, follow.", Required);

    public static readonly MappingFormat Sheet = new("built-sheet", "a measured sheet", SheetName, SheetThickness);

    public static readonly Key<ListFormat> Stock = new("stock", new(() => Sheet), "Sheets of stock.");

    public static readonly Key<QuantityFormat> SectionThickness = new("thickness", QuantityFormat.PositiveLength,
        "Greatest thickness of the section, a length; it is made thicker or thinner about its mean line.", Otherwise("in proportion to the chord"));

    public static readonly Key<QuantityFormat> Chord = new("chord", QuantityFormat.PositiveLength,
        "The chord; incidences stay the angles they are.", Otherwise("as designed"));

    public static readonly Key<MappingFormat> Root = new("root", new("built-root", "the measured root", SectionThickness, Chord),
        "The section on the centre line.");

    public static readonly Key<QuantityFormat> Panel = new("panel", QuantityFormat.Proportion(Interval.Between(1, 1000)),
        "The panel whose outer end it is, counted from the root: 1 is the first.", Required);

    public static readonly MappingFormat Tip = new("built-tip", "a measured panel tip", Panel, SectionThickness, Chord);

    public static readonly Key<ListFormat> Tips = new("tips", new(() => Tip), "The sections at the outer ends of panels.");

    public static readonly Key<MappingFormat> Wing = new("wing", new("built-wing", "the measured wing", Root, Tips), "Sections of the wing.");

    public static readonly MappingFormat AsBuilt = new("as-built", "what was measured", Formers, Fuselage, Skin, Stock, Wing);
}
