using System.Collections.Immutable;
using PlanForge.CommandLine;
using PlanForge.Designs;

namespace PlanForge.Following;

/// <summary>The files that a drawing was made from, with the text they had then; null for one that was not there. Immutable.</summary>
/// <param name="Texts">The texts by path.</param>
internal sealed record FollowedFiles(ImmutableSortedDictionary<string, string?> Texts)
{
    /// <summary>A description that has not been read.</summary>
    public static FollowedFiles Of(string description) =>
        new(ImmutableSortedDictionary<string, string?>.Empty.WithComparers(StringComparer.Ordinal).Add(description, null));

    /// <summary>The paths of the files, and where links among them lead.</summary>
    public IEnumerable<string> Paths
    {
        get
        {
            foreach (var path in Texts.Keys)
            {
                yield return Path.GetFullPath(path);
                if (TargetOf(path) is { } target)
                {
                    yield return target;
                }
            }
        }
    }

    /// <summary>
    /// The files after a run. A run that ended early may not have come to all of them: those of the run before it are still followed.
    /// </summary>
    public FollowedFiles After(PlanningResult planning)
    {
        var texts = (planning.Design is null ? Texts : Texts.Clear()).ToBuilder();
        foreach (var (path, text) in planning.Texts)
        {
            // What was given on the command line stands in no file.
            if (path != Syntax.With.Name)
            {
                texts[path] = text;
            }
        }

        foreach (var path in planning.Missing)
        {
            texts[path] = null;
        }

        return new(texts.ToImmutable());
    }

    /// <summary>The same files with the text they have now.</summary>
    public FollowedFiles AsTheyAre() => new(Texts.ToImmutableSortedDictionary(file => file.Key, file => TextOf(file.Key), StringComparer.Ordinal));

    /// <summary>True while every file has the text it had. A file that cannot be read counts as one that is not there.</summary>
    public bool AreCurrent()
    {
        foreach (var (path, text) in Texts)
        {
            if (TextOf(path) != text)
            {
                return false;
            }
        }

        return true;
    }

    private static string? TextOf(string path)
    {
        try
        {
            return File.Exists(path) ? TextFile.Read(path, out _, out _) : null;
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }

    private static string? TargetOf(string path)
    {
        try
        {
            return File.ResolveLinkTarget(path, returnFinalTarget: true)?.FullName;
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }
}
