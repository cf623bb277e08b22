using PlanForge.Airframe;
using PlanForge.Geometry;
using PlanForge.Parts;

namespace PlanForge.Drafting.Tests.Dimensions;

/// <summary>What the parts of the designs say of their sizes, measured again on their lines.</summary>
public class ContentTests
{
    public static TheoryData<string> Designs => [.. DemoDesigns.Names];

    [Theory]
    [MemberData(nameof(Designs))]
    public void Every_hole_has_its_diameter_and_its_centre_is_dimensioned_both_ways(string name)
    {
        foreach (var part in DemoDesigns.Parts(name, DisplayUnit.Millimetre).Where(part => part.Kind is "Dowels" or "Bolts" or "Formers"))
        {
            // Round holes: closed cut lines of arcs as wide as they are high. Those at the starboard (upper) side and the centre.
            foreach (var hole in part.Lines.Where(line => line.Use == LineUse.Cut && IsRound(line.Path)).Select(line => line.Path))
            {
                var (centre, diameter) = (hole.Bounds.Centre, hole.Bounds.Width);
                var leaders = part.Dimensions.OfType<PartDimension.Leader>()
                    .Where(leader => leader.Radius > 0 && Math.Abs(Math.Abs(leader.At.X) - Math.Abs(centre.X)) < 0.02 && Math.Abs(Math.Abs(leader.At.Y) - Math.Abs(centre.Y)) < 0.02);
                var leader = Assert.Single(leaders);
                Assert.Contains($"⌀{Number(diameter)}", leader.Text, StringComparison.Ordinal);
                Assert.Equal(diameter, leader.Radius * 2, 0.02);

                var ends = part.Dimensions.OfType<PartDimension.Linear>().ToList();
                Assert.True(Math.Abs(centre.X) < 0.02 || ends.Exists(d => d.Direction.Y == 0 && (IsAt(d.To.X, centre.X) || IsAt(d.From.X, centre.X))), $"{part.Id} across");
                Assert.True(Math.Abs(centre.Y) < 0.02 || ends.Exists(d => d.Direction.X == 0 && IsAt(d.To.Y, centre.Y)), $"{part.Id} up");
            }
        }
    }

    [Theory]
    [MemberData(nameof(Designs))]
    public void Every_former_has_its_overall_size_and_its_heights_from_the_level_line(string name)
    {
        foreach (var part in DemoDesigns.Parts(name).Where(part => part.Kind == "Formers"))
        {
            var bounds = Bounds2.Empty;
            foreach (var line in part.Lines.Where(line => line.Use == LineUse.Cut))
            {
                bounds = bounds.Joined(line.Path.Bounds);
            }

            var level = part.Lines.Single(line => line.Use == LineUse.Datum).Path.Start.Y;
            var up = part.Dimensions.OfType<PartDimension.Linear>().Where(d => d.Direction.X == 0).Select(Length).ToList();
            var across = part.Dimensions.OfType<PartDimension.Linear>().Where(d => d.Direction.Y == 0).Select(Length).ToList();
            Assert.Contains(across, length => IsAt(length, bounds.Width));
            Assert.Contains(up, length => IsAt(length, bounds.Height));
            Assert.Contains(up, length => IsAt(length, bounds.MaxY - level));
            Assert.Contains(up, length => IsAt(length, level - bounds.MinY));
        }
    }

    [Theory]
    [MemberData(nameof(Designs))]
    public void Each_cross_former_tabulates_the_dowels_heights_on_both_faces(string name)
    {
        var description = DemoDesigns.Read(name) with { DisplayUnit = DisplayUnit.Millimetre };
        foreach (var former in description.Formers.Where(former => former.IsCrossFormer && description.Dowels is not null))
        {
            var part = PartList.Of(description).Parts.Single(part => part.Id == $"former-{former.Name}");
            var table = part.Tables.Single(table => table.Title.StartsWith("Dowel axes", StringComparison.Ordinal));
            var hole = part.Lines.Where(line => line.Use == LineUse.Cut && IsRound(line.Path)).Select(line => line.Path.Bounds)
                .MinBy(bounds => Math.Abs(bounds.Width - description.Dowels!.Diameter - description.Dowels.Fit)).Centre.Y;
            var heights = table.Rows.Select(row => double.Parse(row[2], System.Globalization.CultureInfo.InvariantCulture)).ToList();

            // The hole is cut where the axis passes mid thickness: half way between its heights on the faces.
            Assert.Equal(["front", "rear"], table.Rows.Select(row => row[0]));
            Assert.Equal(hole, heights.Average(), 0.011);
        }
    }

    [Theory]
    [MemberData(nameof(Designs))]
    public void Each_shim_tells_its_thickness_at_both_ends_on_the_drawing_and_in_the_table(string name)
    {
        foreach (var part in DemoDesigns.Parts(name, DisplayUnit.Millimetre).Where(part => part.Kind == "Shims"))
        {
            var wedges = part.Lines.Where(line => line.Use == LineUse.Cut && line.Path.SegmentCount == 3).Select(line => line.Path).ToList();
            Assert.NotEmpty(wedges);
            Assert.Equal(wedges.Count, Assert.Single(part.Tables).Rows.Length);
            Assert.All(wedges, wedge =>
            {
                var thickness = Number(wedge.Bounds.Height);
                var peak = wedge.Vertices.MaxBy(vertex => vertex.Point.Y).Point;
                var sizes = peak.X == wedge.Bounds.MinX ? $"front {thickness} mm, rear 0" : $"front 0, rear {thickness} mm";
                Assert.Contains(part.Labels, label => label.Text.EndsWith(sizes, StringComparison.Ordinal));
            });
        }
    }

    private static bool IsRound(Path2 path) =>
        path.IsClosed && Math.Abs(path.Bounds.Width - path.Bounds.Height) < 0.05 && path.Segments.All(segment => !segment.IsLine)
        && Math.Abs(Math.Abs(path.SignedArea) - (Math.PI * path.Bounds.Width * path.Bounds.Height / 4)) < 0.02 * path.Bounds.Width;

    private static string Number(double value) => Math.Round(value, 2).ToString("0.##", System.Globalization.CultureInfo.InvariantCulture);

    // Symmetrical features are dimensioned on one side.
    private static bool IsAt(double a, double b) => Math.Abs(Math.Abs(a) - Math.Abs(b)) < 0.02;

    private static double Length(PartDimension.Linear d) => Math.Abs((d.To - d.From).Dot(d.Direction));
}
