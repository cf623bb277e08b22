using PlanForge.Geometry;
using PlanForge.Geometry.Fitting;

namespace PlanForge.Parts.Dowels;

/// <summary>The hole that a round drill makes in a plane it meets at an angle, starboard or on the centre line.</summary>
/// <param name="Centre">Its middle.</param>
/// <param name="Across">Semi-axis along x, mm.</param>
/// <param name="Along">Semi-axis along y, mm.</param>
internal readonly record struct EllipticHole(Point2 Centre, double Across, double Along)
{
    // An ellipse nearer to its mean circle than this (mm) is drawn and cut as that circle: no drill tells them apart.
    private const double Round = 0.0025;

    /// <summary>The hole as a clockwise contour: a true circle where it is one within a few thousandths.</summary>
    public Path2 Contour(bool isPort = false)
    {
        var centre = isPort ? new Point2(-Centre.X, Centre.Y) : Centre;
        var (across, along) = (Across, Along);
        if (Math.Abs(across - along) / 2 < Round)
        {
            return Path2.Circle(centre, (across + along) / 2).Reversed();
        }

        CurveSample At(double angle)
        {
            var (sin, cos) = Math.SinCos(angle);
            return new(new(across * cos, along * sin), new Vector2(-across * sin, along * cos).Unit());
        }

        // One quarter is fitted and mirrored both ways, so that the middle of the hole is exactly its centre.
        const int Steps = 24;
        var samples = new CurveSample[Steps + 1];
        for (var i = 0; i <= Steps; i++)
        {
            samples[i] = At(Math.PI / 2 * i / Steps);
        }

        samples[0] = new(new(across, 0), new(0, 1));
        samples[Steps] = new(new(0, along), new(-1, 0));
        var first = ArcFitter.Fit(samples, Drawn.Tolerance);
        var second = first.Placed(Placement2.Mirror).Reversed();
        var halfTurn = Placement2.TurnedBy(Math.PI);
        Path2[] quarters = [first, second, first.Placed(halfTurn), second.Placed(halfTurn)];
        var whole = Path2.Closed(quarters.SelectMany(quarter => quarter.Vertices[..^1]));
        return whole.Placed(Placement2.MovedBy(centre - Point2.Origin)).Reversed();
    }
}
