using System.Collections.Immutable;
using PlanForge.Airframe.Diagnostics;
using PlanForge.Geometry;
using PlanForge.Geometry.Fitting;
using PlanForge.Parts.Shapes;

namespace PlanForge.Parts.SandingForms;

/// <summary>The male profile that carries abrasive to shape the saddle, reduced by the abrasive's thickness.</summary>
/// <remarks>
/// It is the wing's section in the panel's own section plane where the side passes, moved out by the seat tape and in by the
/// abrasive, and is drawn along the panel across the edge of the side. Over the thickness of the side the section hardly
/// changes; by how much is reported.
/// </remarks>
public sealed class SandingFormParts : IPartKind
{
    private const int StepCount = 128;

    /// <inheritdoc/>
    public string Title => "Sanding forms";

    /// <inheritdoc/>
    public IEnumerable<Part> Make(RiggedAirframe airframe, ICollection<Diagnostic> findings)
    {
        var line = airframe.SaddleLine!;
        var saddle = airframe.Description.Saddle;
        var move = saddle.SeatTape - saddle.Abrasive;
        var middle = line.Points[line.Points.Length / 2];
        var (first, last) = (line.Points[0].W, line.Points[^1].W);
        var atOuter = Profile(airframe, middle.Panel, middle.Outer.Y, move, first, last);
        var atInner = Profile(airframe, middle.Panel, middle.Inner.Y, move, first, last);
        var change = 0.0;
        for (var i = 0; i < atOuter.Length; i++)
        {
            change = Math.Max(change, Math.Abs(atOuter[i].Y - atInner[i].Y));
        }

        if (ShapeGuard.Make(
            airframe, "the sanding form", airframe.Description.Wing.At, findings, () => Draw(airframe, SampledCurve.Through(Unfolded(atOuter)), change)) is { } form)
        {
            yield return form;
        }
    }

    // The profile in the section plane at the place on the panel whose y is given, x aft and y up along the panel's normal.
    private static Point2[] Profile(RiggedAirframe airframe, int panel, double y, double move, double first, double last)
    {
        var it = airframe.Wing.Panels[panel];
        var along = (y - it.Start.Y) / Math.Cos(it.Dihedral);
        var outward = airframe.WingSide == WingSide.Lower ? -1 : 1;
        var points = new Point2[StepCount + 1];
        for (var i = 0; i <= StepCount; i++)
        {
            var w = first + ((last - first) * i / StepCount);
            var (aft, up) = it.InSectionPlane(airframe.WingSide, along, w);

            // Square to the surface, away from the wing: left of travel for the upper side, right of it for the lower.
            // The derivative by v is along w, since along is a constant here.
            var normal = new Vector2(aft.Dv, up.Dv).Unit().Left * outward;
            points[i] = new Point2(aft.Value, up.Value) + (normal * move);
        }

        return points;
    }

    // A profile moved into a nose rounder than the move folds back on itself; the fold is left out.
    private static ImmutableArray<Point2> Unfolded(Point2[] points)
    {
        var kept = ImmutableArray.CreateBuilder<Point2>(points.Length);
        kept.Add(points[0]);
        for (var i = 1; i < points.Length; i++)
        {
            var isOn = kept.Count < 2 || (points[i] - kept[^1]).Dot(kept[^1] - kept[^2]) > 0;
            if (isOn && points[i].DistanceTo(kept[^1]) > 1e-4)
            {
                kept.Add(points[i]);
            }
        }

        return kept.ToImmutable();
    }

    private Part Draw(RiggedAirframe airframe, ImmutableArray<CurveSample> samples, double change)
    {
        var sketch = new PartSketch();
        var text = airframe.Text;
        var saddle = airframe.Description.Saddle;
        var profile = ArcFitter.Fit(samples, Drawn.Tolerance);
        var away = airframe.WingSide == WingSide.Lower ? 1 : -1;
        var back = away > 0 ? profile.Bounds.MinY + saddle.FormHeight : profile.Bounds.MaxY - saddle.FormHeight;
        var closed = Path2.Closed(
            [.. profile.Vertices[..^1], new(profile.End), new(new(profile.End.X, back)), new(new(profile.Start.X, back))]);
        var contour = closed.SignedArea > 0 ? closed : closed.Reversed();
        sketch.Line(LineUse.Cut, contour);
        var bounds = contour.Bounds;
        var middle = (profile.Start.Y + back) / 2;
        sketch.Label("FRONT", new(bounds.MinX + 4, middle), Anchor.Start);
        sketch.Engrave("sanding form", new((bounds.MinX + bounds.MaxX) / 2, middle), 2.5);
        sketch.Across(new(bounds.MinX, back), new(bounds.MaxX, back), away * 8);
        sketch.Up(new(profile.End.X, profile.End.Y), new(profile.End.X, back), -1);
        sketch.Note("Cut several, stack them across the body's width, cover with abrasive; sand across the side, along the wing.");
        sketch.Note(saddle.Abrasive > 0
            ? $"Reduced by {text.FineWithUnit(saddle.Abrasive)} for the abrasive; turn over for the other side."
            : "No abrasive thickness given: nothing taken off for it. Turn over for the other side.");
        if (text.Fine(change) != "0")
        {
            sketch.Note($"Over the thickness of the side the wing's section changes by up to {text.FineWithUnit(change)}.");
        }

        sketch.Figure("sanding_form.change", "Sanding form, change of the section over the side's thickness", change, FigureQuantity.Length);
        sketch.Figure("sanding_form.length", "Sanding form, length", bounds.Width, FigureQuantity.Length);
        return sketch.AsTemplate("sanding-form", Title, "Sanding form");
    }
}
