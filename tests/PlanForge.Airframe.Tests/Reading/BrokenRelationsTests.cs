using static PlanForge.Airframe.Tests.Reading.BrokenDescription;

namespace PlanForge.Airframe.Tests.Reading;

/// <summary>Values that are sound by themselves and not together, and what is warned of.</summary>
public class BrokenRelationsTests
{
    private const string LastStation = "    - {station: 600, half_breadth: 40, upper: 40, lower: -40}";

    public static TheoryData<BrokenDescription> Errors => Table(
        Edit("Stations the wrong way round", "{station: 600,", "{station: -600,",
            "11:17 error: `station` is -600 mm; it must be over 0 mm, the station before"),
        Edit("Two stations in one place", "{station: 600,", "{station: 0,",
            "11:17 error: `station` is 0 mm; it must be over 0 mm, the station before"),
        Edit("A bottom over its top", LastStation, "    - {station: 600, half_breadth: 40, upper: 40, lower: 41}",
            "11:58 error: `lower` is 41 mm; it must be under `upper`, 40 mm"),
        Edit("A bottom at its top", LastStation, "    - {station: 600, half_breadth: 40, upper: 40, lower: 40}",
            "11:58 error: `lower` is 40 mm; it must be under `upper`, 40 mm"),
        Edit("Corners wider than the body", LastStation, "    - {station: 600, half_breadth: {upper: 40, lower: 20}, upper: 40, lower: -40, shape: {rounded: 21}}",
            "11:100 error: `rounded` is 21 mm; it must be at most 20 mm, half the width"),
        Edit("Corners higher than the body", LastStation, "    - {station: 600, half_breadth: 40, upper: 10, lower: -10, shape: {rounded: 11}}",
            "11:80 error: `rounded` is 11 mm; it must be at most 10 mm, half the height"),
        Edit("Upper corners wider than the body", LastStation, "    - {station: 600, half_breadth: 40, upper: 60, lower: -60, shape: {upper: 41, lower: 10}}",
            "11:78 error: `upper` is 41 mm; it must be at most 40 mm, half the width"),
        Edit("Lower corners wider than the body", LastStation, "    - {station: 600, half_breadth: 40, upper: 60, lower: -60, shape: {upper: 10, lower: 41}}",
            "11:89 error: `lower` is 41 mm; it must be at most 40 mm, half the width"),
        Edit("Corners together higher than the body", LastStation, "    - {station: 600, half_breadth: 40, upper: 20, lower: -20, shape: {upper: 30, lower: 30}}",
            "11:70 error: the sum of both radii is 60 mm; it must be at most 40 mm, the height"),
        Add("Corners of an opening larger than half of it", "formers:\n  - {name: F1, station: 10, thickness: 3, openings: [{width: 30, depth: 20, height: 0, corner_radius: 10.5}]}",
            "13:103 error: `corner_radius` is 10.5 mm; it must be at most 10 mm, half the smaller size"),
        Edit("A longeron on the side without height", "fuselage:", "fuselage:\n  longerons: [{name: L, place: side, size: 6}]",
            "9:15 error: a longeron on the side needs the key `height`"),
        Edit("A keel with a height", "fuselage:", "fuselage:\n  longerons: [{name: L, place: keel, height: 3, size: 6}]",
            "9:46 error: `height` only goes with `place: side`; in the keel the height follows from the body"),
        Add("Two formers of one name", "formers:\n  - {name: F1, station: 10, thickness: 3}\n  - {name: F1, station: 20, thickness: 3}",
            "14:12 error: a former is called `F1` already, in line 13"),
        Add("Two formers whose files would have one name on some systems", "formers:\n  - {name: F1, station: 10, thickness: 3}\n  - {name: f1, station: 20, thickness: 3}",
            "14:12 error: `f1` differs from `F1`, in line 13, by case alone"),
        Add("Two sheets of stock of one name", "stock:\n  - {name: B3, material: balsa, thickness: 3, size: 100 x 1000}\n  - {name: B3, material: balsa, thickness: 3, size: 80 x 1000}",
            "14:12 error: a sheet of stock is called `B3` already, in line 13"),
        Add("A slot for a sheet that there is not", "formers: [{name: F1, station: 10, thickness: 3, slots: [{sheet: bals, length: 12, height: 0}]}]\nstock: [{name: balsa, material: balsa, thickness: 3, size: 80 x 1000}]",
            "12:65 error: there is no sheet `bals` in the stock; did you mean `balsa`?"),
        Add("A tab through a sheet when there are none", "formers: [{name: F1, station: 10, thickness: 3, tabs: [{edge: side, position: 0, width: 9, through: side}]}]",
            "12:101 error: there is no sheet `side` in the stock; there are none at all"),
        Add("A slot with a width of its own for a sheet", "formers: [{name: F1, station: 10, thickness: 3, slots: [{sheet: balsa, width: 12, depth: 3, height: 0}]}]",
            "12:58 error: `sheet` does not go with `width`"),
        Add("A fit that closes the slot", "formers: [{name: F1, station: 10, thickness: 3, slots: [{sheet: B, length: 12, height: 0}]}]\nstock: [{name: B, material: balsa, thickness: 0.4, size: 80 x 1000}]\ncutter: {fit: -0.5}",
            "12:65 error: nothing is left of a slot for `B`: it is 0.4 mm thick and the fit -0.5 mm"),
        Add("Two kerfs of one sheet", "cutter:\n  kerfs: [{material: balsa, thickness: 3, kerf: 0.1}, {material: Balsa, thickness: 3.001, kerf: 0.2}]",
            "13:55 error: the kerf of this sheet is given already, in line 13"),
        Add("Two kerfs of one material in any thickness", "cutter:\n  kerfs: [{material: balsa, kerf: 0.1}, {material: balsa, kerf: 0.2}]",
            "13:41 error: the kerf of this sheet is given already, in line 13"),
        Add("Half a holding tab", "cutter: {holding_tabs: {count: 2.5}}", "12:32 error: `count` must be a whole number"),
        Edit("A rise over the chord itself", "wing:", "wing:\n  incidence: {rise: 201 mm, over: chord}",
            "5:21 error: `rise` is 201 mm; it cannot be over the chord, 200 mm"),
        Edit("A rise of more than 45 degrees along the chord", "wing:", "wing:\n  incidence: {rise: 150 mm, over: chord}",
            "5:21 error: the angle of this rise is 48.590378 deg; it must be from -45 deg to 45 deg"),
        Edit("A rise of more than 45 degrees along the datum line", "wing:", "wing:\n  incidence: {rise: -30 mm, over: 20 mm}",
            "5:21 error: the angle of this rise is -56.309932 deg; it must be from -45 deg to 45 deg"),
        Add("A saddle that ends before it begins", "saddle: {from: 200, to: 150}",
            "12:25 error: the saddle would end at 150 mm, which is not aft of where it begins, 200 mm"),
        Add("A saddle that ends before the leading edge, where it begins", "saddle: {to: 90}",
            "12:14 error: the saddle would end at 90 mm, which is not aft of where it begins, 100 mm"),
        Add("A saddle that begins behind the trailing edge, where it ends", "saddle: {from: 300}",
            "12:16 error: the saddle would end at 300 mm, which is not aft of where it begins, 300 mm"),
        Add("Shims from high to low", "shims: {from: 1, to: -1}",
            "12:22 error: `to` is -1 deg; it must be `from` or more, 1 deg"),
        Add("Over a hundred shims", "shims: {step: 0.01}",
            "12:15 error: `step` is 0.01 deg; from -1 deg to 1 deg that makes over 100 shims"),
        Add("A cradle ahead of the nose", "bench: {cradles: {front: {station: -1}}}",
            "12:36 error: the cradle from -1 mm to 3 mm does not stand under the fuselage, which runs from 0 mm to 600 mm"),
        Add("A cradle half behind the tail", "bench: {cradles: {rear: {station: 597}}}",
            "12:35 error: the cradle from 597 mm to 601 mm does not stand under the fuselage, which runs from 0 mm to 600 mm"),
        Add("The rear cradle within the front one", "bench: {cradles: {front: {station: 200}, rear: {station: 203}, thickness: 4}}",
            "12:58 error: the rear cradle at 203 mm does not stand aft of the front one, which takes 200 mm to 204 mm"),
        Add("A level rest outside the wing", "bench: {level_rests: {root: 60, tip: 501}}",
            "12:38 error: `tip` is 501 mm; the wing ends 500 mm from the centre line"),
        Add("A cradle without a station", "bench: {cradles: {front: {}}}",
            "12:26 error: a cradle needs the key `station`"),
        Add("A mount with one distance", "thrust_line: {down: 2, mount: {across: 40}}",
            "12:31 error: the mount needs the key `up`"),
        Edit("A camber asked of a section that has none", "section: naca 2412", "section: {naca: \"0012\", camber: 2 %}",
            "6:42 error: NACA 0012 has no camber that could be scaled"),
        new("Several faults in one run, in the order of the file", Sound
            .Replace("name: Sound", "name: a/b", StringComparison.Ordinal)
            .Replace("chord: 200", "chord: 0", StringComparison.Ordinal)
            .Replace("{station: 600,", "{station: -1,", StringComparison.Ordinal)
            .Replace("length: 500", "lenght: 500", StringComparison.Ordinal),
            "2:7 error: `name` cannot hold `/`: files are named after it",
            "6:37 error: `chord` is 0 mm; it must be over 0 mm",
            "7:13 error: a panel has no key `lenght`; did you mean `length`?",
            "11:17 error: `station` is -1 mm; it must be over 0 mm, the station before"));

    public static TheoryData<BrokenDescription> Warnings => Table(
        Edit("A wing at seven degrees", "wing:", "wing:\n  incidence: 7",
            "5:14 warning: the incidence of the wing is 7 deg; over 6 deg either way is unusual"),
        Edit("A wing at seven degrees by its rise", "wing:", "wing:\n  incidence: {rise: 24.4 mm, over: 200 mm}",
            "5:14 warning: the incidence of the wing is 6.955711 deg; over 6 deg either way is unusual"),
        Add("A tailplane at minus seven degrees", "tailplane: {leading_edge: {station: 500, height: 0}, incidence: -7, span: 300, root: {section: naca 0009, chord: 80}}",
            "12:65 warning: the incidence of the tailplane is -7 deg; over 6 deg either way is unusual"),
        Add("A former ahead of the nose", "formers:\n  - {name: F1, station: -10, thickness: 3}",
            "13:5 warning: the former `F1` at -10 mm lies outside of the fuselage, which runs from 0 mm to 600 mm"),
        Add("A former behind the tail", "formers:\n  - {name: F1, station: 601, thickness: 3}",
            "13:5 warning: the former `F1` at 601 mm lies outside of the fuselage, which runs from 0 mm to 600 mm"),
        Add("A former half out of the tail", "formers:\n  - {name: F1, station: 598, thickness: 3}",
            "13:5 warning: the former `F1` from 598 mm to 601 mm lies partly outside of the fuselage, which runs from 0 mm to 600 mm"),
        Add("A former half out of the nose", "formers:\n  - {name: F1, station: -1, thickness: 3}",
            "13:5 warning: the former `F1` from -1 mm to 2 mm lies partly outside of the fuselage, which runs from 0 mm to 600 mm"),
        Add("A former within another", "formers:\n  - {name: F1, station: 100, thickness: 3}\n  - {name: F2, station: 102, thickness: 3}\n  - {name: F3, station: 50, thickness: 3}",
            "14:5 warning: the former `F2` stands from 102 mm on, in the former `F1`, which ends at 103 mm; move one of them"),
        Add("A doubler against its former", "formers:\n  - {name: F1, station: 100.1, thickness: 3.2}\n  - {name: D1, station: 103.3, thickness: 3}"),
        Add("A rim of two millimetres", "formers:\n  - {name: F1, station: 10, thickness: 3, lightening: {rim: 2}}",
            "13:55 warning: the rim of the former `F1` is 2 mm; under 3 mm it breaks easily"),
        Add("A saddle longer than the chord", "saddle: {from: 90, to: 310}",
            "12:9 warning: the saddle is 220 mm long; the root chord is 200 mm"),
        Add("A saddle that begins ahead of the wing", "saddle: {from: 90, to: 250}",
            "12:9 warning: the saddle from 90 mm to 250 mm reaches beyond the root chord, from 100 mm to 300 mm"),
        Add("A saddle that ends behind the wing", "saddle: {from: 150, to: 310}",
            "12:9 warning: the saddle from 150 mm to 310 mm reaches beyond the root chord, from 100 mm to 300 mm"),
        Add("A kerf of centimetres", "cutter: {kerf: 1.5, kerfs: [{material: balsa, kerf: 2}]}",
            "12:9 warning: the kerf is 1.5 mm; over 1 mm is unusual", "12:29 warning: the kerf is 2 mm; over 1 mm is unusual"),
        Add("Holding tabs like threads", "cutter: {holding_tabs: {width: 0.4}}",
            "12:24 warning: holding tabs are 0.4 mm wide; from 0.5 mm to 2 mm hold and still break out"),
        Add("Holding tabs like posts", "cutter: {holding_tabs: {width: 2.1}}",
            "12:24 warning: holding tabs are 2.1 mm wide; from 0.5 mm to 2 mm hold and still break out"),
        Add("A parameter that nothing uses", "parameters: {a: 3 mm, b: a * 2}",
            "12:23 warning: the parameter `b` is never used"),
        Add("Nothing at the limits", "formers:\n  - {name: F1, station: 0, thickness: 3, lightening: {rim: 3}}\n  - {name: F2, station: 597, thickness: 3}\nsaddle: {from: 100, to: 300}\ntailplane: {leading_edge: {station: 500, height: 0}, incidence: 6, span: 300, root: {section: naca 0009, chord: 80}}"),
        Add("No warning of what an error may have caused", "parameters: {a: 3 mm}\ncolour: a",
            "13:1 error: the description has no key `colour`; its keys are `planforge`, `name`, `revision`, `owner`, `creator`, `approver`, `date_of_issue`, `revisions`, `notes`, `units`, `parameters`, `wing`, `fuselage`, `formers`, `saddle`, `retention`, `tailplane`, `shims`, `thrust_line`, `bench`, `stock`, `sheets`, `cutter` and `as_built`"));

    [Theory]
    [MemberData(nameof(Errors))]
    public void Values_that_do_not_go_together_are_refused(BrokenDescription description) => Assert.Equal(description.Expected, description.Findings());

    [Theory]
    [MemberData(nameof(Warnings))]
    public void Unusual_values_are_warned_of(BrokenDescription description) => Assert.Equal(description.Expected, description.Findings());
}
