using System.Collections.Immutable;
using PlanForge.Airframe.Building;
using PlanForge.Airframe.Format;
using PlanForge.Airframe.Inputs;

namespace PlanForge.Airframe.Reading;

/// <summary>Collects measurements, each thing once, and says which are wildly off.</summary>
/// <param name="findings">Takes what is wrong.</param>
internal sealed class MeasurementList(Findings findings)
{
    private static readonly ImmutableArray<Key> ThingKeys = [AsBuiltFormat.BodyStation, AsBuiltFormat.Panel, AsBuiltFormat.FormerName, AsBuiltFormat.SheetName];

    private readonly ImmutableArray<Measurement>.Builder _measurements = ImmutableArray.CreateBuilder<Measurement>();

    /// <summary>What was measured so far.</summary>
    public ImmutableArray<Measurement> Measurements => _measurements.ToImmutable();

    /// <summary>Adds a value that was given and read; false when there is none or it is refused.</summary>
    /// <param name="thing">What it measures.</param>
    /// <param name="designed">What the design has there, mm; NaN when that failed.</param>
    /// <param name="values">The mapping it stands in.</param>
    /// <param name="key">Its key.</param>
    /// <param name="yardstick">How far off it may be.</param>
    /// <param name="from">Where the designed value comes from: a record, and its keys.</param>
    public bool Add(MeasuredThing thing, double designed, MappingValues values, Key<QuantityFormat> key, Yardstick yardstick, Source from)
    {
        if (values.OptionalNumber(key) is not { } built || double.IsNaN(built) || double.IsNaN(designed))
        {
            return false;
        }

        var at = values.AtValue(key);
        var label = thing.Label(findings.Length);
        if (_measurements.FirstOrDefault(measurement => measurement.Thing == thing) is { } first)
        {
            findings.Error(at, $"{label}, is measured already, in line {first.At.Line}");
            return false;
        }

        _measurements.Add(new(thing, designed, built, at)
        {
            Origin = values.Origin,
            Key = key,
            ThingKey = ThingKeys.FirstOrDefault(known => values.Format.Find(known.Name) == known) ?? key,
            DesignedOrigin = from.Keys.Aggregate(Origin.OfOthers(), (origin, designedKey) => origin.From(key, from.Origin, designedKey)),
        });
        return yardstick.Check(label, designed, built, at, findings);
    }
}

/// <summary>Where a designed value comes from.</summary>
/// <param name="Origin">The record's origin.</param>
/// <param name="Keys">The keys of the record that it is made from.</param>
internal readonly record struct Source(Origin Origin, params ImmutableArray<Key> Keys);
