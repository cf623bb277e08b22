using System.Globalization;

namespace PlanForge.Parts.Tests.Inputs;

/// <summary>The recorded inputs of parts against what really changes when one value is changed and all parts are made again.</summary>
public class RecordedInputsTests
{
    [Theory]
    [MemberData(nameof(Designs.All), MemberType = typeof(Designs))]
    public void Each_part_that_a_changed_value_changes_has_it_among_its_inputs_and_few_others_have(string design)
    {
        var probe = new ChangeProbe(Designs.Text(design), Designs.SectionFile);
        var changes = new List<PartChange>();
        var skipped = new List<string>();
        foreach (var value in probe.Numbers)
        {
            if ((probe.Move(value, 0.003) ?? probe.Move(value, -0.003) ?? probe.Move(value, 0.00001)) is { } moved)
            {
                changes.AddRange(moved);
            }
            else
            {
                skipped.Add(value.Path);
            }
        }

        var missed = changes.Where(change => change.IsChanged && !(change.WasInput && change.IsInput)).ToArray();
        var recorded = changes.Count(change => change.IsInput);
        var idle = changes.Where(change => change.IsInput && !change.IsChanged).ToArray();
        if (Environment.GetEnvironmentVariable("PLANFORGE_INPUTS") is { } file)
        {
            File.AppendAllLines(file, [$"== {design}: {changes.Count} pairs, {recorded} recorded, {idle.Length} of them unchanged; skipped {string.Join(' ', skipped)}"]);
            File.AppendAllLines(file, missed.Select(change => $"MISSED {change.Part} {change.Path}"));
            File.AppendAllLines(file, idle.Select(change => $"idle {change.Part} {change.Path}"));
        }

        Assert.True(missed.Length == 0, string.Join('\n', missed.Select(change => $"{change.Part} changed with {change.Path}")));
        Assert.True(skipped.Count < 10, string.Join('\n', skipped));
        var share = (double)idle.Length / recorded;
        Assert.True(share < 1, share.ToString(CultureInfo.InvariantCulture));
    }
}
