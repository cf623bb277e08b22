using PlanForge.Airframe.Diagnostics;
using PlanForge.Airframe.Sections;

namespace PlanForge.Airframe.Reading;

/// <summary>The section files of one description, each read once.</summary>
/// <param name="description">The description's file name; section files are named beside it in messages.</param>
/// <param name="read">Gives a file's text, or null.</param>
/// <param name="diagnostics">Receives what is wrong in the files.</param>
internal sealed class SectionFiles(string description, Func<string, string?> read, DiagnosticList diagnostics)
{
    private readonly Dictionary<string, Section?> _sections = new(StringComparer.Ordinal);
    private readonly SortedDictionary<string, string> _texts = new(StringComparer.Ordinal);
    private readonly HashSet<string> _missing = new(StringComparer.Ordinal);

    /// <summary>The texts of the files that were found, in the order of their paths.</summary>
    public IEnumerable<KeyValuePair<string, string>> Texts => _texts;

    /// <summary>The section of a file; null when it is missing or wrong, reported here the one, in the file the other.</summary>
    public Section? Find(string path, SourcePosition at)
    {
        if (_sections.TryGetValue(path, out var known))
        {
            if (_missing.Contains(path))
            {
                ReportMissing(path, at);
            }

            return known;
        }

        Section? section = null;
        if (read(path) is { } text)
        {
            _texts.Add(path, text);
            var folder = description[..(description.LastIndexOfAny(['/', '\\']) + 1)];
            var result = SectionFile.Read(folder + path, text);
            foreach (var finding in result.Diagnostics)
            {
                diagnostics.Add(finding);
            }

            section = result.Section;
        }
        else
        {
            _missing.Add(path);
            ReportMissing(path, at);
        }

        _sections.Add(path, section);
        return section;
    }

    private void ReportMissing(string path, SourcePosition at) =>
        diagnostics.Error(at, $"there is no file {Quote.Text(path)} beside the description");
}
