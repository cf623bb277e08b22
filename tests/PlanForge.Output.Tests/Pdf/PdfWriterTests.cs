using System.Text;
using PlanForge.Drafting.Model;
using PlanForge.Geometry;
using PlanForge.Output.Pdf;
using PlanForge.Output.Tests.Readers;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Graphics.Core;
using UglyToad.PdfPig.Graphics.Operations.General;
using UglyToad.PdfPig.Tokens;
using Page = UglyToad.PdfPig.Content.Page;

namespace PlanForge.Output.Tests.Pdf;

public sealed class PdfWriterTests
{
    private static readonly PdfInfo Info = new("PlanForge 0.1.0");

    // Truth: ISO 216 and ANSI sizes in millimetres times 72/25.4 (shared/check-values.md section 9: 1 mm = 2.834645669 pt).
    [Theory]
    [InlineData(210, 297, 595.2755906, 841.8897638)]
    [InlineData(420, 297, 1190.5511811, 841.8897638)]
    [InlineData(279.4, 215.9, 792, 612)]
    [InlineData(914.4, 5080, 2592, 14400)]
    [InlineData(123.4567, 98.7654, 349.9560, 279.9649)]
    public void Page_boxes_are_exact(double width, double height, double points, double pointsHigh)
    {
        using var document = Open(Samples.Set(new Sheet(1, "A", width, height, new([]), [])));
        var page = document.GetPage(1);
        foreach (var box in (PdfBox[])[PdfBox.Media, PdfBox.Crop, PdfBox.Trim])
        {
            var numbers = ((ArrayToken)page.Dictionary.Data[$"{box}Box"]).Data.Cast<NumericToken>().Select(token => token.Double).ToArray();
            Assert.Equal([0, 0], numbers[..2]);
            Assert.Equal(points, numbers[2], 1e-4);
            Assert.Equal(pointsHigh, numbers[3], 1e-4);
        }
    }

    [Theory]
    [InlineData(5080.1, 297)]
    [InlineData(297, 1)]
    [InlineData(double.NaN, 297)]
    public void Pages_that_no_viewer_must_show_are_refused(double width, double height) => Assert.Throws<ArgumentException>(
        () => PdfWriter.Write(Samples.Set(new Sheet(1, "A", width, height, new([]), [])), Info));

    [Fact]
    public void A_set_without_sheets_is_refused() => Assert.Throws<ArgumentException>(() => PdfWriter.Write(new SheetSet("A", "en", []), Info));

    [Fact]
    public void Viewers_are_told_not_to_scale_and_what_to_show()
    {
        using var document = Open(Samples.Set(Samples.Sheet()));
        var catalog = document.Structure.Catalog.CatalogDictionary;
        var preferences = (DictionaryToken)catalog.Data["ViewerPreferences"];
        Assert.Equal("None", ((NameToken)preferences.Data["PrintScaling"]).Data);
        Assert.True(((BooleanToken)preferences.Data["PickTrayByPDFSize"]).Data);
        Assert.True(((BooleanToken)preferences.Data["DisplayDocTitle"]).Data);
        Assert.Equal("en", ((StringToken)catalog.Data["Lang"]).Data);
        Assert.Equal("Oxbow 1420 B", document.Information.Title);
        Assert.Equal("PlanForge 0.1.0", document.Information.Producer);
        Assert.Null(document.Information.CreationDate);
        Assert.Equal(1.7m, (decimal)document.Version, 2);
    }

    [Fact]
    public void Titles_outside_ASCII_and_with_brackets_come_back()
    {
        using var document = Open(new SheetSet("Größe (½) \\ 漢", "de", [Samples.Sheet()]));
        Assert.Equal("Größe (½) \\ 漢", document.Information.Title);
    }

    [Fact]
    public void A_millimetre_in_the_drawing_is_a_millimetre_on_the_page()
    {
        using var document = Open(Samples.Set(
            Samples.Stroke(Layer.Cut, Path2.Line(new(12.34567, 200.00001), new(287, 1.5))),
            new DrawingItem.Fill(Layer.Frame, [Path2.Rectangle(new(20, 10, 120, 14))], 0)));
        var contours = PdfPaths.Contours(document.GetPage(1)).ToList();
        Assert.Equal(12.34567, contours[0].Points[0].X, 1e-5);
        Assert.Equal(200.00001, contours[0].Points[0].Y, 1e-5);
        Assert.Equal(287, contours[0].Points[1].X, 1e-5);
        Assert.Equal(1.5, contours[0].Points[1].Y, 1e-5);
        Assert.Equal(100, contours[1].Points[1].X - contours[1].Points[0].X, 1e-5);
        Assert.Equal(4, contours[1].Points[2].Y - contours[1].Points[1].Y, 1e-5);
    }

    [Fact]
    public void Lines_have_their_width_dashes_and_round_ends()
    {
        using var document = Open(Samples.Set(
            new DrawingItem.Stroke(Layer.Cut, Path2.Line(new(1, 1), new(9, 1)), new(LineType.LongDashedDotted, 0.25)),
            new DrawingItem.Stroke(Layer.Cut, Path2.Line(new(1, 2), new(9, 2)), new(LineType.Continuous, 0.5))));
        var operations = document.GetPage(1).Operations;

        // shared/check-values.md section 5, worked: type 04 at d = 0.25 is 6, -0.75, 0.125, -0.75 mm.
        Assert.Equal([0.25, 0.5], operations.OfType<SetLineWidth>().Select(operation => operation.Width));
        Assert.Equal(
            [[6, 0.75, 0.125, 0.75], []],
            operations.OfType<SetLineDashPattern>().Select(operation => operation.Pattern.Array.Select(part => (double)part).ToArray()));
        Assert.Equal(LineCapStyle.Round, operations.OfType<SetLineCap>().Single().Cap);
        Assert.Equal(LineJoinStyle.Round, operations.OfType<SetLineJoin>().Single().Join);
        Assert.All(document.GetPage(1).Paths, path => Assert.True(path.IsStroked && !path.IsFilled));
    }

    [Fact]
    public void Layers_in_use_are_listed_by_name_and_others_are_not()
    {
        using var document = Open(Samples.Set(
            Samples.Sheet(Samples.Stroke(Layer.Cut, Path2.Line(new(1, 1), new(2, 2))), Samples.Text("A")),
            Samples.Sheet(Samples.Stroke(Layer.CentreAndDatum, Path2.Line(new(1, 1), new(2, 2))))));
        var properties = (DictionaryToken)document.Structure.Catalog.CatalogDictionary.Data["OCProperties"];
        Assert.Equal(["Centre lines and datum", "Cut", "Notes"], GroupNames(document, (ArrayToken)properties.Data["OCGs"]));
        Assert.Equal(
            ["Centre lines and datum", "Cut", "Notes"],
            GroupNames(document, (ArrayToken)((DictionaryToken)properties.Data["D"]).Data["Order"]));
        Assert.Equal(2, Properties(document, 1).Data.Count);
        Assert.Single(Properties(document, 2).Data);
    }

    [Fact]
    public void Every_mark_lies_on_a_layer()
    {
        using var document = Open(Samples.Set(
            Samples.Stroke(Layer.Cut, Path2.Line(new(1, 1), new(2, 2))),
            Samples.Text("A"),
            Samples.Stroke(Layer.Cut, Path2.Line(new(1, 1), new(2, 2)))));
        var page = document.GetPage(1);
        var depth = 0;
        foreach (var line in Content(page).Split('\n', StringSplitOptions.RemoveEmptyEntries))
        {
            depth += line.EndsWith("BDC", StringComparison.Ordinal) ? 1 : line == "EMC" ? -1 : 0;
            Assert.InRange(depth, 0, 1);
            Assert.True(depth == 1 || (line[^1] is not ('S' or 'f') && !line.Contains("Tj", StringComparison.Ordinal)));
        }

        Assert.Equal(0, depth);
        Assert.Equal(3, page.GetMarkedContents().Count);
    }

    [Fact]
    public void Bookmarks_and_page_labels_name_the_sheets()
    {
        var sheets = (Sheet[])[Samples.Sheet() with { Number = 3 }, Samples.Sheet() with { Number = 4, Title = "Wing saddle" }];
        using var document = Open(Samples.Set(sheets));
        Assert.True(document.TryGetBookmarks(out var bookmarks));
        Assert.Equal(["3  Former F3", "4  Wing saddle"], bookmarks.Roots.Select(root => root.Title));
        var labels = (DictionaryToken)document.Structure.Catalog.CatalogDictionary.Data["PageLabels"];
        Assert.Equal("[ 0, <S, /D>, <St, 3> ]", labels.Data["Nums"].ToString()!.Replace("<<", "<", StringComparison.Ordinal));
    }

    [Fact]
    public void Measuring_tools_read_millimetres()
    {
        using var document = Open(Samples.Set(Samples.Sheet()));
        var viewport = (DictionaryToken)((ArrayToken)document.GetPage(1).Dictionary.Data["VP"]).Data.Single();
        var measure = (DictionaryToken)document.Structure.GetObject(((IndirectReferenceToken)viewport.Data["Measure"]).Data).Data;
        var format = (DictionaryToken)((ArrayToken)measure.Data["X"]).Data.Single();
        Assert.Equal("mm", ((StringToken)format.Data["U"]).Data);

        // shared/check-values.md section 9: 72 units must read 25.4 mm.
        Assert.Equal(25.4, 72 * ((NumericToken)format.Data["C"]).Double, 1e-9);
    }

    [Fact]
    public void Circles_stray_less_than_a_ten_thousandth_of_a_millimetre()
    {
        foreach (var radius in (double[])[0.5, 4, 30, 140])
        {
            var contour = PdfPaths.Contours(Open(Samples.Set(Samples.Stroke(Layer.Cut, Path2.Circle(new(145, 105), radius)))).GetPage(1)).Single();
            Assert.True(contour.IsClosed);
            Assert.All(contour.Points, point => Assert.Equal(radius, point.DistanceTo(new(145, 105)), 1e-4));
        }
    }

    private enum PdfBox
    {
        Media,
        Crop,
        Trim,
    }

    private static PdfDocument Open(SheetSet set) => PdfDocument.Open(PdfWriter.Write(set, Info));

    private static string Content(Page page)
    {
        using var stream = new MemoryStream();
        foreach (var operation in page.Operations)
        {
            operation.Write(stream);
        }

        return Encoding.Latin1.GetString(stream.ToArray());
    }

    private static DictionaryToken Properties(PdfDocument document, int page) =>
        (DictionaryToken)((DictionaryToken)document.GetPage(page).Dictionary.Data["Resources"]).Data["Properties"];

    private static IEnumerable<string> GroupNames(PdfDocument document, ArrayToken references) => references.Data.Select(reference =>
        ((StringToken)((DictionaryToken)document.Structure.GetObject(((IndirectReferenceToken)reference).Data).Data).Data["Name"]).Data);
}
