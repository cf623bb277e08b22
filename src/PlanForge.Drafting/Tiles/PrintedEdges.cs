using PlanForge.Drafting.Conventions;
using PlanForge.Drafting.Measures;
using PlanForge.Drafting.Model;
using PlanForge.Drafting.Sheets;

namespace PlanForge.Drafting.Tiles;

/// <summary>The check bars along the foot and the left edge of a tile or instruction page.</summary>
internal static class PrintedEdges
{
    /// <summary>Room for a bar's length in words behind its end, mm.</summary>
    public const double BarLabel = 16;

    private const double BarLift = 5;
    private const double BarIndent = 3.2;

    /// <summary>Draws both bars: 100 mm where they fit, else as many whole centimetres as do.</summary>
    /// <param name="sketch">Where they are drawn.</param>
    /// <param name="layout">The page.</param>
    /// <param name="width">Room for the level bar and its label from the left end of the strip, mm.</param>
    public static void Draw(Sketch sketch, TileLayout layout, double width)
    {
        var (left, bottom) = (layout.Printable.MinX, layout.Printable.MinY);
        Bar(sketch, new(left + 0.2, bottom + BarLift), new(1, 0), width - BarLabel);
        Bar(sketch, new(left + BarIndent, layout.Strip.MaxY + 1), new(0, 1), layout.Printable.MaxY - layout.Strip.MaxY - BarLabel);
        sketch.Line(
            Layer.Frame, new(left, layout.Strip.MaxY), new(layout.Printable.MaxX, layout.Strip.MaxY), LineConventions.Thin);
    }

    private static void Bar(Sketch sketch, Geometry.Point2 start, Geometry.Vector2 along, double room)
    {
        var parts = (int)Math.Clamp(Math.Floor(room / 10), 1, 10);
        CheckBars.Draw(sketch, start, along, 10 * parts, parts, 5, $"{Measure.Number(10 * parts, 0)} mm");
    }
}
