using CsCheck;
using PlanForge.Drafting.Sheets;
using PlanForge.Drafting.Tiles;

namespace PlanForge.Drafting.Tests.Tiles;

public sealed class TileGridTests
{
    private const double Tolerance = 0.001;

    // Truth: a cover without gaps and doubles has shares that meet edge to edge from border to border (closed form).
    [Fact]
    public void Shares_cover_the_sheet_and_neighbours_overlap_by_the_overlap() => Grids.Sample(
        sample =>
        {
            var (grid, layout) = sample;
            for (var column = 0; column < grid.Columns; column++)
            {
                var (share, window) = (grid.ShareOf(0, column), grid.WindowOf(0, column));
                Assert.Equal(column == 0 ? 0 : grid.ShareOf(0, column - 1).MaxX, share.MinX, Tolerance);
                Assert.True(window.MinX <= share.MinX + Tolerance && share.MaxX <= window.MaxX + Tolerance);
                if (column > 0)
                {
                    Assert.Equal(grid.Overlap, grid.WindowOf(0, column - 1).MaxX - window.MinX, Tolerance);
                }
            }

            for (var row = 0; row < grid.Rows; row++)
            {
                var (share, window) = (grid.ShareOf(row, 0), grid.WindowOf(row, 0));
                Assert.Equal(row == 0 ? grid.Height : grid.ShareOf(row - 1, 0).MinY, share.MaxY, Tolerance);
                Assert.True(window.MinY <= share.MinY + Tolerance && share.MaxY <= window.MaxY + Tolerance);
                if (row > 0)
                {
                    Assert.Equal(grid.Overlap, window.MaxY - grid.WindowOf(row - 1, 0).MinY, Tolerance);
                }
            }

            var (last, lowest) = (grid.ShareOf(grid.Rows - 1, grid.Columns - 1), grid.WindowOf(grid.Rows - 1, grid.Columns - 1));
            Assert.Equal((grid.Width, 0), (last.MaxX, last.MinY));
            Assert.Equal(grid.Width, lowest.MaxX, Tolerance);
            Assert.Equal(0, lowest.MinY, Tolerance);
            Assert.True(grid.WindowWidth <= layout.Area.Width + Tolerance && grid.WindowHeight <= layout.Area.Height + Tolerance);
        },
        seed: "0000PlanForge", iter: 3000);

    // Truth: n windows of the greatest width w reach n w - (n - 1) o; one fewer must not reach (closed form).
    [Fact]
    public void No_fewer_tiles_would_do() => Grids.Sample(
        sample =>
        {
            var (grid, layout) = sample;
            Assert.True(grid.Columns == 1 || Reach(grid.Columns - 1, layout.Area.Width, grid.Overlap) < grid.Width);
            Assert.True(grid.Rows == 1 || Reach(grid.Rows - 1, layout.Area.Height, grid.Overlap) < grid.Height);
        },
        seed: "0000PlanForge", iter: 3000);

    [Fact]
    public void Names_run_by_rows_and_skip_letters_that_look_like_figures()
    {
        var names = Enumerable.Range(0, 60).Select(row => TileGrid.NameOf(row, 0)).ToArray();
        Assert.Equal(["A1", "B1", "C1", "D1", "E1", "F1", "G1", "H1", "J1"], names[..9]);
        Assert.Equal(["Z1", "AA1", "AB1"], names[23..26]);
        Assert.Equal(60, names.Distinct().Count());
        Assert.All(names, name => Assert.DoesNotContain(name, letter => letter is 'I' or 'O'));
        Assert.Equal("B12", TileGrid.NameOf(1, 11));
    }

    private static double Reach(int count, double window, double overlap) => (count * window) - ((count - 1) * overlap);

    private static readonly Gen<(TileGrid Grid, TileLayout Layout)> Grids =
        from paper in Gen.OneOf([.. Paper.All.Where(paper => paper.Width < 500).Select(paper => Gen.Const(paper))])
        from margin in Gen.Double[0, 25]
        from overlap in Gen.Double[0, 30]
        from width in Gen.Double[100, 5000]
        from height in Gen.Double[100, 2000]
        from isAcross in Gen.Bool
        let layout = TileLayout.For(new(paper, margin, overlap))[isAcross ? 1 : 0]
        select (new TileGrid(width, height, layout.Area, overlap), layout);
}
