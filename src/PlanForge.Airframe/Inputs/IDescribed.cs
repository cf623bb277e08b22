using System.Collections.Immutable;

namespace PlanForge.Airframe.Inputs;

/// <summary>A record of the description that can be watched.</summary>
internal interface IDescribed<TSelf>
    where TSelf : IDescribed<TSelf>
{
    /// <summary>The same record, whose readings a log notes.</summary>
    TSelf Watched(InputLog log);
}

/// <summary>Watches several records.</summary>
internal static class DescribedList
{
    /// <summary>The same records, watched.</summary>
    public static ImmutableArray<T> Watched<T>(this ImmutableArray<T> list, InputLog log)
        where T : IDescribed<T>
    {
        var watched = ImmutableArray.CreateBuilder<T>(list.Length);
        foreach (var item in list)
        {
            watched.Add(item.Watched(log));
        }

        return watched.MoveToImmutable();
    }
}
