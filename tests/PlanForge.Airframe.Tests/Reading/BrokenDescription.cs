using PlanForge.Airframe.Diagnostics;
using PlanForge.Airframe.Reading;

namespace PlanForge.Airframe.Tests.Reading;

/// <summary>A description with a fault, and what must be said about it.</summary>
/// <param name="Why">Why it is wrong, in a few words; names the test case.</param>
/// <param name="Text">The description.</param>
/// <param name="Expected">The findings, as <c>line:column severity: message</c>, all of them in order.</param>
public sealed record BrokenDescription(string Why, string Text, params string[] Expected)
{
    /// <summary>A sound description with nothing but what is required.</summary>
    public const string Sound = """
        planforge: 1
        name: Sound
        units: mm
        wing:
          leading_edge: {station: 100, height: 40}
          root: {section: naca 2412, chord: 200}
          panels: [{length: 500}]
        fuselage:
          stations:
            - {station: 0, half_breadth: 40, upper: 40, lower: -40}
            - {station: 600, half_breadth: 40, upper: 40, lower: -40}

        """;

    /// <summary>The sound description with one stretch of text replaced.</summary>
    public static BrokenDescription Edit(string why, string from, string to, params string[] expected)
    {
        Assert.Equal(2, Sound.Split(from).Length);
        return new(why, Sound.Replace(from, to, StringComparison.Ordinal), expected);
    }

    /// <summary>The sound description with lines added at its end, from line 12 on.</summary>
    public static BrokenDescription Add(string why, string lines, params string[] expected) => new(why, Sound + lines + "\n", expected);

    /// <summary>The findings of reading it, written as <see cref="Expected"/> is.</summary>
    public string[] Findings()
    {
        var result = AirframeReader.Read("test.yaml", Text, _ => null);
        Assert.Equal(result.Airframe is null, result.Diagnostics.Any(d => d.Severity == Severity.Error));
        return [.. result.Diagnostics.Select(Written)];
    }

    /// <summary>A theory's data.</summary>
    public static TheoryData<BrokenDescription> Table(params BrokenDescription[] rows)
    {
        var data = new TheoryData<BrokenDescription>();
        foreach (var row in rows)
        {
            data.Add(new TheoryDataRow<BrokenDescription>(row) { TestDisplayName = row.Why });
        }

        return data;
    }

    public override string ToString() => Why;

    private static string Written(Diagnostic diagnostic)
    {
        Assert.Equal("test.yaml", diagnostic.At.File);
        return FormattableString.Invariant(
            $"{diagnostic.At.Line}:{diagnostic.At.Column} {(diagnostic.Severity == Severity.Error ? "error" : "warning")}: {diagnostic.Message}");
    }
}
