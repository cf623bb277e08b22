using PlanForge.Drafting.Conventions;
using PlanForge.Drafting.Dimensions.Placing;
using PlanForge.Drafting.Model;
using PlanForge.Geometry;
using PlanForge.Parts;

namespace PlanForge.Drafting.Arrangement;

/// <summary>Draws dimensions and leaders whose places the views have chosen already.</summary>
internal static class PlacedAnnotation
{
    // Clear space between text and leader, and the level piece of the leader beside the text, mm.
    private const double Gap = 1;
    private const double Shoulder = 2;

    /// <summary>Draws a dimension with its text in the middle, or beside it where it is narrow.</summary>
    public static void Draw(Sketch sketch, PartDimension.Linear dimension, string text, double height)
    {
        var line = new DimensionLine(dimension, dimension.Offset, new(text, height));
        var start = line.TextStarts().First();
        line.Draw(sketch, start);
        sketch.Text(Layer.Dimensions, text, line.TextAt(start), height, line.Angle);
    }

    /// <summary>Draws a text with a line and an arrow to the place it speaks of.</summary>
    public static void Draw(Sketch sketch, PartDimension.Leader leader, double height)
    {
        var ink = new TextInk(leader.Text, height);
        var middle = leader.TextAt + new Vector2(0, height / 2);
        var isTargetLeft = leader.At.X <= leader.TextAt.X + (ink.Width / 2);
        var side = isTargetLeft ? middle - new Vector2(Gap, 0) : middle + new Vector2(ink.Width + Gap, 0);
        var knee = side + new Vector2(isTargetLeft ? -Shoulder : Shoulder, 0);
        if (knee.DistanceTo(leader.At) > Arrowhead.Length)
        {
            sketch.Stroke(Layer.Dimensions, Path2.Polyline(side, knee, leader.At), LineConventions.Thin);
            Arrowhead.Draw(sketch, leader.At, (leader.At - knee).Unit());
        }
        else
        {
            sketch.Line(Layer.Dimensions, side, leader.At, LineConventions.Thin);
        }

        sketch.Text(Layer.Dimensions, leader.Text, leader.TextAt, height);
    }
}
