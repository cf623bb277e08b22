using System.Collections;
using System.Globalization;
using System.Reflection;
using System.Text;
using PlanForge.Airframe.Diagnostics;
using PlanForge.Airframe.Reading;
using PlanForge.Airframe.Sections;

namespace PlanForge.Airframe.Tests;

/// <summary>The descriptions kept beside the tests, and a way to compare what was read from them.</summary>
internal static class Description
{
    private static readonly string Folder = Path.Combine(AppContext.BaseDirectory, "Descriptions");

    /// <summary>The description that uses every key.</summary>
    public static string Complete => File.ReadAllText(Path.Combine(Folder, "complete.yaml"));

    public static ReadResult Read(string text) => AirframeReader.Read("complete.yaml", text, ReadSectionFile);

    public static string? ReadSectionFile(string path)
    {
        var full = Path.Combine(Folder, path);
        return File.Exists(full) ? File.ReadAllText(full) : null;
    }

    /// <summary>Reads a description that must be sound.</summary>
    public static AirframeDescription ReadSound(string text)
    {
        var result = Read(text);
        Assert.Empty(result.Diagnostics.Select(d => d.ToString()));
        return result.Airframe!;
    }

    /// <summary>
    /// Everything an object holds but where it stood in the file, as text: two objects with the same text describe the same
    /// thing. Sections are given by their name and some of their points.
    /// </summary>
    public static string Canonical(object? value)
    {
        var result = new StringBuilder();
        Append(value, result);
        return result.ToString();
    }

    private static void Append(object? value, StringBuilder result)
    {
        switch (value)
        {
            case null:
                result.Append("null");
                break;
            case SourcePosition:
                result.Append('@');
                break;
            case Section section:
                result.Append(section.Name);
                for (var w = 0.125; w <= 1; w += 0.125)
                {
                    var (upper, lower) = (section.Upper(w), section.Lower(w));
                    result.Append(CultureInfo.InvariantCulture, $" {upper.X:R} {upper.Y:R} {lower.X:R} {lower.Y:R}");
                }

                break;
            case string or Enum or bool:
                result.Append(value);
                break;
            case double number:
                result.Append(number.ToString("R", CultureInfo.InvariantCulture));
                break;
            case IEnumerable items:
                result.Append('[');
                foreach (var item in items)
                {
                    Append(item, result);
                    result.Append(';');
                }

                result.Append(']');
                break;
            default:
                result.Append(value.GetType().Name).Append('(');
                foreach (var property in value.GetType().GetProperties(BindingFlags.Public | BindingFlags.Instance))
                {
                    result.Append(property.Name).Append('=');
                    Append(property.GetValue(value), result);
                    result.Append(' ');
                }

                result.Append(')');
                break;
        }
    }
}
