using F = PlanForge.Airframe.Format.FittingFormat;

namespace PlanForge.Airframe.Reading;

/// <summary>
/// Makes saddles, dowels, bolts, shims and thrust line from their values; null where there are none or they failed.
/// </summary>
internal static class FittingReader
{
    // Nobody makes more; a step mistyped by a power of ten would otherwise fill sheets.
    private const int GreatestShimCount = 100;

    public static SaddleDescription? Saddle(MappingValues? values, WingDescription? wing, Findings findings)
    {
        if (values is null)
        {
            return null;
        }

        var (from, to) = (values.OptionalNumber(F.SaddleFrom), values.OptionalNumber(F.SaddleTo));
        var begin = from ?? wing?.LeadingEdge.Station ?? double.NaN;
        var end = to ?? wing?.LeadingEdge.Station + wing?.Root.Chord ?? double.NaN;
        if (end <= begin)
        {
            findings.Error(
                values.AtValue(to is null ? F.SaddleFrom : F.SaddleTo),
                $"the saddle would end at {findings.Length(end)}, which is not aft of where it begins, {findings.Length(begin)}");
        }

        return new(
            values.Number(F.SeatTape),
            values.Number(F.Sanding),
            values.Number(F.SaddleDepth),
            values.Number(F.Abrasive),
            values.Number(F.FormHeight),
            from,
            to,
            values.At)
        { Origin = values.Origin };
    }

    public static DowelsDescription? Dowels(MappingValues? values) => values is null
        ? null
        : new(
            values.Number(F.DowelDiameter),
            values.Number(F.Spacing),
            values.Number(F.AboveChord),
            values.Number(F.Protrusion),
            values.Number(F.Fit),
            values.At)
        { Origin = values.Origin };

    public static BoltsDescription? Bolts(MappingValues? values) => values?.Mapping(F.Plate) is not { } plate
        ? null
        : new(
            values.WordText(F.Thread),
            values.Number(F.Spacing),
            values.Number(F.AheadOfTrailingEdge),
            new(
                plate.Text(F.PlateMaterial),
                plate.Number(F.PlateThickness),
                plate.Number(F.PlateLength),
                plate.Number(F.Gap),
                plate.At)
            { Origin = plate.Origin },
            values.At)
        { Origin = values.Origin };

    public static ShimsDescription? Shims(MappingValues? values, Findings findings)
    {
        if (values is null)
        {
            return null;
        }

        var (from, to, step) = (values.Number(F.ShimsFrom), values.Number(F.ShimsTo), values.Number(F.ShimStep));
        if (to < from)
        {
            findings.Error(values.AtValue(F.ShimsTo), $"`to` is {findings.Angle(to)}; it must be `from` or more, {findings.Angle(from)}");
        }
        else if ((to - from) / step > GreatestShimCount)
        {
            findings.Error(
                values.AtValue(F.ShimStep),
                $"`step` is {findings.Angle(step)}; from {findings.Angle(from)} to {findings.Angle(to)} "
                    + $"that makes over {GreatestShimCount} shims");
        }

        return new(from, to, step, values.Number(F.ShimWidth), values.At) { Origin = values.Origin };
    }

    public static ThrustLineDescription? ThrustLine(MappingValues? values) => values is null
        ? null
        : new(values.Number(F.Down), values.Number(F.Right), Mount(values.Mapping(F.Mount)), values.At) { Origin = values.Origin };

    private static MountDescription? Mount(MappingValues? values) => values is null
        ? null
        : new(values.Number(F.MountAcross), values.Number(F.MountUp), values.At) { Origin = values.Origin };
}
