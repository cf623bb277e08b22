using System.Collections.Immutable;
using PlanForge.Airframe.Diagnostics;
using PlanForge.Airframe.Quantities;

namespace PlanForge.Airframe.Reading;

/// <summary>Warns of what can be built and is probably a slip. Only what needs no geometry; the rest is found where that is.</summary>
internal static class CommonPractice
{
    // Common practice, no source: models fly with 0 to 3 degrees; more than this is usually a sign or a unit gone wrong.
    private static readonly double GreatestUsualIncidence = Unit.Degree.ToBase(6);

    // Common practice, no source: a rim of less in sheet balsa or ply breaks when the former is handled.
    private const double LeastUsualRim = 3;

    // Measured kerfs in ply run to 0.25 mm (shared/practice.md); several times that is a unit gone wrong.
    private const double GreatestUsualKerf = 1;

    // Bridges of 0.5 to 2 mm hold and can still be broken (shared/practice.md).
    private const double LeastUsualHoldingTab = 0.5;
    private const double GreatestUsualHoldingTab = 2;

    // What parts glued face to face may seem to share, mm: what conversion between units leaves.
    private const double Contact = 1e-6;

    /// <summary>Checks a sound airframe.</summary>
    public static void Check(AirframeDescription airframe, Findings findings)
    {
        CheckIncidence("the wing", airframe.Wing.Incidence, findings);
        if (airframe.Tailplane is { } tailplane)
        {
            CheckIncidence("the tailplane", tailplane.Incidence, findings);
        }

        CheckSaddle(airframe.Saddle, airframe.Wing, findings);
        var stations = airframe.Fuselage.Stations;
        foreach (var former in airframe.Formers)
        {
            CheckPlace(former, stations[0].Station, stations[^1].Station, findings);
            CheckRim(former, findings);
        }

        CheckApart(airframe.Formers, findings);
        CheckCutter(airframe.Cutter, findings);
    }

    // A doubler touches its former; one that reaches into another is a station gone wrong.
    private static void CheckApart(ImmutableArray<FormerDescription> formers, Findings findings)
    {
        FormerDescription? before = null;
        foreach (var former in formers.OrderBy(former => former.Station))
        {
            if (before is not null && before.Station + before.Thickness - former.Station > Contact)
            {
                findings.Warning(
                    former.At,
                    $"the former {Quote.Text(former.Name)} stands from {findings.Length(former.Station)} on, in the former {Quote.Text(before.Name)}, "
                        + $"which ends at {findings.Length(before.Station + before.Thickness)}; move one of them");
            }

            before = before is null || former.Station + former.Thickness > before.Station + before.Thickness ? former : before;
        }
    }

    private static void CheckCutter(CutterDescription cutter, Findings findings)
    {
        CheckKerf(cutter.Kerf, cutter.At, findings);
        foreach (var kerf in cutter.Kerfs)
        {
            CheckKerf(kerf.Kerf, kerf.At, findings);
        }

        if (cutter.HoldingTabs is { Width: < LeastUsualHoldingTab or > GreatestUsualHoldingTab } tabs)
        {
            findings.Warning(
                tabs.At,
                $"holding tabs are {findings.Length(tabs.Width)} wide; from {findings.Length(LeastUsualHoldingTab)} to {findings.Length(GreatestUsualHoldingTab)} hold and still break out");
        }
    }

    private static void CheckKerf(double? kerf, SourcePosition at, Findings findings)
    {
        if (kerf > GreatestUsualKerf)
        {
            findings.Warning(at, $"the kerf is {findings.Length(kerf.Value)}; over {findings.Length(GreatestUsualKerf)} is unusual");
        }
    }

    private static void CheckIncidence(string what, IncidenceDescription incidence, Findings findings)
    {
        if (Math.Abs(incidence.Angle) > GreatestUsualIncidence)
        {
            findings.Warning(
                incidence.At,
                $"the incidence of {what} is {findings.Angle(incidence.Angle)}; "
                    + $"over {findings.Angle(GreatestUsualIncidence)} either way is unusual");
        }
    }

    // Common practice, no source: a former stands inside the body.
    private static void CheckPlace(FormerDescription former, double first, double last, Findings findings)
    {
        var (front, rear) = (former.Station, former.Station + former.Thickness);
        var name = Quote.Text(former.Name);
        var body = $"the fuselage, which runs from {findings.Length(first)} to {findings.Length(last)}";
        if (rear < first || front > last)
        {
            findings.Warning(former.At, $"the former {name} at {findings.Length(front)} lies outside of {body}");
        }
        else if (front < first || rear > last)
        {
            findings.Warning(
                former.At,
                $"the former {name} from {findings.Length(front)} to {findings.Length(rear)} lies partly outside of {body}");
        }
    }

    private static void CheckRim(FormerDescription former, Findings findings)
    {
        if (former.Lightening is { } lightening && lightening.Rim < LeastUsualRim)
        {
            findings.Warning(
                lightening.At,
                $"the rim of the former {Quote.Text(former.Name)} is {findings.Length(lightening.Rim)}; "
                    + $"under {findings.Length(LeastUsualRim)} it breaks easily");
        }
    }

    // Common practice, no source: a saddle lies under the wing's root. The chord is taken level: at the incidences that are
    // not warned of, its projection is at most 0.6 % shorter.
    private static void CheckSaddle(SaddleDescription saddle, WingDescription wing, Findings findings)
    {
        var leading = wing.LeadingEdge.Station;
        var trailing = leading + wing.Root.Chord;
        var from = saddle.From ?? leading;
        var to = saddle.To ?? trailing;
        if (to - from > wing.Root.Chord)
        {
            findings.Warning(
                saddle.At,
                $"the saddle is {findings.Length(to - from)} long; the root chord is {findings.Length(wing.Root.Chord)}");
        }
        else if (from < leading || to > trailing)
        {
            findings.Warning(
                saddle.At,
                $"the saddle from {findings.Length(from)} to {findings.Length(to)} reaches beyond the root chord, "
                    + $"from {findings.Length(leading)} to {findings.Length(trailing)}");
        }
    }
}
