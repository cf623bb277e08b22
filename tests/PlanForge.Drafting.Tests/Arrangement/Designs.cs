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

    /// <summary>Reads and rigs one.</summary>
    public static (ArrangementViews Views, ImmutableArray<Figure> Figures, DisplayUnit Unit) Read(string name)
    {
        var folder = Folder();
        string Text(string file) => File.ReadAllText(Path.Combine(folder, file));
        var description = AirframeReader.Read($"{name}.yaml", Text($"{name}.yaml"), Text).Airframe!;
        var findings = new List<Diagnostic>();
        var airframe = RiggedAirframe.Of(description, findings)!;
        return (ArrangementViews.Of(airframe), RiggingFigures.Of(airframe), description.DisplayUnit);
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
