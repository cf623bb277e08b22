using System.Collections.Immutable;
using PlanForge.Airframe;
using PlanForge.Airframe.Diagnostics;
using PlanForge.Airframe.Reading;
using PlanForge.Designs;
using PlanForge.Parts;
using PlanForge.Reports;

namespace PlanForge.Varying;

/// <summary>A design worked out for several values of one parameter.</summary>
/// <param name="Design">The design's name; empty when no step could be worked out.</param>
/// <param name="Unit">The unit lengths are shown in.</param>
/// <param name="Parameter">The parameter's name.</param>
/// <param name="Dimension">What kind of value it has.</param>
/// <param name="Steps">The steps in order.</param>
internal sealed record Variation(string Design, DisplayUnit Unit, string Parameter, Dimension Dimension, ImmutableArray<VariationStep> Steps)
{
    /// <summary>The key figures that are not the same in all steps, in the order of the report; what one step lacks differs too.</summary>
    public ImmutableArray<Figure> Varying
    {
        get
        {
            var good = Steps.Where(step => step.Faults.IsEmpty).ToList();
            return
            [
                .. good.SelectMany(step => step.Figures).DistinctBy(figure => figure.Key, StringComparer.Ordinal)
                    .Where(figure => good.Select(step => step.ValueOf(figure.Key)).Distinct().Count() > 1),
            ];
        }
    }

    /// <summary>Those of them that are worth a curve: the figures of the whole airframe, or those of its parts where no other varies.</summary>
    public ImmutableArray<Figure> Drawn
    {
        get
        {
            var airframe = Steps.SelectMany(step => step.Figures.Take(step.AirframeFigures)).Select(figure => figure.Key).ToHashSet(StringComparer.Ordinal);
            ImmutableArray<Figure> whole = [.. Varying.Where(figure => airframe.Contains(figure.Key))];
            return whole.IsEmpty ? Varying : whole;
        }
    }

    /// <summary>Works out all steps, several at a time.</summary>
    /// <param name="path">The description, as the user gave it.</param>
    /// <param name="range">What is varied.</param>
    /// <param name="others">Values for other parameters.</param>
    /// <param name="option">What findings about the values call their place.</param>
    /// <param name="stop">Asked between the steps.</param>
    /// <exception cref="IOException">The description or a section file cannot be read.</exception>
    /// <exception cref="UnauthorizedAccessException">The description or a section file may not be read.</exception>
    /// <exception cref="OperationCanceledException">The run was stopped.</exception>
    public static Variation Of(string path, VariationRange range, ParameterOverrides others, string option, CancellationToken stop)
    {
        var values = range.Values;
        var worked = new (VariationStep Step, AirframeDescription? Airframe)[values.Length];
        try
        {
            Parallel.For(0, values.Length, new() { CancellationToken = stop }, i => worked[i] = Work(path, others.And(option, $"{range.Name}={values[i]}"), range.Name));
        }
        catch (AggregateException fault)
        {
            throw fault.InnerExceptions[0];
        }

        var airframe = worked.Select(step => step.Airframe).FirstOrDefault(airframe => airframe is not null);
        var dimension = airframe?.Parameters.First(parameter => parameter.Name == range.Name).Dimension ?? Dimension.Number;
        return new(airframe?.Name ?? "", airframe?.DisplayUnit ?? DisplayUnit.Millimetre, range.Name, dimension, Placed([.. worked.Select(step => step.Step)]));
    }

    private static (VariationStep Step, AirframeDescription? Airframe) Work(string path, ParameterOverrides overrides, string name)
    {
        var texts = new Dictionary<string, string>(StringComparer.Ordinal);
        var read = Planner.Read(path, texts, ImmutableArray.CreateBuilder<SourceFile>(), overrides: overrides);
        if (read.Airframe is not { } airframe)
        {
            return (new(null, [], Errors(read.Diagnostics), texts), null);
        }

        // Steps are worked out side by side: the kinds of one need not be.
        var parts = PartList.Of(airframe);
        var value = airframe.Parameters.First(parameter => parameter.Name == name).Value;
        var faults = Errors(parts.Findings);
        return (new(value, faults.IsEmpty ? parts.Figures : [], faults, texts) { AirframeFigures = parts.AirframeFigures.Length }, airframe);
    }

    private static ImmutableArray<Diagnostic> Errors(ImmutableArray<Diagnostic> findings) =>
        [.. findings.Where(finding => finding.Severity == Severity.Error)];

    // Steps are equally far apart: two known values tell those that the reader refused.
    private static ImmutableArray<VariationStep> Placed(ImmutableArray<VariationStep> steps)
    {
        var known = Enumerable.Range(0, steps.Length).Where(i => steps[i].Value is not null).ToList();
        if (known.Count < 2)
        {
            return steps;
        }

        var (first, last) = (known[0], known[^1]);
        var pitch = (steps[last].Value!.Value - steps[first].Value!.Value) / (last - first);
        return [.. steps.Select((step, i) => step.Value is null ? step with { Value = steps[first].Value + ((i - first) * pitch) } : step)];
    }
}

/// <summary>A design for one value of the parameter.</summary>
/// <param name="Value">The value: mm, rad, g or a plain number; null when it cannot be told.</param>
/// <param name="Figures">All key figures, those of the whole airframe first; none of a step at fault.</param>
/// <param name="Faults">Why it could not be worked out; empty when it could.</param>
/// <param name="Texts">The texts that the faults name places in.</param>
internal sealed record VariationStep(
    double? Value, ImmutableArray<Figure> Figures, ImmutableArray<Diagnostic> Faults, IReadOnlyDictionary<string, string> Texts)
{
    /// <summary>How many of the figures, from the first, are of the whole airframe.</summary>
    public int AirframeFigures { get; init; }

    /// <summary>A figure as reports round it, so that the last digits of a solver vary nothing; null when the step has no such figure.</summary>
    public double? ValueOf(string key)
    {
        foreach (var figure in Figures)
        {
            if (figure.Key == key)
            {
                return FigureUnits.ValueOf(figure);
            }
        }

        return null;
    }
}
