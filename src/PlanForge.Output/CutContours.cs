using System.Collections.Immutable;
using PlanForge.Drafting.Cutting;
using PlanForge.Drafting.Lettering;
using PlanForge.Drafting.Model;
using PlanForge.Geometry;
using PlanForge.Output.Curves;

namespace PlanForge.Output;

/// <summary>What a cut file holds, as paths only: part by part, in the order of working.</summary>
/// <param name="Parts">The parts.</param>
/// <param name="Bounds">The smallest rectangle around all that the machine does.</param>
internal sealed record CutContours(ImmutableArray<CutPart> Parts, Bounds2 Bounds)
{
    // Lettering of the notes, mm, and the room they keep from the work.
    private const double NoteHeight = 3;
    private const double NoteLine = 6;
    private const double NoteGap = 10;

    /// <summary>Says what the file is in one line.</summary>
    public required string Title { get; init; }

    /// <summary>What the shop must know, one line each.</summary>
    public required ImmutableArray<string> Notes { get; init; }

    /// <summary>The stock's edge, or null.</summary>
    public Bounds2? Stock { get; init; }

    /// <summary>A cut drawing.</summary>
    /// <exception cref="ArgumentException">No paths, a fill, or a layer that means no work.</exception>
    public static CutContours Of(CutDrawing drawing, CutProfile profile)
    {
        var part = PartOf(drawing, profile, Placement2.Identity);
        return new([part], BoundsOf([part], drawing.Name))
        {
            Title = drawing.Kerf is { } kerf ? FormattableString.Invariant($"{drawing.Name}, kerf {kerf:0.###} mm compensated") : drawing.Name,
            Notes = drawing.Notes,
        };
    }

    /// <summary>A sheet of stock.</summary>
    /// <exception cref="ArgumentException">No paths, a fill, or a layer that means no work.</exception>
    public static CutContours Of(CutSheet sheet, CutProfile profile)
    {
        var parts = ImmutableArray.CreateBuilder<CutPart>(sheet.Cuts.Length);
        var notes = ImmutableArray.CreateBuilder<string>();
        notes.AddRange(sheet.Notes);
        foreach (var placed in sheet.Cuts)
        {
            parts.Add(PartOf(placed.Cut, profile, placed.Placement));
            foreach (var note in placed.Cut.Notes)
            {
                if (!notes.Contains(note))
                {
                    notes.Add(note);
                }
            }
        }

        var first = sheet.Cuts.IsEmpty ? null : sheet.Cuts[0].Cut.Kerf;
        var isAlike = sheet.Cuts.All(placed => placed.Cut.Kerf == first);
        return new(parts.ToImmutable(), BoundsOf(parts, sheet.Name))
        {
            Title = isAlike && first is { } kerf ? FormattableString.Invariant($"{sheet.Name}, kerf {kerf:0.###} mm compensated") : sheet.Name,
            Notes = notes.ToImmutable(),
            Stock = new(0, 0, sheet.Width, sheet.Height),
        };
    }

    /// <summary>The notes as strokes below the work, and the stock's edge.</summary>
    public IEnumerable<Path2> NotePaths()
    {
        var area = Stock ?? Bounds;
        if (Stock is { } stock)
        {
            yield return Path2.Rectangle(stock);
        }

        var y = area.MinY - NoteGap;
        foreach (var note in Notes)
        {
            foreach (var path in TextLayout.StrokesOf(note, new(area.MinX, y), NoteHeight, 0))
            {
                yield return path;
            }

            y -= NoteLine;
        }
    }

    private static CutPart PartOf(CutDrawing drawing, CutProfile profile, Placement2 placement)
    {
        var steps = CutSteps.Of(drawing, profile);
        var straightened = ImmutableArray.CreateBuilder<CutStep>(steps.Length);
        foreach (var (operation, path) in steps)
        {
            straightened.Add(new(operation, Straightened(placement == Placement2.Identity ? path : path.Placed(placement))));
        }

        return new(drawing.Name, straightened.MoveToImmutable());
    }

    private static Bounds2 BoundsOf(IEnumerable<CutPart> parts, string name)
    {
        var bounds = Bounds2.Empty;
        foreach (var part in parts)
        {
            foreach (var step in part.Steps)
            {
                bounds = bounds.Joined(step.Path.Bounds);
            }
        }

        return bounds.IsEmpty ? throw new ArgumentException($"Nothing in '{name}' is to be cut.", nameof(name)) : bounds;
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

/// <summary>One part of a cut file.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Steps">Its strokes in the order of working.</param>
internal sealed record CutPart(string Name, ImmutableArray<CutStep> Steps);
