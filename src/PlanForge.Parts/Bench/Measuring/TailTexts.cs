using System.Collections.Immutable;
using PlanForge.Parts.Wording;

namespace PlanForge.Parts.Bench.Measuring;

/// <summary>Says what the bench found of tailplane and thrust line, as <see cref="BenchTexts"/> does of the wing.</summary>
/// <param name="text">Writes lengths.</param>
public sealed class TailTexts(MeasureText text)
{
    private readonly BenchTexts _texts = new(text);

    /// <summary>Each unknown of the tailplane with its uncertainty, then the decalage.</summary>
    public ImmutableArray<(string Label, string Value)> Estimates(TailResult tail)
    {
        ArgumentNullException.ThrowIfNull(tail);
        var rows = _texts.Estimates(tail.Estimates, tail.DrawnIncidence);
        return tail.Decalage is { } decalage
            ? rows.Add(("decalage, wing over tailplane", $"{Angle(decalage.Value)} ± {Angle(decalage.HalfWidth)}, drawn {Angle(decalage.Drawn)}"))
            : rows;
    }

    /// <summary>Each angle of the shaft with its verdict.</summary>
    public static ImmutableArray<(string Label, string Value, string Verdict)> Thrust(ThrustResult thrust)
    {
        ArgumentNullException.ThrowIfNull(thrust);
        var rows = ImmutableArray.CreateBuilder<(string, string, string)>();
        Add("down-thrust", thrust.Down);
        Add("side-thrust to the right (starboard)", thrust.Right);
        return rows.ToImmutable();

        void Add(string label, ThrustAngle? angle)
        {
            if (angle is { } it)
            {
                rows.Add((label, $"{Angle(it.Value)} ± {Angle(it.HalfWidth)}, drawn {Angle(it.Drawn)}", BenchTexts.VerdictOf(it.IsWithin, it.IsSure, Angle(it.Tolerance))));
            }
        }
    }

    /// <summary>Head of the table of <see cref="Washers"/>.</summary>
    public static ImmutableArray<string> WashersHead => ["bolt, from the tail", "by the plan", "add", "or in all"];

    /// <summary>Washers at the four bolts.</summary>
    public IEnumerable<ImmutableArray<string>> Washers(WasherChange washers)
    {
        ArgumentNullException.ThrowIfNull(washers);
        return washers.Bolts.Select(bolt => ImmutableArray.Create(
            BoltName(bolt.Bolt), text.Fine(bolt.Planned), text.Fine(bolt.More), text.Fine(bolt.InAll)));
    }

    /// <summary>What to do about a round's tailplane and thrust line; empty when both are in order.</summary>
    public ImmutableArray<string> Advice(RoundResult round)
    {
        ArgumentNullException.ThrowIfNull(round);
        var lines = ImmutableArray.CreateBuilder<string>();
        if (round.Tail is { } tail)
        {
            AddTail(tail, isWingRight: round.Checks.All(check => check.Kind != CheckKind.Rise || check.IsWithin), lines);
        }

        if (round.Thrust is { IsWithin: false } thrust)
        {
            lines.Add(thrust.Washers is null
                ? "The thrust line is off: wedge the mount. With `mount` in the design's thrust_line the washers are told."
                : "The thrust line is off: add the washers of the table under the mount's bolts, between firewall and mount.");
        }

        return lines.ToImmutable();
    }

    private void AddTail(TailResult tail, bool isWingRight, ImmutableArray<string>.Builder lines)
    {
        var faulty = tail.Checks.Where(check => !check.IsWithin).Select(check => check.Kind).ToArray();
        if (tail.Seat is { } seat && (faulty.Contains(CheckKind.Across) || faulty.Contains(CheckKind.Rise)))
        {
            lines.Add($"Tailplane: sand its seat: {_texts.Corners(seat.TakeOff)}.");
            lines.Add($"Or shim it instead: {_texts.Corners(seat.Shims)}.");
        }

        if (tail.Decalage is { } decalage && (!isWingRight || faulty.Contains(CheckKind.Rise)))
        {
            lines.Add($"The decalage is {Angle(decalage.Value)} and should be {Angle(decalage.Drawn)}. To have it without touching the wing, shim the tailplane: {_texts.Corners(decalage.Seat.Shims)}.");
        }

        if (tail.Square is { } square && faulty.Contains(CheckKind.Square))
        {
            lines.Add("Tailplane: " + _texts.SquareText(square));
        }

        if (faulty.Contains(CheckKind.RiseAcross))
        {
            lines.Add("The tailplane is warped: no seat cures that. Straighten it before anything else.");
        }

        if (tail.IsWingTakenSquare)
        {
            lines.Add("The tailplane's yaw is told from the wing's tips, and no cords tell whether the wing is square: it is taken to be.");
        }
    }

    /// <summary>A bolt as the builder calls it who looks forward from the tail.</summary>
    private static string BoltName(string bolt) =>
        bolt.EndsWith("starboard", StringComparison.Ordinal) ? bolt[..^"starboard".Length] + "right (starboard)" : bolt[..^"port".Length] + "left (port)";

    private static string Angle(double radians) => MeasureText.Angle(radians);
}
