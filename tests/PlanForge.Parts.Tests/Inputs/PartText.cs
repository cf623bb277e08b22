using System.Globalization;
using System.Text;
using PlanForge.Parts.Arrangement;

namespace PlanForge.Parts.Tests.Inputs;

/// <summary>Everything of a part as text, to the last bit, but for its inputs.</summary>
internal static class PartText
{
    public static Dictionary<string, string> OfAll(PartList list) => list.Parts.ToDictionary(part => part.Id, Of);

    /// <summary>The views of the whole airframe as text; empty for none.</summary>
    public static string Of(ArrangementViews? views)
    {
        var text = new StringBuilder();
        if (views is not null)
        {
            AddLines(text, views.Side);
            AddLines(text, views.Plan);
            AddLines(text, views.Front);
            text.AppendJoin('\n', views.Formers).Append(views.Body).Append(views.Thrust).Append(views.Overall);
            text.AppendJoin('\n', views.Wing.Joints).AppendJoin('\n', views.Tailplane?.Joints ?? []);
        }

        return text.ToString();
    }

    public static string Of(Part part)
    {
        var text = new StringBuilder();
        text.Append(CultureInfo.InvariantCulture, $"{part.Kind}|{part.Title}|{part.Making}|{part.Material}|{part.Thickness:R}|{part.Quantity}|{part.GrainAngle:R}\n");
        AddLines(text, part.Lines);
        Add(part.Labels);
        Add(part.Dimensions);
        Add(part.Notes);
        Add(part.Figures);
        foreach (var table in part.Tables)
        {
            text.Append(table.Title).AppendJoin('|', table.Header).Append('\n');
            foreach (var row in table.Rows)
            {
                text.AppendJoin('|', row).Append('\n');
            }
        }

        return text.ToString();

        void Add<T>(IEnumerable<T> items)
        {
            foreach (var item in items)
            {
                text.Append(item).Append('\n');
            }
        }
    }

    private static void AddLines(StringBuilder text, IEnumerable<PartLine> lines)
    {
        foreach (var line in lines)
        {
            text.Append(CultureInfo.InvariantCulture, $"{line.Use} {line.Path.IsClosed}");
            foreach (var vertex in line.Path.Vertices)
            {
                text.Append(CultureInfo.InvariantCulture, $" {vertex.Point.X:R},{vertex.Point.Y:R},{vertex.Bulge:R}");
            }

            text.Append('\n');
        }
    }
}
