using System.Globalization;
using System.Xml.Linq;

namespace PlanForge.Tests.Designs;

/// <summary>What the cutter's keys do to the files that <c>draw</c> writes.</summary>
public sealed class CutFileTests : IDisposable
{
    private const string Profile = """
        operations:
          cut_inside: {layer: INNER, colour: 1, stroke: "#ff0000"}
          cut_outside: {layer: OUTER, colour: 2, stroke: "#00ff00"}

        """;

    private readonly TestFolder _folder = new();

    [Fact]
    public void A_slot_for_a_sheet_is_as_wide_as_the_sheet_and_the_fit_once_the_kerf_is_burnt()
    {
        // A sheet of 2.8 mm, fit 0.1 mm, kerf 0.2 mm: the line is drawn 2.7 by 9.8 mm, the opening will be 2.9 by 10.
        var drawn = Draw("slots: [{sheet: B, length: 10, height: 0}]", "{kerf: 0.2 mm, fit: 0.1 mm}");
        var slot = drawn.Descendants().Single(element => element.Attribute("id")?.Value == "cut-inside").Elements().Single();
        var numbers = slot.Attribute("d")!.Value.Split(['M', 'L', 'Z', ' '], StringSplitOptions.RemoveEmptyEntries)
            .Select(number => double.Parse(number, CultureInfo.InvariantCulture)).ToArray();
        Assert.Equal(8, numbers.Length);
        Assert.Equal(2.7, numbers.Where((_, i) => i % 2 == 0).Max() - numbers.Where((_, i) => i % 2 == 0).Min(), 2e-5);
        Assert.Equal(9.8, numbers.Where((_, i) => i % 2 == 1).Max() - numbers.Where((_, i) => i % 2 == 1).Min(), 2e-5);
    }

    [Fact]
    public void The_printed_sheets_are_at_true_size_whatever_the_kerf()
    {
        Draw("", "{kerf: 0.2 mm}");
        var compensated = Outlines();
        Draw("", "{}");
        Assert.NotEmpty(compensated);
        Assert.Equal(Outlines(), compensated);

        string[] Outlines() =>
        [
            .. Directory.GetFiles(_folder["out"], "sheet-*.svg", SearchOption.AllDirectories).Order(StringComparer.Ordinal)
                .SelectMany(sheet => XDocument.Load(sheet).Descendants().Where(element => element.Attribute("id")?.Value == "cut"))
                .Select(group => group.ToString()),
        ];
    }

    [Fact]
    public void The_shops_profile_beside_the_description_is_used()
    {
        _folder.Write("shop.yaml", Profile);
        var drawn = Draw("", "{profile: shop.yaml}");
        Assert.Equal(["cut-outside"], drawn.Elements().Where(element => element.Name.LocalName == "g").Select(group => group.Attribute("id")!.Value));
        var dxf = File.ReadAllText(Directory.GetFiles(_folder["out"], "former-F1.dxf", SearchOption.AllDirectories).Single());
        Assert.Contains("OUTER", dxf, StringComparison.Ordinal);
        Assert.DoesNotContain("SCORE", dxf, StringComparison.Ordinal);
    }

    [Fact]
    public void A_fault_of_the_profile_is_shown_where_it_is()
    {
        _folder.Write("shop.yaml", Profile.Replace("colour: 2", "colour: 0", StringComparison.Ordinal));
        var run = Run("", "{profile: shop.yaml}");
        Assert.Equal(ExitCode.DescriptionFault, run.Code);
        Assert.StartsWith($"{_folder["shop.yaml"]}:3:39: error: `colour` must be a colour index", run.Messages, StringComparison.Ordinal);
    }

    [Fact]
    public void A_profile_that_is_not_there_is_missed_where_it_is_named()
    {
        var run = Run("", "{profile: shop.yaml}");
        Assert.Equal(ExitCode.DescriptionFault, run.Code);
        Assert.StartsWith($"{_folder["a.yaml"]}:17:19: error: there is no file `shop.yaml` beside the description", run.Messages, StringComparison.Ordinal);
    }

    [Fact]
    public void A_place_narrower_than_the_kerf_is_refused_at_the_cutter_of_the_description()
    {
        var run = Run("openings: [{width: 0.15, depth: 12, height: 4}]", "{kerf: 0.2 mm}");
        Assert.Equal(ExitCode.DescriptionFault, run.Code);
        Assert.StartsWith($"{_folder["a.yaml"]}:17:9: error: Former F1 cannot be cut with a kerf of 0.2 mm: at x ", run.Messages, StringComparison.Ordinal);
    }

    public void Dispose() => _folder.Dispose();

    private XElement Draw(string former, string cutter)
    {
        var run = Run(former, cutter);
        Assert.Equal((ExitCode.Done, ""), (run.Code, run.Messages));
        return XDocument.Load(Directory.GetFiles(_folder["out"], "former-F1.svg", SearchOption.AllDirectories).Single()).Root!;
    }

    private TestTerminal Run(string former, string cutter)
    {
        var text = SmallDesign.Text.Replace("thickness: 3}", $"thickness: 3, material: pear, {former}}}", StringComparison.Ordinal)
            + $"stock: [{{name: B, material: balsa, thickness: 2.8, size: 100 x 900}}, {{name: C, material: pear, thickness: 3, size: 300 x 900}}, {{name: D, material: light ply, thickness: 4, size: 300 x 900}}]\ncutter: {cutter}\n";
        return TestTerminal.Run("draw", _folder.Write("a.yaml", text), "--to", _folder["out"]);
    }
}
