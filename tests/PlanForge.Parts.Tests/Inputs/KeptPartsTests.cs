using CsCheck;
using PlanForge.Airframe.Described;
using PlanForge.Airframe.Reading;

namespace PlanForge.Parts.Tests.Inputs;

/// <summary>Parts that are kept by their recorded inputs against parts that are all made anew.</summary>
public class KeptPartsTests
{
    [Fact]
    public void After_any_change_of_any_value_the_parts_are_those_of_a_run_that_keeps_nothing()
    {
        var texts = Designs.All.Select(row => Designs.Text(row.Data)).ToArray();
        var values = texts.Select(text => Read(text).ListValues().Values.Where(value => Changed(value) is not null).ToArray()).ToArray();
        Gen.Select(Gen.Int[0, texts.Length - 1], Gen.Double[0, 0.999].Array[3]).Sample(
            (design, places) =>
            {
                var kept = new KeptParts();
                var text = texts[design];
                AssertAsAnew(text, kept);
                foreach (var place in places)
                {
                    var value = values[design][(int)(place * values[design].Length)];
                    AssertAsAnew(ChangedText.With(texts[design], value.Path, Changed(value)!), kept);
                }

                AssertAsAnew(text, kept);
            },
            iter: 40,
            threads: 1);
    }

    // What pieces are made from stands outside the formers: each of these values is tried by itself.
    [Theory]
    [MemberData(nameof(Designs.All), MemberType = typeof(Designs))]
    public void After_a_change_of_one_value_outside_the_formers_the_parts_are_those_of_a_run_that_keeps_nothing(string name)
    {
        var text = Designs.Text(name);
        var (kept, tried) = (new KeptParts(), 0);
        foreach (var value in Read(text).ListValues().Values)
        {
            if (!value.Path.StartsWith("formers", StringComparison.Ordinal) && Changed(value) is { } changed)
            {
                Made(text, kept);
                AssertAsAnew(ChangedText.With(text, value.Path, changed), kept);
                tried++;
            }
        }

        Assert.True(tried > 40, $"only {tried} values were tried");
    }

    [Fact]
    public void A_part_none_of_whose_values_changed_is_the_very_part_and_is_not_made_again()
    {
        var text = Designs.Text("oxbow-1420");
        var kept = new KeptParts();
        var before = Made(text, kept);
        var after = Made(text.Replace("# ", "#  ", StringComparison.Ordinal), kept);
        Assert.Equal(before.Parts, after.Parts, ReferenceEqualityComparer.Instance);
        Assert.Same(before.Arrangement, after.Arrangement);
    }

    [Fact]
    public void A_run_that_failed_leaves_what_the_last_good_one_made()
    {
        var text = Designs.Text("oxbow-1420");
        var kept = new KeptParts();
        var before = Made(text, kept);
        Assert.Empty(PartList.Of(Read(ChangedText.With(text, "wing.leading_edge.height", "300 mm")).Airframe!, () => DescribedValues.None, kept).Parts);
        var after = Made(ChangedText.With(text, "formers[F3].thickness", "3.5 mm"), kept);
        Assert.Same(Part(before, "former-F2"), Part(after, "former-F2"));
        Assert.NotSame(Part(before, "former-F3"), Part(after, "former-F3"));
    }

    private static Part Part(PartList list, string id) => list.Parts.Single(part => part.Id == id);

    // Numbers a little larger; words and texts are given another letter, which few places take.
    private static string? Changed(DescribedValue value) => value.Path == "planforge" ? null
        : value.Kind == ValueKind.Text ? value.Value + "x"
        : ChangedText.Moved(value, 0.004);

    private static void AssertAsAnew(string text, KeptParts kept)
    {
        var read = Read(text);
        if (read.Airframe is null)
        {
            return;
        }

        var (anew, now) = (PartList.Of(read.Airframe), PartList.Of(read.Airframe, read.ListValues, kept));
        Assert.Equal(PartText.OfAll(anew), PartText.OfAll(now));
        Assert.Equal(PartText.Of(anew.Arrangement), PartText.Of(now.Arrangement));
        Assert.Equal(anew.ArrangementInputs.Paths.AsEnumerable(), now.ArrangementInputs.Paths.AsEnumerable());
        Assert.Equal(anew.Figures, now.Figures);
        Assert.Equal(anew.Findings, now.Findings);
        Assert.Equal(anew.Parts.Select(part => part.Inputs.Paths.AsEnumerable()), now.Parts.Select(part => part.Inputs.Paths.AsEnumerable()));
        if (!now.Parts.IsEmpty)
        {
            kept.EndRun();
        }
    }

    private static PartList Made(string text, KeptParts kept)
    {
        var read = Read(text);
        var list = PartList.Of(read.Airframe!, read.ListValues, kept);
        Assert.NotEmpty(list.Parts);
        kept.EndRun();
        return list;
    }

    private static ReadResult Read(string text) => AirframeReader.Read(
        "kept.yaml", text, name => name.EndsWith(".dat", StringComparison.Ordinal) ? Designs.SectionFile(name) : null);
}
