namespace PlanForge.Geometry;

/// <summary>A rigid motion of the plane: an optional mirroring in the y axis (x becomes −x), then a turn, then a move.</summary>
/// <param name="IsMirrored">True when left and right change places before the turn.</param>
/// <param name="Turn">Angle of the turn about the origin, radians, anticlockwise positive.</param>
/// <param name="Move">The displacement after the turn, mm.</param>
public readonly record struct Placement2(bool IsMirrored, double Turn, Vector2 Move)
{
    /// <summary>Leaves everything where it is.</summary>
    public static Placement2 Identity => default;

    /// <summary>Mirrors in the y axis: x becomes −x.</summary>
    public static Placement2 Mirror => new(true, 0, default);

    /// <summary>Moves only.</summary>
    public static Placement2 MovedBy(Vector2 move) => new(false, 0, move);

    /// <summary>Turns about the origin only, radians, anticlockwise positive.</summary>
    public static Placement2 TurnedBy(double radians) => new(false, radians, default);

    /// <summary>Where a point goes.</summary>
    public Point2 Apply(Point2 point) => Point2.Origin + Apply(point - Point2.Origin) + Move;

    /// <summary>Where a direction or displacement goes: mirrored and turned, not moved.</summary>
    public Vector2 Apply(Vector2 vector)
    {
        var mirrored = IsMirrored ? new Vector2(-vector.X, vector.Y) : vector;
        return Turn == 0 ? mirrored : mirrored.Turned(Turn);
    }

    /// <summary>This motion first, then another.</summary>
    public Placement2 Then(Placement2 next) => new(
        IsMirrored ^ next.IsMirrored,
        (next.IsMirrored ? -Turn : Turn) + next.Turn,
        next.Apply(Move) + next.Move);
}
