using System.Collections.Immutable;
using PlanForge.Drafting.Lettering;
using PlanForge.Drafting.Model;
using PlanForge.Geometry;
using PlanForge.Output.Curves;

namespace PlanForge.Output;

/// <summary>A cut drawing as paths only, lettering taken apart into its strokes, in the order of the drawing.</summary>
/// <param name="Paths">The paths with their layers.</param>
/// <param name="Bounds">The smallest rectangle around all.</param>
internal sealed record CutContours(ImmutableArray<(Layer Layer, Path2 Path)> Paths, Bounds2 Bounds)
{
    /// <summary>The paths of a drawing.</summary>
    /// <exception cref="ArgumentException">No paths, or a fill.</exception>
    public static CutContours Of(CutDrawing drawing)
    {
        var paths = ImmutableArray.CreateBuilder<(Layer, Path2)>();
        var bounds = Bounds2.Empty;
        foreach (var item in drawing.Drawing.Items)
        {
            switch (item)
            {
                case DrawingItem.Stroke stroke:
                    Add(item.Layer, stroke.Path);
                    break;
                case DrawingItem.Text text:
                    foreach (var path in TextLayout.StrokesOf(text.Content, text.At, text.Height, text.Angle))
                    {
                        Add(item.Layer, path);
                    }

                    break;
                default:
                    throw new ArgumentException($"The cut drawing '{drawing.Name}' has a fill, which no machine can cut.", nameof(drawing));
            }
        }

        return bounds.IsEmpty
            ? throw new ArgumentException($"The cut drawing '{drawing.Name}' is empty.", nameof(drawing))
            : new(paths.ToImmutable(), bounds);

        void Add(Layer layer, Path2 path)
        {
            var straightened = Straightened(path);
            paths.Add((layer, straightened));
            bounds = bounds.Joined(straightened.Bounds);
        }
    }

    /// <summary>
    /// The path with its flattest arcs as lines: nothing a machine can follow is lost, and centres that lie farther away than
    /// numbers reach spoil no extents.
    /// </summary>
    private static Path2 Straightened(Path2 path)
    {
        var changed = default(PathVertex[]);
        for (var i = 0; i < path.SegmentCount; i++)
        {
            if (path.Vertices[i].Bulge != 0 && path.SegmentAt(i).IsFlatterThan(CurveTolerance.Flat))
            {
                changed ??= [.. path.Vertices];
                changed[i] = new(changed[i].Point);
            }
        }

        return changed is null ? path : path.IsClosed ? Path2.Closed(changed) : Path2.Open(changed);
    }
}
