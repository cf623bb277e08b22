using PlanForge.Airframe.Diagnostics;
using PlanForge.Airframe.Expressions;
using PlanForge.Airframe.Reading.Yaml;

namespace PlanForge.Airframe.Reading;

/// <summary>Orders parameters so that each comes after those it needs.</summary>
/// <remarks>Depth-first search with a stack of its own: a long chain of parameters must not exhaust the program's.</remarks>
internal static class ParameterOrder
{
    // Messages stay one line: of a longer path the middle is left out.
    private const int LongestPath = 8;

    /// <summary>The parameters in order, without those that need themselves by way of others, which are reported.</summary>
    public static List<Parameter> Of(List<Parameter> parameters, Dictionary<string, Parameter> byName, DiagnosticList diagnostics)
    {
        var ordered = new List<Parameter>(parameters.Count);
        var finished = new HashSet<Parameter>();
        var inCircle = new HashSet<Parameter>();
        var onPath = new HashSet<Parameter>();
        foreach (var start in parameters)
        {
            var path = new List<Visit>();
            Enter(start);
            while (path.Count > 0)
            {
                var visit = path[^1];
                if (!visit.Needs.MoveNext())
                {
                    path.RemoveAt(path.Count - 1);
                    onPath.Remove(visit.Parameter);
                    finished.Add(visit.Parameter);
                    if (!inCircle.Contains(visit.Parameter))
                    {
                        ordered.Add(visit.Parameter);
                    }

                    continue;
                }

                var needed = byName[visit.Needs.Current.Reference.Name];
                if (!onPath.Contains(needed))
                {
                    Enter(needed);
                    continue;
                }

                var first = path.FindIndex(v => v.Parameter == needed);
                var circle = path.GetRange(first, path.Count - first);
                if (!inCircle.IsSupersetOf(circle.ConvertAll(v => v.Parameter)))
                {
                    Report(circle, diagnostics);
                    inCircle.UnionWith(circle.ConvertAll(v => v.Parameter));
                }
            }

            void Enter(Parameter parameter)
            {
                if (!finished.Contains(parameter))
                {
                    onPath.Add(parameter);
                    path.Add(new(parameter, Needs(parameter, byName).GetEnumerator()));
                }
            }
        }

        return ordered;
    }

    private static void Report(List<Visit> circle, DiagnosticList diagnostics)
    {
        // What was given in the place of the file's definition closed the circle, most likely.
        var closing = circle.FindLast(visit => visit.Parameter.Described is not null) ?? circle[^1];
        var (scalar, reference) = closing.Needs.Current;
        var at = scalar.AtPart(reference.Offset, reference.Length);
        var names = circle.ConvertAll(v => Quote.Text(v.Parameter.Key.Text));
        names.Add(names[0]);
        if (names.Count == 2)
        {
            diagnostics.Error(at, $"{names[0]} is defined by itself");
            return;
        }

        var left = names.Count - LongestPath;
        if (left > 0)
        {
            names.RemoveRange(LongestPath / 2, left);
            names.Insert(LongestPath / 2, $"({left} more)");
        }

        diagnostics.Error(at, $"these parameters are defined by each other: {string.Join(" → ", names)}");
    }

    private static List<(YamlScalar Scalar, Reference Reference)> Needs(Parameter parameter, Dictionary<string, Parameter> byName)
    {
        var result = new List<(YamlScalar, Reference)>();
        foreach (var part in new[] { parameter.Definition, parameter.Described, parameter.From, parameter.To })
        {
            if (part?.Expression is { } expression)
            {
                Collect(expression, part.Scalar);
            }
        }

        return result;

        void Collect(Expression expression, YamlScalar scalar)
        {
            switch (expression)
            {
                case Reference reference when byName.ContainsKey(reference.Name):
                    result.Add((scalar, reference));
                    break;
                case Negation negation:
                    Collect(negation.Operand, scalar);
                    break;
                case Grouping grouping:
                    Collect(grouping.Inner, scalar);
                    break;
                case Sum sum:
                    foreach (var operand in sum.Operands)
                    {
                        Collect(operand.Value, scalar);
                    }

                    break;
                case Product product:
                    foreach (var operand in product.Operands)
                    {
                        Collect(operand.Value, scalar);
                    }

                    break;
                case Call call:
                    foreach (var argument in call.Arguments)
                    {
                        Collect(argument, scalar);
                    }

                    break;
                default:
                    break;
            }
        }
    }

    private sealed record Visit(Parameter Parameter, IEnumerator<(YamlScalar Scalar, Reference Reference)> Needs);
}
