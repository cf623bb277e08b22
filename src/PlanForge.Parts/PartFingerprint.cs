using PlanForge.Airframe;
using PlanForge.Geometry;

namespace PlanForge.Parts;

/// <summary>
/// The fingerprint of what a part is as a thing: its lines, what it is made from, and, on a template, everything written on it.
/// Sentences and dimensions beside it may be worded anew without making old wood or paper wrong.
/// </summary>
internal static class PartFingerprint
{
    public static Fingerprint Of(Part part)
    {
        var builder = new FingerprintBuilder();
        builder.Add((long)part.Making);
        builder.Add(part.Material);
        builder.Add(part.Thickness);
        foreach (var line in part.Lines)
        {
            builder.Add((long)line.Use);
            Add(builder, line.Path);
        }

        foreach (var label in part.Labels)
        {
            if (part.Making != Making.Cut || label.IsEngraved)
            {
                builder.Add(label.Text);
                Add(builder, label.At);
            }
        }

        foreach (var table in part.Tables)
        {
            foreach (var row in table.Rows)
            {
                foreach (var cell in row)
                {
                    builder.Add(cell);
                }
            }
        }

        return builder.ToFingerprint();
    }

    // An arc by the point half way: a bulge says little about a short one and much about a long one.
    private static void Add(FingerprintBuilder builder, Path2 path)
    {
        builder.Add(path.IsClosed ? -path.Vertices.Length : path.Vertices.Length);
        for (var i = 0; i < path.Vertices.Length; i++)
        {
            Add(builder, path.Vertices[i].Point);
            if (path.Vertices[i].Bulge != 0 && i < path.SegmentCount)
            {
                Add(builder, path.SegmentAt(i).PointAt(0.5));
            }
        }
    }

    private static void Add(FingerprintBuilder builder, Point2 point)
    {
        builder.Add(point.X);
        builder.Add(point.Y);
    }
}
