using System.Globalization;
using PlanForge.Airframe.Diagnostics;
using PlanForge.Airframe.Sections;
using PlanForge.Geometry;

namespace PlanForge.Airframe.Tests.Sections;

/// <summary>
/// The two public layouts and what is met in them. Source of the layouts: the pages of the UIUC airfoil coordinates database;
/// the variants are common practice, no source.
/// </summary>
public sealed class SectionFileLayoutTests
{
    private static readonly Section Original = Naca.Section("2412");
    private static readonly Point2[] Upper = DatText.Surface(Original.Upper, 20);
    private static readonly Point2[] Lower = DatText.Surface(Original.Lower, 20);
    private static readonly string Plain = DatText.Loop(Upper, Lower);

    public static TheoryData<string, string, TrailingEdge> Layouts()
    {
        var data = new TheoryData<string, string, TrailingEdge>();
        foreach (var layout in (string[])["loop", "loop, lower first", "lists", "lists, lower first"])
        {
            foreach (var lineEnd in (string[])["\n", "\r\n", "\r"])
            {
                data.Add(layout, lineEnd, TrailingEdge.Open);
                data.Add(layout, lineEnd, TrailingEdge.Closed);
            }
        }

        return data;
    }

    [Theory]
    [MemberData(nameof(Layouts))]
    public void Every_layout_reads_back_to_a_millionth(string layout, string lineEnd, TrailingEdge trailingEdge)
    {
        var naca = Naca.Section("4415", trailingEdge);
        var (upper, lower) = (DatText.Surface(naca.Upper, 30), DatText.Surface(naca.Lower, 30));
        var text = layout switch
        {
            "loop" => DatText.Loop(upper, lower),
            "loop, lower first" => DatText.Loop(lower, upper),
            "lists" => DatText.Lists(upper, lower),
            _ => DatText.Lists(lower, upper),
        };
        var section = DatText.Read(text.Replace("\n", lineEnd, StringComparison.Ordinal));
        Assert.Equal("Otter 9", section.Name);
        Assert.All(upper[1..], point => Assert.InRange(Naca.DistanceTo(section.Upper, point.X, point.Y), 0, 1e-6));
        Assert.All(lower[1..], point => Assert.InRange(Naca.DistanceTo(section.Lower, point.X, point.Y), 0, 1e-6));

        // An open trailing edge stays open: half-gap 0.0105 t (NACA Report 460).
        var gap = trailingEdge == TrailingEdge.Open ? 0.021 * 0.15 : 0;
        var (above, below) = (section.Upper(1), section.Lower(1));
        Assert.Equal(gap, new Point2(above.X, above.Y).DistanceTo(new(below.X, below.Y)), 2e-7);
    }

    public static TheoryData<string> Variants() =>
    [
        "no title", "title with digits", "title of digits", "two title lines", "percent", "millimetres", "tabs", "commas", "semicolons",
        "exponents", "exponents with D", "plus signs", "no leading zeros", "byte order mark", "remarks", "blank lines", "end of file mark",
        "lists", "lists without points in the counts", "lists without counts", "lists from the trailing edge", "second list reversed",
        "lists without counts from the trailing edge", "nose written twice", "every point written twice", "closed polygon", "base in the middle",
        "trailing blanks", "percent lists",
    ];

    [Theory]
    [MemberData(nameof(Variants))]
    public void Variants_of_writing_mean_the_same_section(string variant)
    {
        var rows = DatText.Rows(Upper.Reverse().Concat(Lower.Skip(1)));
        var text = variant switch
        {
            "no title" => rows,
            "title with digits" => "NACA 2412\n" + rows,
            "title of digits" => "2412\n" + rows,
            "two title lines" => "Otter 9\nfor the 1420 wing\n" + rows,
            "percent" => "Otter\n" + DatText.Rows(Scaled(100), "0.00000"),
            "millimetres" => "Otter\n" + DatText.Rows(Scaled(262), "0.000000000"),
            "tabs" => Plain.Replace("  ", "\t", StringComparison.Ordinal),
            "commas" => Plain.Replace("  ", " , ", StringComparison.Ordinal),
            "semicolons" => Plain.Replace("  ", ";", StringComparison.Ordinal),
            "exponents" => "Otter\n" + DatText.Rows(Scaled(1), "0.0000000000E+00"),
            "exponents with D" => "Otter\n" + DatText.Rows(Scaled(1), "0.0000000000E+00").Replace('E', 'D'),
            "plus signs" => rows.Replace("  0.", "  +0.", StringComparison.Ordinal),
            "no leading zeros" => rows.Replace(" 0.", " .", StringComparison.Ordinal).Replace("-0.", "-.", StringComparison.Ordinal),
            "byte order mark" => "\uFEFF" + Plain,
            "remarks" => "# drawn by hand\n" + Plain.Replace("\n", " # a point\n", StringComparison.Ordinal) + "# end",
            "blank lines" => "\n\n" + Plain.Replace("\n", "\n\n \t\n", StringComparison.Ordinal),
            "end of file mark" => Plain + "\u001A",
            "lists" => DatText.Lists(Upper, Lower),
            "lists without points in the counts" => DatText.Lists(Upper, Lower).Replace("21.", "21", StringComparison.Ordinal),
            "lists without counts" => "Otter\n" + DatText.Rows(Upper) + "\n" + DatText.Rows(Lower),
            "lists from the trailing edge" => DatText.Lists([.. Upper.Reverse()], [.. Lower.Reverse()]),
            "second list reversed" => DatText.Lists(Upper, [.. Lower.Reverse()]),
            "lists without counts from the trailing edge" => DatText.Rows(Lower.Reverse()) + DatText.Rows(Upper.Reverse()),
            "nose written twice" => "Otter\n" + DatText.Rows(Upper.Reverse().Concat(Lower)),
            "every point written twice" => "Otter\n" + DatText.Rows(Upper.Reverse().Concat(Lower.Skip(1)).SelectMany(point => new[] { point, point })),
            "closed polygon" => Plain + DatText.Rows([Upper[^1]]),
            "base in the middle" => "Otter\n" + DatText.Rows([Upper[^1].Towards(Lower[^1], 0.5)]) + rows + DatText.Rows([Upper[^1].Towards(Lower[^1], 0.5)]),
            "trailing blanks" => Plain.Replace("\n", "  \t \n", StringComparison.Ordinal),
            "percent lists" => DatText.Lists([.. Upper.Select(point => Times(point, 100))], [.. Lower.Select(point => Times(point, 100))], format: "0.00000"),
            _ => throw new ArgumentOutOfRangeException(nameof(variant), variant, null),
        };

        // Written with more decimals than the plain file, the coordinates differ by the rounding of its seventh.
        var tolerance = variant is "millimetres" or "exponents" or "exponents with D" ? 2e-7 : 2e-9;
        Assert.InRange(DatText.Difference(DatText.Read(Plain), DatText.Read(text)), 0, tolerance);
    }

    // Whatever a section's file is called, a section needs a name on its sheets.
    [Theory]
    [InlineData("", "otter")]
    [InlineData("# just a remark\n", "otter")]
    [InlineData("  Otter   9,\tthick  # 2021\n", "Otter 9, thick")]
    [InlineData("NACA 2412\n", "NACA 2412")]
    public void The_name_is_the_title_or_the_bare_file_name(string head, string expected) =>
        Assert.Equal(expected, SectionFile.Read("wings/otter.dat", head + DatText.Rows(Upper.Reverse().Concat(Lower.Skip(1)))).Section?.Name);

    [Theory]
    [InlineData(1, 0, 3.5, 0, 1.97)]
    [InlineData(100, 20, -7, 0.05, 0)]
    [InlineData(0.262, -0.1, 0.2, -0.02, 0)]
    public void A_section_cut_out_of_a_drawing_is_brought_back_to_its_chord(double chord, double x, double y, double turn, double degrees)
    {
        // The listed leading edge is the nose itself: that point and the trailing edge span the chord. Moved, turned and scaled,
        // the section read is the same; only proportions and angles count.
        Point2[] outline = [.. Upper.Reverse().Concat(Lower.Skip(1))];
        var moved = outline.Select(point => new Point2(0, 0) + ((point - Point2.Origin) * chord).Turned(turn == 0 ? -degrees * Math.PI / 180 : turn) + new Vector2(x, y));
        var straight = outline.Select(point => point + new Vector2(0, 0.1));
        var result = SectionFile.Read("moved.dat", DatText.Rows(moved, "R"));
        var expected = SectionFile.Read("straight.dat", DatText.Rows(straight, "R"));
        var warning = Assert.Single(result.Diagnostics);
        Assert.Equal(Severity.Warning, warning.Severity);
        Assert.NotNull(result.Section);
        Assert.NotNull(expected.Section);
        Assert.InRange(DatText.Difference(expected.Section, result.Section), 0, 1e-12);
        Assert.Equal(0, result.Section.Upper(0).Y, 1e-3);
        Assert.Equal(1, (result.Section.Upper(1).X + result.Section.Lower(1).X) / 2, 1e-12);
    }

    [Fact]
    public void Clark_Y_on_its_flat_is_turned_to_its_chord_with_a_warning_that_says_so()
    {
        var result = SectionFile.Read("clark-y.dat", TableFile.Text("clark-y.dat"));
        Assert.Equal(
            "clark-y.dat:23:6: warning: the chord does not lie on the x axis of this file: it runs from this leading edge, (0, 3.5), "
            + "to the trailing edge at (100, 0.06); the section is moved and turned nose down by 1.97 deg so that it does",
            Assert.Single(result.Diagnostics).ToString());
    }

    // The machine's culture must not matter: a comma is a separator, a point a decimal point.
    [Fact]
    public void The_culture_of_the_machine_does_not_matter()
    {
        var before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = new CultureInfo("") { NumberFormat = { NumberDecimalSeparator = ",", NegativeSign = "~" } };
            Assert.Equal(0, DatText.Difference(DatText.Read(Plain), DatText.Read(DatText.Lists(Upper, Lower))));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    private static IEnumerable<Point2> Scaled(double factor) => Upper.Reverse().Concat(Lower.Skip(1)).Select(point => Times(point, factor));

    private static Point2 Times(Point2 point, double factor) => new(point.X * factor, point.Y * factor);
}
