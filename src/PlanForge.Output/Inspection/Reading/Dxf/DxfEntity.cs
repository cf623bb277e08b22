using System.Globalization;

namespace PlanForge.Output.Inspection.Reading.Dxf;

/// <summary>The groups of one entity, the one with its name first.</summary>
/// <param name="tags">The groups.</param>
/// <param name="findings">Takes values that are at fault.</param>
internal sealed class DxfEntity(List<DxfTag> tags, FindingList findings)
{
    public string Kind => tags[0].Value;

    public TextPlace At => tags[0].At;

    /// <summary>The groups after the name.</summary>
    public IReadOnlyList<DxfTag> Tags => tags;

    /// <summary>True once a value was at fault.</summary>
    public bool IsBroken { get; private set; }

    /// <summary>The number of a group, a default where the group is missing.</summary>
    public double Number(int code, double missing) => First(code) is { } tag ? Number(tag) : missing;

    /// <summary>The number of a group that must be there.</summary>
    public double Number(int code)
    {
        if (First(code) is { } tag)
        {
            return Number(tag);
        }

        IsBroken = true;
        findings.Fault(FindingCode.Syntax, At, string.Create(CultureInfo.InvariantCulture, $"this {Kind} has no group {code}"));
        return 0;
    }

    /// <summary>The number of a group.</summary>
    public double Number(DxfTag tag)
    {
        if (tag.TryNumber(out var number))
        {
            return number;
        }

        IsBroken = true;
        findings.Fault(FindingCode.Syntax, tag.ValueAt, string.Create(CultureInfo.InvariantCulture, $"group {tag.Code} needs a number, not {Words.Quote(tag.Value)}"));
        return 0;
    }

    /// <summary>The whole number of a group, a default where the group is missing or no whole number.</summary>
    public int Integer(int code, int missing) => First(code) is { } tag && tag.TryInteger(out var number) ? number : missing;

    /// <summary>The text of a group, a default where the group is missing.</summary>
    public string Text(int code, string missing) => First(code)?.Value ?? missing;

    private DxfTag? First(int code)
    {
        foreach (var tag in tags)
        {
            if (tag.Code == code)
            {
                return tag;
            }
        }

        return null;
    }
}
