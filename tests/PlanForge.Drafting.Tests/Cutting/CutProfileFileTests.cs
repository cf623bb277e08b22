using PlanForge.Drafting.Cutting;

namespace PlanForge.Drafting.Tests.Cutting;

public sealed class CutProfileFileTests
{
    private const string Sound = """
        # Our shop cuts red, outlines last.
        operations:
          score: {layer: MARK, colour: 5, stroke: "#0000ff"}
          engrave: {layer: MARK, colour: 5, stroke: "#0000ff"}
          cut_inside: {layer: INNER, colour: 1, stroke: "#ff0000"}
          cut_outside: {layer: OUTER, colour: 2, stroke: "#FF8000"}
          notes: {layer: DO_NOT_CUT, colour: 8, stroke: "#808080"}

        """;

    [Fact]
    public void A_profile_is_read_in_the_order_in_which_the_shop_works()
    {
        var (profile, findings) = CutProfileFile.Read("shop.yaml", Sound);
        Assert.Empty(findings);
        Assert.Equal(
            [
                new OperationStyle(CutOperation.Score, "MARK", 5, 0x0000FF), new(CutOperation.Engrave, "MARK", 5, 0x0000FF),
                new(CutOperation.CutInside, "INNER", 1, 0xFF0000), new(CutOperation.CutOutside, "OUTER", 2, 0xFF8000),
                new(CutOperation.Notes, "DO_NOT_CUT", 8, 0x808080),
            ],
            profile!.Operations);
    }

    [Fact]
    public void Operations_may_be_left_out_but_not_the_cuts()
    {
        const string Cuts = "operations:\n  cut_inside: {layer: A, colour: 1, stroke: \"#000000\"}\n  cut_outside: {layer: A, colour: 1, stroke: \"#000000\"}\n";
        Assert.Equal([CutOperation.CutInside, CutOperation.CutOutside], CutProfileFile.Read("shop.yaml", Cuts).Profile!.Operations.Select(style => style.Operation));
        Assert.Equal(["shop.yaml:1:1: error: `operations` lacks `cut_outside`: nothing could be cut out"], Findings(Cuts[..Cuts.IndexOf("  cut_outside", StringComparison.Ordinal)]));
        Assert.Single(Findings(""));
    }

    [Theory]
    [InlineData("operations:", "operation:", "2:1: error: this file has no key `operation`; did you mean `operations`?")]
    [InlineData("cut_inside:", "cut_insid:", "5:3: error: there is no operation `cut_insid`; did you mean `cut_inside`?")]
    [InlineData("notes:", "frame:", "7:3: error: there is no operation `frame`; there are `engrave`, `score`, `cut_inside`, `cut_outside`, `notes`")]
    [InlineData("layer: INNER", "layr: INNER", "5:16: error: `cut_inside` has no key `layr`; did you mean `layer`?")]
    [InlineData("INNER", "ÄUSSERE", "5:23: error: `layer` must be 1 to 31 ASCII letters, digits, hyphens and underscores: other names are lost in old readers")]
    [InlineData("colour: 1", "colour: red", "5:38: error: `colour` must be a colour index of DXF, a whole number from 1 to 255")]
    [InlineData("colour: 1", "colour: 256", "5:38: error: `colour` must be a colour index of DXF, a whole number from 1 to 255")]
    [InlineData("\"#ff0000\"", "\"red\"", "5:49: error: `stroke` must be a colour such as \"#ff0000\", in quotes")]
    [InlineData("DO_NOT_CUT", "INNER", "7:18: error: `cut_inside` is on the layer `INNER` already: everything on a layer is done alike")]
    [InlineData("INNER", "mark", "5:23: error: `score` is on the layer `MARK` already: everything on a layer is done alike|5:23: error: `engrave` is on the layer `MARK` already: everything on a layer is done alike")]
    [InlineData("OUTER", "INNER", "6:39: error: the layer `INNER` has the colour 1 in line 5; a layer has one colour")]
    [InlineData("#808080", "#ff0000", "7:49: error: `cut_inside` has the stroke \"#ff0000\" already: machines tell SVG strokes apart by their colour")]
    public void What_is_wrong_is_said_with_its_place_and_the_nearest_known_word(string from, string to, string expected)
    {
        Assert.Contains(from, Sound, StringComparison.Ordinal);
        Assert.Equal(expected.Split('|').Select(line => "shop.yaml:" + line), Findings(Sound.Replace(from, to, StringComparison.Ordinal)));
    }

    private static string[] Findings(string text)
    {
        var (profile, findings) = CutProfileFile.Read("shop.yaml", text);
        Assert.Equal(profile is null, !findings.IsEmpty);
        return [.. findings.Select(finding => FormattableString.Invariant($"{finding.At.File}:{finding.At.Line}:{finding.At.Column}: error: {finding.Message}"))];
    }
}
