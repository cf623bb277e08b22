namespace PlanForge.Geometry.Regions;

/// <summary>Which points belong to a result, by how often two sets of contours run around them.</summary>
internal enum InsideRule
{
    /// <summary>The first set's turns do not cancel.</summary>
    NonZero,

    /// <summary>The first set's turns are odd.</summary>
    Odd,

    /// <summary>The first set turns around the point more often anticlockwise than clockwise.</summary>
    Positive,

    /// <summary>Inside the first or the second set.</summary>
    Either,

    /// <summary>Inside both.</summary>
    Both,

    /// <summary>Inside the first and not the second.</summary>
    FirstOnly,
}

/// <summary>Reads an <see cref="InsideRule"/>.</summary>
internal static class InsideRules
{
    /// <summary>True when a point belongs to the result.</summary>
    /// <param name="rule">The rule.</param>
    /// <param name="first">How often the first set runs around the point, anticlockwise positive.</param>
    /// <param name="second">How often the second set does.</param>
    public static bool Holds(this InsideRule rule, int first, int second) => rule switch
    {
        InsideRule.NonZero => first != 0,
        InsideRule.Odd => (first & 1) != 0,
        InsideRule.Positive => first > 0,
        InsideRule.Either => first != 0 || second != 0,
        InsideRule.Both => first != 0 && second != 0,
        _ => first != 0 && second == 0,
    };
}
