using System.Collections.Immutable;
using PlanForge.Airframe.Diagnostics;
using PlanForge.Airframe.Expressions;
using PlanForge.Airframe.Reading.Yaml;
using YamlDotNet.Core;

namespace PlanForge.Airframe.Reading;

/// <summary>Values for parameters that take the place of the file's, each written <c>NAME=VALUE</c>.</summary>
/// <remarks>
/// A value is an expression as in the file, of the dimension that the file gives the parameter and within the file's limits; a bare
/// number takes the file's unit. Findings about them name <see cref="Option"/> as their file, one line an override.
/// </remarks>
public sealed class ParameterOverrides
{
    private readonly ImmutableArray<(string Option, string Given)> _all;
    private readonly SourceText _source;

    /// <summary>Overrides that were given by one option.</summary>
    /// <param name="option">The option, such as <c>--with</c>.</param>
    /// <param name="given">The overrides as given.</param>
    public ParameterOverrides(string option, ImmutableArray<string> given)
        : this(option, [.. given.Select(text => (option, text))])
    {
    }

    private ParameterOverrides(string place, ImmutableArray<(string Option, string Given)> all) =>
        (_all, _source) = (all, new(place, string.Join('\n', all.Select(it => $"{it.Option} {OnOneLine(it.Given)}"))));

    /// <summary>No overrides.</summary>
    public static ParameterOverrides None { get; } = new("", ImmutableArray<string>.Empty);

    /// <summary>The overrides as given.</summary>
    public ImmutableArray<string> Given => [.. _all.Select(it => it.Given)];

    /// <summary>These and one more; findings about any of them name its option, each line shows by which it was given.</summary>
    /// <param name="option">The option it was given by.</param>
    /// <param name="given">The override as given.</param>
    public ParameterOverrides And(string option, string given) => new(option, _all.Add((option, given)));

    /// <summary>What findings call the place.</summary>
    public string Option => _source.File;

    /// <summary>The overrides as lines, for findings to be shown with.</summary>
    public string Text => _source.Text;

    /// <summary>Puts them in the place of the definitions.</summary>
    internal void Apply(Dictionary<string, Parameter> parameters, Func<YamlScalar, ParsedValue> parse, DiagnosticList diagnostics)
    {
        var start = 0;
        foreach (var (option, given) in _all)
        {
            var from = start + option.Length + 1;
            var end = from + OnOneLine(given).Length;
            start = end + 1;
            Apply(from, end, parameters, parse, diagnostics);
        }
    }

    private void Apply(int from, int end, Dictionary<string, Parameter> parameters, Func<YamlScalar, ParsedValue> parse, DiagnosticList diagnostics)
    {
        var equals = _source.Text.IndexOf('=', from, end - from);
        if (equals < 0)
        {
            diagnostics.Error(_source.At(from, end), $"{Quote.Text(_source.Text[from..end])} gives no value; write the parameter, `=` and its value, such as `body_width=95mm`");
            return;
        }

        var (name, value) = (Trimmed(from, equals), Trimmed(equals + 1, end));
        if (!parameters.TryGetValue(name.Text, out var parameter))
        {
            diagnostics.Error(name.At, Unknown(name.Text, parameters.Keys));
        }
        else if (value.IsEmpty)
        {
            diagnostics.Error(_source.At(equals, end), $"{Quote.Text(name.Text)} has no value behind `=`");
        }
        else if (parameter.Described is not null)
        {
            diagnostics.Error(name.At, $"{Quote.Text(name.Text)} is given twice");
        }
        else
        {
            parameter.Described = parameter.Definition ?? new ParsedValue(parameter.Key.At, parameter.Key, null);
            parameter.Definition = parse(value);
        }
    }

    private static string Unknown(string name, Dictionary<string, Parameter>.KeyCollection known) => $"the description has no parameter {Quote.Text(name)}; "
        + (Spelling.Near(name, known) is { } near ? $"did you mean `{near}`?"
            : known.Count == 0 ? "it has none at all"
            : $"its parameters are {Quote.List([.. known])}");

    private YamlScalar Trimmed(int from, int end)
    {
        while (from < end && Characters.IsBlank(_source.Text[from]))
        {
            from++;
        }

        while (from < end && Characters.IsBlank(_source.Text[end - 1]))
        {
            end--;
        }

        return new(_source.At(from, Math.Max(end, from + 1)), _source.Text[from..end], new ScalarSource(_source, from, end, ScalarStyle.Plain));
    }

    // A line an override: what would end a line cannot be part of a value anyway, and is shown as a character that is none.
    private static string OnOneLine(string text) => text.Replace('\n', '\uFFFD').Replace('\r', '\uFFFD');
}
