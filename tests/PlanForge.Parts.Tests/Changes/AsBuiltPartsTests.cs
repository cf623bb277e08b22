using System.Collections.Immutable;
using CsCheck;
using PlanForge.Airframe;
using PlanForge.Airframe.Building;
using PlanForge.Airframe.Sections;
using PlanForge.Geometry;
using PlanForge.Parts.Comparison;
using PlanForge.Parts.Shapes;
using static PlanForge.Parts.Tests.Build;

namespace PlanForge.Parts.Tests.Changes;

/// <summary>Parts drawn to measured wood. The slab body is 90 mm wide, its skins are 3 mm; the taper loses 0.06 mm a side and mm.</summary>
public class AsBuiltPartsTests
{
    private static readonly AirframeDescription Slab = Description.PlateOnBox(0, 0, Description.Former("F", 0), Description.Former("G", 300));

    private static readonly AirframeDescription Tapered = Slab with
    {
        Fuselage = Slab.Fuselage with { Stations = [Box(0, 60, 90, -40), Box(500, 30, 90, -40)] },
    };

    [Fact]
    public void A_body_two_millimetres_wider_at_a_station_has_a_former_two_millimetres_wider_there()
    {
        // The rear face follows the taper that arises: 1 mm a side over 500 mm; the front face is what is cut.
        var measured = Measured(new BodyExtent(0, BodySize.Breadth), 90, 92);
        Assert.Equal(2 * Foot(1.0 / 500), Width(Slab, "F", measured) - Width(Slab, "F"), 1e-6);

        // Both ends wider: the sides stay square, and the former grows by exactly what the body did.
        measured = [.. measured, .. Measured(new BodyExtent(500, BodySize.Breadth), 90, 92)];
        Assert.Equal(2, Width(Slab, "F", measured) - Width(Slab, "F"), 1e-9);
        Assert.Equal(2, Width(Slab, "G", measured) - Width(Slab, "G"), 1e-9);

        // A skin of 3 mm on a side that leans t out of square takes 3 √(1 + t²) across.
        static double Foot(double slope) => 1 - (3 * (Math.Sqrt(1 + (slope * slope)) - 1));
    }

    [Fact]
    public void A_thicker_skin_narrows_the_former_by_twice_the_difference() =>
        Assert.Equal(-0.5, Width(Slab, "G", Measured(new SkinThickness(SkinPlace.Side), 3, 3.25)) - Width(Slab, "G"), 1e-9);

    [Fact]
    public void Thicker_top_and_bottom_lower_the_former_by_their_own()
    {
        var before = Bounds(Slab, "F");
        var after = Bounds(Slab, "F", [.. Measured(new SkinThickness(SkinPlace.Top), 3, 3.3), .. Measured(new SkinThickness(SkinPlace.Bottom), 3, 2.8)]);
        Assert.Equal(before.MaxY - 0.3, after.MaxY, 1e-9);
        Assert.Equal(before.MinY - 0.2, after.MinY, 1e-9);
    }

    [Fact]
    public void A_former_that_stands_further_aft_is_narrower_by_the_taper() =>
        Assert.Equal(-2 * 0.06 * 4, Width(Tapered, "G", Measured(new FormerStation("G"), 300, 304)) - Width(Tapered, "G"), 1e-6);

    [Fact]
    public void A_thicker_former_has_its_rear_face_further_aft()
    {
        // The rear face is narrower by the taper over 1 mm more: the bevel stays, the wood is thicker.
        var (before, after) = (Single(Tapered, "G", []), Single(Tapered, "G", Measured(new FormerThickness("G"), 3, 4)));
        Assert.Equal((3, 4), (before.Thickness, after.Thickness));
        Assert.Equal(before.Value("former.G.bevel.side.50"), after.Value("former.G.bevel.side.50"), 1e-9);
    }

    [Fact]
    public void A_breadth_between_stations_is_honoured_there() => Gen.Select(Gen.Double[20, 480], Gen.Double[86, 94]).Sample((station, breadth) =>
    {
        var former = Slab with { Formers = [Description.Former("F", station)] };
        var body = FuselageShape.Of(AsBuiltDescription.Apply(former, Measured(new BodyExtent(station, BodySize.Breadth), 90, breadth)).Fuselage);
        Assert.Equal(breadth / 2, body.HalfBreadthAt(station, 0), 1e-9);
        Assert.Equal((45, 45), (Math.Round(body.HalfBreadthAt(0, 0), 9), Math.Round(body.HalfBreadthAt(500, 0), 9)));
    });

    // The greatest half-breadth of the very surface that is drawn, looked for in small steps, against the measured breadth.
    [Fact]
    public void Callipers_over_leaning_sides_and_round_corners_read_what_was_measured() => (
        from upper in Gen.Double[20, 60]
        from lower in Gen.Double[20, 60]
        from rounding in Gen.Double[0, 19]
        from share in Gen.Double[0.9, 1.1]
        from station in Gen.OneOf(Gen.Const(100.0), Gen.Const(170.0), Gen.Const(300.0))
        select (upper, lower, rounding, share, station)).Sample(given =>
    {
        FuselageStation At(double x, double scale) => new(
            x, given.upper * scale, given.lower * scale, 50, -40, new(given.rounding * scale, given.rounding, given.rounding * scale, given.rounding), Run.Fair, Nowhere);
        var design = new FuselageDescription(new(0, 0, 0), [At(0, 0.8), At(100, 1), At(300, 1.1), At(500, 0.5)], [], Nowhere);
        var measured = given.share * Greatest(FuselageShape.Of(design), given.station);
        var description = Slab with { Fuselage = design };
        var built = AsBuiltDescription.Apply(description, Measured(new BodyExtent(given.station, BodySize.Breadth), measured / given.share, measured)).Fuselage;
        Assert.Equal(measured, Greatest(FuselageShape.Of(built), given.station), 2e-4 * measured);

        static double Greatest(FuselageShape body, double station) =>
            2 * Enumerable.Range(0, 2001).Max(i => body.HalfBreadthAt(station, -40 + (90 * i / 2000.0)));
    });

    [Fact]
    public void A_thicker_section_bulges_further_by_the_measured_share()
    {
        // NACA 0012 of 200 mm is 24 mm thick; as built 26: the whole outline stands 26/24 as far from the chord.
        var section = NacaSection.TryCreate("0012", TrailingEdge.Closed, out _)!;
        var wing = WingDescription([new(600, 0, new(section, 200, Nowhere), 0, 0, Nowhere) { SectionIsInnerEnds = true, ChordIsInnerEnds = true }], section, 200, 0, 100, 60);
        var description = Description.Airframe(wing, [Box(0, 45, 62, -40), Box(500, 45, 62, -40)], 3);
        var designed = section.Thickness * 200;
        var before = Height(PartList.Of(description));
        var after = Height(PartList.Of(AsBuiltDescription.Apply(description, Measured(new SectionThickness(0), designed, designed * 26 / 24))));
        Assert.Equal(before * 26 / 24, after, 0.02);

        // The side view of the joint shows the root section on the centre line: its highest ordinate above the chord's 60 mm, clear of the body's 62.
        static double Height(PartList list) => list.Parts.Single(part => part.Id == "wing-joint-side").Lines
            .Where(line => line.Use == LineUse.Edge).Max(line => line.Path.Bounds.MaxY) - 60;
    }

    [Fact]
    public void A_side_that_passes_the_end_of_the_flat_centre_piece_at_a_slant_has_a_saddle_with_a_sanding_allowance()
    {
        // The line turns by a trace where the dihedral begins; moved inward by the allowance both sides must still meet.
        var section = NacaSection.TryCreate("2412", TrailingEdge.Closed, out _)!;
        var tip = new SectionStation(section, 200, Nowhere);
        var wing = WingDescription([new(45, 0, tip, 0, 0, Nowhere), new(600, Degrees(3), tip, 0, 0, Nowhere)], section, 200, 1, 100, 60);
        var description = Description.Airframe(wing, [Box(0, 45, 90, -40), Box(100, 46, 90, -40), Box(500, 43, 90, -40)], 3);
        description = description with { Saddle = description.Saddle with { Sanding = 1.5 } };
        var list = PartList.Of(description);
        Assert.Empty(list.Findings.Where(finding => finding.Severity == PlanForge.Airframe.Diagnostics.Severity.Error));
        Assert.Equal(2, list.Parts.Count(part => part.Kind == "Saddles"));
    }

    // The inner line's feet at the fold lie a millionth apart in the one, and a neighbour past them by half a thousandth in the other.
    [Theory]
    [InlineData("as_built: {fuselage: [{station: 430, breadth: 87.65}]}\n")]
    [InlineData("as_built: {fuselage: [{station: 205, breadth: 92.84}, {station: 300, breadth: 89.81}], skin: {side: 3.04}, wing: {root: {thickness: 31.00}, tips: [{panel: 2, chord: 189.30}]}}\n")]
    public void A_side_that_turns_outward_by_a_trace_under_the_wing_has_a_saddle(string measured)
    {
        var built = Designs.Read("oxbow-1420", measured);
        Assert.Equal(2, PartList.Of(built).Parts.Count(part => part.Kind == "Saddles"));
    }

    [Theory]
    [MemberData(nameof(Designs.All), MemberType = typeof(Designs))]
    public void What_measures_as_designed_changes_no_part(string name)
    {
        var designed = Designs.Rigged(name).Description;
        var all = Everything(designed).ToArray();
        var plain = Text(PartList.Of(designed));
        Gen.Int[0, 1].Array[all.Length].Sample(
            chosen =>
            {
                ImmutableArray<Measurement> measured = [.. all.Where((_, i) => chosen[i] == 1)];
                Assert.Equal(plain, Text(PartList.Of(AsBuiltDescription.Apply(designed, measured))));
            },
            iter: 5,
            threads: 1);
    }

    [Fact]
    public void A_description_that_measures_as_designed_is_drawn_as_before()
    {
        const string AsBuilt = """
            as_built:
              formers: [{name: F3, station: 205, thickness: 4}, {name: F8, station: 90 cm}]
              fuselage:
                - {station: 205, breadth: body_width, upper: 80, lower: -54}
                - {station: 900, breadth: 40, upper: 36, lower: -14}
                - {station: 162.5, breadth: 92, upper: 67, lower: -52}
              skin: {side: 3, top: 2, bottom: 3}
              stock: [{name: light ply 3, thickness: 3}, {name: balsa 3, thickness: 3}]
              wing: {root: {chord: 262}, tips: [{panel: 1, chord: 262}, {panel: 2, chord: 190}]}

            """;
        var built = Designs.Read("oxbow-1420", AsBuilt);
        Assert.Equal(20, built.AsBuilt!.Measurements.Length);
        Assert.Equal(Text(PartList.Of(built.AsBuilt.Designed)), Text(PartList.Of(built)));
    }

    [Fact]
    public void Only_parts_that_depend_on_it_are_said_to_have_changed()
    {
        var (before, after) = (PartList.Of(Slab), PartList.Of(AsBuiltDescription.Apply(Slab, Measured(new FormerThickness("G"), 3, 3.4))));
        var moved = AsBuiltChanges.Between(before, after);
        Assert.Contains("former-G", Ids(moved, PartState.Changed));
        Assert.Contains("former-F", Ids(moved, PartState.Same));
        Assert.DoesNotContain(moved.Figures, figure => figure.Key.StartsWith("wing.", StringComparison.Ordinal));
        Assert.Empty(Ids(moved, PartState.New, PartState.Gone));
    }

    [Fact]
    public void Parts_and_figures_of_one_state_alone_are_told_apart()
    {
        var fewer = Slab with { Formers = [Slab.Formers[0]] };
        var gone = AsBuiltChanges.Between(PartList.Of(Slab), PartList.Of(fewer));
        Assert.Contains("former-G", Ids(gone, PartState.Gone));
        Assert.Contains(gone.Figures, figure => figure is { Key: "former.G.width", Old: not null, New: null });
        var added = AsBuiltChanges.Between(PartList.Of(fewer), PartList.Of(Slab));
        Assert.Contains("former-G", Ids(added, PartState.New));
        Assert.Contains(added.Figures, figure => figure is { Key: "former.G.width", Old: null, New: not null });
    }

    [Fact]
    public void Nothing_moves_between_a_state_and_itself()
    {
        var moved = AsBuiltChanges.Between(PartList.Of(Slab), PartList.Of(Slab));
        Assert.Empty(moved.Figures);
        Assert.All(moved.Parts, part => Assert.Equal(PartState.Same, part.State));
    }

    private static IEnumerable<string> Ids(AsBuiltChanges moved, params PartState[] states) => moved.Those(states).Select(part => part.Part.Id);

    private static IEnumerable<Measurement> Everything(AirframeDescription designed)
    {
        var (wing, skin) = (designed.Wing, designed.Fuselage.Skin);
        var things = new List<(MeasuredThing, double)>
        {
            (new SkinThickness(SkinPlace.Side), skin.Side),
            (new SkinThickness(SkinPlace.Top), skin.Top),
            (new SkinThickness(SkinPlace.Bottom), skin.Bottom),
            (new SectionThickness(0), wing.Root.Section.Thickness * wing.Root.Chord),
            (new SectionChord(0), wing.Root.Chord),
        };
        things.AddRange(designed.Stock.Select(sheet => ((MeasuredThing)new SheetThickness(sheet.Name), sheet.Thickness)));
        things.AddRange(designed.Formers.SelectMany(former => new[]
        {
            ((MeasuredThing)new FormerStation(former.Name), former.Station), (new FormerThickness(former.Name), former.Thickness),
        }));
        things.AddRange(wing.Panels.SelectMany((panel, i) => new[]
        {
            ((MeasuredThing)new SectionThickness(i + 1), panel.Tip.Section.Thickness * panel.Tip.Chord), (new SectionChord(i + 1), panel.Tip.Chord),
        }));

        // Listed stations and one in every bay; the reader gives a measurement the breadth of the design in just this way.
        var stations = designed.Fuselage.Stations;
        foreach (var station in stations.Select(s => s.Station).Concat(stations.Zip(stations.Skip(1), (a, b) => (a.Station + (2 * b.Station)) / 3)))
        {
            things.Add((new BodyExtent(station, BodySize.Breadth), 1));
            things.Add((new BodyExtent(station, BodySize.Upper), 1));
            things.Add((new BodyExtent(station, BodySize.Lower), 1));
        }

        return things.Select(thing => new Measurement(thing.Item1, thing.Item2, thing.Item2, Nowhere));
    }

    // All that a part is, to the last digit.
    private static string Text(PartList list) => string.Join('\n', list.Parts.Select(part => string.Join(
        '\n',
        [
            $"{part.Id} {part.Thickness:R} {part.Material} {part.Quantity} {part.GrainAngle:R}",
            .. part.Lines.Select(line => $"{line.Use} {line.Path.IsClosed} {string.Join(' ', line.Path.Vertices.Select(v => $"{v.Point.X:R},{v.Point.Y:R},{v.Bulge:R}"))}"),
            .. part.Labels.Select(label => label.ToString()),
            .. part.Dimensions.Select(dimension => dimension.ToString()),
            .. part.Tables.SelectMany(table => table.Rows.Select(row => string.Join('|', row))),
            .. part.Notes,
            .. part.Figures.Select(figure => $"{figure.Key} {figure.Value:R}"),
        ])));

    private static ImmutableArray<Measurement> Measured(MeasuredThing thing, double designed, double built) => [new(thing, designed, built, Nowhere)];

    private static Part Single(AirframeDescription description, string former, ImmutableArray<Measurement> measured) =>
        Description.Single(AsBuiltDescription.Apply(description, measured), $"former-{former}");

    private static Bounds2 Bounds(AirframeDescription description, string former, params ImmutableArray<Measurement> measured) =>
        Single(description, former, measured).Lines(LineUse.Cut).First().Bounds;

    private static double Width(AirframeDescription description, string former, params ImmutableArray<Measurement> measured) =>
        Bounds(description, former, measured).Width;
}
