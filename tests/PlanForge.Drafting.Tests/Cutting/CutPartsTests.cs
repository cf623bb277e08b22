using PlanForge.Airframe.Diagnostics;
using PlanForge.Drafting.Cutting;
using PlanForge.Drafting.Model;
using PlanForge.Drafting.PartDrawings;
using PlanForge.Geometry;
using PlanForge.Geometry.Regions;
using PlanForge.Parts;

namespace PlanForge.Drafting.Tests.Cutting;

// What a shop refuses: shared/practice.md, "Cutting from DXF and SVG".
public sealed class CutPartsTests
{
    // The promise of the drawings, mm: curves are drawn within it. A shorter segment is a crumb to a machine.
    private const double Crumb = 1e-3;

    private static readonly SourcePosition At = new("test", 3, 9);

    [Theory]
    [InlineData(null)]
    [InlineData(0.15)]
    [InlineData(0.25)]
    public void Contours_of_every_design_are_closed_simple_and_apart(double? kerf)
    {
        foreach (var (part, drawing) in Cuts.OfDesigns(new(kerf, At)))
        {
            var contours = drawing.Contours();
            Assert.All(contours, contour => Assert.Empty(ContourAudit.Find(contour)));
            for (var i = 0; i < contours.Count; i++)
            {
                for (var j = i + 1; j < contours.Count; j++)
                {
                    Assert.Empty(contours[i].IntersectionsWith(contours[j], Region2.SnapDistance));
                }

                Assert.All(contours[i].Segments, segment => Assert.True(segment.Length > Crumb, $"{part.Id}: {segment}"));
            }
        }
    }

    [Theory]
    [InlineData(null)]
    [InlineData(0.15)]
    [InlineData(0.25)]
    public void Areas_and_lengths_are_those_of_another_library(double? kerf)
    {
        foreach (var (_, drawing) in Cuts.OfDesigns(new(kerf, At)))
        {
            var contours = drawing.Contours();
            var material = Cuts.Material(contours);

            // A chord takes two thirds of its sagitta along the arc; its length lacks 8/3 of the squared sagitta over the chord.
            Assert.Equal(material.Area, contours.Area(), Cuts.Sagitta * contours.Length());
            Assert.InRange(contours.Length() - material.Length, -1e-6, 0.01);
        }
    }

    [Fact]
    public void Outlines_run_anticlockwise_and_openings_clockwise_on_every_design()
    {
        // Inside and outside by how many other contours hold it, counted by NetTopologySuite.
        foreach (var (part, drawing) in Cuts.OfDesigns(new(null, At)))
        {
            var contours = drawing.Contours();
            foreach (var contour in contours)
            {
                var own = Cuts.Material([contour]);
                var around = contours.Count(other => other != contour && Cuts.Material([other]).Contains(own));
                Assert.True(contour.SignedArea > 0 == (around % 2 == 0), part.Id);
            }
        }
    }

    [Fact]
    public void Tangent_joins_of_arcs_stay_tangent()
    {
        foreach (var (part, drawing) in Cuts.OfDesigns(new(0.2, At)))
        {
            Assert.Equal(CutDrawings.Of(part).Contours().Sum(Corners), drawing.Contours().Sum(Corners));
        }

        // Corners: joints that turn by more than a twentieth of a degree.
        static int Corners(Path2 path) => Enumerable.Range(0, path.SegmentCount).Count(i =>
        {
            var (before, after) = (path.SegmentAt(i).DirectionAt(1), path.SegmentAt((i + 1) % path.SegmentCount).DirectionAt(0));
            return Math.Abs(Math.Atan2(before.Cross(after), before.Dot(after))) > 1e-3;
        });
    }

    [Fact]
    public void Wood_of_every_design_carries_its_fingerprint_unless_it_is_too_small()
    {
        var without = new List<string>();
        foreach (var (part, drawing) in Cuts.OfDesigns(new(null, At)))
        {
            var texts = drawing.Drawing.Items.OfType<DrawingItem.Text>().ToList();
            if (!texts.Exists(text => text.Content == part.Fingerprint!.Value.Code && text.Layer == Layer.Score))
            {
                without.Add(part.Id);
            }
        }

        // Looked at: their rims are narrower than 9 mm, and their names take the widest place.
        Assert.Equal(["former-F1", "former-F4", "former-F5", "former-F7", "former-F4", "former-F5"], without);
    }

    [Fact]
    public void Marks_and_names_are_not_compensated()
    {
        var (plain, moved) = (CutParts.Of(SampleParts.Former("F2", 92, 112), new(null, At), [])!, CutParts.Of(SampleParts.Former("F2", 92, 112), new(0.2, At), [])!);
        Assert.Equal(Drawn.Written(Marks(plain)), Drawn.Written(Marks(moved)));
        Assert.NotEmpty(Marks(plain));

        static IEnumerable<DrawingItem> Marks(CutDrawing drawing) => drawing.Drawing.Items.Where(item => item.Layer != Layer.Cut);
    }

    [Fact]
    public void The_kerf_is_stamped_and_so_is_its_absence()
    {
        var part = SampleParts.Former("F2", 92, 112);
        Assert.Equal(["former-F2: 1 off birch ply 4 mm", "Kerf is not compensated"], CutParts.Of(part, new(null, At), [])!.Notes);
        Assert.Equal(["former-F2: 1 off birch ply 4 mm", "Kerf 0.18 mm is compensated"], CutParts.Of(part, new(0.18, At), [])!.Notes);
    }

    [Fact]
    public void A_part_with_a_place_narrower_than_the_kerf_is_named_with_its_place()
    {
        var part = SampleParts.Shim(1) with
        {
            Lines = [new(LineUse.Cut, Path2.Rectangle(new(0, 0, 50, 20))), new(LineUse.Cut, Path2.Rectangle(new(30, 5, 30.1, 15)).Reversed())],
        };
        var result = CutParts.Of([part], new(null, At) { Kerfs = [new("spruce", null, 0.2, new("test", 8, 10))] });
        Assert.Empty(result.Drawings);
        var finding = Assert.Single(result.Findings);
        Assert.Equal((Severity.Error, new SourcePosition("test", 8, 10)), (finding.Severity, finding.At));
        Assert.Matches(@"^Shim 1° cannot be cut with a kerf of 0\.2 mm: at x 30(\.1)? mm, y (5|15) mm of the part it is narrower than that$", finding.Message);
    }

    [Fact]
    public void A_sheet_without_a_kerf_of_its_own_is_warned_of_when_others_have_one()
    {
        var result = CutParts.Of([SampleParts.Former("F2", 92, 112)], new(null, At) { Kerfs = [new("balsa", 3, 0.2, At)] });
        Assert.Null(Assert.Single(result.Drawings).Kerf);
        Assert.Equal((Severity.Warning, "there is no kerf for birch ply 4 mm: Former F2 is not compensated"), (result.Findings[0].Severity, result.Findings[0].Message));
    }

    [Fact]
    public void Figures_count_segments_and_lengths_by_operation()
    {
        // By hand: a rectangle 100 by 20 with a hole of 10 and a rounded end and a bent one is 2 lines, 2 arcs, 1 circle, and a mark is a line.
        var outline = Path2.Closed([new(new(0, 0)), new(new(100, 0), 1), new(new(100, 20)), new(new(0, 20), 0.1)]);
        var drawing = Cuts.Drawing(outline, Path2.Circle(new(50, 10), 5).Reversed());
        drawing = drawing with { Drawing = new(drawing.Drawing.Items.Add(new DrawingItem.Stroke(Layer.Score, Path2.Line(new(10, 0), new(10, 20)), default!))) };
        var figures = CutFigures.Of(drawing, CutProfile.Default);
        Assert.Equal((3, 2, 1), (figures.Lines, figures.Arcs, figures.Circles));
        Assert.Equal((0, 20.0), (figures.Engraved, figures.Scored));

        // Arc of bulge b over chord c: radius c(1 + b²)/4b, angle 4 atan b (section 10, "chord/sagitta").
        Assert.Equal(200 + (10 * Math.PI) + (10 * Math.PI) + (20 * 1.01 / 0.4 * 4 * Math.Atan(0.1)), figures.Cut, 1e-9);
        Assert.Equal((figures.Cut / 20) + 0.4, figures.Seconds(null, 50, 20), 1e-12);
    }
}
