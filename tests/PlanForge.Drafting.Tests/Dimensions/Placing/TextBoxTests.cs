using CsCheck;
using PlanForge.Drafting.Dimensions.Placing;
using PlanForge.Drafting.Model;
using PlanForge.Geometry;

namespace PlanForge.Drafting.Tests.Dimensions.Placing;

public class TextBoxTests
{
    private static readonly Gen<Point2> Places = from x in Gen.Double[-20, 20] from y in Gen.Double[-20, 20] select new Point2(x, y);

    private static readonly Gen<DrawingItem.Text> Texts =
        from at in Places
        from angle in Gen.OneOf(Gen.Int[-2, 2].Select(quarter => quarter * Math.PI / 2), Gen.Double[-Math.PI, Math.PI])
        from content in Gen.Int[0, 3].Select(i => new[] { "F3", "edge", "2 1⁄4″", "datum line" }[i])
        select new DrawingItem.Text(Layer.Notes, content, at, 2.5, angle);

    [Fact]
    public void The_box_is_the_smallest_around_the_strokes() =>
        Texts.Sample(
            text =>
            {
                var (box, ink) = (TextBox.Of(text), InkBox.Of(text));
                Assert.True(box.Corner.DistanceTo(ink.Corners[0]) < 0.02);
                Assert.Equal(ink.Corners[0].DistanceTo(ink.Corners[1]), box.Width, 0.02);
                Assert.Equal(ink.Corners[1].DistanceTo(ink.Corners[2]), box.Height, 0.02);
            },
            iter: 200,
            seed: "0000000000001");

    [Fact]
    public void Boxes_overlap_exactly_when_they_share_a_place() =>
        Gen.Select(Texts, Texts).Sample(
            (first, second) =>
            {
                // A grid of points over one box, each tried in the other's own axes: no axis separation involved.
                const int Steps = 60;
                TextBox a = TextBox.Of(first), b = TextBox.Of(second);
                var isShared = false;
                for (var i = 0; i <= Steps * Steps; i++)
                {
                    var place = a.Corner + (a.Along * (a.Width * (i / Steps) / Steps)) + (a.Along.Left * (a.Height * (i % Steps) / Steps));
                    isShared |= Contains(b, place, 0);
                }

                // Points miss overlaps finer than the grid: those may go either way.
                Assert.True(!isShared || a.Overlaps(b, 0));
                Assert.True(isShared || !a.Overlaps(b, -0.6));
            },
            iter: 400,
            seed: "0000000000002");

    [Fact]
    public void A_line_meets_a_box_when_some_point_of_it_lies_inside() =>
        Gen.Select(Texts, Places, Places).Sample(
            (text, start, end) =>
            {
                var box = TextBox.Of(text);
                var isInside = Enumerable.Range(0, 2001).Any(i => Contains(box, start.Towards(end, i / 2000.0), 0));
                Assert.True(!isInside || box.Meets(start, end, 0));
                Assert.True(isInside || !box.Meets(start, end, -0.1));
            },
            iter: 300,
            seed: "0000000000003");

    [Fact]
    public void Nothing_near_is_missed_by_the_cells() =>
        (from boxes in Gen.Select(Places, Places).Array[1, 60] from near in Gen.Select(Places, Places) select (boxes, near)).Sample(
            sample =>
            {
                // The area is smaller than what is put in: things outside must be found too.
                var cells = new CellIndex(new(-9, -7, 11, 8));
                var boxes = sample.boxes.Select(pair => Bounds2.Around(pair.Item1, pair.Item2)).ToList();
                for (var i = 0; i < boxes.Count; i++)
                {
                    cells.Put(i, boxes[i]);
                }

                var near = Bounds2.Around(sample.near.Item1, sample.near.Item2);
                var found = cells.Near(near).SelectMany(things => things).ToHashSet();
                Assert.All(Enumerable.Range(0, boxes.Count).Where(i => boxes[i].Touches(near)), i => Assert.Contains(i, found));
            },
            iter: 300,
            seed: "0000000000004");

    private static bool Contains(TextBox box, Point2 place, double margin)
    {
        var (along, up) = ((place - box.Corner).Dot(box.Along), (place - box.Corner).Dot(box.Along.Left));
        return along >= -margin && along <= box.Width + margin && up >= -margin && up <= box.Height + margin;
    }
}
