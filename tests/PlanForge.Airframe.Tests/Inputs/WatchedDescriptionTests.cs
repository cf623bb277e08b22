using System.Collections;
using System.Reflection;
using PlanForge.Airframe.Described;
using PlanForge.Airframe.Inputs;
using PlanForge.Airframe.Sections;

namespace PlanForge.Airframe.Tests.Inputs;

public class WatchedDescriptionTests
{
    // The version of the format, which the reader has looked at already.
    private const string Version = "planforge";

    // A file is read with the section that names it; a description without it cannot be read at all.
    [Fact]
    public void Whoever_reads_everything_has_every_value_among_the_inputs()
    {
        var read = Description.Read(Description.Complete);
        var log = new InputLog();
        var watched = read.Airframe!.Watched(log);
        var inputs = log.Record(() => ReadAll(watched)).Inputs.ToSet();
        var missing = read.ListValues().Values.Select(value => value.Path).Where(path => path != Version && !inputs.Covers(path)).ToArray();
        Assert.True(missing.Length == 0, string.Join('\n', missing));
    }

    [Fact]
    public void Each_property_that_holds_a_value_notes_that_it_is_read()
    {
        var log = new InputLog();
        var silent = new List<string>();
        Walk(Description.Read(Description.Complete).Airframe!.Watched(log), (owner, property) =>
        {
            var paths = log.Record(() => property.GetValue(owner)).Inputs.ToSet().Paths;
            if (paths.IsEmpty && !IsRecord(property.PropertyType) && property.Name is not ("At" or "Fields" or "Fingerprint" or "Parameters" or "Overrides"))
            {
                silent.Add($"{owner.GetType().Name}.{property.Name}");
            }
        });
        Assert.True(silent.Count == 0, string.Join('\n', silent.Distinct()));
    }

    // Without what was measured as such, which holds the design too: what the airframe that is drawn reads.
    [Fact]
    public void Measured_values_are_read_in_place_of_the_designed_ones()
    {
        var read = Description.Read(Description.Complete);
        var log = new InputLog();
        var drawn = (read.Airframe! with { AsBuilt = null }).Watched(log);
        var inputs = log.Record(() => ReadAll(drawn)).Inputs.ToSet();
        var measured = read.ListValues().Values.Where(value => value.Path.StartsWith("as_built.", StringComparison.Ordinal) && value.Kind == ValueKind.Length).ToArray();
        Assert.Equal(18, measured.Length);
        Assert.All(measured, value => Assert.True(inputs.Covers(value.Path), value.Path));
        Assert.DoesNotContain("as_built", inputs.Paths);
        Assert.All(
            new[] { "formers[F3].station", "formers[F3].thickness", "formers[F7].station", "fuselage.skin.side", "fuselage.skin.bottom" },
            path => Assert.False(inputs.Covers(path), path));
    }

    [Fact]
    public void What_was_measured_stands_behind_nothing_but_what_it_was_taken_over_into()
    {
        var log = new InputLog();
        var drawn = Description.Read(Description.Complete).Airframe!.Watched(log);
        string[] Of(Func<object> read) => [.. log.Record(read).Inputs.ToSet().Paths.Where(path => !path.EndsWith("[]", StringComparison.Ordinal))];
        Assert.Equal(["as_built.formers[F3].thickness"], Of(() => drawn.Formers[1].Thickness));
        Assert.Equal(["formers[F1].station"], Of(() => drawn.Formers[0].Station));
        Assert.Equal(["as_built.fuselage[1].station", "as_built.fuselage[1].upper"], Of(() => drawn.Fuselage.Stations[1].Upper));
        Assert.Equal(["as_built.fuselage[2].station"], Of(() => drawn.Fuselage.Stations[2].Station));
        Assert.Equal(
            ["as_built.fuselage[1].breadth", "as_built.fuselage[1].station", "fuselage.stations[2].half_breadth"],
            Of(() => drawn.Fuselage.Stations[1].UpperHalfBreadth));
        Assert.Equal(["as_built.wing.root.chord", "as_built.wing.tips[1].panel"], Of(() => drawn.Wing.Root.Chord));
        Assert.Equal(["as_built.skin.top"], Of(() => drawn.Fuselage.Skin.Top));
        Assert.Equal(["as_built.stock[ply 4].thickness"], Of(() => drawn.Stock[1].Thickness));
    }

    [Fact]
    public void Watching_a_description_leaves_it_equal()
    {
        var airframe = Description.Read(Description.Complete).Airframe!;
        Assert.Equal(Description.Canonical(airframe), Description.Canonical(airframe.Watched(new InputLog())));
        Assert.Equal(airframe.Wing.Root, airframe.Watched(new InputLog()).Wing.Root);
        Assert.Equal(airframe.Saddle, airframe.Watched(new InputLog()).Saddle);
    }

    [Fact]
    public void What_is_made_once_hands_its_inputs_to_all_who_use_it_and_to_no_other()
    {
        var log = new InputLog();
        var airframe = Description.Read(Description.Complete).Airframe!.Watched(log);
        var tape = log.Record(() => airframe.Saddle.SeatTape);
        var user = log.Record(() => tape.Value + airframe.Saddle.Depth);
        var other = log.Record(() => airframe.Saddle.Depth);
        Assert.Equal(["saddle.depth", "saddle.seat_tape"], user.Inputs.ToSet().Paths);
        Assert.Equal(["saddle.depth"], other.Inputs.ToSet().Paths);
    }

    [Fact]
    public void A_set_covers_what_lies_within_its_paths_and_nothing_beside()
    {
        var set = InputSet.Of(["wing.root.section", "wing.root.section.thickness", "formers[]", "formers[F3].station"]);
        Assert.Equal(["formers[F3].station", "formers[]", "wing.root.section"], set.Paths);
        Assert.True(set.Covers("wing.root.section") && set.Covers("wing.root.section.camber") && set.Covers("formers[]"));
        Assert.False(set.Covers("wing.root.section2") || set.Covers("formers[F3].thickness") || set.Covers("formers") || set.Covers("wing.root"));
    }

    private static int ReadAll(object root)
    {
        var count = 0;
        Walk(root, (_, _) => count++);
        return count;
    }

    // Every public property of every record of the description; sections are read as a whole.
    private static void Walk(object owner, Action<object, PropertyInfo> visit)
    {
        foreach (var property in owner.GetType().GetProperties(BindingFlags.Public | BindingFlags.Instance).Where(p => p.GetIndexParameters().Length == 0))
        {
            visit(owner, property);
            var value = property.GetValue(owner);
            foreach (var inner in value is IEnumerable list and not string ? list.Cast<object>() : value is null ? [] : [value])
            {
                if (IsRecord(inner.GetType()) && inner is not Section)
                {
                    Walk(inner, visit);
                }
            }
        }
    }

    private static bool IsRecord(Type type) => (Nullable.GetUnderlyingType(type) ?? type) is { IsEnum: false } plain
        && plain.GetProperty("Origin", BindingFlags.NonPublic | BindingFlags.Instance) is not null;
}
