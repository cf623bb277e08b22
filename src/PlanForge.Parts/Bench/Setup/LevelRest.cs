using System.Collections.Immutable;
using PlanForge.Geometry;
using PlanForge.Geometry.Fitting;
using PlanForge.Parts.Shapes;

namespace PlanForge.Parts.Bench.Setup;

/// <summary>
/// A template that stands plumb on a wing, along the body: its lower edge follows the surface from the leading to the trailing edge, its
/// upper edge is parallel to the datum line. A lip lies against the leading edge.
/// </summary>
/// <param name="Across">Distance from the centre line, mm. Port and starboard are the same template.</param>
/// <param name="Incidence">Angle of the chord line to the datum line there, radians: incidence and twist.</param>
/// <param name="Chord">Length of the chord there, seen from the side, mm.</param>
/// <param name="Profile">The lower edge; x aft from the nose, y up from it.</param>
/// <param name="Contour">The whole outline, anticlockwise.</param>
/// <param name="Upper">Height of the upper edge over the nose, mm.</param>
internal sealed record LevelRest(double Across, double Incidence, double Chord, Path2 Profile, Path2 Contour, double Upper)
{
    // Wood above the highest point of the section, mm: room for a bubble level's weight and for the name.
    private const double Back = 22;

    private const double LipLength = 6;
    private const double LipDepth = 4;

    /// <summary>Height of the upper edge over the trailing edge, mm.</summary>
    public double UpperAtRear => Upper - Profile.End.Y;

    /// <summary>The level rest on a surface at a distance from the centre line.</summary>
    /// <param name="wing">The wing or tailplane.</param>
    /// <param name="side">The surface it stands on: on the lower one the airframe lies upside down.</param>
    /// <param name="across">Distance from the centre line, mm, under the half span.</param>
    public static LevelRest On(WingShape wing, WingSide side, double across)
    {
        Point3 leading = PinPoints.EdgeAt(wing, across, 0), trailing = PinPoints.EdgeAt(wing, across, 1);
        var exact = new WingProfile(wing, side, across).Samples(WingShape.Nose, 1);
        var nose = exact[0].Point;
        var up = side == WingSide.Upper ? 1 : -1;
        ImmutableArray<CurveSample> samples = [.. exact.Select(sample => new CurveSample(
            new(sample.Point.X - nose.X, up * (sample.Point.Y - nose.Y)), new(sample.Direction.X, up * sample.Direction.Y)))];
        var profile = ArcFitter.Fit(samples, Drawn.Tolerance);
        var upper = profile.Bounds.MaxY + Back;

        // The lip is square to the chord line, as the nose is: to the line to an open trailing edge's corner it would make a kink.
        var chord = new Vector2(trailing.X - leading.X, up * (trailing.Z - leading.Z)).Unit();
        var down = -chord.Left * LipDepth;
        var foot = Point2.Origin - (chord * LipLength) + down;
        var contour = Path2.Closed([
            new(foot), new(Point2.Origin + down), .. profile.Vertices[..^1], new(profile.End), new(new(profile.End.X, upper)), new(new(foot.X, upper))]);
        var incidence = Math.Atan2(leading.Z - trailing.Z, trailing.X - leading.X);
        return new(across, incidence, trailing.X - leading.X, profile, contour, upper);
    }
}
