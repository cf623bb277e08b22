using System.Collections.Immutable;
using CsCheck;
using PlanForge.Drafting.Clipping;
using PlanForge.Drafting.Conventions;
using PlanForge.Drafting.Dimensions.Placing;
using PlanForge.Drafting.Model;
using PlanForge.Geometry;
using PlanForge.Parts;
using PlanForge.Parts.Wording;

namespace PlanForge.Drafting.Tests.Dimensions.Placing;

public class AnnotationsTests
{
    private static readonly Gen<Point2> Places = from x in Gen.Double[-50, 50] from y in Gen.Double[-40, 40] select new Point2(x, y);

    private static readonly Gen<double> Angles = Gen.OneOf(Gen.Int[-2, 2].Select(quarter => quarter * Math.PI / 2), Gen.Double[-Math.PI, Math.PI]);

    private static readonly Gen<string> Words = Among("F3", "datum line", "2 × ⌀8.1, drill 8.1 mm", "1 37⁄64″", "R8", "FRONT");

    private static readonly Gen<PartLabel> Labels =
        from text in Words
        from at in Places
        from angle in Angles
        from anchor in Among(Anchor.Start, Anchor.Middle, Anchor.End)
        from isEngraved in Gen.Bool
        select new PartLabel(text, at, anchor, angle, 2.5, isEngraved);

    private static readonly Gen<PartDimension> Dimensions = Gen.OneOf(
        from at in Places
        from textAt in Places
        from text in Words
        from radius in Among(0.0, 1, 8)
        select (PartDimension)new PartDimension.Leader(at, textAt, text, radius),
        from a in Places
        from b in Places
        from angle in Angles
        from offset in Among(-5.0, 5)
        select (PartDimension)new PartDimension.Linear(a, b, Vector2.FromAngle(angle), offset));

    private static readonly Gen<Part> Parts =
        from labels in Labels.Array[0, 14]
        from dimensions in Dimensions.Array[0, 20]
        from lines in Gen.Select(Places, Places).Array[0, 10]
        select new Part(
            "part", "Parts", "Part", Making.Template, "", 0, 1, null,
            [new(LineUse.Cut, Path2.Rectangle(new(-50, -40, 50, 40))), .. lines.Select(line => new PartLine(LineUse.Score, Path2.Line(line.Item1, line.Item2)))],
            [.. labels], [.. dimensions], [], [], []);

    public static TheoryData<string> Designs => [.. DemoDesigns.Names];

    [Fact]
    public void However_crowded_a_part_is_no_text_overlaps_another_or_an_arrow() =>
        Gen.Select(Parts, Gen.Bool).Sample(
            (part, isBoth) => Assert.Empty(Overlaps.OfTexts(Draw(part, isBoth))),
            iter: 150,
            seed: "000000000000E");

    [Fact]
    public void Every_label_and_dimension_is_lettered_once() =>
        Parts.Sample(
            part =>
            {
                var texts = Draw(part, isBoth: false).OfType<DrawingItem.Text>().ToList();
                Assert.Equal(part.Labels.Length + part.Dimensions.Length, texts.Count);
                Assert.All(part.Labels, label => Assert.Contains(texts, text => text.Content == label.Text));
            },
            iter: 50,
            seed: "000000000000F");

    [Theory]
    [MemberData(nameof(Designs))]
    public void On_the_parts_of_the_designs_no_text_overlaps_another_or_an_arrow(string name)
    {
        foreach (var drawing in DemoDesigns.Drawings(name))
        {
            Assert.True(!Overlaps.OfTexts(drawing.Items).Any(), $"{drawing.Part.Id}: {string.Join("; ", Overlaps.OfTexts(drawing.Items))}");
        }
    }

    [Theory]
    [MemberData(nameof(Designs))]
    public void On_the_parts_of_the_designs_no_line_strikes_through_a_text(string name)
    {
        foreach (var drawing in DemoDesigns.Drawings(name))
        {
            Assert.True(!Overlaps.OfLines(drawing.Items).Any(), $"{drawing.Part.Id}: {string.Join("; ", Overlaps.OfLines(drawing.Items))}");
        }
    }

    [Fact]
    public void On_the_correction_sheet_texts_are_free_of_texts_and_lines()
    {
        foreach (var drawing in DemoDesigns.Corrections())
        {
            Assert.True(!Overlaps.OfTexts(drawing.Items).Any(), $"{drawing.Part.Id}: {string.Join("; ", Overlaps.OfTexts(drawing.Items))}");
            Assert.True(!Overlaps.OfLines(drawing.Items).Any(), $"{drawing.Part.Id}: {string.Join("; ", Overlaps.OfLines(drawing.Items))}");
        }
    }

    private static Gen<T> Among<T>(params T[] choices) => Gen.Int[0, choices.Length - 1].Select(i => choices[i]);

    private static ImmutableArray<DrawingItem> Draw(Part part, bool isBoth)
    {
        var sketch = new Sketch();
        foreach (var line in part.Lines)
        {
            sketch.Stroke(LineConventions.LayerOf(line.Use), line.Path, LineConventions.StyleOf(line.Use));
        }

        var units = new ShownUnits(Airframe.DisplayUnit.Millimetre, isBoth);
        Annotations.Draw(sketch, part, units, LetteringSizes.For(units), new EvenOddArea([part.Lines[0].Path], 0.1));
        return sketch.Items;
    }
}
