using System.Collections.Immutable;
using PlanForge.Designs;

namespace PlanForge.Folders;

/// <summary>
/// The description and the files it names as they were drawn, in a folder of their own, each where the description finds it: what is
/// drawn can be drawn, and compared, again without the user's files.
/// </summary>
internal static class SourceCopies
{
    private const string Folder = "description/";

    // Stands for each folder above the description that a name like ../sections/tip.dat climbs to.
    private const string Above = "above/";

    /// <summary>The copies, that of the description first.</summary>
    public static ImmutableArray<OutputFile> Of(ImmutableArray<SourceFile> sources)
    {
        var climb = sources.Max(source => ClimbOf(source.Name));
        var start = Folder + string.Concat(Enumerable.Repeat(Above, climb));
        return [.. sources.Select(source => new OutputFile(Resolved(start + source.Name), source.Content))];
    }

    private static int ClimbOf(string name)
    {
        var (depth, highest) = (0, 0);
        foreach (var step in name.Split('/', StringSplitOptions.RemoveEmptyEntries))
        {
            depth += step switch { ".." => -1, "." => 0, _ => 1 };
            highest = Math.Min(highest, depth);
        }

        return -highest;
    }

    private static string Resolved(string path)
    {
        var steps = new List<string>();
        foreach (var step in path.Split('/', StringSplitOptions.RemoveEmptyEntries))
        {
            if (step == "..")
            {
                steps.RemoveAt(steps.Count - 1);
            }
            else if (step != ".")
            {
                steps.Add(step);
            }
        }

        return string.Join('/', steps);
    }
}
