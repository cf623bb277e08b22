using System.Collections.Immutable;
using System.Globalization;
using PlanForge.Geometry;
using PlanForge.Parts;

namespace PlanForge.Drafting.Tests;

/// <summary>Plausible parts of an invented aeroplane, drawn by hand for the tests of the sheets.</summary>
internal static class SampleParts
{
    private static readonly PartTable Bevels = new(
        "Bevel of the outer edge", ["height", "bevel", "step"], [["-30", "2.1°", "0.15"], ["0", "3.4°", "0.24"], ["30", "3.9°", "0.27"]]);

    /// <summary>A little of everything, kinds mixed.</summary>
    public static IReadOnlyList<Part> All =>
    [
        Former("F1", 76, 82), Former("F2", 92, 112), Saddle("Left"), Former("F3", 92, 118), Saddle("Right"),
        Shim(0.5), Shim(1), Shim(1.5), BenchFigures(18), LevelRest(250),
    ];

    /// <summary>A former: rounded outline, notches, an opening, centre and datum lines, dimensions, a bevel table.</summary>
    public static Part Former(string name, double width, double height)
    {
        const double Round = 14;
        const double Notch = 4;
        var (w, h) = (width / 2, height / 2);
        var bulge = Math.Tan(Math.PI / 8);
        var outline = Path2.Closed(
        [
            new(new(-w + Round, -h)), new(new(w - Round, -h), bulge), new(new(w, -h + Round)),
            new(new(w, -Notch)), new(new(w - Notch, -Notch)), new(new(w - Notch, Notch)), new(new(w, Notch)),
            new(new(w, h - Round), bulge), new(new(w - Round, h)), new(new(-w + Round, h), bulge), new(new(-w, h - Round)),
            new(new(-w, Notch)), new(new(-w + Notch, Notch)), new(new(-w + Notch, -Notch)), new(new(-w, -Notch)),
            new(new(-w, -h + Round), bulge),
        ]);
        var opening = Path2.Rectangle(new(-w * 0.45, -h * 0.5, w * 0.45, h * 0.3)).Reversed();
        var hole = Path2.Circle(new(w * 0.5, h * 0.6), 4).Reversed();
        return new(
            $"former-{name}", "Formers", $"Former {name}", Making.Cut, "birch ply", 4, 1, Math.PI / 2,
            [
                new(LineUse.Cut, outline), new(LineUse.Cut, opening), new(LineUse.Cut, hole),
                new(LineUse.Hidden, Path2.Rectangle(new(-w + 1.5, -h + 1.5, w - 1.5, h - 1.5))),
                new(LineUse.Centre, Path2.Line(new(0, -h - 5), new(0, h + 5))),
                new(LineUse.Datum, Path2.Line(new(-w - 5, 0), new(w + 5, 0))),
                new(LineUse.Score, Path2.Line(new(-w * 0.8, h * 0.85), new(w * 0.8, h * 0.85))),
            ],
            [new("datum", new(w + 6, 0), Anchor.Start), new("upper longeron", new(0, h * 0.75))],
            [
                new PartDimension.Linear(new(-w, -h + Round), new(w, -h + Round), new(1, 0), -Round - 12),
                new PartDimension.Linear(new(-w + Round, -h), new(-w + Round, h), new(0, 1), Round + 10),
                new PartDimension.Leader(new((w * 0.5) + 2.8, (h * 0.6) + 2.8), new(w + 8, h * 0.8), "⌀8"),
                new PartDimension.Linear(new(w - Notch, Notch), new(w, Notch), new(1, 0), 12),
            ],
            [Bevels],
            ["Seen from the tail. Cut on the line, then sand the bevel to the dashed line of the far face."],
            []);
    }

    /// <summary>A saddle template: a long thin curved strip with inner line and trim line.</summary>
    public static Part Saddle(string side)
    {
        const double Length = 262;
        var upper = Path2.Open([new(new(0, 0), 0.12), new(new(Length, 6))]);
        var strip = Path2.Closed(
            [new(new(0, 0), 0.12), new(new(Length, 6)), new(new(Length, -45)), new(new(0, -45))]);
        return new(
            $"saddle-{side}", "Saddles", $"Saddle, {side} side", Making.Template, "", 0, 1, null,
            [
                new(LineUse.Cut, strip),
                new(LineUse.Trim, upper.Placed(Placement2.MovedBy(new(0, -1.5)))),
                new(LineUse.Hidden, upper.Placed(Placement2.MovedBy(new(0, -2.7)))),
                new(LineUse.Datum, Path2.Line(new(-6, -38), new(Length + 6, -38))),
                new(LineUse.Station, Path2.Line(new(60, -45), new(60, -10))),
                new(LineUse.Station, Path2.Line(new(180, -45), new(180, -10))),
            ],
            [new("F3", new(60, -48)), new("F4", new(180, -48)), new("leading edge", new(-2, 3), Anchor.Start)],
            [
                new PartDimension.Linear(new(0, 0), new(Length, 6), new(1, 0), 14),
                new PartDimension.Linear(new(60, -45), new(180, -45), new(1, 0), -10),
            ],
            [],
            ["Unrolled to arc length along the outside of the left side.", "The trim line holds 1.5 mm of sanding allowance."],
            []);
    }

    /// <summary>An incidence shim: a narrow strip.</summary>
    public static Part Shim(double degrees) => new(
        $"shim-{degrees * 10:00}", "Shims", $"Shim {degrees.ToString(CultureInfo.InvariantCulture)}°",
        Making.Cut, "spruce", 3, 2, 0,
        [new(LineUse.Cut, Path2.Polygon(new(0, 0), new(120, 0), new(120, 2 + (120 * Math.Tan(degrees * Math.PI / 180))), new(0, 2)))],
        [],
        [new PartDimension.Linear(new(0, 0), new(0, 2), new(0, 1), 8), new PartDimension.Linear(new(0, 0), new(120, 0), new(1, 0), -8)],
        [],
        [],
        []);

    /// <summary>Figures without a drawing.</summary>
    public static Part BenchFigures(int rows) => new(
        "bench-figures", "Bench", "Bench set-up", Making.Template, "", 0, 1, null, [], [], [],
        [
            new(
                "Heights above the board",
                ["pin", "station", "height"],
                [.. Enumerable.Range(1, rows).Select(i => ImmutableArray.Create($"P{i}", $"{i * 40}", $"{i + 60}"))]),
        ],
        ["Measure from the board, the datum line parallel to it."],
        []);

    /// <summary>A level rest of some length: a wing section above a straight edge.</summary>
    public static Part LevelRest(double length) => new(
        "level-rest", "Bench", "Level rest", Making.Template, "", 0, 1, null,
        [
            new(LineUse.Cut, Path2.Closed([new(new(0, 0), -0.06), new(new(length, -4)), new(new(length, 50)), new(new(0, 50))])),
            new(LineUse.Neighbour, Path2.Open([new(new(0, 0), 0.02), new(new(length, -4))])),
        ],
        [new("level when the incidence is right", new(length / 2, 44))],
        [],
        [],
        [],
        []);
}
