using System.Collections.Immutable;
using System.Globalization;
using PlanForge.Airframe.Building;
using PlanForge.Airframe.Diagnostics;
using PlanForge.Airframe.Format;
using F = PlanForge.Airframe.Format.AsBuiltFormat;

namespace PlanForge.Airframe.Reading;

/// <summary>Reads what was measured on the wood and holds it against the design.</summary>
/// <param name="formers">The formers as designed.</param>
/// <param name="stock">The sheets as designed.</param>
/// <param name="body">The fuselage as designed, or null when it failed.</param>
/// <param name="wing">The wing as designed, or null when it failed.</param>
/// <param name="findings">Takes what is wrong.</param>
internal sealed class AsBuiltReader(
    ImmutableArray<FormerDescription> formers,
    ImmutableArray<StockDescription> stock,
    FuselageDescription? body,
    WingDescription? wing,
    Findings findings)
{
    // Common practice, no source: under a tenth of the body's length a tape is as easily misread as nearer to the nose.
    private const double LeastDistance = 0.1;

    private readonly MeasurementList _list = new(findings);

    // A body whose stations are unsound was reported, and nothing can be held against it.
    private readonly FuselageDescription? _body = body is { Stations.Length: >= 2 } && IsSound(body.Stations) ? body : null;

    /// <summary>What was measured, each thing once; none where the key is absent.</summary>
    public ImmutableArray<Measurement> Read(MappingValues? values)
    {
        if (values is null)
        {
            return [];
        }

        Each(values.List(F.Stock), ReadSheet);
        ReadSkin(values.Mapping(F.Skin));
        Each(values.List(F.Fuselage), ReadBody);
        Each(values.List(F.Formers), ReadFormer);
        if (values.Mapping(F.Wing) is { } sections)
        {
            ReadSection(sections.Mapping(F.Root), 0);
            Each(sections.List(F.Tips), ReadTip);
        }

        CheckUndecided();
        return _list.Measurements;
    }

    private static void Each(List<ReadValue> items, Action<MappingValues> read)
    {
        foreach (var item in items)
        {
            if (item is MappingValues values)
            {
                read(values);
            }
        }
    }

    private static bool IsSound(ImmutableArray<FuselageStation> stations) => !stations
        .Where((station, i) => !(station.Upper > station.Lower) || !double.IsFinite(station.UpperHalfBreadth + station.LowerHalfBreadth)
            || (i > 0 && !(station.Station > stations[i - 1].Station)))
        .Any();

    private void ReadSheet(MappingValues values)
    {
        if (Named(values.TextValue(F.SheetName), stock, sheet => sheet.Name, "sheet", "in the stock") is not { } sheet)
        {
            return;
        }

        _list.Add(new SheetThickness(sheet.Name), sheet.Thickness, values, F.SheetThickness, Yardstick.OfThickness(sheet.Thickness), new(sheet.Origin, WorkshopFormat.StockThickness));
        if (values.Number(F.SheetThickness) + Narrowest(sheet.Name) - sheet.Thickness <= 0)
        {
            findings.Error(values.AtValue(F.SheetThickness), $"nothing is left of a slot for `{sheet.Name}` with the cutter's fit");
        }
    }

    private double Narrowest(string sheet) => formers.SelectMany(former => former.Slots)
        .SelectMany(slot => new[] { slot.WidthSheet == sheet ? slot.Width : double.NaN, slot.DepthSheet == sheet ? slot.Depth : double.NaN })
        .Where(size => !double.IsNaN(size))
        .DefaultIfEmpty(double.PositiveInfinity)
        .Min();

    private void ReadSkin(MappingValues? values)
    {
        if (values is null || !SaysSomething(values, F.SkinSide, F.SkinTop, F.SkinBottom) || body is null)
        {
            return;
        }

        Add(SkinPlace.Side, body.Skin.Side, F.SkinSide, FuselageFormat.SkinSide);
        Add(SkinPlace.Top, body.Skin.Top, F.SkinTop, FuselageFormat.SkinTop);
        Add(SkinPlace.Bottom, body.Skin.Bottom, F.SkinBottom, FuselageFormat.SkinBottom);

        void Add(SkinPlace place, double designed, Key<QuantityFormat> key, Key designedKey) =>
            _list.Add(new SkinThickness(place), designed, values, key, Yardstick.OfThickness(designed), new(body.Skin.Origin, designedKey));
    }

    private void ReadFormer(MappingValues values)
    {
        if (Named(values.TextValue(F.FormerName), formers, former => former.Name, "former", "in the description") is not { } former
            || !SaysSomething(values, F.FormerStation, F.FormerThickness))
        {
            return;
        }

        if (_body is { Stations: [{ Station: var from }, .., { Station: var to }] })
        {
            var distance = Math.Max(former.Station - from, LeastDistance * (to - from));
            _list.Add(new FormerStation(former.Name), former.Station, values, F.FormerStation, Yardstick.Of(distance), new(former.Origin, FormerFormat.Station));
        }

        _list.Add(
            new FormerThickness(former.Name),
            former.Thickness,
            values,
            F.FormerThickness,
            Yardstick.OfThickness(former.Thickness),
            new(former.Origin, FormerFormat.Thickness));
    }

    private void ReadBody(MappingValues values)
    {
        if (!SaysSomething(values, F.Breadth, F.Upper, F.Lower) || _body is not { } whole)
        {
            return;
        }

        var given = values.Number(F.BodyStation);
        var (from, to) = (whole.Stations[0].Station, whole.Stations[^1].Station);
        if (given < from - BodyAsBuilt.SameStation || given > to + BodyAsBuilt.SameStation)
        {
            findings.Error(
                values.AtValue(F.BodyStation),
                $"there is no fuselage at station {findings.Length(given)}; it runs from {findings.Length(from)} to {findings.Length(to)}");
            return;
        }

        if (double.IsNaN(given))
        {
            return;
        }

        var designed = BodyAsBuilt.StationAt(whole, Known(given, whole), values.At);
        var height = designed.Upper - designed.Lower;
        var breadth = GreatestBreadth.Of(designed);
        if (Add(BodySize.Breadth, breadth, F.Breadth, Yardstick.OfBreadth(breadth)))
        {
            BendCheck.Check(whole, designed, breadth, values, findings);
        }

        Add(BodySize.Upper, designed.Upper, F.Upper, Yardstick.Of(height));
        Add(BodySize.Lower, designed.Lower, F.Lower, Yardstick.Of(height));

        bool Add(BodySize size, double value, Key<QuantityFormat> key, Yardstick yardstick) =>
            _list.Add(
                new BodyExtent(designed.Station, size),
                value,
                values,
                key,
                yardstick,
                new(designed.Origin, FuselageFormat.HalfBreadth, FuselageFormat.Upper, FuselageFormat.Lower, FuselageFormat.Shape));
    }

    /// <summary>The listed or already measured station that a station is, else itself.</summary>
    private double Known(double station, FuselageDescription whole) => whole.Stations.Select(listed => listed.Station)
        .Concat(_list.Measurements.Select(measurement => measurement.Thing).OfType<BodyExtent>().Select(extent => extent.Station))
        .Where(known => Math.Abs(known - station) <= BodyAsBuilt.SameStation)
        .Append(station)
        .First();

    private void ReadTip(MappingValues values)
    {
        var panel = values.Number(F.Panel);
        if (wing is null || double.IsNaN(panel))
        {
            return;
        }

        if (panel != Math.Round(panel) || panel > wing.Panels.Length)
        {
            var count = wing.Panels.Length;
            findings.Error(values.AtValue(F.Panel), string.Create(
                CultureInfo.InvariantCulture,
                $"the wing has no panel {panel}; {(count == 1 ? "its only panel is 1" : $"its panels are 1 to {count}, counted from the root")}"));
            return;
        }

        ReadSection(values, (int)panel);
    }

    private void ReadSection(MappingValues? values, int panel)
    {
        var (thicknessKey, chordKey) = (F.SectionThickness, F.Chord);
        if (values is null || !SaysSomething(values, thicknessKey, chordKey) || wing is null)
        {
            return;
        }

        var designed = panel == 0 ? wing.Root : wing.Panels[panel - 1].Tip;
        if (values.Has(thicknessKey))
        {
            var thickness = designed.Section.Thickness * designed.Chord;
            _list.Add(new SectionThickness(panel), thickness, values, thicknessKey, Yardstick.OfThickness(thickness), new(designed.Origin, WingFormat.Section, WingFormat.Chord));
        }

        _list.Add(new SectionChord(panel), designed.Chord, values, chordKey, Yardstick.Of(designed.Chord), new(designed.Origin, WingFormat.Chord));
    }

    /// <summary>True when a mapping gives a value; else that is reported.</summary>
    private bool SaysSomething(MappingValues values, params ReadOnlySpan<Key<QuantityFormat>> keys)
    {
        var names = new List<string>();
        foreach (var key in keys)
        {
            if (values.Has(key))
            {
                return true;
            }

            names.Add(key.Name);
        }

        findings.Error(values.At, $"{values.Format.Noun} needs {Quote.Alternatives(names)}");
        return false;
    }

    private T? Named<T>(TextValue? name, ImmutableArray<T> known, Func<T, string> nameOf, string noun, string where)
        where T : class
    {
        if (name is null)
        {
            return null;
        }

        if (known.FirstOrDefault(thing => nameOf(thing) == name.Text) is { } found)
        {
            return found;
        }

        findings.Unknown(name, noun, where, [.. known.Select(nameOf)]);
        return null;
    }

    private void CheckUndecided()
    {
        foreach (var former in formers)
        {
            if (_list.Measurements.BuiltOf(new FormerThickness(former.Name)) is null
                && StockAsBuilt.Undecided(former.Material, former.Thickness, stock, _list.Measurements) is { } sheets)
            {
                findings.Warning(
                    former.At,
                    $"the former `{former.Name}` may be cut from `{sheets.First.Name}` or from `{sheets.Other.Name}`, which measure differently: "
                        + $"it stays {findings.Length(former.Thickness)} thick; measure it too");
            }
        }
    }
}
