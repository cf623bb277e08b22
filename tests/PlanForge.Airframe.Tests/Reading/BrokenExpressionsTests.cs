using static PlanForge.Airframe.Tests.Reading.BrokenDescription;

namespace PlanForge.Airframe.Tests.Reading;

/// <summary>Expressions and parameters that cannot be worked out.</summary>
public class BrokenExpressionsTests
{
    public static TheoryData<BrokenDescription> Texts => Table(
        Chord("A number added to a length", "body_width + 3", "?"),
        Chord("A length added to a number", "3 + body_width", "?"),
        Chord("A length plus an angle", "body_width + 3 deg", "?"),
        Chord("An angle minus a length", "3 deg - body_width", "?"),
        Chord("A number added to an area", "body_width * body_width + 2 * 3", "?"),
        Chord("A number compared with a length", "'max(body_width, 3)'", "?"),
        Chord("A length compared with an angle", "'min(body_width, 3 deg)'", "?"),
        Chord("A plain number as a result", "2 * 3", "?"),
        Chord("An area as a result", "body_width * body_width", "?"),
        Chord("A reciprocal as a result", "1 / body_width", "?"),
        Chord("A parameter misspelled", "body_widht / 2", "?"),
        Chord("Two unknown parameters are two errors", "wide + body_width + tall", "?", "?"),
        Chord("A unit without a number", "2 * mm + body_width", "?"),
        Chord("A function without its values", "sin * body_width", "?"),
        Chord("A function that does not exist", "abs(body_width)", "?"),
        Chord("A function misspelled", "sqr(body_width * body_width)", "?"),
        Chord("A root of a length", "sqrt(body_width)", "?"),
        Chord("A root of something negative", "sqrt(0 mm * body_width - 4 mm * 1 mm)", "?"),
        Chord("A sine of a number", "body_width * sin(3)", "?"),
        Chord("A sine of a length", "body_width * sin(body_width)", "?"),
        Chord("A tangent of a right angle", "body_width * tan(90 deg)", "?"),
        Chord("A division by nothing", "body_width / (3 - 3)", "?"),
        Chord("A product beyond all numbers", "1e200 * 1e200 * body_width", "?"),
        Chord("A result of a kilometre", "body_width * 10000", "?"),
        Chord("A parenthesis left open", "(body_width + 3 mm", "?"),
        Chord("A parenthesis too many", "body_width)", "?"),
        Chord("Nothing in parentheses", "body_width * ()", "?"),
        Chord("Parentheses nested 33 deep", new string('(', 33) + "body_width" + new string(')', 33), "?"),
        Chord("An operator at the end", "body_width +", "?"),
        Chord("An operator at the beginning", "'* body_width'", "?"),
        Chord("Two operators", "body_width * / 2", "?"),
        Chord("Two signs", "body_width - -- 2 mm", "?"),
        Chord("A power", "body_width ^ 2", "?"),
        Chord("A multiplication left out", "2 body_width", "?"),
        Chord("A multiplication left out before parentheses", "2 (body_width)", "?"),
        Chord("A multiplication left out between parameters", "body_width body_width", "?"),
        Chord("Two numbers side by side", "3 4 mm", "?"),
        Chord("A function of too few values", "max(body_width)", "?"),
        Chord("A function of too many values", "'sqrt(4, 9) * body_width'", "?"),
        Chord("A comma outside of functions", "'body_width, 3'", "?"),
        Chord("A comma that may be a decimal comma", "'max(1,5 mm, body_width)'", "?"),
        Chord("A comma between two numbers in a function", "'body_width * max(1,2)'", "?"),
        Chord("A fraction right after a division", "body_width / 1/2 in", "?"),
        Chord("A fault behind an escape, at its own column", "\"\\x62ody_width + 3\"", "?"),
        Chord("A fault behind doubled quotes, at its own column", "'1'' + 3'", "?"),
        Chord("A fault on a folded line, at its own line", "body_width\n      + 3", "?"),
        Chord("A comparison", "body_width > 3", "?"),
        Chord("An emoji", "body_width + 🙂", "?"),
        Parameters("Three parameters in a circle", "a: b + 1 mm\n  b: 2 * c\n  c: a", "?"),
        Parameters("A parameter defined by itself", "a: a / 2", "?"),
        Parameters("A circle through a limit", "a: {value: 3 mm, from: b}\n  b: a / 2", "?"),
        Parameters("A circle is said once, not again by what uses it", "a: b\n  b: a\n  c: a + b", "?"),
        Parameters("A value over its limit", "a: {value: 120 mm, from: 80, to: 11 cm}", "?"),
        Parameters("A value under its only limit", "a: {value: 2 deg, from: 3}", "?"),
        Parameters("Limits the wrong way round", "a: {value: 100 mm, from: 110 mm, to: 80 mm}", "?"),
        Parameters("A limit of another dimension", "a: {value: 100 mm, to: 3 deg}", "?"),
        Parameters("A name with a hyphen", "body-width: 3 mm", "?"),
        Parameters("A name that begins with a digit", "2nd: 3 mm", "?"),
        Parameters("A name that is a unit", "in: 3 mm", "?"),
        Parameters("A name that is a function", "max: 3 mm", "?"),
        Parameters("A name that parts sizes", "x: 3 mm", "?"),
        Parameters("An area", "a: 3 mm * 4 mm", "?"),
        Parameters("A parameter without a value", "a: {from: 3 mm}", "?"),
        Parameters("A parameter with nothing behind it", "a:", "?"),
        Parameters("A list", "a: [1, 2]", "?"),
        Parameters("A misspelled key of a parameter", "a: {value: 3 mm, form: 2 mm}", "?"),
        new("A parameter that failed is not blamed on what uses it", Sound
            .Replace("units: mm", "units: mm\nparameters: {width: 1 + 2 mm}", StringComparison.Ordinal)
            .Replace("chord: 200", "chord: width * 2", StringComparison.Ordinal)
            .Replace("length: 500", "length: 3 * width", StringComparison.Ordinal), "?"),
        new("A number parameter is no length", Sound
            .Replace("units: mm", "units: mm\nparameters: {width: 92}", StringComparison.Ordinal)
            .Replace("chord: 200", "chord: width", StringComparison.Ordinal), "?"));

    [Theory]
    [MemberData(nameof(Texts))]
    public void Expressions_are_refused_with_their_reason(BrokenDescription description) => Assert.Equal(description.Expected, description.Findings());

    /// <summary>The sound description with a parameter <c>body_width</c> of 92 mm and an expression, in line 8 from column 12 on.</summary>
    private static BrokenDescription Chord(string why, string expression, params string[] expected) => new(
        why,
        Sound
            .Replace("wing:", "parameters: {body_width: 92 mm}\nwing:", StringComparison.Ordinal)
            .Replace("{section: naca 2412, chord: 200}", "\n    chord: " + expression + "\n    section: naca 2412", StringComparison.Ordinal),
        expected);

    /// <summary>The sound description with parameters, from line 13 on, all used so that none is warned of.</summary>
    private static BrokenDescription Parameters(string why, string lines, params string[] expected) =>
        Add(why, "parameters:\n  " + lines, expected);
}
