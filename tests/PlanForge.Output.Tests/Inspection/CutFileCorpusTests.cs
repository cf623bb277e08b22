using PlanForge.Output.Inspection;

namespace PlanForge.Output.Tests.Inspection;

public sealed class CutFileCorpusTests
{
    public static TheoryData<string> Broken => [.. CutFileCorpus.FilesOf("Broken").Select(path => Path.GetFileName(path)!)];

    public static TheoryData<string> Clean => [.. CutFileCorpus.FilesOf("Clean").Select(path => Path.GetFileName(path)!)];

    [Theory]
    [MemberData(nameof(Broken))]
    public void Broken_file_has_exactly_the_findings_it_says(string name)
    {
        var file = CutFileCorpus.FilesOf("Broken").Single(path => Path.GetFileName(path) == name);
        var result = CutFileCorpus.Inspect(file);

        Assert.Equal(CutFileCorpus.ExpectedOf(file).Findings, CutFileCorpus.FoundIn(result));
        Assert.All(result.Findings, finding => Assert.NotEqual(FindingSeverity.Note, finding.Severity));
    }

    [Theory]
    [MemberData(nameof(Clean))]
    public void Clean_file_has_notes_at_most(string name)
    {
        var file = CutFileCorpus.FilesOf("Clean").Single(path => Path.GetFileName(path) == name);
        var result = CutFileCorpus.Inspect(file);

        Assert.Equal(CutFileCorpus.ExpectedOf(file).Findings, CutFileCorpus.FoundIn(result));
        Assert.All(result.Findings, finding => Assert.Equal(FindingSeverity.Note, finding.Severity));
        Assert.Contains(result.Summary.Layers, layer => layer.IsCut && layer.ContourCount > 0);
    }

    [Fact]
    public void Every_code_word_is_shown_by_a_file()
    {
        var words = typeof(FindingCode).GetFields().Select(field => (string)field.GetRawConstantValue()!);
        var shown = CutFileCorpus.FilesOf("Broken").Concat(CutFileCorpus.FilesOf("Clean")).SelectMany(file => CutFileCorpus.ExpectedOf(file).Findings);

        // A file that is too large is no small file; see the tests of limits.
        Assert.Equal([FindingCode.TooLarge], words.Except(shown.Select(finding => finding.Split('@')[0])));
    }

    [Fact]
    public void Corpus_is_half_DXF_and_half_SVG()
    {
        var files = CutFileCorpus.FilesOf("Broken");

        Assert.InRange(files.Count(file => Path.GetExtension(file) == ".dxf"), 30, files.Length - 30);
    }
}
