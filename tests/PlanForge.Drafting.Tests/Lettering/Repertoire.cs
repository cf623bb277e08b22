namespace PlanForge.Drafting.Tests.Lettering;

/// <summary>The characters the alphabet promises, by their Unicode blocks.</summary>
internal static class Repertoire
{
    // Soft hyphen U+00AD is invisible and no-break space U+00A0 is a space: neither is drawn.
    public static IEnumerable<char> BasicLatin => Range('!', '~');

    public static IEnumerable<char> Latin1 => Range('\u00A1', '\u00FF').Where(c => c != '\u00AD');

    public static IEnumerable<char> LatinExtendedA => Range('\u0100', '\u017F');

    public static string Signs => "ȘșȚțẞμ⌀–—’‘“”„…←→↑↓€⁄−×±′″≤≥≈∠⊥";

    public static IEnumerable<char> Drawn => BasicLatin.Concat(Latin1).Concat(LatinExtendedA).Concat(Signs).Distinct();

    private static IEnumerable<char> Range(char first, char last) => Enumerable.Range(first, last - first + 1).Select(c => (char)c);
}
