using static PlanForge.Airframe.Tests.Reading.BrokenDescription;

namespace PlanForge.Airframe.Tests.Reading;

/// <summary>Measurements that cannot be, and what is doubtful about others. The body is 80 mm square and 600 mm long.</summary>
public class BrokenAsBuiltTests
{
    private const string Former = "formers: [{name: F1, station: 200, thickness: 3, material: balsa}]\n";
    private const string Stock = "stock: [{name: B3, material: balsa, thickness: 3, size: 100 x 1000}]\n";

    public static TheoryData<BrokenDescription> Errors => Table(
        Add("A former that there is not", Former + "as_built: {formers: [{name: F2, station: 201}]}",
            "13:29 error: there is no former `F2` in the description; there is only `F1`"),
        Add("A former when there are none", "as_built: {formers: [{name: F2, station: 201}]}",
            "12:29 error: there is no former `F2` in the description; there are none at all"),
        Add("A former of which nothing is said", Former + "as_built: {formers: [{name: F1}]}",
            "13:22 error: a measured former needs `station` or `thickness`"),
        Add("A former measured twice", Former + "as_built: {formers: [{name: F1, station: 201}, {name: F1, thickness: 3.1, station: 202}]}",
            "13:84 error: former F1, station of its front face, is measured already, in line 13"),
        Add("A former measured in inches", Former + "as_built: {formers: [{name: F1, station: 7.9}]}",
            "13:42 error: former F1, station of its front face, is 7.9 mm as built and 200 mm as designed; 25.4 times that is 200.66 mm: were inches read, and taken for millimetres?"),
        Add("A former thickness in another unit", Former + "as_built: {formers: [{name: F1, thickness: 31}]}",
            "13:44 error: former F1, thickness, is 31 mm as built and 3 mm as designed; a tenth of that is 3.1 mm: is the decimal point one place off, or were millimetres read, and taken for centimetres?"),
        Add("A thickness of nothing", Former + "as_built: {formers: [{name: F1, thickness: 0}]}",
            "13:44 error: `thickness` is 0 mm; it must be over 0 mm"),
        Add("A station ahead of the nose", "as_built: {fuselage: [{station: -1, breadth: 80}]}",
            "12:33 error: there is no fuselage at station -1 mm; it runs from 0 mm to 600 mm"),
        Add("A station behind the tail", "as_built: {fuselage: [{station: 601, breadth: 80}]}",
            "12:33 error: there is no fuselage at station 601 mm; it runs from 0 mm to 600 mm"),
        Add("A cross-section of which nothing is said", "as_built: {fuselage: [{station: 300}]}",
            "12:23 error: a measured cross-section needs `breadth`, `upper` or `lower`"),
        Add("A breadth measured twice, the second a trace aft", "as_built: {fuselage: [{station: 300, breadth: 80}, {station: 300.0000001, breadth: 80}]}",
            "12:84 error: fuselage at station 300 mm, breadth, is measured already, in line 12"),
        Add("A half-breadth", "as_built: {fuselage: [{station: 300, breadth: 40.5}]}",
            "12:47 error: fuselage at station 300 mm, breadth, is 40.5 mm as built and 80 mm as designed; twice that is 81 mm: was half the breadth measured? It is the full width, over the outside"),
        Add("A breadth in centimetres", "as_built: {fuselage: [{station: 300, breadth: 8.1}]}",
            "12:47 error: fuselage at station 300 mm, breadth, is 8.1 mm as built and 80 mm as designed; ten times that is 81 mm: is the decimal point one place off, or were centimetres read, and taken for millimetres?"),
        Add("A breadth of something else", "as_built: {fuselage: [{station: 300, breadth: 100}]}",
            "12:47 error: fuselage at station 300 mm, breadth, is 100 mm as built and 80 mm as designed: too far off to be the same thing; measure again, or change the design"),
        Add("A breadth without a unit it could have", "as_built: {fuselage: [{station: 300, breadth: 3 deg}]}",
            "12:47 error: a length is needed here, and `3 deg` is an angle"),
        Add("A top taken for the whole height", "as_built: {fuselage: [{station: 0, upper: 80}]}",
            "12:43 error: fuselage at station 0 mm, upper height, is 80 mm as built and 40 mm as designed: too far off to be the same thing; measure again, or change the design"),
        Add("A bottom whose sign is lost", "as_built: {fuselage: [{station: 0, lower: 40}]}",
            "12:43 error: fuselage at station 0 mm, lower height, is 40 mm as built and -40 mm as designed: too far off to be the same thing; measure again, or change the design"),
        Add("A skin where none is designed", "as_built: {skin: {top: 2}}",
            "12:24 error: skin, top, is 2 mm as built and 0 mm as designed: too far off to be the same thing; measure again, or change the design"),
        Add("A skin of which nothing is said", "as_built: {skin: {}}",
            "12:18 error: the measured skin needs `side`, `top` or `bottom`"),
        Edit("A side skin and a bottom in inches", "fuselage:", "as_built: {skin: {side: 0.118, bottom: 0.118}}\nfuselage:\n  skin: 3",
            "8:25 error: skin, side, is 0.118 mm as built and 3 mm as designed; 25.4 times that is 2.9972 mm: were inches read, and taken for millimetres?",
            "8:40 error: skin, bottom, is 0.118 mm as built and 3 mm as designed; 25.4 times that is 2.9972 mm: were inches read, and taken for millimetres?"),
        Add("A sheet that there is not", Stock + "as_built: {stock: [{name: B4, thickness: 3}]}",
            "13:27 error: there is no sheet `B4` in the stock; there is only `B3`"),
        Add("A sheet without its thickness", Stock + "as_built: {stock: [{name: B3}]}",
            "13:20 error: a measured sheet needs the key `thickness`"),
        Add("A sheet measured twice", Stock + "as_built: {stock: [{name: B3, thickness: 3.1}, {name: B3, thickness: 3.2}]}",
            "13:70 error: sheet B3, thickness, is measured already, in line 13"),
        Add("A sheet of another size", Stock + "as_built: {stock: [{name: B3, thickness: 4}]}",
            "13:42 error: sheet B3, thickness, is 4 mm as built and 3 mm as designed: too far off to be the same thing; measure again, or change the design"),
        Add("A sheet that closes its slot", "formers: [{name: F1, station: 10, thickness: 3, slots: [{sheet: B, length: 12, height: 0}]}]\nstock: [{name: B, material: balsa, thickness: 0.9, size: 80 x 1000}]\ncutter: {fit: -0.8}\nas_built: {stock: [{name: B, thickness: 0.7}]}",
            "15:41 error: nothing is left of a slot for `B` with the cutter's fit"),
        Add("A panel that there is not", "as_built: {wing: {tips: [{panel: 2, chord: 200}]}}",
            "12:34 error: the wing has no panel 2; its only panel is 1"),
        Add("Half a panel", "as_built: {wing: {tips: [{panel: 0.5, chord: 200}]}}",
            "12:34 error: `panel` is 0.5; it must be from 1 to 1000"),
        Add("A panel and a half", "as_built: {wing: {tips: [{panel: 1.5, chord: 200}]}}",
            "12:34 error: the wing has no panel 1.5; its only panel is 1"),
        Add("A tip without its panel", "as_built: {wing: {tips: [{chord: 200}]}}",
            "12:26 error: a measured panel tip needs the key `panel`"),
        Add("A root of which nothing is said", "as_built: {wing: {root: {}}}",
            "12:25 error: the measured root needs `thickness` or `chord`"),
        Add("A chord in inches", "as_built: {wing: {root: {chord: 7.87}}}",
            "12:33 error: wing root, chord, is 7.87 mm as built and 200 mm as designed; 25.4 times that is 199.898 mm: were inches read, and taken for millimetres?"),
        Add("A thickness in percent of the chord", "as_built: {wing: {root: {thickness: 12 %}}}",
            "12:37 error: a length is needed here, and `12 %` is a plain number; give it a unit such as `mm`"),
        Add("A tip measured twice", "as_built: {wing: {tips: [{panel: 1, chord: 200}, {panel: 1, chord: 201}]}}",
            "12:68 error: wing panel 1, tip, chord, is measured already, in line 12"),
        Add("A misspelt thing", "as_built: {fusalage: [{station: 0, breadth: 80}]}",
            "12:12 error: what was measured has no key `fusalage`; did you mean `fuselage`?"),
        Add("Measured sides of a body that is none", "as_built: {fuselage: [{station: 0, breadth: 80}]}\ncolour: red",
            "13:1 error: the description has no key `colour`; its keys are `planforge`, `name`, `revision`, `owner`, `creator`, `approver`, `date_of_issue`, `revisions`, `notes`, `units`, `parameters`, `wing`, `fuselage`, `formers`, `saddle`, `retention`, `tailplane`, `shims`, `thrust_line`, `bench`, `stock`, `sheets`, `cutter` and `as_built`"),
        Edit("Nothing is held against stations that are unsound", "{station: 600,", "{station: -600,",
            "11:17 error: `station` is -600 mm; it must be over 0 mm, the station before") is var unsound
            ? unsound with { Text = unsound.Text + "as_built: {fuselage: [{station: 0, breadth: 300}]}\n" } : unsound);

    public static TheoryData<BrokenDescription> Warnings => Table(
        Add("A breadth a little far off", "as_built: {fuselage: [{station: 0, breadth: 84.5}]}",
            "12:45 warning: fuselage at station 0 mm, breadth, is 84.5 mm as built and 80 mm as designed: measure again to be sure"),
        Add("Sides that turn off to a station near by", "as_built: {fuselage: [{station: 10, breadth: 82}]}",
            "12:46 warning: the sides turn off within 10 mm, to what is designed at station 0 mm: measure there"),
        Add("A former that leaves the body", "formers: [{name: F1, station: 590, thickness: 3}]\nas_built: {formers: [{name: F1, station: 598}]}",
            "12:11 warning: the former `F1` from 598 mm to 601 mm lies partly outside of the fuselage, which runs from 0 mm to 600 mm"),
        Add("Sheets that measure differently", Former + Stock.Replace("]", ", {name: B3 wide, material: balsa, thickness: 3, size: 150 x 1000}]", StringComparison.Ordinal) + "as_built: {stock: [{name: B3, thickness: 3.1}]}",
            "12:11 warning: the former `F1` may be cut from `B3` or from `B3 wide`, which measure differently: it stays 3 mm thick; measure it too"),
        Add("A sheet within what sheets are", Stock + "as_built: {stock: [{name: B3, thickness: 2.7}]}"),
        Add("A sheet a little past that", Stock + "as_built: {stock: [{name: B3, thickness: 3.45}]}",
            "13:42 warning: sheet B3, thickness, is 3.45 mm as built and 3 mm as designed: measure again to be sure"),
        Add("A former at the nose a tape's breadth off", "formers: [{name: F1, station: 0, thickness: 3}]\nas_built: {formers: [{name: F1, station: 4}]}",
            "13:42 warning: former F1, station of its front face, is 4 mm as built and 0 mm as designed: measure again to be sure"),
        Add("Nothing of what is as designed", Former + Stock + "as_built: {formers: [{name: F1, station: 200, thickness: 3}], fuselage: [{station: 0, breadth: 80, upper: 40, lower: -40}, {station: 17, breadth: 80}], stock: [{name: B3, thickness: 3}], wing: {root: {chord: 200}, tips: [{panel: 1, chord: 200}]}}"),
        Add("Nothing of an empty key", "as_built: {}"));

    [Theory]
    [MemberData(nameof(Errors))]
    public void Measurements_that_cannot_be_are_refused(BrokenDescription description) => Assert.Equal(description.Expected, description.Findings());

    [Theory]
    [MemberData(nameof(Warnings))]
    public void Doubtful_measurements_are_warned_of(BrokenDescription description) => Assert.Equal(description.Expected, description.Findings());
}
