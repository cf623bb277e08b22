using System.Globalization;
using PlanForge.Airframe.Described;
using YamlDotNet.RepresentationModel;

namespace PlanForge.Parts.Tests.Inputs;

/// <summary>Writes another value at a path of a description's text, by a YAML library's own tree.</summary>
internal static class ChangedText
{
    /// <summary>The text with a value in the place of what stands at the path, or of its default.</summary>
    public static string With(string text, string path, string value)
    {
        var stream = new YamlStream();
        stream.Load(new StringReader(text));
        Set(stream.Documents[0].RootNode, Steps(path), value);
        var writer = new StringWriter(CultureInfo.InvariantCulture);
        stream.Save(writer, assignAnchors: false);
        return writer.ToString();
    }

    /// <summary>A value moved by a share of itself (by that many millimetres or degrees where it is 0), as text in the file's grammar; null for what is no number.</summary>
    public static string? Moved(DescribedValue value, double share)
    {
        if (value.Kind == ValueKind.Size)
        {
            var sides = value.Value.Split(" x ").Select(Number).ToArray();
            return $"{Text(sides[0] * (1 + share))} mm x {Text(sides[1])} mm";
        }

        if (value.Kind is not (ValueKind.Length or ValueKind.Angle or ValueKind.Number))
        {
            return null;
        }

        var number = Number(value.Value);
        if (value.Path.EndsWith(".count", StringComparison.Ordinal) || value.Path.EndsWith(".on_hand", StringComparison.Ordinal))
        {
            return Text(number + 1);
        }

        if (value.Path.EndsWith(".panel", StringComparison.Ordinal))
        {
            return Text(number == 1 ? 2 : number - 1);
        }

        return value.Kind switch
        {
            ValueKind.Length => $"{Text(number == 0 ? share : number * (1 + share))} mm",
            ValueKind.Angle => $"{Text((number == 0 ? share : number * (1 + share) * 180 / Math.PI))} deg",
            _ => Text(number == 0 ? share : number * (1 + share)),
        };
    }

    /// <summary>A number far from where it is, both ways and by several sizes, as text: by shares of itself, and by lengths and angles as large as a design has them.</summary>
    public static IEnumerable<string> MovedFar(DescribedValue value)
    {
        double[] shares = [0.1, -0.1, 0.4, -0.4, 1.5, -0.8, 5, -3];
        double[] more = value.Kind switch
        {
            ValueKind.Length => [20, -20, 80, -80, 250, -250, 500, -500, 800],
            ValueKind.Angle => [0.1, -0.1, 0.4, -0.4],
            _ => [],
        };
        if (value.Kind is ValueKind.Length or ValueKind.Angle && Number(value.Value) is var number)
        {
            return shares.Where(_ => number != 0).Select(share => number * (1 + share)).Concat(more.Select(by => number + by))
                .Select(moved => value.Kind == ValueKind.Length ? $"{Text(moved)} mm" : $"{Text(moved * 180 / Math.PI)} deg");
        }

        return shares.Select(share => Moved(value, share)!).Distinct();
    }

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);

    private static string Text(double number) => number.ToString("0.##########", CultureInfo.InvariantCulture);

    private static List<string> Steps(string path)
    {
        var steps = new List<string>();
        var start = 0;
        for (var i = 0; i <= path.Length; i++)
        {
            if (i == path.Length || path[i] == '.' || path[i] == '[')
            {
                if (i > start)
                {
                    steps.Add(path[start..i]);
                }

                start = i + 1;
                if (i < path.Length && path[i] == '[')
                {
                    var end = path.IndexOf(']', i);
                    steps.Add(path[i..(end + 1)]);
                    (i, start) = (end, end + 1);
                }
            }
        }

        return steps;
    }

    private static void Set(YamlNode node, List<string> steps, string value)
    {
        for (var i = 0; i < steps.Count - 1; i++)
        {
            node = Step(node, steps[i], steps[i + 1]);
        }

        var last = steps[^1];
        if (node is YamlSequenceNode list)
        {
            list.Children[Index(list, last[1..^1])] = new YamlScalarNode(value);
        }
        else
        {
            ((YamlMappingNode)node).Children[last] = new YamlScalarNode(value);
        }
    }

    private static YamlNode Step(YamlNode node, string step, string next)
    {
        if (node is YamlSequenceNode list)
        {
            return list.Children[Index(list, step[1..^1])];
        }

        var mapping = (YamlMappingNode)node;
        if (!mapping.Children.TryGetValue(step, out var found))
        {
            Assert.False(next.StartsWith('['), $"{step} is given by default and has no list");
            mapping.Children[step] = found = new YamlMappingNode();
        }

        return found;
    }

    private static int Index(YamlSequenceNode list, string entry)
    {
        for (var i = 0; i < list.Children.Count; i++)
        {
            if (list.Children[i] is YamlMappingNode mapping && mapping.Children.TryGetValue("name", out var name) && ((YamlScalarNode)name).Value == entry)
            {
                return i;
            }
        }

        return int.Parse(entry, CultureInfo.InvariantCulture) - 1;
    }
}
