using System.Globalization;
using System.Text;

namespace PlanForge.Benchmarks;

/// <summary>A description with its section files, held in memory.</summary>
/// <param name="Name">File name.</param>
/// <param name="Text">Its text.</param>
/// <param name="ReadSection">Gives the text of a section file.</param>
internal sealed record DescriptionText(string Name, string Text, Func<string, string?> ReadSection)
{
    /// <summary>The largest example description.</summary>
    public static DescriptionText Largest() => Examples().MaxBy(example => example.Text.Length)!;

    /// <summary>All example descriptions, by name.</summary>
    public static IEnumerable<DescriptionText> Examples()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder.FullName, "PlanForge.sln")))
        {
            folder = folder.Parent ?? throw new DirectoryNotFoundException("the benchmarks run inside the repository only");
        }

        var designs = Path.Combine(folder.FullName, "designs");
        return Directory.GetFiles(designs, "*.yaml").Order(StringComparer.Ordinal).Select(file => new DescriptionText(
            Path.GetFileName(file), File.ReadAllText(file), name => File.ReadAllText(Path.Combine(designs, name))));
    }

    /// <summary>A long box body with so many formers behind the wing, each with an opening: parts and cut files grow with them.</summary>
    public static DescriptionText WithFormers(int count)
    {
        const int pitch = 20;
        var text = new StringBuilder();
        text.Append(CultureInfo.InvariantCulture, $$$"""
            planforge: 1
            name: Formers {{{count}}}
            units: mm
            wing:
              leading_edge: {station: 100, height: 25}
              root: {section: naca 2412, chord: 200}
              panels: [{length: 600, dihedral: 2 deg}]
            fuselage:
              skin: 3
              stations:
                - {station: 0, half_breadth: 50, upper: 60, lower: -50, shape: {rounded: 10 mm}}
                - {station: {{{400 + count * pitch}}}, half_breadth: 30, upper: 40, lower: -30, shape: {rounded: 10 mm}}
            formers:

            """);
        for (var i = 1; i <= count; i++)
        {
            text.Append(CultureInfo.InvariantCulture, $"  - {{name: F{i}, station: {350 + i * pitch}, thickness: 3 mm, openings: [{{diameter: 20, height: 0}}]}}\n");
        }

        return new("formers.yaml", text.ToString(), _ => null);
    }
}
