using PlanForge.Geometry;
using PlanForge.Output.Inspection.Reading;

namespace PlanForge.Output.Inspection.Checks;

/// <summary>Compares the extents of the drawing with the sheet, with what the file says they are, and with what parts measure.</summary>
internal static class SheetCheck
{
    // Parts of a model, and sheets to cut them from; common practice, no source.
    private const double Largest = 3000;
    private const double Smallest = 5;

    // What rounding of a header's or view box's numbers takes, mm.
    private const double Rounding = 0.05;

    // What lies on a layer that is off and not meant to be cut counts for nothing here.
    public static void Run(CutFile file, List<Contour> all, InspectionOptions options, FindingList findings)
    {
        var contours = all.FindAll(contour => contour.Layer.IsCut || !contour.Layer.IsOff);
        var bounds = Bounds2.Empty;
        foreach (var contour in contours)
        {
            bounds = bounds.Joined(contour.Bounds);
        }

        if (bounds.IsEmpty)
        {
            if (!file.IsIncomplete && file.Segments.Count == 0)
            {
                findings.Fault(FindingCode.Empty, TextPlace.WholeFile, "there is nothing to cut");
            }

            return;
        }

        CheckSize(bounds, findings);
        if (file.Area is { } area)
        {
            CheckArea(file, contours, bounds, area, findings);
        }

        if (options.Sheet is var (width, height))
        {
            CheckInside(contours, new(0, 0, width, height), $"the sheet, which reaches from (0, 0) to {Words.Of(new Point2(width, height))}", FindingSeverity.Fault, findings);
        }
    }

    private static void CheckSize(Bounds2 bounds, FindingList findings)
    {
        var size = Math.Max(bounds.Width, bounds.Height);
        if (size > Largest)
        {
            findings.Warning(FindingCode.Size, TextPlace.WholeFile, $"all of it measures {Words.SizeOf(bounds)}, more than 3 m: are the units right, or were numbers multiplied by 10 or 25.4?");
        }
        else if (size < Smallest)
        {
            findings.Warning(FindingCode.Size, TextPlace.WholeFile, $"all of it measures {Words.SizeOf(bounds)}, less than 5 mm: are the units right, or were numbers divided by 10 or 25.4?");
        }
    }

    private static void CheckArea(CutFile file, List<Contour> contours, Bounds2 bounds, Bounds2 area, FindingList findings)
    {
        if (!file.IsAreaTight)
        {
            CheckInside(contours, area, $"the area the file announces, {Words.SizeOf(area)}", FindingSeverity.Warning, findings);
            return;
        }

        var isSame = Math.Abs(area.MinX - bounds.MinX) <= Rounding && Math.Abs(area.MinY - bounds.MinY) <= Rounding
            && Math.Abs(area.MaxX - bounds.MaxX) <= Rounding && Math.Abs(area.MaxY - bounds.MaxY) <= Rounding;
        if (!isSame && !file.IsIncomplete && !file.IsFull)
        {
            findings.Warning(FindingCode.Extents, file.AreaPlace, $"the header says {Corners(area)}, but the lines reach {Corners(bounds)}; some machines place the sheet by the header");
        }
    }

    private static void CheckInside(List<Contour> contours, Bounds2 area, string what, FindingSeverity severity, FindingList findings)
    {
        var grown = area.Grown(Rounding);
        foreach (var contour in contours)
        {
            var reached = contour.Bounds;
            if (!grown.Encloses(reached))
            {
                var text = $"this reaches {Corners(reached)}, outside {what}";
                findings.Add(severity, FindingCode.OutsideSheet, contour.At, text, new(reached.MinX, reached.MinY));
            }
        }
    }

    private static string Corners(Bounds2 bounds) =>
        $"from {Words.Of(new Point2(bounds.MinX, bounds.MinY))} to {Words.Of(new Point2(bounds.MaxX, bounds.MaxY))}";
}
