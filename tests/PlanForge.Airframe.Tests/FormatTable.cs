using PlanForge.Airframe.Format;

namespace PlanForge.Airframe.Tests;

/// <summary>Walks the table of formats.</summary>
internal static class FormatTable
{
    /// <summary>Every format in the table, once.</summary>
    public static List<ValueFormat> All() => All(AirframeFormat.Root);

    /// <summary>Every format below one, once.</summary>
    public static List<ValueFormat> All(ValueFormat root)
    {
        var seen = new List<ValueFormat>();
        Visit(root);
        return seen;

        void Visit(ValueFormat format)
        {
            if (seen.Contains(format))
            {
                return;
            }

            seen.Add(format);
            switch (format)
            {
                case MappingFormat mapping:
                    foreach (var key in mapping.Keys)
                    {
                        Visit(key.Format);
                    }

                    break;
                case ChoiceFormat choice:
                    foreach (var alternative in choice.Alternatives)
                    {
                        Visit(alternative);
                    }

                    break;
                case ListFormat list:
                    Visit(list.Item);
                    break;
                case ParametersFormat parameters:
                    Visit(parameters.Detail);
                    break;
                default:
                    break;
            }
        }
    }

    /// <summary>Every mapping in the table, once.</summary>
    public static IEnumerable<MappingFormat> Mappings() => All().OfType<MappingFormat>();
}
