using PlanForge.Geometry;
using PlanForge.Parts.Shapes;

namespace PlanForge.Parts.Saddles;

/// <summary>Lengths measured along the outer face of a body's side.</summary>
/// <param name="body">The fuselage.</param>
internal sealed class SideLengths(FuselageShape body)
{
    /// <summary>Signed length around the outside at a station from one height to another, mm, up positive.</summary>
    public double Girth(double station, double from, double to)
    {
        var bay = body.BayAt(station);
        double Rate(double height)
        {
            var lean = bay.At(station).HalfBreadthAt(Dual.V(height)).Dv;
            return Math.Sqrt(1 + (lean * lean));
        }

        double start = Rate(from), end = Rate(to);
        if (start == end && start == Rate((from + to) / 2))
        {
            return (to - from) * start;
        }

        // Simpson's rule; 24 pieces give 1e-7 mm on the bodies' quarter ellipses away from their very top.
        const int Pieces = 24;
        var sum = start + end;
        for (var i = 1; i < Pieces; i++)
        {
            sum += Rate(from + ((to - from) * i / Pieces)) * (i % 2 == 0 ? 2 : 4);
        }

        return sum * (to - from) / (3 * Pieces);
    }

    /// <summary>Length of the line at a height on the body between two near stations, mm.</summary>
    public double Waterline(double height, double from, double to)
    {
        var middle = (from + to) / 2;
        double a = body.HalfBreadthAt(from, height), b = body.HalfBreadthAt(middle, height), c = body.HalfBreadthAt(to, height);
        double half = (to - from) / 2;
        double chord = Math.Sqrt((4 * half * half) + ((c - a) * (c - a)));
        double halves = Math.Sqrt((half * half) + ((b - a) * (b - a))) + Math.Sqrt((half * half) + ((c - b) * (c - b)));

        // Two chords miss a quarter of what one chord misses of the arc (Richardson).
        return halves + ((halves - chord) / 3);
    }
}
