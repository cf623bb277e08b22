using System.Collections.Immutable;
using PlanForge.Airframe.Measuring;
using PlanForge.Geometry;
using PlanForge.Parts.Shapes;
using PlanForge.Parts.Wording;

namespace PlanForge.Parts.Bench.Measuring;

/// <summary>
/// The wood to take off both saddles along their length, heights enlarged: at true size a band of tenths of a millimetre is hardly
/// wider than a line. The seat as it is lies level.
/// </summary>
internal static class BandDiagram
{
    private const double HatchSpacing = 2;
    private const double Tallest = 35;

    // The heights are enlarged ten times, less where the band would grow too tall.
    private static ReadOnlySpan<int> Scales => [10, 5, 2, 1];

    /// <summary>Left over right, each as seen from outside on that side.</summary>
    public static Part Of(RiggedAirframe airframe, SaddleCorrection correction)
    {
        var sketch = new PartSketch();
        var scale = Scales[^1];
        foreach (var candidate in Scales)
        {
            if (correction.Most * candidate <= Tallest)
            {
                scale = candidate;
                break;
            }
        }

        var step = (correction.Most * scale) + 32;
        Add(airframe, correction, Hand.Port, scale, 0, sketch);
        Add(airframe, correction, Hand.Starboard, scale, -step, sketch);
        sketch.Note($"Heights x {MeasureText.Rounded(scale, 0)}, lengths true: to read, not to cut by. Figures in {airframe.Text.UnitName}, at the stations of the table.");
        return sketch.AsTemplate("correction-bands", CorrectionParts.Kind, $"Wood to take off, heights x {MeasureText.Rounded(scale, 0)}");
    }

    // Port looks forward to the left, starboard to the right, as when you stand before that side.
    private static void Add(RiggedAirframe airframe, SaddleCorrection correction, Hand hand, int scale, double y, PartSketch sketch)
    {
        var into = airframe.WingSide == WingSide.Lower ? 1.0 : -1.0;
        var stations = correction.Stations;
        var length = stations[^1].FromFront;
        double X(double fromFront) => hand == Hand.Port ? fromFront : length - fromFront;
        var band = ImmutableArray.CreateBuilder<Point2>(stations.Length);
        foreach (var station in stations)
        {
            band.Add(new(X(station.FromFront), y - (into * Of(station) * scale)));
        }

        sketch.Line(LineUse.Edge, new(0, y), new(length, y));
        sketch.Line(LineUse.Trim, Path2.Polyline(band.ToImmutable()));
        for (var at = HatchSpacing; at < length; at += HatchSpacing)
        {
            if (DepthAt(at) * scale is > 0.4 and var depth)
            {
                sketch.Line(LineUse.Station, new(X(at), y), new(X(at), y - (into * depth)));
            }
        }

        var (farthest, beyond) = (correction.Most * scale, -into * 5);
        for (var i = 0; i < stations.Length; i++)
        {
            sketch.Label(airframe.Text.Fine(Of(stations[i])), new(X(stations[i].FromFront), y - (into * farthest) + beyond));
        }

        sketch.Label($"{BenchMarks.NameOf(hand)}, seen from outside: the seat as it is", new(length / 2, y + (into * 4)));
        sketch.Label("FRONT", new(X(0), y + (into * 4)), hand == Hand.Port ? Anchor.Start : Anchor.End);
        sketch.Label("REAR", new(X(length), y + (into * 4)), hand == Hand.Port ? Anchor.End : Anchor.Start);

        double Of(CorrectionStation station) => hand == Hand.Port ? station.Port : station.Starboard;

        double DepthAt(double fromFront)
        {
            var i = 1;
            while (i < stations.Length - 1 && stations[i].FromFront < fromFront)
            {
                i++;
            }

            var (a, b) = (stations[i - 1], stations[i]);
            var share = (fromFront - a.FromFront) / (b.FromFront - a.FromFront);
            return Of(a) + ((Of(b) - Of(a)) * share);
        }
    }
}
