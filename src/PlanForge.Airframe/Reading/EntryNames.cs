using System.Globalization;
using PlanForge.Airframe.Reading.Yaml;

namespace PlanForge.Airframe.Reading;

/// <summary>
/// What the entries of a list are told apart by: their <c>name</c>, so that a new one at the front renames no other; their number
/// counted from 1 where they have none, or where two share it.
/// </summary>
internal static class EntryNames
{
    private const string NameKey = "name";

    /// <summary>One name for each entry, all different.</summary>
    public static string[] Of(YamlList list)
    {
        var names = new string[list.Items.Count];
        var taken = new HashSet<string>(StringComparer.Ordinal);
        for (var i = 0; i < names.Length; i++)
        {
            var name = list.Items[i] is YamlMapping mapping && mapping.Find(NameKey) is YamlScalar { IsEmpty: false } scalar ? scalar.Text : null;
            names[i] = name is not null && !IsNumber(name) && taken.Add(name) ? name : (i + 1).ToString(CultureInfo.InvariantCulture);
        }

        return names;
    }

    // A thing called 3 must not be taken for the third.
    private static bool IsNumber(string name) => int.TryParse(name, NumberStyles.None, CultureInfo.InvariantCulture, out _);
}
