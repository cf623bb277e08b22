using PlanForge.Drafting.Conventions;
using PlanForge.Drafting.Lettering;
using PlanForge.Drafting.Measures;
using PlanForge.Drafting.Model;
using PlanForge.Geometry;
using PlanForge.Parts;

namespace PlanForge.Drafting.Sheets;

/// <summary>A line at which two pieces of a part are joined; it is interrupted where it would run through a text.</summary>
internal static class MatchLine
{
    // How far it stands out on either side of the part, and room for its name there, mm.
    private const double Overrun = 4;
    private const double TextGap = 1;

    /// <summary>Draws the line with its name and that of the other piece.</summary>
    /// <param name="sketch">The piece.</param>
    /// <param name="from">Its lower or left end.</param>
    /// <param name="to">Its upper or right end.</param>
    /// <param name="name">Its letter.</param>
    /// <param name="neighbour">Number of the other piece.</param>
    public static void Draw(Sketch sketch, Point2 from, Point2 to, string name, int neighbour)
    {
        var along = (to - from).Unit();
        var (start, end) = (from - (along * Overrun), to + (along * Overrun));
        foreach (var (first, last) in BetweenTexts(sketch, start, end))
        {
            sketch.Line(Layer.CentreAndDatum, first, last, LineConventions.StyleOf(LineUse.Neighbour));
        }

        var text = $"match line {name}: joins piece {Measure.Number(neighbour, 0)}";
        if (along.Y > 0.5)
        {
            var width = StrokeAlphabet.WidthOf(text, LetteringSizes.Least);
            sketch.Text(Layer.Notes, text, end + new Vector2(-width / 2, TextGap), LetteringSizes.Least);
        }
        else
        {
            sketch.Text(Layer.Notes, text, end + new Vector2(TextGap, -LetteringSizes.Least / 2), LetteringSizes.Least);
        }
    }

    /// <summary>The stretches of an upright or level line that run through no text.</summary>
    private static List<(Point2 First, Point2 Last)> BetweenTexts(Sketch sketch, Point2 start, Point2 end)
    {
        var along = (end - start).Unit();
        var line = Bounds2.Around(start, end);
        var gaps = new List<(double From, double To)>();
        foreach (var item in sketch.Items)
        {
            if (item is DrawingItem.Text text && ItemExtents.Of(text).Grown(TextGap) is var room && room.Touches(line))
            {
                var (low, high) = (new Point2(room.MinX, room.MinY), new Point2(room.MaxX, room.MaxY));
                gaps.Add(((low - start).Dot(along), (high - start).Dot(along)));
            }
        }

        gaps.Sort();
        gaps.Add((start.DistanceTo(end), double.PositiveInfinity));
        var stretches = new List<(Point2 First, Point2 Last)>();
        var reached = 0.0;
        foreach (var (from, to) in gaps)
        {
            if (from > reached)
            {
                stretches.Add((start + (along * reached), start + (along * from)));
            }

            reached = Math.Max(reached, to);
        }

        return stretches;
    }
}
