namespace PlanForge.Geometry.Regions;

/// <summary>Sorts indices by a key.</summary>
internal static class Ascending
{
    /// <summary>The indices of some keys in ascending order of the keys, equal ones by index; the keys are sorted along.</summary>
    /// <remarks>Array.Sort alone leaves the order of equal keys to its version, and results would hang on it.</remarks>
    public static int[] Order(double[] keys)
    {
        var order = new int[keys.Length];
        for (var i = 0; i < order.Length; i++)
        {
            order[i] = i;
        }

        Array.Sort(keys, order);
        for (var from = 0; from < keys.Length;)
        {
            var to = from + 1;
            while (to < keys.Length && keys[to] == keys[from])
            {
                to++;
            }

            if (to - from > 1)
            {
                Array.Sort(order, from, to - from);
            }

            from = to;
        }

        return order;
    }
}
