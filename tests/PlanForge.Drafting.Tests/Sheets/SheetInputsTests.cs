using System.Collections.Immutable;
using PlanForge.Airframe.Described;
using PlanForge.Airframe.Reading;
using PlanForge.Drafting.Model;
using PlanForge.Drafting.Nests;
using PlanForge.Drafting.Sheets;
using PlanForge.Parts;
using PlanForge.Parts.Tests.Inputs;

namespace PlanForge.Drafting.Tests.Sheets;

/// <summary>What sheets say they are made from against what really changes when one value is changed and all is drawn again.</summary>
public class SheetInputsTests
{
    // Every so many of the numbers: all of them take half a minute. PLANFORGE_FUZZ tries them all.
    private static readonly int Each = Environment.GetEnvironmentVariable("PLANFORGE_FUZZ") is null ? 8 : 1;

    private static readonly (string Path, string Value)[] Words =
    [
        ("name", "Another"), ("units", "in"), ("owner", "Another owner"), ("revision", "Z"), ("date_of_issue", "2026-11-26"), ("approver", "Another one"),
        ("sheets.paper", "A2"), ("sheets.orientation", "portrait"), ("sheets.projection", "third angle"), ("sheets.lengths", "both units"),
        ("stock[light ply 3].size", "290 mm x 600 mm"), ("formers[F3].material", "balsa"),
    ];

    [Theory]
    [InlineData("oxbow-1420.yaml")]
    [InlineData("saltmarsh-1600.yaml")]
    public void A_changed_value_changes_no_sheet_that_does_not_have_it_among_its_inputs(string design)
    {
        var text = DemoDesigns.Text(design);
        var (before, values) = Drawn(text)!.Value;
        var numbers = values.Values.Where(value => value.Path != "planforge" && ChangedText.Moved(value, 0.003) is not null).Where((_, i) => i % Each == 0);
        var tried = 0;
        foreach (var (path, changed) in numbers.Select(value => (value.Path, ChangedText.Moved(value, 0.003)!)).Concat(Words.Where(word => values.Values.Any(value => value.Path == word.Path))))
        {
            if (Drawn(ChangedText.With(text, path, changed)) is not ({ IsEmpty: false } after, var now) || now.Since(values) is not [var only] || only.Path != path)
            {
                continue;
            }

            tried++;
            foreach (var sheet in after)
            {
                var like = before.FirstOrDefault(old => On(old).SequenceEqual(On(sheet)));
                var (isDrawn, isFrame, isPlaced) = (Covers(sheet => sheet.Inputs), Covers(sheet => sheet.FrameInputs), Covers(sheet => sheet.PlacingInputs));
                Assert.True(like is not null || isPlaced, $"{path}: other parts lie on sheet {sheet.Number}");
                Assert.True(like is null || like.Fingerprint == sheet.Fingerprint || isDrawn, $"{path}: sheet {sheet.Number}, {sheet.Title}, is drawn otherwise");
                Assert.True(
                    like is null || isDrawn || isFrame || isPlaced || SheetContent.IsSame(like with { Number = sheet.Number }, sheet),
                    $"{path}: sheet {sheet.Number}, {sheet.Title}, has another frame");

                bool Covers(Func<Sheet, Airframe.Inputs.InputSet> inputs) => inputs(sheet).Covers(path) && (like is null || inputs(like).Covers(path));
            }
        }

        Assert.True(tried > 10, $"only {tried} values could be changed");
    }

    [Fact]
    public void A_sheet_is_made_from_what_its_parts_are_and_what_it_reads_itself()
    {
        var (sheets, _) = Drawn(DemoDesigns.Text("oxbow-1420.yaml"))!.Value;
        var list = PartList.Of(DemoDesigns.Read("oxbow-1420.yaml"));
        foreach (var sheet in sheets)
        {
            Assert.All(list.Parts.Where(part => sheet.Parts.Contains(part.Id)).SelectMany(part => part.Inputs.Paths), path => Assert.True(sheet.Inputs.Covers(path), path));
            Assert.True(sheet.Inputs.Covers("sheets.paper") && sheet.FrameInputs.Covers("owner") && !sheet.Inputs.Covers("owner"));
            Assert.Equal(sheet.Title == "General arrangement", sheet.Inputs.Covers("sheets.projection"));
            Assert.Equal(sheet.Title == "Nests", sheet.Inputs.Covers("stock[balsa 3].size"));
        }

        Assert.Contains(sheets, sheet => !sheet.Inputs.Covers("formers[F3].allowance.upper"));
        Assert.All(sheets.Where(sheet => sheet.Parts.Contains("former-F3")), sheet => Assert.True(sheet.Inputs.Covers("formers[F3].thickness")));
    }

    // Nests are no parts: what lies on a sheet is told by its bookmarks.
    private static IEnumerable<string> On(Sheet sheet) => sheet.Bookmarks.Select(bookmark => bookmark.Title);

    private static (ImmutableArray<Sheet> Sheets, DescribedValues Values)? Drawn(string text)
    {
        var read = AirframeReader.Read("probe.yaml", text, DemoDesigns.SectionFile);
        if (read.Airframe is not { } airframe)
        {
            return null;
        }

        var list = PartList.Of(airframe);
        var nests = NestPlan.Of(list.Parts, airframe.Stock, airframe.DisplayUnit, new() { Effort = 1 });
        return list.Parts.IsEmpty ? null : (PlanSheets.Draw(PlanOptions.Of(airframe, "test"), list, nests.Sheets).Sheets.Sheets, read.ListValues());
    }
}
