using PlanForge.Drafting.Clipping;
using PlanForge.Drafting.Conventions;
using PlanForge.Geometry;

namespace PlanForge.Drafting.Dimensions.Placing;

/// <summary>Finds the place for a text that points at something from a distance: rings of places around the target, outward.</summary>
internal sealed class LeaderPlaces
{
    /// <summary>What a line through a text is worth avoiding by, in mm of longer leader.</summary>
    public const double TextOnLine = 100;

    // Rings, mm: nearer than the first the arrow has no room; the step is about half a letter's height.
    private const double FirstRing = 7;
    private const double RingStep = 3;

    // Beyond the longest paper all places are free: a search that gets here was given no place at all, and ends.
    private const double LastRing = 20_000;

    // Costs in mm of leader, as above: a leader across a text is worst, crossing lines of dimensions are merely untidy.
    private const double TextNearLine = 6;
    private const double LeaderOnText = 200;
    private const double LeaderOnDimension = 10;
    private const double LeaderOnPart = 1.5;
    private const double TextInside = 6;
    private const double Turned = 8;

    // Leader lines are oblique, never along the lines of the part (ISO 128-22, from memory): degrees from level on both sides.
    private static ReadOnlySpan<double> Slopes => [45, -45, 60, -60, 30, -30, 75, -75];

    private readonly Obstacles _obstacles;
    private readonly EvenOddArea _material;

    public LeaderPlaces(Obstacles obstacles, EvenOddArea material) => (_obstacles, _material) = (obstacles, material);

    /// <summary>The best place of a leader, and what it costs in mm of leader.</summary>
    /// <param name="target">What it points at: a place, or the middle of a circle.</param>
    /// <param name="radius">Radius of the circle, or 0.</param>
    /// <param name="ink">The text.</param>
    /// <param name="wanted">The direction in which the part would have its text.</param>
    /// <param name="owner">Whose reserved arrow room may be used.</param>
    public (LeaderPlace Place, double Cost) Find(Point2 target, double radius, TextInk ink, Vector2 wanted, int owner)
    {
        LeaderPlace? best = null;
        var least = double.PositiveInfinity;
        for (var ring = FirstRing; ring < Math.Min(least, LastRing); ring += RingStep)
        {
            foreach (var right in (ReadOnlySpan<bool>)[true, false])
            {
                foreach (var slope in Slopes)
                {
                    var direction = Vector2.FromAngle(double.DegreesToRadians(right ? slope : 180 - slope));
                    var place = LeaderPlace.Of(target, radius, direction, ring, ink);
                    var turned = wanted == default ? 0 : Turned * (1 - direction.Dot(wanted.Unit()));
                    var cost = ring + turned;
                    if (cost < least && _obstacles.IsFree(place.Box, owner) && cost + FaultsOf(place) is var whole && whole < least)
                    {
                        (best, least) = (place, whole);
                    }
                }
            }
        }

        return (best ?? throw new InvalidOperationException($"'{ink.Text}' points at no place: {target}."), least);
    }

    private double FaultsOf(LeaderPlace place)
    {
        var slanted = _obstacles.LinesOn(place.Knee, place.Tip);
        var level = _obstacles.LinesOn(place.Side, place.Knee);
        var lines = _obstacles.LinesAt(place.Box);
        return (TextOnLine * lines.Through) + (TextNearLine * lines.Near)
            + (LeaderOnText * (_obstacles.TextsOn(place.Side, place.Knee) + _obstacles.TextsOn(place.Knee, place.Tip)))
            + (LeaderOnDimension * (slanted.OfDimensions + level.OfDimensions))
            + (LeaderOnPart * (slanted.OfPart + level.OfPart))
            + (_material.Contains(place.Box.Centre) ? TextInside : 0);
    }
}

/// <summary>A leader in place.</summary>
/// <param name="Ink">The text.</param>
/// <param name="TextAt">Start of its baseline.</param>
/// <param name="Side">Where the level piece of the line meets the text.</param>
/// <param name="Knee">Where the line turns level.</param>
/// <param name="Tip">Where the arrow points.</param>
internal readonly record struct LeaderPlace(TextInk Ink, Point2 TextAt, Point2 Side, Point2 Knee, Point2 Tip)
{
    // Clear space between text and line, and the level piece of the line beside the text.
    private const double Gap = 1;
    private const double Shoulder = 2;

    /// <summary>The room of the text.</summary>
    public TextBox Box => Ink.At(TextAt, 0);

    /// <summary>The leader that leaves a target in a direction.</summary>
    /// <param name="target">What it points at.</param>
    /// <param name="radius">Radius of a circle that the arrow touches, or 0.</param>
    /// <param name="direction">Unit direction from the target to the knee.</param>
    /// <param name="length">Length of the slanted line, mm, over 0.</param>
    /// <param name="ink">The text.</param>
    public static LeaderPlace Of(Point2 target, double radius, Vector2 direction, double length, TextInk ink)
    {
        var tip = target + (direction * radius);
        var knee = tip + (direction * length);
        var toText = new Vector2(direction.X < 0 ? -1 : 1, 0);
        var side = knee + (toText * Shoulder);
        var start = side + (toText * (direction.X < 0 ? Gap + ink.Width : Gap)) - new Vector2(0, ink.Height / 2);
        return new(ink, start, side, knee, tip);
    }

    /// <summary>Takes the room of the leader's text and lines.</summary>
    public void Take(Obstacles obstacles)
    {
        obstacles.AddText(Box);
        obstacles.AddLine(Side, Knee, isDimension: true);
        obstacles.AddLine(Knee, Tip, isDimension: true);
    }

    /// <summary>The room that the arrow head of any leader to a target may take.</summary>
    public static TextBox ArrowRoom(Point2 target, double radius)
    {
        var reach = radius + Arrowhead.Length + (Arrowhead.Length / 2);
        return new(target - new Vector2(reach, reach), new(1, 0), 2 * reach, 2 * reach);
    }
}
