namespace PlanForge.Tests;

/// <summary>The smallest sensible airframe: an untwisted wing of 800 by 150 mm at 2 degrees on a straight box.</summary>
internal static class SmallDesign
{
    public const string Name = "Test Piece 1";

    public const string FolderName = "test-piece-1";

    public const string Text =
        """
        planforge: 1
        name: Test Piece 1
        units: mm
        wing:
          leading_edge: {station: 100, height: 20}
          incidence: 2 deg
          root: {section: naca 2412, chord: 150}
          panels:
            - {length: 400}
        fuselage:
          stations:
            - {station: 0, half_breadth: 30, upper: 30, lower: -30}
            - {station: 300, half_breadth: 30, upper: 30, lower: -30}
        formers:
          - {name: F1, station: 40, thickness: 3}

        """;

    /// <summary>The text with a key misspelt in line 7.</summary>
    public static string Misspelt => Text.Replace("chord:", "chrod:", StringComparison.Ordinal);

    /// <summary>The text with a former whose walls are thin enough for a warning.</summary>
    public static string Doubtful => Text.Replace(
        "thickness: 3}", "thickness: 3, lightening: {rim: 1 mm}}", StringComparison.Ordinal);
}
