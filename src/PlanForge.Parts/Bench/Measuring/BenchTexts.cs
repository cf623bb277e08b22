using System.Collections.Immutable;
using PlanForge.Airframe.Measuring;
using PlanForge.Parts.Wording;

namespace PlanForge.Parts.Bench.Measuring;

/// <summary>Says what the bench found, to the builder who stands at the tail and looks forward: left is port, right is starboard.</summary>
/// <param name="text">Writes lengths.</param>
public sealed class BenchTexts(MeasureText text)
{
    /// <summary>Each unknown with its uncertainty, or what is lacking to settle it.</summary>
    public ImmutableArray<(string Label, string Value)> Estimates(RoundResult round)
    {
        ArgumentNullException.ThrowIfNull(round);
        return Estimates(round.Estimates, round.DrawnIncidence);
    }

    internal ImmutableArray<(string Label, string Value)> Estimates(ImmutableArray<PoseEstimate> estimates, double drawnIncidence)
    {
        var rows = ImmutableArray.CreateBuilder<(string, string)>();
        foreach (var it in estimates)
        {
            rows.Add((LabelOf(it.Unknown), it.HalfWidth is { } half ? ValueOf(it.Unknown, it.Value, half) : "not settled: " + it.Lack));
            if (it is { Unknown: PoseUnknown.Incidence, IsSettled: true })
            {
                rows.Add(("incidence as it is", $"{MeasureText.Angle(drawnIncidence + it.Value)}, drawn {MeasureText.Angle(drawnIncidence)}"));
            }
        }

        return rows.ToImmutable();
    }

    /// <summary>Each error at pins and cords with its verdict.</summary>
    public ImmutableArray<(string Label, string Value, string Verdict)> Checks(ImmutableArray<BenchCheck> checks) =>
    [
        .. checks.Select(check => (
            LabelOf(check.Kind),
            $"{WithSign(check.Value)} ± {text.FineWithUnit(check.HalfWidth)}",
            VerdictOf(check.IsWithin, check.IsSure, text.FineWithUnit(check.Tolerance)))),
    ];

    /// <summary>What to do about a round, one sentence a line; empty when everything that is settled is in order.</summary>
    public ImmutableArray<string> Advice(RoundResult round)
    {
        ArgumentNullException.ThrowIfNull(round);
        var lines = ImmutableArray.CreateBuilder<string>();
        var faulty = round.Checks.Where(check => !check.IsWithin).Select(check => check.Kind).ToArray();
        if (round.Correction is { } correction && CorrectionParts.IsNeeded(round))
        {
            lines.Add($"Sand the saddles by the table, at most {text.FineWithUnit(correction.Most)}; the root leading edge then {MoveOf(correction.LeadingEdgeMove)}.");
            lines.Add($"Or shim instead: {Corners(correction.Shims)}.");
        }

        if (round.Square is { } square && faulty.Contains(CheckKind.Square))
        {
            lines.Add(SquareText(square));
        }

        if (faulty.Contains(CheckKind.RiseAcross))
        {
            lines.Add("The wing is warped: its halves stand at different incidences. Sanding turns both alike and cannot cure that; "
                + "the saddles are corrected for the mean of both. Straighten the wing, or live with it.");
        }

        lines.AddRange(new TailTexts(text).Advice(round));
        return lines.ToImmutable();
    }

    /// <summary>Whether a round is in order, in two words or three.</summary>
    public static string Verdict(RoundResult round)
    {
        ArgumentNullException.ThrowIfNull(round);
        return !round.IsSettled ? "nothing settled" : round.IsWithin ? "within tolerance" : "out of tolerance";
    }

    /// <summary>Errors in a line: the words and values.</summary>
    public string Line(ImmutableArray<BenchCheck> checks) =>
        string.Join(", ", checks.Select(check => $"{ShortName(check.Kind)} {WithSign(check.Value)} {text.UnitName}"));

    /// <summary>An error in one word.</summary>
    public static string ShortName(CheckKind kind) => kind switch
    {
        CheckKind.Across => "across",
        CheckKind.Rise => "rise",
        CheckKind.RiseAcross => "warp",
        _ => "square",
    };

    /// <summary>Head of the table of <see cref="TakeOff"/>.</summary>
    public static ImmutableArray<string> TakeOffHead => ["from front", "station", "left (port)", "right (starboard)"];

    /// <summary>Rows of the wood to take off, front to rear.</summary>
    public IEnumerable<ImmutableArray<string>> TakeOff(SaddleCorrection correction)
    {
        ArgumentNullException.ThrowIfNull(correction);
        return correction.Stations.Select(station => ImmutableArray.Create(
            text.Column(station.FromFront), text.Column(station.Station), text.Fine(station.Port), text.Fine(station.Starboard)));
    }

    /// <summary>A length with its sign.</summary>
    public string WithSign(double length) => Signed(text.Fine(length));

    /// <summary>What a check is called.</summary>
    public static string LabelOf(CheckKind kind) => kind switch
    {
        CheckKind.Across => "right (starboard) pins over left (port)",
        CheckKind.Rise => "rise of front over rear pins, against the drawn",
        CheckKind.RiseAcross => "rise on the right (starboard) over the left (port)",
        _ => "cord to the right (starboard) tip over the left (port)",
    };

    private static string LabelOf(PoseUnknown unknown) => unknown switch
    {
        PoseUnknown.Incidence => "incidence, leading edge up",
        PoseUnknown.Roll => "roll, right (starboard) up",
        PoseUnknown.Warp => "warp, right (starboard) leading edge up",
        PoseUnknown.Height => "height of the root leading edge",
        PoseUnknown.Yaw => "yaw, right (starboard) tip forward",
        _ => "place aft",
    };

    private string ValueOf(PoseUnknown unknown, double value, double half) => unknown.IsLength()
        ? $"{WithSign(value)} ± {text.FineWithUnit(half)}"
        : $"{Signed(MeasureText.Rounded(value * 180 / Math.PI, 3))} ± {MeasureText.Rounded(half * 180 / Math.PI, 3)}°";

    internal static string VerdictOf(bool isWithin, bool isSure, string tolerance)
    {
        var verdict = $"{(isWithin ? "within" : "OUT of")} {tolerance}";
        return isSure ? verdict : verdict + ", as far as the readings tell";
    }

    internal string SquareText(SquareCorrection square) =>
        $"Move the trailing edge at the root {text.FineWithUnit(square.TrailingEdge)} to the {SideOf(square.To)}: "
        + $"the {SideOf(square.To)} tip goes {text.FineWithUnit(square.Tip)} forward, the other as much aft.";

    internal string Corners(SeatCorners corners) =>
        $"left (port) front {text.Fine(corners.PortFront)}, rear {text.Fine(corners.PortRear)}; "
        + $"right (starboard) front {text.Fine(corners.StarboardFront)}, rear {text.FineWithUnit(corners.StarboardRear)}";

    // Nothing has no sign.
    private static string Signed(string number) => number is "0" || number.StartsWith('-') ? number : "+" + number;

    private string MoveOf(double move) => move <= 0 ? $"comes down {text.FineWithUnit(-move)}" : $"goes up {text.FineWithUnit(move)}";

    private static string SideOf(Hand hand) => BenchMarks.NameOf(hand);
}
