using PlanForge.Drafting.Conventions;
using PlanForge.Drafting.Lettering;
using PlanForge.Drafting.Model;
using PlanForge.Geometry;

namespace PlanForge.Drafting.Tiles;

/// <summary>The map of a sheet's tiles, small on every tile and large on the first page.</summary>
internal static class PageMap
{
    private const double GreatestName = 5;
    private const double LeastName = 1.5;

    /// <summary>Draws the small map, with one tile filled.</summary>
    public static void DrawSmall(Sketch sketch, TiledSheet sheet, Bounds2 room, int row, int column)
    {
        var place = new Place(sheet, room);
        sketch.Fill(Layer.Frame, Path2.Rectangle(place.Of(sheet.Grid.ShareOf(row, column))));
        DrawGrid(sketch, sheet, place);
    }

    /// <summary>Draws the large map: outlines of what is to be cut, and the name of each tile.</summary>
    public static TileMap Large(TiledSheet sheet, Bounds2 room, string name)
    {
        var sketch = new Sketch();
        var place = new Place(sheet, room);
        foreach (var item in sheet.Sheet.Drawing.Items)
        {
            if (item is DrawingItem.Stroke { Layer: Layer.Cut } stroke)
            {
                sketch.Stroke(Layer.Reference, place.Of(stroke.Path), LineConventions.StyleOf(Parts.LineUse.Station));
            }
        }

        DrawGrid(sketch, sheet, place);
        for (var row = 0; row < sheet.Grid.Rows; row++)
        {
            for (var column = 0; column < sheet.Grid.Columns; column++)
            {
                if (sheet.IsKept(row, column))
                {
                    DrawName(sketch, TileGrid.NameOf(row, column), place.Of(sheet.Grid.ShareOf(row, column)));
                }
            }
        }

        return new(sketch, new(name, place.Of(new Bounds2(0, 0, sheet.Grid.Width, sheet.Grid.Height)), place.Scale));
    }

    private static void DrawName(Sketch sketch, string name, Bounds2 cell)
    {
        var height = Math.Clamp(Math.Min(cell.Height * 0.5, cell.Width * 0.8 / StrokeAlphabet.WidthOf(name, 1)), LeastName, GreatestName);
        sketch.Text(Layer.Frame, name, new(cell.Centre.X - (StrokeAlphabet.WidthOf(name, height) / 2), cell.Centre.Y - (height / 2)), height);
    }

    /// <summary>Draws border and joint lines, each once: a line drawn twice comes out darker; crosses out what has no page.</summary>
    private static void DrawGrid(Sketch sketch, TiledSheet sheet, Place place)
    {
        var grid = sheet.Grid;
        var border = place.Of(new Bounds2(0, 0, grid.Width, grid.Height));
        sketch.Stroke(Layer.Frame, Path2.Rectangle(border), LineConventions.Thin);
        for (var column = 1; column < grid.Columns; column++)
        {
            var x = place.Of(grid.ShareOf(0, column)).MinX;
            sketch.Line(Layer.Frame, new(x, border.MinY), new(x, border.MaxY), LineConventions.Thin);
        }

        for (var row = 1; row < grid.Rows; row++)
        {
            var y = place.Of(grid.ShareOf(row, 0)).MaxY;
            sketch.Line(Layer.Frame, new(border.MinX, y), new(border.MaxX, y), LineConventions.Thin);
        }

        for (var row = 0; row < grid.Rows; row++)
        {
            for (var column = 0; column < grid.Columns; column++)
            {
                if (!sheet.IsKept(row, column))
                {
                    var cell = place.Of(grid.ShareOf(row, column));
                    sketch.Line(Layer.Frame, new(cell.MinX, cell.MinY), new(cell.MaxX, cell.MaxY), LineConventions.Thin);
                    sketch.Line(Layer.Frame, new(cell.MinX, cell.MaxY), new(cell.MaxX, cell.MinY), LineConventions.Thin);
                }
            }
        }
    }

    /// <summary>From a sheet to its map in the middle of some room.</summary>
    private readonly struct Place
    {
        private readonly Point2 _corner;

        public Place(TiledSheet sheet, Bounds2 room)
        {
            Scale = Math.Min(room.Width / sheet.Grid.Width, room.Height / sheet.Grid.Height);
            _corner = room.Centre - (new Vector2(sheet.Grid.Width, sheet.Grid.Height) * (Scale / 2));
        }

        public double Scale { get; }

        public Point2 Of(Point2 point) => _corner + ((point - Point2.Origin) * Scale);

        public Bounds2 Of(Bounds2 bounds) => Bounds2.Around(Of(new Point2(bounds.MinX, bounds.MinY)), Of(new Point2(bounds.MaxX, bounds.MaxY)));

        public Path2 Of(Path2 path) => path.Scaled(Scale).Placed(Placement2.MovedBy(_corner - Point2.Origin));
    }
}

/// <summary>A large map; nobody may add to its sketch.</summary>
/// <param name="Sketch">What is drawn.</param>
/// <param name="View">Its place and scale.</param>
internal sealed record TileMap(Sketch Sketch, ScaledView View);
