namespace PlanForge.Drafting.Lettering.Alphabet;

/// <summary>The marks that make accented letters: x from the letter's middle, y from its top (or from the baseline below it).</summary>
internal static class Marks
{
    private const string Below = "¸˛,";

    private const string Text = """
        ´ -0.6,1.4 0.8,3.2
        ` 0.6,1.4 -0.8,3.2
        ˆ -1.5,1.5 0,3.1 1.5,1.5
        ˇ -1.5,3.1 0,1.5 1.5,3.1
        ˜ -1.8,1.9^-90 0,2.3^90 1.8,2.7
        ¨ -1.4,2.1 -1,2.1 -1,2.5 -1.4,2.5 z ; 1,2.1 1.4,2.1 1.4,2.5 1,2.5 z
        ˙ -0.2,2.1 0.2,2.1 0.2,2.5 -0.2,2.5 z
        ˚ -0.9,2.3^180 0.9,2.3^180 z
        ¯ -1.7,2.2 1.7,2.2
        ˘ -1.5,3^140 1.5,3
        ˝ -1.2,1.4 -0.2,3.2 ; 0.6,1.4 1.6,3.2
        ‘ 0.3,1.3 -0.2,1.7 0.3,3.2
        ¸ 0,0 0,-0.8 0.3,-0.8^-180 0.3,-2.6 -0.7,-2.6
        ˛ 0,0^40 -0.9,-1.5^120 0.7,-2.5
        , 0.3,-1.2 -0.4,-2.9
        """;

    /// <summary>The definition of a mark and whether it stands over the letter.</summary>
    public static (string Definition, bool IsAbove) Find(char mark)
    {
        foreach (var line in Text.AsSpan().EnumerateLines())
        {
            if (line[0] == mark)
            {
                return (line[2..].ToString(), !Below.Contains(mark, StringComparison.Ordinal));
            }
        }

        throw new InvalidOperationException($"The alphabet refers to the mark '{mark}', which it does not define.");
    }
}
