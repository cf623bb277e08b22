using MathNet.Numerics.Interpolation;
using PlanForge.Geometry;

namespace PlanForge.Parts.Tests.Saddles;

/// <summary>A random airframe in plain numbers, built twice: once through the project, once by <see cref="MeshOracle"/>.</summary>
internal sealed record RandomAirframe(
    (int Camber, int Place, int Thickness) Root,
    (int Camber, int Place, int Thickness) Tip,
    double Chord,
    double[] PanelLengths,
    double[] Dihedrals,
    double[] Tapers,
    double[] Sweeps,
    double[] Twists,
    double Incidence,
    double SeatTape,
    bool IsHigh,
    bool IsFair,
    int Shape,
    double[] Breadths,
    double Lean,
    double[] Uppers,
    double[] Lowers,
    double Skin)
{
    public const double LeadingEdgeStation = 200;

    public double[] Stations => [0, 190, 190 + (Chord * 0.6), 230 + (Chord * 1.1), 900];
}

/// <summary>
/// The second way to a saddle: wing and body as dense triangle meshes from textbook formulas of its own, and rays cast at
/// them. Shares no code with the solver but vectors. NACA sections: Abbott and von Doenhoff's construction (formula in
/// shared/check-values.md 1.1, 1.2); fair bodies: natural cubic splines of MathNet.Numerics.
/// </summary>
internal sealed class MeshOracle
{
    private const int Chordwise = 360;
    private const int Spanwise = 20;

    private readonly RandomAirframe _frame;
    private readonly List<(Point3[,] Mesh, Func<Point3, bool> Owns)> _panels = [];
    private readonly List<Func<Point3, double>> _joints = [];
    private readonly Func<double, double>[] _bodyCurves;

    public MeshOracle(RandomAirframe frame)
    {
        _frame = frame;
        double[] x = frame.Stations;
        Func<double, double> Curve(double[] values) => frame.IsFair
            ? CubicSpline.InterpolateNatural(x, values).Interpolate
            : LinearSpline.InterpolateSorted(x, values).Interpolate;
        _bodyCurves = [Curve(frame.Breadths), Curve([.. frame.Breadths.Select(b => b * frame.Lean)]), Curve(frame.Uppers), Curve(frame.Lowers)];
        BuildWing();
    }

    /// <summary>Where a line parallel to an axis (0 x, 2 z) through a point meets the wing, nearest to the point; null if nowhere.</summary>
    public double? DistanceToWing(Point3 from, int axis)
    {
        double? nearest = null;
        foreach (var (mesh, owns) in _panels)
        {
            for (var i = 0; i + 1 < mesh.GetLength(0); i++)
            {
                for (var j = 0; j + 1 < mesh.GetLength(1); j++)
                {
                    Try(from, axis, mesh[i, j], mesh[i + 1, j], mesh[i + 1, j + 1], owns, ref nearest);
                    Try(from, axis, mesh[i, j], mesh[i + 1, j + 1], mesh[i, j + 1], owns, ref nearest);
                }
            }
        }

        return nearest;
    }

    /// <summary>
    /// True within 0.15 mm of a mitre plane: there the surfaces of two tapered, twisted panels miss each other by a trace, the
    /// saddle bridges it, and a ray may pass through the gap.
    /// </summary>
    public bool IsAtJoint(Point3 point) => _joints.Any(joint => Math.Abs(joint(Unpitched(point))) < 0.15);

    /// <summary>Half-breadth of the body where a ray along y at a station and height meets its mesh of quarter ellipses and flats.</summary>
    public double BodyAt(double station, double height)
    {
        double upperBreadth = _bodyCurves[0](station), lowerBreadth = _bodyCurves[1](station);
        double top = _bodyCurves[2](station), bottom = _bodyCurves[3](station), half = (top - bottom) / 2;
        var outline = new List<(double Y, double Z)>();
        const int Steps = 4000;
        for (var i = 0; i <= Steps; i++)
        {
            // Angle from straight down to straight up; a superposition of a box and its corner ellipses.
            var angle = (Math.PI * i / Steps) - (Math.PI / 2);
            var (sin, cos) = Math.SinCos(angle);
            double across = _frame.Shape == 2 ? upperBreadth : _frame.Shape == 1 ? Math.Min(9, half) : 0;
            double up = _frame.Shape == 2 ? half : _frame.Shape == 1 ? Math.Min(9, half) : 0;
            var z = sin < 0 ? bottom + (up * (1 + sin)) : top - (up * (1 - sin));
            var widest = sin < 0 ? lowerBreadth : upperBreadth;
            double radius = _frame.Shape == 2 ? widest : across;
            var factor = 1 - (radius * (1 - cos) / widest);
            var lean = lowerBreadth + ((upperBreadth - lowerBreadth) * (z - bottom) / (top - bottom));
            outline.Add((lean * factor, z));
        }

        for (var i = 0; i < Steps; i++)
        {
            var (a, b) = (outline[i], outline[i + 1]);
            if (a.Z <= height && height <= b.Z && b.Z > a.Z)
            {
                return a.Y + ((b.Y - a.Y) * (height - a.Z) / (b.Z - a.Z));
            }
        }

        return double.NaN;
    }

    private void BuildWing()
    {
        double startX = 0, startY = 0, startZ = 0, startChord = _frame.Chord, startTwist = 0;
        var rootTable = Table(_frame.Root);
        var tipTable = Table(_frame.Tip);
        var inner = rootTable;
        for (var k = 0; k < _frame.PanelLengths.Length; k++)
        {
            double length = _frame.PanelLengths[k], g = _frame.Dihedrals[k];
            double endChord = startChord * _frame.Tapers[k], endTwist = _frame.Twists[k];
            var outer = k == _frame.PanelLengths.Length - 1 ? tipTable : rootTable;
            var mesh = new Point3[Spanwise + 1, Chordwise + 1];
            for (var j = 0; j <= Chordwise; j++)
            {
                const double Step = 1e-5;
                var w = (double)j / Chordwise;
                var here = (Look(inner, w), Look(outer, w));
                var before = (Look(inner, Math.Max(0, w - Step)), Look(outer, Math.Max(0, w - Step)));
                var after = (Look(inner, Math.Min(1, w + Step)), Look(outer, Math.Min(1, w + Step)));
                for (var i = 0; i <= Spanwise; i++)
                {
                    Point3 At(double along, ((double X, double Y) A, (double X, double Y) B) rib)
                    {
                        var t = along / length;
                        var chord = startChord + ((endChord - startChord) * t);
                        var twist = startTwist + ((endTwist - startTwist) * t);
                        var ((ax, ay), (bx, by)) = rib;
                        double sx = chord * (ax + ((bx - ax) * t) - 0.25), sy = chord * (ay + ((by - ay) * t));
                        double tx = (sx * Math.Cos(twist)) + (sy * Math.Sin(twist)), ty = (sy * Math.Cos(twist)) - (sx * Math.Sin(twist));
                        return new(
                            startX + (_frame.Sweeps[k] * t) + (0.25 * chord) + tx,
                            startY + (along * Math.Cos(g)) - (ty * Math.Sin(g)),
                            startZ + (along * Math.Sin(g)) + (ty * Math.Cos(g)));
                    }

                    // The mesh runs past both ends so that the mitre planes can cut it; it is finest at the root, where the body is.
                    var part = (double)i / Spanwise;
                    var s = (-0.04 + (1.08 * part * part)) * length;
                    var place = At(s, here);
                    if (_frame.SeatTape > 0)
                    {
                        var normal = (At(s + 0.01, here) - At(s - 0.01, here)).Cross(At(s, after) - At(s, before)).Unit();
                        place += normal * (_frame.IsHigh ? _frame.SeatTape : -_frame.SeatTape);
                    }

                    mesh[i, j] = place;
                }
            }

            if (k > 0)
            {
                _joints.Add(Plane(startY, startZ, (_frame.Dihedrals[k - 1] + g) / 2));
            }

            var innerPlane = Plane(startY, startZ, k == 0 ? 0 : (_frame.Dihedrals[k - 1] + g) / 2);
            double endX = startX + _frame.Sweeps[k], endY = startY + (length * Math.Cos(g)), endZ = startZ + (length * Math.Sin(g));
            var outerPlane = k == _frame.PanelLengths.Length - 1
                ? _ => -1
                : Plane(endY, endZ, (g + _frame.Dihedrals[k + 1]) / 2);

            const double Slack = 0.001;
            _panels.Add((Pitched(mesh), own => innerPlane(Unpitched(own)) > -Slack && outerPlane(Unpitched(own)) < Slack));
            (startX, startY, startZ, startChord, startTwist, inner) = (endX, endY, endZ, endChord, endTwist, outer);
        }
    }

    private static Func<Point3, double> Plane(double y, double z, double angle) =>
        p => ((p.Y - y) * Math.Cos(angle)) + ((p.Z - z) * Math.Sin(angle));

    private Point3[,] Pitched(Point3[,] mesh)
    {
        var (sin, cos) = Math.SinCos(_frame.Incidence);
        var turned = new Point3[mesh.GetLength(0), mesh.GetLength(1)];
        for (var i = 0; i < mesh.GetLength(0); i++)
        {
            for (var j = 0; j < mesh.GetLength(1); j++)
            {
                var p = mesh[i, j];
                turned[i, j] = new((p.X * cos) + (p.Z * sin) + RandomAirframe.LeadingEdgeStation, p.Y, (p.Z * cos) - (p.X * sin));
            }
        }

        return turned;
    }

    private Point3 Unpitched(Point3 p)
    {
        var (sin, cos) = Math.SinCos(_frame.Incidence);
        var x = p.X - RandomAirframe.LeadingEdgeStation;
        return new((x * cos) - (p.Z * sin), p.Y, (p.Z * cos) + (x * sin));
    }

    private static void Try(Point3 from, int axis, Point3 a, Point3 b, Point3 c, Func<Point3, bool> owns, ref double? nearest)
    {
        if (Math.Max(a.Y, Math.Max(b.Y, c.Y)) < from.Y || Math.Min(a.Y, Math.Min(b.Y, c.Y)) > from.Y)
        {
            return;
        }

        (double U, double V, double D) Split(Point3 p) => axis == 2 ? (p.X, p.Y, p.Z) : (p.Z, p.Y, p.X);
        var (fu, fv, fd) = Split(from);
        var (au, av, ad) = Split(a);
        var (bu, bv, bd) = Split(b);
        var (cu, cv, cd) = Split(c);
        var area = ((bu - au) * (cv - av)) - ((bv - av) * (cu - au));
        if (area == 0)
        {
            return;
        }

        var wb = (((fu - au) * (cv - av)) - ((fv - av) * (cu - au))) / area;
        var wc = (((bu - au) * (fv - av)) - ((bv - av) * (fu - au))) / area;
        if (wb < -1e-9 || wc < -1e-9 || wb + wc > 1 + 1e-9)
        {
            return;
        }

        var hit = ad + (wb * (bd - ad)) + (wc * (cd - ad));
        var place = axis == 2 ? new Point3(fu, fv, hit) : new Point3(hit, fv, fu);
        var distance = hit - fd;
        if (owns(place) && (nearest is not { } best || Math.Abs(distance) < Math.Abs(best)))
        {
            nearest = distance;
        }
    }

    // One surface of a NACA 4-digit section as (root of the fraction of its own extent, x, y), dense at the nose.
    private (double F, double X, double Y)[] Table((int Camber, int Place, int Thickness) digits)
    {
        const int Rows = 6000;
        double m = digits.Camber / 100.0, p = digits.Place / 10.0, t = digits.Thickness / 100.0;
        (double X, double Y) Surface(double q, int sign)
        {
            var x = q * q;
            var yt = 5 * t * ((0.2969 * q) - (0.1260 * x) - (0.3516 * x * x) + (0.2843 * x * x * x) - (0.1015 * x * x * x * x));
            double yc = 0, slope = 0;
            if (m > 0)
            {
                (yc, slope) = x < p
                    ? (m / (p * p) * ((2 * p * x) - (x * x)), 2 * m / (p * p) * (p - x))
                    : (m / ((1 - p) * (1 - p)) * (1 - (2 * p) + (2 * p * x) - (x * x)), 2 * m / ((1 - p) * (1 - p)) * (p - x));
            }

            var th = Math.Atan(slope);
            return (x - (sign * yt * Math.Sin(th)), yc + (sign * yt * Math.Cos(th)));
        }

        var points = new List<(double X, double Y)>();
        var side = _frame.IsHigh ? -1 : 1;

        // From the other surface round the nose onto the wanted one; the foremost point begins the table.
        for (var i = Rows / 20; i > 0; i--)
        {
            points.Add(Surface((double)i / Rows, -side));
        }

        for (var i = 0; i <= Rows; i++)
        {
            points.Add(Surface((double)i / Rows, side));
        }

        var nose = points.MinBy(point => point.X).X;
        var first = points.FindIndex(point => point.X == nose);
        var end = points[^1].X;
        return [.. points.Skip(first).Select(point => (Math.Sqrt(Math.Max(0, (point.X - nose) / (end - nose))), point.X, point.Y))];
    }

    private static (double X, double Y) Look((double F, double X, double Y)[] table, double fraction)
    {
        int low = 0, high = table.Length - 1;
        while (high - low > 1)
        {
            var middle = (low + high) / 2;
            if (table[middle].F <= fraction)
            {
                low = middle;
            }
            else
            {
                high = middle;
            }
        }

        var (a, b) = (table[low], table[high]);
        var t = b.F > a.F ? (fraction - a.F) / (b.F - a.F) : 0;
        return (a.X + ((b.X - a.X) * t), a.Y + ((b.Y - a.Y) * t));
    }
}
