using System.Collections.Immutable;
using PlanForge.Airframe.Format;
using PlanForge.Airframe.Inputs;

namespace PlanForge.Airframe.Building;

/// <summary>Where the values of cross-sections come from once the body was measured.</summary>
internal static class BodyOrigins
{
    private static readonly ImmutableArray<Key> Sizes = [FuselageFormat.HalfBreadth, FuselageFormat.Upper, FuselageFormat.Lower, FuselageFormat.Shape];

    /// <summary>The bay of a body that holds a station, by the index of its fore station.</summary>
    public static int BayOf(FuselageDescription body, double station)
    {
        var before = 0;
        while (before < body.Stations.Length - 2 && body.Stations[before + 1].Station <= station)
        {
            before++;
        }

        return before;
    }

    /// <summary>The origin of the designed cross-section within a bay: what the curve through it is drawn from.</summary>
    /// <remarks>A straight bay is drawn from its own two stations, a fair one from all of its spline and the straight ones beside it, whose slopes it takes.</remarks>
    public static Origin Between(FuselageDescription body, int before)
    {
        int first = before, last = before + 1;
        if (IsFair(body, before))
        {
            for (; first > 0 && IsFair(body, first); first--)
            {
            }

            for (; last < body.Stations.Length - 1 && IsFair(body, last - 1); last++)
            {
            }
        }

        var origin = Origin.OfOthers();
        for (var i = first; i <= last; i++)
        {
            var listed = body.Stations[i].Origin;
            foreach (var key in Sizes)
            {
                origin = origin.From(key, listed, key).From(key, listed, FuselageFormat.Station).From(key, listed, FuselageFormat.RunAft);
            }
        }

        return origin.From(FuselageFormat.RunAft, body.Stations[before].Origin, FuselageFormat.RunAft);
    }

    /// <summary>The origin of a cross-section of a measured body: where anything was measured decides how the body runs here, too.</summary>
    public static Origin Among(Origin designed, ImmutableArray<Measurement> sizes)
    {
        foreach (var size in sizes.Where(size => size.ThingKey is not null))
        {
            designed = designed.From(FuselageFormat.RunAft, size.Origin, size.ThingKey!);
        }

        return designed;
    }

    /// <summary>The origin of a cross-section that is stretched to what was measured at it.</summary>
    /// <param name="designed">The designed one: listed, or what runs through there.</param>
    /// <param name="sizes">What was measured of the body.</param>
    public static Origin Stretched(FuselageStation designed, ImmutableArray<Measurement> sizes)
    {
        Measurement? Of(BodySize size) => sizes.Of(new BodyExtent(designed.Station, size));
        var (was, origin) = (designed.Origin, Among(designed.Origin, sizes));
        foreach (var at in sizes.Where(size => ((BodyExtent)size.Thing).Station == designed.Station && size.ThingKey is not null))
        {
            origin = Sizes.Append(FuselageFormat.Station).Aggregate(origin, (sum, key) => sum.From(key, at.Origin, at.ThingKey!));
        }

        if (Of(BodySize.Breadth) is { } breadth)
        {
            // How wide a section is follows from its shape and height where its sides lean.
            origin = breadth.Into(breadth.Into(origin, FuselageFormat.HalfBreadth), FuselageFormat.Shape).From(FuselageFormat.Shape, was, FuselageFormat.HalfBreadth);
            if (designed.UpperHalfBreadth != designed.LowerHalfBreadth)
            {
                origin = Sizes.Aggregate(origin, (sum, key) => sum.From(FuselageFormat.HalfBreadth, was, key).From(FuselageFormat.Shape, was, key));
            }
        }

        foreach (var (size, key) in new (BodySize, Key)[] { (BodySize.Upper, FuselageFormat.Upper), (BodySize.Lower, FuselageFormat.Lower) })
        {
            if (Of(size) is { } height)
            {
                origin = height.Into(height.InsteadOf(origin, key), key);
                origin = height.Into(origin, FuselageFormat.Shape).From(FuselageFormat.Shape, was, FuselageFormat.Upper).From(FuselageFormat.Shape, was, FuselageFormat.Lower);
            }
        }

        return origin;
    }

    /// <summary>The origin of a listed cross-section that measures as designed: it would be stretched if it did not.</summary>
    public static Origin Known(Origin listed, ImmutableArray<Measurement> sizes) =>
        sizes.Aggregate(listed, (origin, size) => Sizes.Aggregate(origin, (sum, key) => size.Into(sum, key)));

    /// <summary>The origin of the cross-section before a place that measures as designed and so needs no cross-section of its own.</summary>
    public static Origin Unneeded(Origin before, ImmutableArray<Measurement> sizes) =>
        sizes.Aggregate(before, (origin, size) => size.Into(origin, FuselageFormat.RunAft));

    private static bool IsFair(FuselageDescription body, int bay) => body.Stations[bay].RunAft == Run.Fair;
}
