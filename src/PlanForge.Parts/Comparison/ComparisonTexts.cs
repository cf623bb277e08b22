using PlanForge.Geometry;
using PlanForge.Geometry.Deviations;
using PlanForge.Parts.Wording;

namespace PlanForge.Parts.Comparison;

/// <summary>The words for differences, the same on paper and at the terminal.</summary>
/// <param name="text">Writes lengths.</param>
public sealed class ComparisonTexts(MeasureText text)
{
    /// <summary>What to do about a zone: <c>take off up to 1.2 mm</c>, <c>short by 0.8 mm: make new</c>.</summary>
    public string Of(DeviationZone zone)
    {
        ArgumentNullException.ThrowIfNull(zone);
        if (zone.IsBeyondEnd)
        {
            return $"the line {(zone.IsOnOld ? "ends" : "goes on")} {text.FineWithUnit(zone.Largest.Distance)} {(zone.IsOnOld ? "earlier" : "further")}";
        }

        var isOpening = zone.IsAlone && (zone.Side == DeviationSide.Lack) == zone.IsOnOld;
        return (zone.Side, zone.IsAlone) switch
        {
            (DeviationSide.Surplus, true) when isOpening => "cut this opening",
            (DeviationSide.Lack, true) when isOpening => "no opening here now: make new",
            (DeviationSide.Surplus, true) => "this piece goes",
            (DeviationSide.Lack, true) => "a new piece: make it",
            (DeviationSide.Surplus, _) => $"take off up to {text.FineWithUnit(zone.Largest.Distance)}",
            _ => $"short by {text.FineWithUnit(zone.Largest.Distance)}: make new",
        };
    }

    /// <summary>What became of a part, in half a sentence; empty for one that is the same.</summary>
    public string Of(PartComparison part)
    {
        ArgumentNullException.ThrowIfNull(part);
        return part.State switch
        {
            PartState.Same => "",
            PartState.New => "new",
            PartState.Gone => "no longer part of the design",
            PartState.Moved => MoveOf(part),
            _ => string.Join("; ", Changes(part)),
        };
    }

    /// <summary>In which field of a part a place lies, as it is drawn: <c>upper left</c>, <c>right</c>, <c>middle</c>.</summary>
    public static string Where(Part part, Point2 at)
    {
        ArgumentNullException.ThrowIfNull(part);
        var bounds = part.Lines.Where(line => line.Use is LineUse.Cut or LineUse.Edge or LineUse.Trim)
            .Aggregate(Bounds2.Empty, (all, line) => all.Joined(line.Path.Bounds));
        var across = Third(at.X - bounds.MinX, bounds.Width, "left", "right");
        var up = Third(at.Y - bounds.MinY, bounds.Height, "lower", "upper");
        return (across, up) switch
        {
            ("", "") => "middle",
            ("", _) => $"{up} edge",
            _ => $"{up} {across}".Trim(),
        };
    }

    private static string Third(double at, double size, string low, string high) => at < size / 3 ? low : at > size * 2 / 3 ? high : "";

    private string MoveOf(PartComparison part)
    {
        var steps = new[] { (part.Move.X, "to the right", "to the left"), (part.Move.Y, "up", "down") }
            .Where(step => Math.Abs(step.Item1) > LineChange.Same)
            .Select(step => $"{text.FineWithUnit(Math.Abs(step.Item1))} {(step.Item1 > 0 ? step.Item2 : step.Item3)}")
            .ToList();
        if (part.Old!.Station is { } before && part.New!.Station is { } station && Math.Abs(before - station) > LineChange.Same)
        {
            return $"the same shape at station {text.CoarseWithUnit(station)}, before at {text.CoarseWithUnit(before)}";
        }

        return steps.Count == 0 ? "the same shape at another place" : $"the same shape, {string.Join(" and ", steps)} against the lines marked on it";
    }

    private IEnumerable<string> Changes(PartComparison part)
    {
        var (old, now) = (part.Old!, part.New!);
        if (Math.Abs(old.Thickness - now.Thickness) > LineChange.Tolerance)
        {
            yield return $"{text.FineWithUnit(old.Thickness)} thick before, {text.FineWithUnit(now.Thickness)} now";
        }

        if (old.Material != now.Material)
        {
            yield return $"{NameOf(old.Material)} before, {NameOf(now.Material)} now";
        }

        if (old.Quantity != now.Quantity)
        {
            yield return $"{MeasureText.Rounded(old.Quantity, 0)} before, {MeasureText.Rounded(now.Quantity, 0)} now";
        }

        if (old.GrainAngle != now.GrainAngle)
        {
            yield return "the grain runs otherwise";
        }

        foreach (var alike in part.Pieces.Where(piece => piece.Comparison.State != PartState.Same).GroupBy(piece => Of(piece.Comparison)))
        {
            yield return $"{string.Join(", ", alike.Select(piece => piece.Name))}: {alike.Key}";
        }

        // Where a part is made anew, what could come off the old one does not matter; a template is of wood that may stand elsewhere.
        var isTemplate = now.Making != Making.Cut;
        DeviationZone?[] zones = part.Lack is not null && !isTemplate ? [part.Lack] : [part.Lack, part.Surplus];
        foreach (var zone in zones)
        {
            if (zone is not null)
            {
                yield return $"{(isTemplate ? "wood cut by it: " : "")}{Of(zone)} ({Where(now, zone.Middle)})";
            }
        }

        foreach (var zone in part.Wood?.Zones.Where(zone => zone.IsBeyondEnd) ?? [])
        {
            yield return $"{Of(zone)} ({Where(now, zone.Middle)})";
        }

        if (part.Pieces.IsEmpty && part.Wood is null or { Zones.IsEmpty: true } && part.Largest is { } largest && !(part.IsOtherwiseMade && largest.Distance <= PartComparison.Threshold))
        {
            var by = $"{text.FineWithUnit(largest.Distance)} at most ({Where(now, largest.At)})";
            yield return largest.Distance <= PartComparison.Threshold ? $"off by {by}, fits as it is" : $"lines on it off by {by}";
        }
        else if (part.Pieces.IsEmpty && part.Largest is null && part.Lines.Length > 0)
        {
            yield return "other lines on it";
        }

        if (part.Lines.IsEmpty && part.HasOtherTexts)
        {
            yield return now.Making == Making.View ? "drawn anew" : "figures on it changed";
        }
    }

    private static string NameOf(string material) => material.Length > 0 ? material : "no material";
}
