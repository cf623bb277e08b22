using PlanForge.Airframe.Building;
using PlanForge.Airframe.Diagnostics;
using PlanForge.Airframe.Format;
using PlanForge.Airframe.Reading;
using PlanForge.Airframe.Reading.Yaml;

namespace PlanForge.Airframe.Tests.Reading;

/// <summary>The description that uses every key, value by value. Expected numbers are worked out by hand from its text.</summary>
public class CompleteDescriptionTests
{
    private static readonly AirframeDescription Built = Description.ReadSound(Description.Complete);

    private static readonly AirframeDescription Airframe = Built.AsBuilt!.Designed;

    [Fact]
    public void Every_key_of_the_format_is_used()
    {
        var used = new HashSet<Key>();
        var diagnostics = new DiagnosticList("complete.yaml");
        Collect(YamlLoader.Load(new("complete.yaml", Description.Complete), diagnostics)!, AirframeFormat.Root);
        Assert.Empty(FormatTable.Mappings().SelectMany(m => m.Keys).Distinct().Where(k => !used.Contains(k)).Select(k => k.Name));

        void Collect(YamlNode node, ValueFormat format)
        {
            switch (format, node)
            {
                case (MappingFormat mapping, YamlMapping given):
                    foreach (var key in mapping.Keys)
                    {
                        if (given.Find(key.Name) is { } value)
                        {
                            used.Add(key);
                            Collect(value, key.Format);
                        }
                    }

                    break;
                case (ChoiceFormat choice, YamlMapping given):
                    Collect(given, Alternative.Find(given, choice, diagnostics)!.Value.Format!);
                    break;
                case (ListFormat list, YamlList given):
                    given.Items.ForEach(item => Collect(item, list.Item));
                    break;
                case (ParametersFormat parameters, YamlMapping given):
                    given.Entries.ForEach(entry => Collect(entry.Value, parameters.Detail));
                    break;
                default:
                    break;
            }
        }
    }

    [Fact]
    public void What_was_measured_is_read_in_its_order()
    {
        Assert.Equal(
            [
                ("stock.balsa 3.thickness", 3, 3.15),
                ("stock.ply 4.thickness", 3.8, 3.9),
                ("skin.side", 3, 3.1),
                ("skin.top", 2, 2.1),
                ("skin.bottom", 1.5875, 1.6),
                ("fuselage.180.breadth", 92, 93),
                ("fuselage.180.upper", 60, 60.5),
                ("fuselage.180.lower", -52, -52.5),
                ("former.F3.station", 205, 206.5),
                ("former.F3.thickness", 4, 4.1),
                ("former.F7.station", 500 + (200 * Math.Sin(Degrees(3))), 510),
                ("wing.root.chord", 262, 261.5),
                ("wing.panel.2.tip.chord", 190, 189.5),
            ],
            Built.AsBuilt!.Measurements.Where(IsPlain).Select(m => (m.Thing.Key, m.Designed, m.Built)),
            (a, b) => a.Item1 == b.Item1 && Math.Abs(a.Item2 - b.Item2) < 1e-9 && a.Item3 == b.Item3);
        Assert.Null(Airframe.AsBuilt);

        // Read elsewhere: a breadth between two stations, and thicknesses as lengths.
        static bool IsPlain(Measurement m) => m.Thing is not (SectionThickness or BodyExtent { Station: 300 });
    }

    [Fact]
    public void Head_is_read()
    {
        Assert.Equal("Oxbow 1420", Airframe.Name);
        Assert.Equal("B", Airframe.Issue.Revision);
        Assert.Equal("The builder of this invented airframe", Airframe.Issue.Owner);
        Assert.Equal(["Dry-fit the formers before gluing.", "Pins: 3 mm music wire"], Airframe.Notes);
        Assert.Equal(DisplayUnit.Millimetre, Airframe.DisplayUnit);
        var issue = Airframe.Issue;
        Assert.Equal("The designer of this invented airframe", issue.Creator);
        Assert.Equal("The checker of this invented airframe", issue.Approver);
        Assert.Equal("2026-03-01", issue.Date);
        Assert.Equal(
            [("A", "first issue", "", ""), ("B", "dowels 64 mm apart", "2026-03-01", "checker")],
            issue.Revisions.Select(revision => (revision.Revision, revision.Change, revision.Date, revision.By)));
        Assert.Equal([3, 4, 5], issue.Fields[..3].Select(field => field.Line));
    }

    [Fact]
    public void Parameters_are_worked_out_and_ordered_by_name()
    {
        var expected = new (string Name, double Value, Dimension Dimension)[]
        {
            ("body_width", 92, Dimension.Length),
            ("diagonal", Math.Sqrt((92 * 92) + (46 * 46)), Dimension.Length),
            ("droop", 200 * Math.Sin(3 * Math.PI / 180), Dimension.Length),
            ("loading", 6 * 28.349523125 / 500, Dimension.Number),
            ("side_skin", 3, Dimension.Length),
            ("skin", 3, Dimension.Number),
            ("washout", 1.5 * Math.PI / 180, Dimension.Angle),
            ("wing_mass", 6 * 28.349523125, Dimension.Mass),
            ("wing_mass_limit", 500, Dimension.Mass),
        };
        Assert.Equal(expected.Select(e => (e.Name, e.Dimension)), Airframe.Parameters.Select(p => (p.Name, p.Dimension)));
        Assert.All(expected.Zip(Airframe.Parameters), pair => Assert.Equal(pair.First.Value, pair.Second.Value, 1e-12 * pair.First.Value));
        Assert.Equal(new SourcePosition("complete.yaml", 12, 3, 10), Airframe.Parameters[0].At);
    }

    [Fact]
    public void Wing_is_read()
    {
        var wing = Airframe.Wing;
        Assert.Equal(WingPlacement.High, wing.Placement);
        Assert.Equal(new SidePoint(215, 58), wing.LeadingEdge);
        Assert.Equal(Math.Asin(5.5 / 262), wing.Incidence.Angle, 1e-15);
        Assert.Equal(IncidenceReference.Chord, wing.Incidence.Reference);
        Assert.Equal("NACA 2412", wing.Root.Section.Name);
        Assert.Equal(262, wing.Root.Chord);

        // The first panel gives no tip: its outer end is its inner end's.
        Assert.Equal(3, wing.Panels.Length);
        Assert.Equal((40.0, 0.0, 0.0, 0.0), Numbers(wing.Panels[0]));
        Assert.Equal(("NACA 2412", 262.0), (wing.Panels[0].Tip.Section.Name, wing.Panels[0].Tip.Chord));
        Assert.Equal((670, Degrees(3), 18, Degrees(-1.5)), Numbers(wing.Panels[1]));
        Assert.Equal(190, wing.Panels[1].Tip.Chord);

        // The third gives no twist: the second's stays.
        Assert.Equal((127, Degrees(8), 0, Degrees(-1.5)), Numbers(wing.Panels[2]));
        Assert.Equal(98.425, wing.Panels[2].Tip.Chord, 1e-12);
    }

    [Fact]
    public void Fuselage_is_read()
    {
        var fuselage = Airframe.Fuselage;
        Assert.Equal(new SkinDescription(3, 2, 1.5875), fuselage.Skin);
        Assert.Equal(
            [
                (0.0, 38.0, 38.0, 42.0, -40.0, default(SectionShape), Run.Straight),
                (180, 46, 46, 60, -52, new(8, 8, 8, 8), Run.Fair),
                (480, 46, 40, 58, -50, new(6, 6, 20, 20), Run.Fair),
                (940, 16, 16, 34, -4, new(16, 19, 16, 19), Run.Fair),
            ],
            fuselage.Stations.Select(s => (s.Station, s.UpperHalfBreadth, s.LowerHalfBreadth, s.Upper, s.Lower, s.Shape, s.RunAft)));
        Assert.Equal(
            [
                ("upper longeron", LongeronPlace.UpperCorner, 0.0, 6.35, 3.175),
                ("lower longeron", LongeronPlace.LowerCorner, 0, 6, 6),
                ("stringer", LongeronPlace.Side, 10, 3, 5),
                ("keel", LongeronPlace.Keel, 0, 6, 12),
                ("crown", LongeronPlace.Crown, 0, 5, 3),
            ],
            fuselage.Longerons.Select(l => (l.Name, l.Place, l.Height, l.Across, l.Up)));
    }

    [Fact]
    public void Formers_are_read()
    {
        var first = Airframe.Formers[0];
        Assert.Equal(("F1", 2.0, 6.0, "birch ply"), (first.Name, first.Station, first.Thickness, first.Material));
        Assert.Equal((GrainDirection.Across, false, default(AllowanceDescription)), (first.Grain, first.IsCrossFormer, first.Allowance));
        Assert.Null(first.Bevel);
        Assert.Null(first.Lightening);
        Assert.Empty(first.Openings);
        Assert.Empty(first.Slots);
        Assert.Empty(first.Tabs);

        var cross = Airframe.Formers[1];
        Assert.Equal((GrainDirection.Upright, true, new AllowanceDescription(1, 8, 0.5)), (cross.Grain, cross.IsCrossFormer, cross.Allowance));
        Assert.Equal((FormerEdge.Upper, FormerFace.Front, Degrees(30)), (cross.Bevel!.Edge, cross.Bevel.Face, cross.Bevel.Angle));
        Assert.Equal(
            [(0.0, -10.0, 20.0, 20.0, 10.0), (25, 20, 24, 16, 4)],
            cross.Openings.Select(o => (o.Across, o.Height, o.Width, o.Depth, o.CornerRadius)));

        // The second slot takes the sheet of 3.8 mm with a fit of 0.05 mm, lying flat; the last tab goes through 3 mm.
        Assert.Equal([(30.0, 0.0, 3.0, 12.0), (0, 10, 15, 3.8 + 0.05)], cross.Slots.Select(s => (s.Across, s.Height, s.Width, s.Depth)));
        Assert.Equal(
            [(TabEdge.Side, 0.0, 15.0, 3.0), (TabEdge.Upper, 5, 10, 3), (TabEdge.Lower, -5, 10, 3), (TabEdge.Lower, 12, 8, 3)],
            cross.Tabs.Select(t => (t.Edge, t.Position, t.Width, t.Depth)));

        var last = Airframe.Formers[2];
        Assert.Equal(500 + (200 * Math.Sin(3 * Math.PI / 180)), last.Station, 1e-12);
        Assert.Equal((3.175, ""), (last.Thickness, last.Material));
        Assert.Equal((8.0, 5.0), (last.Lightening!.Rim, last.Lightening.CornerRadius));
    }

    [Fact]
    public void Fittings_are_read()
    {
        var saddle = Airframe.Saddle;
        Assert.Equal((1.0, 1.5, 30.0, 0.4), (saddle.SeatTape, saddle.Sanding, saddle.Depth, saddle.Abrasive));
        Assert.Equal((45.0, 220.0, 470.0), (saddle.FormHeight, saddle.From!.Value, saddle.To!.Value));
        var dowels = Airframe.Dowels!;
        Assert.Equal((8.0, 64.0, 2.0, 14.0, 0.1), (dowels.Diameter, dowels.Spacing, dowels.AboveChord, dowels.Protrusion, dowels.Fit));
        var bolts = Airframe.Bolts!;
        Assert.Equal(("M6", 50.0, 24.0), (bolts.Thread, bolts.Spacing, bolts.AheadOfTrailingEdge));
        Assert.Equal(("birch ply", 4.0, 45.0, 0.5), (bolts.Plate.Material, bolts.Plate.Thickness, bolts.Plate.Length, bolts.Plate.Gap));
        var shims = Airframe.Shims;
        Assert.Equal((Degrees(-1.5), Degrees(1.5), Degrees(0.5), 10), (shims.From, shims.To, shims.Step, shims.Width));
        Assert.Equal((Degrees(2), Degrees(1.5)), (Airframe.ThrustLine!.Down, Airframe.ThrustLine.Right));
        Assert.Equal(40, Airframe.ThrustLine.Mount!.Across);
        Assert.Equal(38.1, Airframe.ThrustLine.Mount.Up, 1e-12);
        Assert.Equal(15, Airframe.Bench.PinsOutboardOfSide);
        var clearance = (Math.Sqrt((92 * 92) + (46 * 46)) / 2) + (60 * (6 * 28.349523125 / 500));
        Assert.Equal(clearance, Airframe.Bench.Clearance, 1e-12);
        var cradles = Airframe.Bench.Cradles;
        Assert.Equal((150.0, 700.0, "birch ply", 3.8), (cradles.Front!.Value, cradles.Rear!.Value, cradles.Material, cradles.Thickness));
        Assert.Equal(76.2, cradles.Foot, 1e-12);
        Assert.Equal((66.0, 800.0, 930.0), (Airframe.Bench.LevelRests.Root!.Value, Airframe.Bench.LevelRests.Tip!.Value, Airframe.Bench.CordStation!.Value));
    }

    [Fact]
    public void Tailplane_is_read()
    {
        var tailplane = Airframe.Tailplane!;
        Assert.Equal(new SidePoint(800, 30), tailplane.LeadingEdge);
        Assert.Equal((Degrees(-0.5), IncidenceReference.Underside), (tailplane.Incidence.Angle, tailplane.Incidence.Reference));
        Assert.Equal((480.0, 130.0, 90.0, 20.0, 24.0), (tailplane.Span, tailplane.Root.Chord, tailplane.Tip.Chord, tailplane.Sweep, tailplane.SeatWidth));
        Assert.StartsWith("Otter 9", tailplane.Tip.Section.Name, StringComparison.Ordinal);
    }

    [Fact]
    public void Workshop_is_read()
    {
        Assert.Equal(
            [("balsa 3", "balsa", 3.0, 100.0, 1000.0), ("ply 4", "birch ply", 3.8, 300, 600)],
            Airframe.Stock.Select(s => (s.Name, s.Material, s.Thickness, s.Width, s.Length)));
        Assert.Equal(
            [(null, 3.0, 3.0), ((int?)2, 5, 2.5)],
            Airframe.Stock.Select(s => (s.OnHand, s.Margin, s.Spacing)));
        Assert.Empty(Airframe.Stock[0].Remnants);
        Assert.Equal([(120.0, 310.0), (101.6, 165.1)], Airframe.Stock[1].Remnants.Select(r => (r.Width, r.Length)));
        var sheets = Airframe.Sheets;
        Assert.Equal(new("roll 610", null, null), sheets.Paper);
        Assert.Equal((false, true, true), (sheets.IsPortrait, sheets.IsThirdAngle, sheets.HasBothUnits));
        Assert.Equal(
            [(new PaperDescription("Letter", null, null), 10.0, 10.0), (new PaperDescription("200 x 280 mm", 200, 280), 6, 12)],
            sheets.Tiles.Select(tile => (tile.Paper, tile.Margin, tile.Overlap)));
    }

    [Fact]
    public void Cutter_is_read()
    {
        var cutter = Airframe.Cutter;
        Assert.Equal((0.15, 0.05), (cutter.Kerf, cutter.Fit));
        Assert.Equal([("birch ply", 3.8, 0.2), ("birch ply", null, 0.18)], cutter.Kerfs.Select(kerf => (kerf.Material, kerf.Thickness, kerf.Kerf)));
        Assert.Equal((1.2, 4), (cutter.HoldingTabs!.Width, cutter.HoldingTabs.Count));
        Assert.Equal("shop.yaml", cutter.Profile!.File);
        Assert.Equal((12, 80, 150), (cutter.CutSpeed, cutter.ScoreSpeed, cutter.EngraveSpeed));
    }

    // The nearest description of a sheet wins, whatever the order.
    [Theory]
    [InlineData("birch ply", 3.8, 0.2)]
    [InlineData("Birch Ply", 3.804, 0.2)]
    [InlineData("birch ply", 3, 0.18)]
    [InlineData("balsa", 3.8, 0.15)]
    public void The_kerf_of_a_sheet_is_the_most_particular_one(string material, double thickness, double kerf)
    {
        Assert.Equal(kerf, Airframe.Cutter.KerfFor(material, thickness)!.Value.Width);
        var turned = Airframe.Cutter with { Kerfs = [.. Airframe.Cutter.Kerfs.Reverse()] };
        Assert.Equal(kerf, turned.KerfFor(material, thickness)!.Value.Width);
        Assert.Null((turned with { Kerf = null }).KerfFor("balsa", thickness));
    }

    [Fact]
    public void Records_know_where_they_stand()
    {
        Assert.Equal(new SourcePosition("complete.yaml", 23, 3, 9), Airframe.Wing.At);
        Assert.Equal(new SourcePosition("complete.yaml", 28, 7, 15), Airframe.Wing.Panels[0].At);
        Assert.Equal(new SourcePosition("complete.yaml", 29, 7, 6), Airframe.Wing.Panels[1].At);
        Assert.Equal(new SourcePosition("complete.yaml", 56, 5, 60), Airframe.Formers[0].At);
    }

    private static (double Length, double Dihedral, double Sweep, double Twist) Numbers(PanelDescription panel) =>
        (panel.Length, panel.Dihedral, panel.Sweep, panel.Twist);

    private static double Degrees(double degrees) => degrees * (Math.PI / 180);
}
