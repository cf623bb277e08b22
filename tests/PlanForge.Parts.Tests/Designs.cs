using PlanForge.Airframe;
using PlanForge.Airframe.Reading;

namespace PlanForge.Parts.Tests;

/// <summary>The example designs of the repository, read from their files.</summary>
internal static class Designs
{
    /// <summary>Their names.</summary>
    public static TheoryData<string> All => [.. new[] { "oxbow-1420", "fellside-2800", "saltmarsh-1600", "thimble-36" }];

    /// <summary>Reads and rigs one.</summary>
    public static RiggedAirframe Rigged(string name) => Description.Rigged(Read(name));

    /// <summary>Its text.</summary>
    public static string Text(string name) => File.ReadAllText(Path.Combine(Folder(), $"{name}.yaml"));

    /// <summary>The text of a section file beside the designs.</summary>
    public static string? SectionFile(string file) => File.ReadAllText(Path.Combine(Folder(), file));

    /// <summary>Reads one.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="more">Lines to add at the end of its file.</param>
    public static AirframeDescription Read(string name, string more = "")
    {
        var folder = Folder();
        var read = AirframeReader.Read($"{name}.yaml", File.ReadAllText(Path.Combine(folder, $"{name}.yaml")) + more, file => File.ReadAllText(Path.Combine(folder, file)));
        return read.Airframe!;
    }

    private static string Folder()
    {
        var folder = AppContext.BaseDirectory;
        while (!File.Exists(Path.Combine(folder, "PlanForge.sln")))
        {
            folder = Path.GetDirectoryName(folder) ?? throw new InvalidOperationException("The tests must run inside the repository.");
        }

        return Path.Combine(folder, "designs");
    }
}
