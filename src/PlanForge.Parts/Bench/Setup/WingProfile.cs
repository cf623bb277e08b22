using System.Collections.Immutable;
using PlanForge.Airframe.Sections;
using PlanForge.Geometry;
using PlanForge.Geometry.Fitting;
using PlanForge.Parts.Shapes;

namespace PlanForge.Parts.Bench.Setup;

/// <summary>The line in which a plumb plane along the body cuts one surface of a wing: x the station, y the height above the datum line.</summary>
/// <remarks>
/// The plane y = const is followed on the panel that holds it, also where that runs on past a joint. The direction of the line is
/// exact: ∂p/∂w − ∂p/∂u · (∂y/∂w)/(∂y/∂u), for along the line y does not change.
/// </remarks>
internal sealed class WingProfile
{
    // Samples from nose to trailing edge: the fit between them stays far within its tolerance.
    private const int StepCount = 96;

    private readonly WingShape _wing;
    private readonly WingSide _side;
    private readonly int _panel;
    private readonly double _across;

    public WingProfile(WingShape wing, WingSide side, double across) =>
        (_wing, _side, _panel, _across) = (wing, side, wing.PanelAt(across), across);

    /// <summary>The line's point and direction, from the nose aft, at section parameter w.</summary>
    public CurveSample At(double w)
    {
        const int GreatestRoundCount = 12;
        var along = (_across - _wing.Panels[_panel].Start.Y) / Math.Cos(_wing.Panels[_panel].Dihedral);
        for (var round = 0; ; round++)
        {
            var surface = _wing.At(_panel, _side, along, Math.Max(w, WingShape.Nose));
            var miss = _across - surface.Y.Value;
            if (Math.Abs(miss) < 1e-12 || round == GreatestRoundCount)
            {
                var share = surface.Y.Dv / surface.Y.Du;
                var direction = new Vector2(surface.X.Dv - (surface.X.Du * share), surface.Z.Dv - (surface.Z.Du * share));
                return new(new(surface.X.Value, surface.Z.Value), direction.Unit());
            }

            along += miss / surface.Y.Du;
        }
    }

    /// <summary>Exact samples between two values of w; twice where the section's curvature may break.</summary>
    public ImmutableArray<CurveSample> Samples(double from, double to)
    {
        var samples = ImmutableArray.CreateBuilder<CurveSample>();
        var breaks = Breaks();
        var next = 0;
        for (var i = 0; i <= StepCount; i++)
        {
            var w = from + ((to - from) * i / StepCount);
            for (; next < breaks.Length && breaks[next] < w; next++)
            {
                if (breaks[next] > from && i > 0)
                {
                    var sample = At(breaks[next]);
                    samples.Append(sample);
                    samples.Append(sample);
                }
            }

            samples.Append(At(w));
        }

        return samples.ToImmutable();
    }

    private ImmutableArray<double> Breaks()
    {
        IReadOnlyList<double> Of(Section section) => _side == WingSide.Upper ? section.UpperBreaks : section.LowerBreaks;
        var panel = _wing.Panels[_panel];
        return [.. new SortedSet<double>([.. Of(panel.Inner), .. Of(panel.Outer)])];
    }
}
