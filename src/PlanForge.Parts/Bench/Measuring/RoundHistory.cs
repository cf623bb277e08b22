using System.Collections.Immutable;
using System.Globalization;
using PlanForge.Geometry;
using PlanForge.Parts.Wording;

namespace PlanForge.Parts.Bench.Measuring;

/// <summary>Draws how the errors went from round to round: a panel for each error, the tolerance as a band, 95 % intervals as bars.</summary>
/// <param name="text">Writes lengths.</param>
internal sealed class RoundHistory(MeasureText text)
{
    // More rounds than this would crowd a panel: the earlier ones are left out.
    private const int MostRounds = 8;

    private const double RoundWidth = 15;
    private const double HalfHeight = 18;
    private const double PanelGap = 26;
    private const int PanelsAcross = 4;

    // Of the panel's half height, for the tolerance where the errors are within it.
    private const double LeastScale = 1.6;

    /// <summary>Adds the panels, from the origin to the right and down.</summary>
    public void Add(BenchResult result, PartSketch sketch)
    {
        var rounds = result.Rounds.Length > MostRounds ? result.Rounds[^MostRounds..] : result.Rounds;
        var first = result.Rounds.Length - rounds.Length;
        var width = Math.Max(rounds.Length, 3) * RoundWidth;
        var index = 0;
        foreach (var (title, of) in Panels(result))
        {
            var at = new Point2(index % PanelsAcross * (width + PanelGap), -(index / PanelsAcross) * ((2 * HalfHeight) + 30));
            AddPanel(title, [.. rounds.Select(of)], first, at, width, sketch);
            index++;
        }
    }

    // Every error that some round settles, wing first.
    private static IEnumerable<(string Title, Func<RoundResult, BenchCheck?> Of)> Panels(BenchResult result)
    {
        foreach (var kind in Enum.GetValues<CheckKind>())
        {
            if (result.Rounds.Any(round => Find(round.Checks, kind) is not null))
            {
                yield return (BenchTexts.ShortName(kind), round => Find(round.Checks, kind));
            }
        }

        foreach (var kind in Enum.GetValues<CheckKind>())
        {
            if (result.Rounds.Any(round => OfTail(round, kind) is not null))
            {
                yield return ($"tailplane, {BenchTexts.ShortName(kind)}", round => OfTail(round, kind));
            }
        }
    }

    private static BenchCheck? OfTail(RoundResult round, CheckKind kind) => round.Tail is { } tail ? Find(tail.Checks, kind) : null;

    private static BenchCheck? Find(ImmutableArray<BenchCheck> checks, CheckKind kind)
    {
        foreach (var check in checks)
        {
            if (check.Kind == kind)
            {
                return check;
            }
        }

        return null;
    }

    private void AddPanel(string title, ImmutableArray<BenchCheck?> checks, int first, Point2 at, double width, PartSketch sketch)
    {
        var settled = checks.Where(check => check is not null).Select(check => check!.Value).ToArray();
        var tolerance = settled[^1].Tolerance;
        var greatest = Math.Max(settled.Max(check => Math.Abs(check.Value) + check.HalfWidth), LeastScale * tolerance);
        var scale = HalfHeight / greatest;
        Point2 P(double x, double error) => at + new Vector2(x, error * scale);

        sketch.Line(LineUse.Edge, at + new Vector2(0, -HalfHeight), at + new Vector2(0, HalfHeight));
        sketch.Line(LineUse.Datum, P(0, 0), P(width, 0));
        sketch.Line(LineUse.Station, Path2.Rectangle(new(at.X, P(0, -tolerance).Y, at.X + width, P(0, tolerance).Y)));
        sketch.Label($"{title}, {text.UnitName}", at + new Vector2(width / 2, HalfHeight + 5));
        sketch.Label($"±{text.Fine(tolerance)}", P(width + 1.5, 0) - new Vector2(0, 1.25), Anchor.Start);
        var places = ImmutableArray.CreateBuilder<Point2>(checks.Length);
        for (var i = 0; i < checks.Length; i++)
        {
            var x = (i + 0.5) * width / checks.Length;
            sketch.Label((first + i + 1).ToString(CultureInfo.InvariantCulture), at + new Vector2(x, -HalfHeight - 4));
            sketch.Label(checks[i] is { } shown ? WithSign(shown.Value) : "-", at + new Vector2(x, -HalfHeight - 9));
            if (checks[i] is not { } check)
            {
                continue;
            }

            var place = P(x, check.Value);
            places.Add(place);
            var bar = new Vector2(0, check.HalfWidth * scale);
            sketch.Line(LineUse.Station, place - bar, place + bar);
            foreach (var end in new[] { place - bar, place + bar })
            {
                sketch.Line(LineUse.Station, end - new Vector2(1, 0), end + new Vector2(1, 0));
            }

            sketch.Line(LineUse.Edge, Path2.Rectangle(new(place.X - 0.8, place.Y - 0.8, place.X + 0.8, place.Y + 0.8)));
        }

        if (places.Count > 1)
        {
            sketch.Line(LineUse.Trim, Path2.Polyline([.. places]));
        }
    }

    private string WithSign(double length) => new BenchTexts(text).WithSign(length);
}
