using PlanForge.Geometry;
using static PlanForge.Parts.Tests.Build;

namespace PlanForge.Parts.Tests.Saddles;

public class SaddleTemplateTests
{
    [Fact]
    public void The_drawn_line_stays_within_a_hundredth_of_the_solved_points()
    {
        var description = Arched();
        var rigged = Description.Rigged(description);
        var drawn = Description.Single(description, "saddle-port").Lines(LineUse.Cut).Single();
        foreach (var point in rigged.SaddleLine!.Points)
        {
            // A slab side unrolls to (station from the front end, height).
            var flat = new Point2(point.Outer.X - rigged.SaddleLine.From, point.Outer.Z);
            Assert.True(drawn.DistanceTo(flat) < 0.01, $"{drawn.DistanceTo(flat)} mm at {flat}");
        }
    }

    [Fact]
    public void Starboard_is_the_mirror_image_of_port()
    {
        var parts = PartList.Of(Arched()).Parts;
        var port = parts.Single(part => part.Id == "saddle-port").Lines(LineUse.Cut).Single();
        var starboard = parts.Single(part => part.Id == "saddle-starboard").Lines(LineUse.Cut).Single();
        Assert.Equal(
            port.Vertices.Select(v => new Point2(-v.Point.X, v.Point.Y)).OrderBy(p => p.X).ThenBy(p => p.Y),
            starboard.Vertices.Select(v => v.Point).OrderBy(p => p.X).ThenBy(p => p.Y));
        Assert.Equal(port.SignedArea, starboard.SignedArea, 9);
    }

    [Fact]
    public void A_sanding_allowance_is_a_second_line_that_far_into_the_wing()
    {
        var bare = Arched();
        var description = bare with { Saddle = bare.Saddle with { Sanding = 1.5 } };
        var part = Description.Single(description, "saddle-port");
        var finished = part.Lines(LineUse.Trim).Single();
        var outline = part.Lines(LineUse.Cut).Single();

        // Away from the ends every point of the finished line lies 1.5 mm inside the outline.
        var inner = finished.Flattened(0.01).Where(point => point.X is > 10 and < 190);
        Assert.All(inner, point => Assert.Equal(1.5, outline.DistanceTo(point), tolerance: 0.01));
    }

    [Fact]
    public void Formers_and_dowels_are_marked_at_their_stations_and_heights()
    {
        var bare = Arched(
            Description.Former("C", 92, 4) with { IsCrossFormer = true },
            Description.Former("M", 180, 3));
        var part = Description.Single(bare with { Dowels = new(8, 40, 5, 14, 0.1, Nowhere) }, "saddle-port");
        var from = part.Value("saddle.port.from");
        var stations = part.Lines(LineUse.Station).Select(line => Math.Round(line.Bounds.MinX + from, 6)).Order();
        Assert.Equal([92, 96, 180, 183], stations);
        var cross = part.Lines(LineUse.Centre).First();
        Assert.Equal(92, cross.Bounds.Centre.X + from, 6);
        Assert.Equal(65, cross.Bounds.Centre.Y, 6);
    }

    [Fact]
    public void Every_cut_contour_of_a_template_is_closed_and_runs_anticlockwise()
    {
        foreach (var part in PartList.Of(Arched()).Parts.Where(part => part.Making != Making.View && part.Kind != "Wing joint"))
        {
            Assert.All(part.Lines(LineUse.Cut), path => Assert.True(path.IsClosed, part.Id));
            Assert.True(part.Lines(LineUse.Cut).First().SignedArea > 0, part.Id);
        }
    }

    private static Airframe.AirframeDescription Arched(params System.Collections.Immutable.ImmutableArray<Airframe.FormerDescription> formers)
    {
        var description = Description.PlateOnBox(0, 0, formers);
        var section = new ArcSection(0.06);
        return description with
        {
            Wing = description.Wing with
            {
                Root = new(section, 200, Nowhere),
                Panels = [description.Wing.Panels[0] with { Tip = new(section, 200, Nowhere) }],
            },
        };
    }
}
