using CsCheck;
using PlanForge.Airframe.Reading;
using PlanForge.Designs;
using PlanForge.Drafting.Nests;
using PlanForge.Folders;

namespace PlanForge.Tests.Following;

/// <summary>What is kept from run to run never shows: every run is held against one that keeps nothing, byte for byte.</summary>
public sealed class KeptWorkTests : IDisposable
{
    private readonly TestFolder _folder = new();

    public static TheoryData<string> DesignNames => [.. Repository.Designs.Select(path => Path.GetFileName(path))];

    public void Dispose() => _folder.Dispose();

    [Theory]
    [MemberData(nameof(DesignNames))]
    public void Edits_of_a_demo_give_the_same_bytes_as_fresh_runs(string design)
    {
        var folder = Path.Combine(Repository.Root, "designs");
        var text = File.ReadAllText(Path.Combine(folder, design));
        foreach (var file in Directory.GetFiles(folder, "*.dat"))
        {
            File.Copy(file, _folder[Path.GetFileName(file)]);
        }

        var formers = text.IndexOf("formers:", StringComparison.Ordinal);
        string[] series =
        [
            text,
            text,
            text[..formers] + "# a line more above all formers\n" + text[formers..],
            text[..formers] + Edited(text[formers..], "thickness: 3", "thickness: 3.2"),
            Edited(text, "name:", "nam:"),
            text[..formers] + Edited(text[formers..], "material: ", "material: other "),
            Edited(text, "chord: ", "chord: 1 mm + "),
            text,
        ];
        var kept = new KeptWork();
        Assert.All(series, edited => Assert.Equal(Drawn(edited, new(), "fresh"), Drawn(edited, kept, "kept")));
    }

    // Edits one after the other, good and bad ones mixed, in any order; some come twice.
    [Fact]
    public void Any_series_of_edits_gives_the_same_bytes_as_fresh_runs()
    {
        (string From, string To)[] edits =
        [
            ("formers:", "formers:"),
            ("station: 40", "station: 55"),
            ("thickness: 3}", "thickness: 4, material: ply}\n  - {name: F2, station: 120, thickness: 3, material: ply}"),
            ("thickness: 3}", "thickness: 3}\n  - {name: F3, station: 200, thickness: 3, openings: [{diameter: 20, height: 0}]}"),
            ("  - {name: F1", "  - {name: F0, station: 20, thickness: 3}\n  - {name: F1"),
            ("thickness: 3}", "thickness: 3, lightening: {rim: 1 mm}}"),
            ("incidence: 2 deg", "incidence: 2.5 deg"),
            ("chord: 150}", "chord: 150}\n  # a remark"),
            ("chord:", "chrod:"),
            ("formers:\n", "stock: [{name: ply 3, material: ply, thickness: 3, size: 300 x 600}]\nformers:\n  - {name: F9, station: 250, thickness: 3, material: ply}\n"),
            ("formers:\n", "stock: [{name: ply 3, material: ply, thickness: 3, size: 40 x 40}]\nformers:\n  - {name: F9, station: 250, thickness: 3, material: ply}\n"),
            ("formers:", "cutter: {kerf: 0.2 mm, holding_tabs: {width: 1 mm, count: 3}}\nformers:"),
            ("formers:", "cutter: {profile: nowhere.yaml}\nformers:"),
            ("name: Test Piece 1", "name: Test Piece 1\nrevision: B"),
        ];
        Gen.Int[0, edits.Length - 1].Array[2, 6].Sample(
            series =>
            {
                var kept = new KeptWork();
                foreach (var (from, to) in series.Select(index => edits[index]))
                {
                    var text = Edited(SmallDesign.Text, from, to);
                    Assert.Equal(Drawn(text, new(), "fresh"), Drawn(text, kept, "kept"));
                }
            },
            iter: 20,
            threads: 1);
    }

    // The other half of keeping: an edit of one former leaves the very objects of the others in place.
    [Fact]
    public void A_former_that_is_not_edited_is_the_very_part_of_the_run_before()
    {
        var two = Edited(SmallDesign.Text, "thickness: 3}", "thickness: 3}\n  - {name: F2, station: 120, thickness: 3}");
        var kept = new KeptWork();
        var before = Planned(two, kept).Design!;
        kept.EndRun();
        var after = Planned(Edited(two, "station: 40", "station: 45"), kept).Design!;

        Assert.Same(before.Parts.Single(part => part.Id == "former-F2"), after.Parts.Single(part => part.Id == "former-F2"));
        Assert.NotSame(before.Parts.Single(part => part.Id == "former-F1"), after.Parts.Single(part => part.Id == "former-F1"));
    }

    private static string Edited(string text, string from, string to)
    {
        var at = text.IndexOf(from, StringComparison.Ordinal);
        Assert.True(at >= 0, $"the text has no `{from}` to edit");
        return text[..at] + to + text[(at + from.Length)..];
    }

    private PlanningResult Planned(string text, KeptWork kept) =>
        Planned(text, kept, null);

    private PlanningResult Planned(string text, KeptWork kept, IDesignWork<DesignOutput>? work) =>
        Planner.Plan(_folder.Write("a.yaml", text), ParameterOverrides.None, NestOptions.UsualEffort, kept, CancellationToken.None, cuts => work?.CutsKnown(cuts));

    /// <summary>Every finding, every file and all that is then in the folder, as text of bytes, in order.</summary>
    private List<string> Drawn(string text, KeptWork kept, string folder)
    {
        var work = new DesignFiles(new(PrintChoice.None), kept, CancellationToken.None);
        var planning = Planned(text, kept, work);
        var drawn = planning.Findings.Select(finding => finding.ToString()).ToList();
        if (planning.Design is { } design)
        {
            var output = work.Finish(design);
            drawn.AddRange(output.CutFaults);
            drawn.AddRange(output.Files.Select(file => $"{file.Path} {HashOf(file.Content.Span)}"));
            using (var opened = DesignFolder.Open(_folder[folder], new Disk(), kept.Files.Written))
            {
                opened.Prepare();
                var changes = opened.Write(output, CancellationToken.None);
                drawn.Add($"{changes.Written} written, {changes.Kept} kept, {changes.Removed} removed");
            }

            drawn.AddRange(_folder.Everything(folder).Select(path => path.EndsWith('/') ? path : $"{path} {HashOf(File.ReadAllBytes(_folder[$"{folder}/{path}"]))}"));
            kept.EndRun();
        }

        return drawn;
    }

    private static string HashOf(ReadOnlySpan<byte> content) => Convert.ToHexString(System.Security.Cryptography.SHA256.HashData(content));
}
