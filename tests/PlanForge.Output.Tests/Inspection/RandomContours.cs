using PlanForge.Geometry;

namespace PlanForge.Output.Tests.Inspection;

/// <summary>Parts that are sound by construction: a star-shaped outline of 5 to 12 sides, some of them shallow arcs, and a hole about its middle.</summary>
internal sealed record RandomContours(Path2 Outline, Point2 Middle, double HoleRadius)
{
    public static RandomContours Of(int seed)
    {
        var random = new Random(seed);
        var middle = new Point2((random.NextDouble() * 100) - 50, (random.NextDouble() * 100) - 50);
        var count = random.Next(5, 13);
        var vertices = new PathVertex[count];
        for (var i = 0; i < count; i++)
        {
            // Radii of 120 to 200 mm: no side is shorter than 30 mm, nor nearer to the middle than some 80 mm.
            var angle = ((i + (0.4 * random.NextDouble())) * 2 * Math.PI / count) + 0.1;
            var bulge = random.Next(3) == 0 ? (random.NextDouble() * 0.1) + 0.02 : 0;
            vertices[i] = new(middle + (Vector2.FromAngle(angle) * (120 + (80 * random.NextDouble()))), bulge);
        }

        return new(Path2.Closed(vertices), middle, 5 + (10 * random.NextDouble()));
    }

    /// <summary>As single lines and arcs in any order and direction, and a circle.</summary>
    public List<string> Entities(Random random)
    {
        var entities = Outline.Segments.Select(segment => CutFileText.Entity(random.Next(2) == 0 ? segment : segment.Reversed())).ToArray();
        random.Shuffle(entities);
        return [.. entities, CutFileText.Circle(Middle, HoleRadius)];
    }
}
