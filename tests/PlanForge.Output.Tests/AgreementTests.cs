using CsCheck;
using PlanForge.Drafting.Cutting;
using PlanForge.Drafting.Model;
using PlanForge.Geometry;
using PlanForge.Output.Dxf;
using PlanForge.Output.Pdf;
using PlanForge.Output.Svg;
using PlanForge.Output.Tests.Readers;
using UglyToad.PdfPig;

namespace PlanForge.Output.Tests;

/// <summary>One part in three files: each is read back by a reader of its own and must be the same part.</summary>
public sealed class AgreementTests
{
    private const double Tolerance = 0.001;

    [Fact]
    public void All_three_files_of_a_former_agree_to_a_thousandth_of_a_millimetre() => Agree(Samples.Former);

    [Fact]
    public void All_three_files_of_random_paths_agree_to_a_thousandth_of_a_millimetre() => Samples.Paths.Array[1, 3].Sample(
        paths => Agree(new("random", new([.. paths.Select(path => Samples.Stroke(Layer.Cut, path))]))),
        iter: 25);

    [Fact]
    public void Lettering_in_cut_files_agrees_too() => Agree(
        new("F3", new([new DrawingItem.Text(Layer.Score, "Former F3: 3⁄16 in, ø8", new(5, -3), 5, 0.3)])), isLettering: true);

    private static void Agree(CutDrawing drawing) => Agree(drawing, isLettering: false);

    private static void Agree(CutDrawing drawing, bool isLettering)
    {
        var truth = Truth(drawing);
        var dxf = FromDxf(drawing, DxfVersion.R2000);
        var r12 = FromDxf(drawing, DxfVersion.R12);
        var svg = FromSvg(drawing);
        var pdf = isLettering ? truth : FromPdf(drawing);
        Assert.Equal([truth.Count, truth.Count, truth.Count, truth.Count], [dxf.Count, r12.Count, svg.Count, pdf.Count]);
        for (var i = 0; i < truth.Count; i++)
        {
            Assert.Equal([truth[i].IsClosed, truth[i].IsClosed, truth[i].IsClosed], [dxf[i].IsClosed, svg[i].IsClosed, pdf[i].IsClosed]);
            Assert.Equal(truth[i].IsClosed, r12[i].IsClosed);
            Assert.InRange(dxf[i].DistanceTo(truth[i]), 0, Tolerance);
            Assert.InRange(r12[i].DistanceTo(truth[i]), 0, Tolerance);
            Assert.InRange(svg[i].DistanceTo(truth[i]), 0, Tolerance);
            Assert.InRange(pdf[i].DistanceTo(truth[i]), 0, Tolerance);
            Assert.InRange(dxf[i].DistanceTo(svg[i]), 0, Tolerance);
            Assert.InRange(dxf[i].DistanceTo(pdf[i]), 0, Tolerance);
        }
    }

    private static List<Polyline> Truth(CutDrawing drawing)
    {
        var truth = new List<Polyline>();
        foreach (var item in InOrder(drawing))
        {
            var paths = item is DrawingItem.Text text
                ? Drafting.Lettering.TextLayout.StrokesOf(text.Content, text.At, text.Height, text.Angle)
                : [((DrawingItem.Stroke)item).Path];
            truth.AddRange(paths.Select(Polyline.Of));
        }

        return truth;
    }

    // Lettering, marks, openings, outlines: the order of shared/practice.md, "Order".
    private static IEnumerable<DrawingItem> InOrder(CutDrawing drawing) => drawing.Drawing.Items.OrderBy(item => item switch
    {
        DrawingItem.Text => 0,
        DrawingItem.Stroke { Layer: Layer.Score } => 1,
        DrawingItem.Stroke { Path: { IsClosed: true, SignedArea: < 0 } } => 2,
        _ => 3,
    });

    private static List<Polyline> FromDxf(CutDrawing drawing, DxfVersion version) =>
        [.. new DxfFile(DxfWriter.Write(drawing, CutProfile.Default, version)).Plain.Select(DxfFile.Contour)];

    /// <summary>The picture's upper left corner is that of the extents, which the DXF header tells.</summary>
    private static List<Polyline> FromSvg(CutDrawing drawing)
    {
        var header = new DxfFile(DxfWriter.Write(drawing, CutProfile.Default)).Header;
        var (left, top) = (header["$EXTMIN"][0].Number, header["$EXTMAX"][1].Number);
        var contours = new SvgFile(SvgCutWriter.Write(drawing, CutProfile.Default)).Groups.SelectMany(SvgFile.Contours);
        return [.. contours.Select(contour => contour with { Points = [.. contour.Points.Select(point => new Point2(point.X + left, top - point.Y))] })];
    }

    private static List<Polyline> FromPdf(CutDrawing drawing)
    {
        using var document = PdfDocument.Open(PdfWriter.Write(Samples.Set([.. InOrder(drawing)]), new("PlanForge")));
        return [.. PdfPaths.Contours(document.GetPage(1))];
    }
}
