using System.Globalization;
using PlanForge.Drafting.Cutting;
using PlanForge.Drafting.Model;
using PlanForge.Output.Dxf;
using PlanForge.Output.Pdf;
using PlanForge.Output.Svg;

namespace PlanForge.Output.Tests;

public sealed class DeterminismTests
{
    [Fact]
    public void The_same_drawing_gives_the_same_bytes() => Assert.Equal(Everything(), Everything());

    // The signs of de-DE and tr-TR, of sv-SE and of ar-SA. The program runs without culture data (InvariantGlobalization), so
    // cultures with these signs are made here; nothing else of a culture could reach the writers.
    [Theory]
    [InlineData(",", ".", "-")]
    [InlineData(",", "\u00A0", "\u2212")]
    [InlineData("\u066B", "\u066C", "\u061C-")]
    public void The_culture_of_the_user_changes_nothing(string decimalSign, string groupSign, string minus)
    {
        var expected = Everything();
        var (culture, userInterface) = (CultureInfo.CurrentCulture, CultureInfo.CurrentUICulture);
        try
        {
            var foreign = (CultureInfo)CultureInfo.InvariantCulture.Clone();
            foreign.NumberFormat.NumberDecimalSeparator = decimalSign;
            foreign.NumberFormat.NumberGroupSeparator = groupSign;
            foreign.NumberFormat.NegativeSign = minus;
            CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = foreign;
            Assert.Equal(expected, Everything());
        }
        finally
        {
            (CultureInfo.CurrentCulture, CultureInfo.CurrentUICulture) = (culture, userInterface);
        }
    }

    [Fact]
    public void Another_drawing_gives_another_document_id()
    {
        static string Id(byte[] pdf) => System.Text.Encoding.Latin1.GetString(pdf).Split("/ID [<")[1][..32];
        var info = new PdfInfo("PlanForge");
        Assert.Equal(Id(PdfWriter.Write(Samples.Set(Samples.Text("A")), info)), Id(PdfWriter.Write(Samples.Set(Samples.Text("A")), info)));
        Assert.NotEqual(Id(PdfWriter.Write(Samples.Set(Samples.Text("A")), info)), Id(PdfWriter.Write(Samples.Set(Samples.Text("B")), info)));
    }

    private static byte[] Everything()
    {
        var items = (DrawingItem[])[.. Samples.Former.Drawing.Items, Samples.Text("Größe 1 3⁄64, -0.5")];
        return
        [
            .. PdfWriter.Write(Samples.Set(items), new("PlanForge 0.1.0")),
            .. DxfWriter.Write(Samples.Former, CutProfile.Default),
            .. DxfWriter.Write(Samples.Stock, CutProfile.Default, DxfVersion.R12),
            .. SvgCutWriter.Write(Samples.Former, CutProfile.Default),
            .. SvgCutWriter.Write(Samples.Stock, CutProfile.Default),
            .. SvgWriter.Write(Samples.Sheet(items)),
        ];
    }
}
