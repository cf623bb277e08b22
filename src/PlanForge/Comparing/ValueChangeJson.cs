using System.Text.Json;
using PlanForge.Airframe.Described;

namespace PlanForge.Comparing;

/// <summary>Writes what became of values, for programs.</summary>
internal static class ValueChangeJson
{
    /// <summary>A value as members of an open object.</summary>
    public static void Write(Utf8JsonWriter json, ValueChange value)
    {
        json.WriteString("path", value.Path);
        json.WriteString("old", value.Before?.Shown);
        json.WriteString("new", value.After?.Shown);
        if (!value.Parameters.IsEmpty)
        {
            json.WriteObjects("parameters", value.Parameters, parameter => Write(json, parameter));
        }
    }
}
