using PlanForge.Airframe.Reading;
using PlanForge.CommandLine;
using PlanForge.Folders;

namespace PlanForge.Comparing;

/// <summary>Where a design to compare comes from: a description, or a folder that draw wrote, with the description as it was drawn.</summary>
/// <param name="Given">The path as the user gave it.</param>
/// <param name="Description">The description's path.</param>
/// <param name="Overrides">Values for parameters that it was drawn with in the place of its own.</param>
/// <param name="Drawn">What lies in the folder; null for a description, and where a version of the program did not say so.</param>
internal sealed record DesignSource(string Given, string Description, ParameterOverrides Overrides, DrawnState? Drawn)
{
    /// <summary>Looks at a path.</summary>
    /// <param name="path">A description or a folder.</param>
    /// <param name="overrides">Values for a description's parameters in the place of its own; a folder has those that it was drawn with.</param>
    /// <exception cref="FolderFault">It is a folder that draw did not write, or of a version that kept no description.</exception>
    /// <exception cref="IOException">The folder cannot be read.</exception>
    /// <exception cref="UnauthorizedAccessException">The folder may not be read.</exception>
    public static DesignSource Of(string path, ParameterOverrides overrides)
    {
        if (!Directory.Exists(path))
        {
            return new(path, path, overrides, null);
        }

        if (Manifest.In(path) is not { } manifest)
        {
            throw new FolderFault(path, $"this folder holds no {Manifest.FileName} of {Syntax.Program}: name a description, or a folder that `{Syntax.Program} {Syntax.Draw.Name}` wrote");
        }

        return manifest.Description is { } description
            ? new(path, Path.Combine(path, description.Path), new(Path.Combine(path, Manifest.FileName), description.With), manifest.State)
            : throw new FolderFault(path, $"this folder was drawn by a version that kept no copy of the description: compare with the description itself");
    }
}
