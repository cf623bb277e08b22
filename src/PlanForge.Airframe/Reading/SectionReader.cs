using PlanForge.Airframe.Diagnostics;
using PlanForge.Airframe.Expressions;
using PlanForge.Airframe.Format;
using PlanForge.Airframe.Sections;

namespace PlanForge.Airframe.Reading;

/// <summary>Makes the sections a description names.</summary>
/// <param name="files">The section files.</param>
/// <param name="diagnostics">Receives what is wrong.</param>
internal sealed class SectionReader(SectionFiles files, DiagnosticList diagnostics)
{
    private const string NacaWord = "naca";
    private const string FileEnding = ".dat";

    /// <summary>The section a value stands for; null when it failed or is absent.</summary>
    public Section? Read(ReadValue? value) => value switch
    {
        TextValue text => OfName(text),
        MappingValues digits when digits.Format == SectionFormat.ByDigits => Scaled(
            OfDigits(
                digits.Text(SectionFormat.Digits),
                (TrailingEdge)digits.Word(SectionFormat.TrailingEdge),
                digits.AtValue(SectionFormat.Digits)),
            digits),
        MappingValues file when file.Format == SectionFormat.ByFile => Scaled(
            OfFile(file.Text(SectionFormat.File), file.AtValue(SectionFormat.File)), file),
        MappingValues blend => Blended(blend),
        _ => null,
    };

    /// <summary>The files that a section's value names.</summary>
    public static IEnumerable<string> FilesOf(ReadValue? value) => value switch
    {
        TextValue text when IsFile(text.Text.Trim()) => [text.Text.Trim()],
        MappingValues mapping when mapping.Format == SectionFormat.ByFile => [mapping.Text(SectionFormat.File)],
        MappingValues mapping when mapping.Format == SectionFormat.ByBlend => mapping.List(SectionFormat.Blend).SelectMany(FilesOf),
        _ => [],
    };

    private static bool IsFile(string name) => name.EndsWith(FileEnding, StringComparison.OrdinalIgnoreCase);

    private Section? OfName(TextValue name)
    {
        var text = name.Text.Trim();
        if (IsFile(text))
        {
            return OfFile(text, name.At);
        }

        if (text.StartsWith(NacaWord, StringComparison.OrdinalIgnoreCase))
        {
            var digits = text[NacaWord.Length..];
            if (digits.Length > 0 && Characters.IsBlank(digits[0]))
            {
                return OfDigits(digits.Trim(), TrailingEdge.Open, name.At);
            }
        }

        diagnostics.Error(
            name.At,
            $"{Quote.Text(text)} is no section; write `naca` and four or five digits, such as `naca 2412`, or a file, such as `otter.dat`");
        return null;
    }

    private NacaSection? OfDigits(string digits, TrailingEdge trailingEdge, SourcePosition at)
    {
        if (digits.Length == 0 || trailingEdge < 0)
        {
            return null;
        }

        if (NacaSection.TryCreate(digits, trailingEdge, out var fault) is { } section)
        {
            return section;
        }

        diagnostics.Error(at, fault ?? $"{Quote.Text(digits)} is no NACA section");
        return null;
    }

    private Section? OfFile(string path, SourcePosition at)
    {
        if (path.Length == 0)
        {
            return null;
        }

        if (path[0] is '/' || path.Contains('\\', StringComparison.Ordinal) || path.Contains(':', StringComparison.Ordinal))
        {
            diagnostics.Error(at, $"{Quote.Text(path)} must be relative to the description, with `/` between folders");
            return null;
        }

        return files.Find(path, at);
    }

    private Section? Scaled(Section? section, MappingValues mapping)
    {
        var thickness = mapping.OptionalNumber(SectionFormat.Thickness);
        var camber = mapping.OptionalNumber(SectionFormat.Camber);
        if (section is null || (thickness is null && camber is null) || thickness is double.NaN || camber is double.NaN)
        {
            return thickness is double.NaN || camber is double.NaN ? null : section;
        }

        var scaled = ScaledSection.Create(section, thickness, camber);
        if (scaled is null)
        {
            diagnostics.Error(mapping.AtValue(SectionFormat.Camber), $"{section.Name} has no camber that could be scaled");
        }

        return scaled;
    }

    private BlendedSection? Blended(MappingValues mapping)
    {
        var ends = mapping.List(SectionFormat.Blend);
        var at = mapping.Number(SectionFormat.At);

        // Both ends are read before either is missed: both may have something to report.
        var first = ends.Count > 0 ? Read(ends[0]) : null;
        var second = ends.Count > 1 ? Read(ends[1]) : null;
        return first is null || second is null || double.IsNaN(at) ? null : BlendedSection.Create(first, second, at);
    }
}
