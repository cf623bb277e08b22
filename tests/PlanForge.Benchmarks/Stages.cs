using PlanForge.Airframe;
using PlanForge.Airframe.Reading;
using PlanForge.Drafting.Cutting;
using PlanForge.Drafting.Model;
using PlanForge.Drafting.Sheets;
using PlanForge.Output.Dxf;
using PlanForge.Output.Pdf;
using PlanForge.Output.Svg;
using PlanForge.Parts;

namespace PlanForge.Benchmarks;

/// <summary>The stages from a description's text to files, one method each.</summary>
internal static class Stages
{
    public static AirframeDescription Read(DescriptionText description) =>
        AirframeReader.Read(description.Name, description.Text, description.ReadSection).Airframe
        ?? throw new InvalidOperationException($"{description.Name} is at fault");

    public static PartList Parts(AirframeDescription airframe) => PartList.Of(airframe);

    public static SheetSet Sheets(AirframeDescription airframe, PartList parts) =>
        PlanSheets.Draw(PlanOptions.Of(airframe, "PlanForge"), parts).Sheets;

    public static CutDrawing[] CutDrawings(PartList parts) =>
        [.. parts.Parts.Where(part => part.Making == Making.Cut).Select(Drafting.PartDrawings.CutDrawings.Of)];

    public static int Pdf(SheetSet sheets) => PdfWriter.Write(sheets, new("PlanForge")).Length;

    public static int Svg(SheetSet sheets) => sheets.Sheets.Sum(sheet => SvgWriter.Write(sheet).Length);

    public static int CutFiles(IEnumerable<CutDrawing> drawings) =>
        drawings.Sum(drawing => DxfWriter.Write(drawing, CutProfile.Default).Length + SvgCutWriter.Write(drawing, CutProfile.Default).Length);

    public static int Whole(DescriptionText description)
    {
        var airframe = Read(description);
        var parts = Parts(airframe);
        var sheets = Sheets(airframe, parts);
        return Pdf(sheets) + Svg(sheets) + CutFiles(CutDrawings(parts));
    }
}
