namespace PlanForge.Geometry.Fitting;

/// <summary>Two arcs that lead from one sample to another, tangent there and to each other.</summary>
/// <remarks>
/// Of the one-parameter family the one with equal tangent lengths, which on a spiral has the error |dκ/ds|·h³/324. The tangent
/// length d solves |v − d(t₀ + t₁)| = 2d with v the chord and t₀, t₁ the end directions; the arcs meet half way between the
/// points d ahead of the start and d before the end.
/// </remarks>
internal readonly struct Biarc
{
    // An arc that leaves its chord by less than this, mm, and its direction by less than this, radians, is a line.
    private const double LeastSagitta = 1e-9;
    private const double LeastTurn = 1e-7;

    private readonly Vector2 _direction;
    private readonly Carrier _before;
    private readonly Carrier _after;

    /// <summary>The biarc between two different points. The directions must not point away from the chord.</summary>
    public Biarc(in CurveSample start, in CurveSample end)
    {
        var chord = end.Point - start.Point;
        var along = chord.Dot(start.Direction + end.Direction);
        var root = Math.Sqrt((along * along) + ((start.Direction - end.Direction).LengthSquared * chord.LengthSquared));
        var tangentLength = chord.LengthSquared / (along + root);
        var (ahead, behind) = (start.Point + (start.Direction * tangentLength), end.Point - (end.Direction * tangentLength));
        var joint = ahead.Towards(behind, 0.5);
        _direction = (behind - ahead).Unit();
        First = new(start.Point, joint, Bulge(start.Direction, joint - start.Point));
        Second = new(joint, end.Point, -Bulge(end.Direction, end.Point - joint));
        (_before, _after) = (Carrier.Of(First), Carrier.Of(Second));
    }

    /// <summary>The first arc (or line).</summary>
    public Segment2 First { get; }

    /// <summary>The second arc (or line).</summary>
    public Segment2 Second { get; }

    /// <summary>How far a curve's sample lies from the biarc, mm, and the sine of the angle between both there.</summary>
    public (double Distance, double Slope) Deviation(in CurveSample sample)
    {
        var carrier = (sample.Point - First.End).Dot(_direction) < 0 ? _before : _after;
        return (carrier.SignedDistance(sample.Point), carrier.LeftNear(sample.Point).Dot(sample.Direction));
    }

    // Half the sweep is the angle from the tangent to the chord, and the bulge the tangent of half of that.
    private static double Bulge(Vector2 tangent, Vector2 chord)
    {
        var length = chord.Length;
        var bulge = tangent.Cross(chord) / (length + tangent.Dot(chord));
        return Math.Abs(bulge) * length / 2 < LeastSagitta && Math.Abs(bulge) * 2 < LeastTurn ? 0 : bulge;
    }
}
