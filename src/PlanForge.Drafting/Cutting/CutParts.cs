using System.Collections.Immutable;
using System.Globalization;
using PlanForge.Airframe;
using PlanForge.Airframe.Diagnostics;
using PlanForge.Drafting.Model;
using PlanForge.Drafting.PartDrawings;
using PlanForge.Geometry;
using PlanForge.Geometry.Regions;
using PlanForge.Parts;

namespace PlanForge.Drafting.Cutting;

/// <summary>The drawings of all parts that are cut, ready for one cutter: kerf, holding tabs and notes as its description says.</summary>
public static class CutParts
{
    /// <summary>One drawing for each part that is cut, in the order of the parts; a part that cannot be cut so is left out.</summary>
    /// <param name="parts">All parts.</param>
    /// <param name="cutter">The cutter.</param>
    /// <param name="kept">What is kept from earlier runs; null for nothing.</param>
    public static CutPartsResult Of(IEnumerable<Part> parts, CutterDescription cutter, KeptDrawings? kept = null)
    {
        ArgumentNullException.ThrowIfNull(parts);
        ArgumentNullException.ThrowIfNull(cutter);
        kept ??= new();
        var drawings = ImmutableArray.CreateBuilder<CutDrawing>();
        var findings = new List<Diagnostic>();
        foreach (var part in parts)
        {
            if (part.Making != Making.Cut)
            {
                continue;
            }

            var key = new CutKey(new(part), cutter.KerfFor(part.Material, part.Thickness), !cutter.Kerfs.IsEmpty, cutter.HoldingTabs, cutter.At);
            var (drawing, own) = kept.Cuts.Of(key, () => Made(part, cutter));
            findings.AddRange(own);
            if (drawing is not null)
            {
                drawings.Add(drawing);
            }
        }

        return new(drawings.ToImmutable(), [.. findings]);
    }

    private static (CutDrawing? Drawing, ImmutableArray<Diagnostic> Findings) Made(Part part, CutterDescription cutter)
    {
        var findings = new List<Diagnostic>();
        return (Of(part, cutter, findings), [.. findings]);
    }

    /// <summary>The drawing of one part; null when it cannot be cut so, which is added to the findings.</summary>
    /// <param name="part">A part that is cut from sheet.</param>
    /// <param name="cutter">The cutter.</param>
    /// <param name="findings">Takes what is wrong.</param>
    /// <exception cref="ArgumentException">The part is not cut, or has no closed cut line.</exception>
    public static CutDrawing? Of(Part part, CutterDescription cutter, ICollection<Diagnostic> findings)
    {
        ArgumentNullException.ThrowIfNull(part);
        ArgumentNullException.ThrowIfNull(cutter);
        ArgumentNullException.ThrowIfNull(findings);
        var drawing = CutDrawings.Of(part);
        var kerf = cutter.KerfFor(part.Material, part.Thickness);
        if (kerf is { } given)
        {
            if (Compensated(drawing, given.Width, out var lost) is not { } compensated)
            {
                findings.Add(Diagnostic.Error(
                    given.At,
                    $"{part.Title} cannot be cut with a kerf of {Length(given.Width)}: at x {Length(lost.X)}, y {Length(lost.Y)} of the part it is narrower than that"));
                return null;
            }

            drawing = compensated;
        }
        else if (!cutter.Kerfs.IsEmpty)
        {
            findings.Add(Diagnostic.Warning(
                cutter.At, $"there is no kerf for {SheetOf(part)}: {part.Title} is not compensated"));
        }

        var held = cutter.HoldingTabs is { } tabs ? WithHoldingTabs(drawing, tabs) : null;
        if (held is null && cutter.HoldingTabs is { } wanted)
        {
            findings.Add(Diagnostic.Warning(
                wanted.At,
                $"{part.Title} has no room for {wanted.Count} holding tabs of {Length(wanted.Width)} on straight runs, clear of corners and openings: it is cut free"));
        }

        return (held ?? drawing) with { Notes = NotesOf(part, drawing.Kerf, held is null ? null : cutter.HoldingTabs) };
    }

    // Lines that run into each other so that no outline can be put together are narrower than the kerf too.
    private static CutDrawing? Compensated(CutDrawing drawing, double kerf, out Point2 lost)
    {
        try
        {
            var compensated = KerfCompensation.Of(drawing, kerf, out var place);
            lost = place ?? default;
            return compensated;
        }
        catch (BoundaryException fault)
        {
            lost = fault.At;
            return null;
        }
    }

    // A beam that stops at the ends of a gap still burns half the kerf into it on either side.
    private static CutDrawing? WithHoldingTabs(CutDrawing drawing, HoldingTabsDescription tabs)
    {
        var gap = tabs.Width + (drawing.Kerf ?? 0);
        var openings = new List<Path2>();
        foreach (var item in drawing.Drawing.Items)
        {
            if (item is DrawingItem.Stroke { Layer: Layer.Cut } cut && cut.Path.SignedArea < 0)
            {
                openings.Add(cut.Path);
            }
        }

        var items = ImmutableArray.CreateBuilder<DrawingItem>();
        foreach (var item in drawing.Drawing.Items)
        {
            if (item is not DrawingItem.Stroke { Layer: Layer.Cut } cut || cut.Path.SignedArea < 0)
            {
                items.Add(item);
                continue;
            }

            if (HoldingTabs.Cut(cut.Path, openings, gap, tabs.Count) is not { } stretches)
            {
                return null;
            }

            foreach (var stretch in stretches)
            {
                items.Add(new DrawingItem.Stroke(Layer.Cut, stretch, cut.Style));
            }
        }

        return drawing with { Drawing = new(items.ToImmutable()) };
    }

    private static ImmutableArray<string> NotesOf(Part part, double? kerf, HoldingTabsDescription? tabs)
    {
        var notes = ImmutableArray.CreateBuilder<string>();
        notes.Add(string.Create(CultureInfo.InvariantCulture, $"{part.Id}: {part.Quantity} off {SheetOf(part)}"));
        notes.Add(KerfNote(kerf));
        if (tabs is not null)
        {
            notes.Add(string.Create(
                CultureInfo.InvariantCulture, $"Open on purpose: {tabs.Count} holding tabs of {Length(tabs.Width)} an outline"));
        }

        return notes.ToImmutable();
    }

    /// <summary>What a file says about its kerf.</summary>
    internal static string KerfNote(double? kerf) => kerf is { } width
        ? $"Kerf {Length(width)} is compensated"
        : "Kerf is not compensated";

    private static string SheetOf(Part part) => part.Material.Length == 0 ? Length(part.Thickness) : $"{part.Material} {Length(part.Thickness)}";

    internal static string Length(double length) => string.Create(CultureInfo.InvariantCulture, $"{length:0.###} mm");
}

/// <summary>What came of preparing all parts for one cutter.</summary>
/// <param name="Drawings">The drawings.</param>
/// <param name="Findings">Why a part cannot be cut, and what should be looked at.</param>
public sealed record CutPartsResult(ImmutableArray<CutDrawing> Drawings, ImmutableArray<Diagnostic> Findings);
