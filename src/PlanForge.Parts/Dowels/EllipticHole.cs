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
            return new(centre + new Vector2(across * cos, along * sin), new Vector2(-across * sin, along * cos).Unit());
        }

        const int Steps = 96;
        var samples = new CurveSample[Steps];
        for (var i = 0; i < Steps; i++)
        {
            samples[i] = At(2 * Math.PI * i / Steps);
        }

        return ArcFitter.FitClosed(samples, Drawn.Tolerance).Reversed();
    }
}
