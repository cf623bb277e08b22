using System.Collections.Immutable;
using PlanForge.Drafting.Lettering;
using PlanForge.Drafting.Model;
using PlanForge.Geometry;
using PlanForge.Output.Lettering;

namespace PlanForge.Output;

/// <summary>A cut drawing as paths only, lettering taken apart into its strokes, in the order of the drawing.</summary>
/// <param name="Paths">The paths with their layers.</param>
/// <param name="Bounds">The smallest rectangle around all.</param>
internal sealed record CutContours(ImmutableArray<(Layer Layer, Path2 Path)> Paths, Bounds2 Bounds)
{
    /// <summary>The paths of a drawing.</summary>
    /// <exception cref="ArgumentException">No paths, or a fill.</exception>
    public static CutContours Of(CutDrawing drawing, Func<char, Glyph> alphabet)
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
                    foreach (var path in TextPlacement.Strokes(text, alphabet))
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
            paths.Add((layer, path));
            bounds = bounds.Joined(path.Bounds);
        }
    }
}
