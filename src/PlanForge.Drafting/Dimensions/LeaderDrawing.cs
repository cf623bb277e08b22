using PlanForge.Drafting.Conventions;
using PlanForge.Drafting.Lettering;
using PlanForge.Drafting.Model;
using PlanForge.Geometry;
using PlanForge.Parts;

namespace PlanForge.Drafting.Dimensions;

/// <summary>Draws a text with a line and an arrow to the place it speaks of.</summary>
internal static class LeaderDrawing
{
    // Clear space between text and line, and the level piece of the line beside the text.
    private const double Gap = 1;
    private const double Shoulder = 2;

    /// <summary>Draws a leader and returns the room its text takes.</summary>
    public static Bounds2 Draw(Sketch sketch, PartDimension.Leader leader, double height)
    {
        var width = StrokeAlphabet.WidthOf(leader.Text, height);
        var middle = leader.TextAt + new Vector2(0, height / 2);
        var isTargetLeft = leader.At.X <= leader.TextAt.X + (width / 2);
        var side = isTargetLeft ? middle - new Vector2(Gap, 0) : middle + new Vector2(width + Gap, 0);
        var knee = side + new Vector2(isTargetLeft ? -Shoulder : Shoulder, 0);
        if (knee.DistanceTo(leader.At) > Arrowhead.Length)
        {
            sketch.Stroke(Layer.Dimensions, Path2.Open([new(side), new(knee), new(leader.At)]), LineConventions.Thin);
            Arrowhead.Draw(sketch, leader.At, (leader.At - knee).Unit());
        }
        else
        {
            sketch.Line(Layer.Dimensions, side, leader.At, LineConventions.Thin);
        }

        return sketch.Text(Layer.Dimensions, leader.Text, leader.TextAt, height);
    }
}
