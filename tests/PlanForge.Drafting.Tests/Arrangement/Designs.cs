using System.Collections.Immutable;
using PlanForge.Airframe;
using PlanForge.Airframe.Diagnostics;
using PlanForge.Airframe.Reading;
using PlanForge.Parts;
using PlanForge.Parts.Arrangement;
using PlanForge.Parts.Rigging;

namespace PlanForge.Drafting.Tests.Arrangement;

/// <summary>The example designs of the repository with all that their general arrangement is drawn from.</summary>
internal static class Designs
{
    /// <summary>Their names.</summary>
    public static ImmutableArray<string> Names { get; } = ["oxbow-1420", "fellside-2800", "saltmarsh-1600", "thimble-36"];

    /// <summary>Reads one and draws its views.</summary>
    public static (ArrangementViews Views, ImmutableArray<Figure> Figures, DisplayUnit Unit) Read(string name)
    {
        var airframe = Rigged(name);
        return (ArrangementViews.Of(airframe), RiggingFigures.Of(airframe), airframe.Description.DisplayUnit);
    }

    /// <summary>Reads and rigs one.</summary>
    public static RiggedAirframe Rigged(string name)
    {
        var folder = Folder();
        string Text(string file) => File.ReadAllText(Path.Combine(folder, file));
        var findings = new List<Diagnostic>();
        return RiggedAirframe.Of(AirframeReader.Read($"{name}.yaml", Text($"{name}.yaml"), Text).Airframe!, findings)!;
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
