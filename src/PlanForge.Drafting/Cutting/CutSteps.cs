using System.Collections.Immutable;
using PlanForge.Drafting.Lettering;
using PlanForge.Drafting.Model;
using PlanForge.Geometry;

namespace PlanForge.Drafting.Cutting;

/// <summary>One stroke of the machine.</summary>
/// <param name="Operation">What it does.</param>
/// <param name="Path">Where it goes.</param>
public readonly record struct CutStep(CutOperation Operation, Path2 Path);

/// <summary>The strokes of a cut drawing, lettering taken apart.</summary>
public static class CutSteps
{
    /// <summary>
    /// The strokes by operation, in the order of the profile and within an operation in that of the drawing. Clockwise contours
    /// are cut inside, others outside; an open line that is cut is a stretch of an outline between holding tabs.
    /// </summary>
    /// <param name="drawing">The drawing.</param>
    /// <param name="profile">Which operations are wanted, in which order.</param>
    /// <exception cref="ArgumentException">A fill, or something on a layer that means no work.</exception>
    public static ImmutableArray<CutStep> Of(CutDrawing drawing, CutProfile profile)
    {
        ArgumentNullException.ThrowIfNull(drawing);
        ArgumentNullException.ThrowIfNull(profile);
        var all = new List<CutStep>();
        foreach (var item in drawing.Drawing.Items)
        {
            Add(item, drawing.Name, all);
        }

        var ordered = ImmutableArray.CreateBuilder<CutStep>(all.Count);
        foreach (var style in profile.Operations)
        {
            foreach (var step in all)
            {
                if (step.Operation == style.Operation)
                {
                    ordered.Add(step);
                }
            }
        }

        return ordered.ToImmutable();
    }

    private static void Add(DrawingItem item, string name, List<CutStep> steps)
    {
        switch (item)
        {
            case DrawingItem.Stroke { Layer: Layer.Cut, Path: var path }:
                steps.Add(new(path.IsClosed && path.SignedArea < 0 ? CutOperation.CutInside : CutOperation.CutOutside, path));
                break;
            case DrawingItem.Stroke { Layer: Layer.Score, Path: var path }:
                steps.Add(new(CutOperation.Score, path));
                break;
            case DrawingItem.Text { Layer: Layer.Score } text:
                foreach (var path in TextLayout.StrokesOf(text.Content, text.At, text.Height, text.Angle))
                {
                    steps.Add(new(CutOperation.Engrave, path));
                }

                break;
            case DrawingItem.Fill:
                throw new ArgumentException($"The cut drawing '{name}' has a fill, which no machine can cut.", nameof(item));
            default:
                throw new ArgumentException($"The cut drawing '{name}' has something on the layer {item.Layer}, which means no work.", nameof(item));
        }
    }
}
