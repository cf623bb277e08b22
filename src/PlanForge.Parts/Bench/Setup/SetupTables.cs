using System.Collections.Immutable;
using System.Globalization;
using PlanForge.Parts.Bolts;
using PlanForge.Parts.Dowels;
using PlanForge.Parts.Rigging;
using PlanForge.Parts.Wording;

namespace PlanForge.Parts.Bench.Setup;

/// <summary>The tables of the set-up sheet: targets with room for readings, places on the board, angles as rises.</summary>
internal static class SetupTables
{
    /// <summary>What is measured, what it should be, how far off it may be, and room for the readings of three rounds.</summary>
    public static void AddTargets(ImmutableArray<SetupTarget> targets, MeasureText text, PartSketch sketch) => sketch.Form(
        $"Heights above the board and lengths ({text.UnitName})",
        ["what", "target", "within"],
        ["1st round", "2nd round", "3rd round"],
        targets.Select(target => ImmutableArray.Create(target.Name, text.Fine(target.Value), "±" + text.Fine(target.Tolerance))));

    /// <summary>Where everything stands.</summary>
    public static void AddPlaces(RiggedAirframe airframe, SetupTargets targets, PartSketch sketch)
    {
        var text = airframe.Text;
        var rows = ImmutableArray.CreateBuilder<ImmutableArray<string>>();
        void Add(string what, double value) => rows.Add([what, text.Column(value)]);
        var (cradles, rests, board) = (CradleStations.Of(airframe), LevelRestPlaces.Of(airframe), targets.Board);
        Add("front cradle, its front face", cradles.Front);
        Add("rear cradle, its front face", cradles.Rear);
        Add("from one to the other", cradles.Rear - cradles.Front);
        Add("P1 to P4 from the centre line", targets.Across);
        Add("level rests of the wing: root", rests.Root);
        Add("the same: tip", rests.Tip);
        Add("pin for the cord", targets.CordStation);
        if (targets.Tail is { } tail)
        {
            Add("level rest of the tailplane", rests.Tailplane);
            Add("T1 to T4 from the centre line", tail.Front.Y);
        }

        if (DowelAxis.Of(airframe) is { } dowels)
        {
            foreach (var former in airframe.Description.Formers)
            {
                if (former.IsCrossFormer)
                {
                    Add($"dowels above the board, front of {former.Name}", dowels.HeightAt(former.Station) + board);
                    Add($"the same, rear of {former.Name}", dowels.HeightAt(former.Station + former.Thickness) + board);
                }
            }
        }

        if (BoltAxis.Of(airframe) is { } bolts)
        {
            Add("bolt plate above the board", bolts.NearFace + board);
        }

        sketch.Table("", ["what", $"at, {text.UnitName}"], rows);
    }

    /// <summary>Every angle of the rigging as a rise over a length, in both systems of units.</summary>
    public static void AddAngles(RiggedAirframe airframe, SetupTargets targets, PartSketch sketch)
    {
        var rows = ImmutableArray.CreateBuilder<ImmutableArray<string>>();

        // Along a chord the rise is its sine, along the datum line the tangent: see the incidence of the description.
        void Add(string what, double angle, double length, bool isAlongChord)
        {
            var rise = length * (isAlongChord ? Math.Sin(angle) : Math.Tan(angle));
            rows.Add([what, MeasureText.Angle(angle), MeasureText.Rounded(rise, 2), MeasureText.Inches(rise / MeasureText.MillimetresPerInch), airframe.Text.Column(length)]);
        }

        var wing = airframe.Wing;
        Add("wing incidence, root chord", wing.Incidence, wing.RootChord, isAlongChord: true);
        var tail = airframe.Description.Tailplane;
        if (tail is not null && ChordIncidence.Of(tail.Incidence, tail.Root.Section) is { } tailIncidence)
        {
            Add("tailplane incidence, root chord", tailIncidence, tail.Root.Chord, isAlongChord: true);
            Add("decalage, over the wing's root chord", wing.Incidence - tailIncidence, wing.RootChord, isAlongChord: true);
        }

        if (targets.Tail is { } pins)
        {
            Add("tailplane, T1 over T3", Math.Atan2(pins.Rise, pins.Over), pins.Over, isAlongChord: false);
        }

        for (var i = 0; i < wing.Panels.Length; i++)
        {
            var panel = wing.Panels[i];
            var number = (i + 1).ToString(CultureInfo.InvariantCulture);
            Add($"dihedral of panel {number}, along it", panel.Dihedral, panel.Length, isAlongChord: true);
            if (panel.OuterTwist != 0)
            {
                Add($"twist at the tip of panel {number}", panel.OuterTwist, panel.OuterChord, isAlongChord: true);
            }
        }

        if (airframe.Description.ThrustLine is { } thrust)
        {
            // Checked with a stick on the shaft.
            var stick = JigSizes.Of(airframe.Description.DisplayUnit).Stick;
            Add("down-thrust", thrust.Down, stick, isAlongChord: false);
            Add("side-thrust to the right (starboard)", thrust.Right, stick, isAlongChord: false);
        }

        sketch.Table("Angles as rises", ["angle", "degrees", "rise, mm", "rise, in", $"over, {airframe.Text.UnitName}"], rows);
    }
}
