using CsCheck;
using NetTopologySuite.Geometries;
using PlanForge.Drafting.Nests;
using PlanForge.Geometry;

namespace PlanForge.Drafting.Tests.Nests;

public class RasterizerTests
{
    [Fact]
    public void Cells_are_those_within_reach_by_an_outside_library() => Gen.Select(NestSamples.Parts, Gen.Double[0.7, 3], Gen.OneOf(Gen.Const(0.0), Gen.Double[0.2, 6]), Gen.Double[-3, 3])
        .Sample(
            (parts, cell, reach, turn) =>
            {
                var contours = NestedPart.ContoursOf(parts[0]).Select(contour => contour.Placed(Placement2.TurnedBy(turn))).ToList();
                var bounds = contours.Aggregate(Bounds2.Empty, (all, contour) => all.Joined(contour.Bounds));
                contours = [.. contours.Select(contour => contour.Placed(Placement2.MovedBy(new(-bounds.MinX, -bounds.MinY))))];
                var wood = NestProof.Wood(contours);
                var cells = Rasterizer.Cells(Chord.Of(contours), bounds.Width, bounds.Height, cell, reach);
                for (var i = 0; i < cells.Columns.Length; i++)
                {
                    for (var row = cells.FirstColumn; row < (bounds.Height / cell) - cells.FirstColumn; row++)
                    {
                        var column = i + cells.FirstColumn;
                        var box = new GeometryFactory().ToGeometry(new Envelope(column * cell, (column + 1) * cell, row * cell, (row + 1) * cell));
                        var isTaken = cells.Columns[i].Any(run => run.From <= row && row < run.To);
                        var distance = box.Distance(wood);
                        Assert.True(isTaken || distance >= reach - 0.002, $"({column}, {row}) is {distance} away and free");

                        // Chords of arcs stray by 0.05 mm, on either side.
                        Assert.True(!isTaken || distance <= reach + 0.11, $"({column}, {row}) is {distance} away and taken");
                    }
                }
            },
            iter: 25);

    [Fact]
    public void Edges_on_the_grid_take_no_cell_beyond()
    {
        var square = Chord.Of([Path2.Rectangle(new(0, 0, 4, 3))]);
        Assert.Equal(12, Rasterizer.Cells(square, 4, 3, 1, 0).Count);
        Assert.Equal(12 + (4 * 2 * 2) + (3 * 2 * 2) + (4 * 4), Rasterizer.Cells(square, 4, 3, 1, 2).Count);
    }
}
