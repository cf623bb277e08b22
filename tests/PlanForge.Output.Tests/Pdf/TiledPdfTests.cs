using System.Text;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using PlanForge.Drafting.Model;
using PlanForge.Drafting.Sheets;
using PlanForge.Drafting.Tiles;
using PlanForge.Geometry;
using PlanForge.Output.Pdf;
using PlanForge.Output.Tests.Readers;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Outline;
using UglyToad.PdfPig.Outline.Destinations;
using UglyToad.PdfPig.Tokens;

namespace PlanForge.Output.Tests.Pdf;

/// <summary>Pages with windows on sheets, read back by PdfPig.</summary>
public sealed partial class TiledPdfTests
{
    private static readonly PdfInfo Info = new("PlanForge 0.1.0");

    private static readonly SheetSet Sheets = Samples.Set(
        Large(1, "Formers", Samples.Text("Größe", 300, 200), Samples.Stroke(Layer.Cut, Path2.Circle(new(210, 148), 100))),
        Large(2, "Saddles", Samples.Stroke(Layer.CentreAndDatum, Path2.Line(new(25, 20), new(400, 280)))));

    [Fact]
    public void A_sheet_is_written_once_however_many_tiles_show_it()
    {
        var file = PdfWriter.Write(Tiles(), Info);
        using var document = PdfDocument.Open(file);
        Assert.Equal(2, Forms().Count(Encoding.Latin1.GetString(file)));
        var shown = document.GetPages().Select(page => page.Dictionary.Data["Resources"]).Cast<DictionaryToken>()
            .Where(resources => resources.Data.ContainsKey("XObject"))
            .Select(resources => ((DictionaryToken)resources.Data["XObject"]).Data.Single().Value.ToString()).ToArray();
        Assert.Equal(Tiles().Pages.Count(page => page.Windows.Length > 0), shown.Length);
        Assert.Equal(2, shown.Distinct().Count());
    }

    // Truth: what is written once weighs the same in the plan and in its tiles. Only cut lines are drawn again, on the map.
    [Fact]
    public void A_full_sheet_makes_its_tiles_no_heavier_than_the_plan()
    {
        var items = Enumerable.Range(0, 5000).Select(i => (DrawingItem)Samples.Stroke(
            Layer.Dimensions, Path2.Line(new(25 + (i * 7919 % 370), 20 + (i * 10472 % 250)), new(25 + (i * 12997 % 370), 20 + (i * 15485 % 250))))).ToArray();
        var (empty, full) = (Large(1, "A", items[..50]), Large(1, "A", items));
        var plain = PdfWriter.Write(Samples.Set(full), Info).Length - PdfWriter.Write(Samples.Set(empty), Info).Length;
        Assert.Equal(5, Tiles(full).Pages.Length);
        var tiled = PdfWriter.Write(Tiles(full), Info).Length - PdfWriter.Write(Tiles(empty), Info).Length;
        Assert.True(plain > 30_000);
        Assert.InRange(tiled, plain - 200, plain + 200);
    }

    // Truth: ISO 32000-1, 8.5.4: `re W n` makes the rectangle the clipping path, until Q.
    [Fact]
    public void A_sheet_is_cut_off_at_its_window()
    {
        var sheet = Sheets.Sheets[0];
        var page = new Page("1", "A", 100, 80, new([]), [new(sheet, new(30.5, 40, 110.5, 100), new(-20.25, -30))], [], []) { FreeLine = default };
        var content = Content(new("A", "en", [page]), 1);
        Assert.Contains("q 10.25 10 80 60 re W n 1 0 0 1 -20.25 -30 cm /Sheet0 Do Q\n", content, StringComparison.Ordinal);
    }

    [Fact]
    public void Sheet_stands_under_its_tile_at_true_size()
    {
        var line = Samples.Stroke(Layer.Cut, Path2.Line(new(40, 60), new(140, 60)));
        var page = new Page("1", "A", 210, 100, new([]), [new(Large(1, "A", line), new(30, 40, 200, 120), new(-20, -30))], [], []) { FreeLine = default };
        using var document = PdfDocument.Open(PdfWriter.Write(new PageSet("A", "en", [page]), Info));
        var drawn = PdfPaths.Contours(document.GetPage(1)).Single(contour => contour.Points.Count == 2 && !contour.IsClosed);
        Assert.Equal(20, drawn.Points[0].X, 1e-5);
        Assert.Equal(30, drawn.Points[0].Y, 1e-5);
        Assert.Equal(120, drawn.Points[1].X, 1e-5);
    }

    [Fact]
    public void Layers_switch_inside_sheets_behind_windows_too()
    {
        var text = Encoding.Latin1.GetString(PdfWriter.Write(Tiles(), Info));
        var forms = FormResources().Matches(text).Select(match => match.Value).ToArray();
        Assert.Equal(2, forms.Length);
        Assert.Contains("/Layer4 ", forms[0], StringComparison.Ordinal);     // Cut
        Assert.Contains("/Layer6 ", forms[0], StringComparison.Ordinal);     // Notes
        Assert.Contains("/Layer2 ", forms[1], StringComparison.Ordinal);     // Centre lines and datum
        Assert.All(forms, form => Assert.Contains("/Font << /Letters0 ", form, StringComparison.Ordinal));
    }

    [Fact]
    public void Bookmarks_lead_from_a_sheet_to_its_tiles_and_labels_name_both()
    {
        using var document = PdfDocument.Open(PdfWriter.Write(Tiles(), Info));
        Assert.True(document.TryGetBookmarks(out var bookmarks));
        Assert.Equal(["i  Read this first", "1  Formers", "2  Saddles"], bookmarks.Roots.Select(root => root.Title));
        Assert.Equal(["Tile A1", "Tile A2", "Tile B1", "Tile B2"], bookmarks.Roots[1].Children.Select(child => child.Title));
        Assert.Equal([2, 3, 4, 5], bookmarks.Roots[1].Children.Select(child => ((DocumentBookmarkNode)child).PageNumber));
        var labels = document.Structure.Catalog.CatalogDictionary.Data["PageLabels"].ToString()!;
        Assert.Contains("0, <P, i>, 1, <P, 1-A1>, 2, <P, 1-A2>", labels.Replace("(", "", StringComparison.Ordinal).Replace(")", "", StringComparison.Ordinal), StringComparison.Ordinal);
    }

    [Fact]
    public void Bookmarks_below_a_sheet_show_the_place_of_its_parts()
    {
        var sheet = Samples.Sheet() with { Bookmarks = [new("F1", new(20, 30, 60, 80)), new("F2", new(100, 30, 160, 80))] };
        using var document = PdfDocument.Open(PdfWriter.Write(Samples.Set(sheet, sheet with { Number = 2, Bookmarks = [] }), Info));
        Assert.True(document.TryGetBookmarks(out var bookmarks));
        Assert.Equal(["F1", "F2"], bookmarks.Roots[0].Children.Select(child => child.Title));
        var place = ((DocumentBookmarkNode)bookmarks.Roots[0].Children[1]).Destination;
        Assert.Equal(ExplicitDestinationType.FitRectangle, place.Type);

        // 5 mm around the part: 95 to 165 mm across, 25 to 85 mm up, at 72 points to 25.4 mm.
        Assert.Equal(95, PdfPaths.Millimetres((double)place.Coordinates.Left!), 1e-4);
        Assert.Equal(85, PdfPaths.Millimetres((double)place.Coordinates.Top!), 1e-4);
        Assert.Equal(165, PdfPaths.Millimetres((double)place.Coordinates.Right!), 1e-4);
        Assert.Equal(25, PdfPaths.Millimetres((double)place.Coordinates.Bottom!), 1e-4);
    }

    [Fact]
    public void Measuring_tools_read_true_lengths_in_views_to_a_scale()
    {
        var sheet = Samples.Sheet() with { ScaledViews = [new("Arrangement", new(10, 20, 110, 80), 0.2)] };
        using var document = PdfDocument.Open(PdfWriter.Write(Samples.Set(sheet), Info));
        var viewports = ((ArrayToken)document.GetPage(1).Dictionary.Data["VP"]).Data.Cast<DictionaryToken>().ToArray();
        var measure = (DictionaryToken)viewports[1].Data["Measure"];

        // Ten millimetres on the paper are fifty of the model; the last viewport that holds a point counts (ISO 32000-1, 12.9).
        Assert.Equal(50, 10 * 72 / 25.4 * Factor(measure, "X"), 1e-9);
        Assert.Equal("1:5 mm", ((StringToken)measure.Data["R"]).Data);
        Assert.False(measure.Data.ContainsKey("Y"));
        var box = ((ArrayToken)viewports[1].Data["BBox"]).Data.Cast<NumericToken>().Select(number => PdfPaths.Millimetres(number.Double)).ToArray();
        Assert.Equal([10, 20, 110, 80], box.Select(number => Math.Round(number, 5)));
    }

    [Fact]
    public void Correction_stretches_the_page_about_its_middle_and_tools_still_read_true_lengths()
    {
        var set = PageSet.Of(Samples.Set(Samples.Stroke(Layer.Cut, Path2.Polyline(new(48.5, 55), new(248.5, 55), new(248.5, 155)))))
            .CorrectedFor(new("attic", 1.01, 0.99));
        using var document = PdfDocument.Open(PdfWriter.Write(set, Info));
        var page = document.GetPage(1);
        var drawn = PdfPaths.Contours(page).First();

        // The page is 297 x 210 mm: the line's middle is the page's, 148.5; 200 mm become 202, the way up 100 mm become 99.
        Assert.Equal(47.5, drawn.Points[0].X, 1e-5);
        Assert.Equal(249.5, drawn.Points[1].X, 1e-5);
        Assert.Equal(105 - (50 * 0.99), drawn.Points[0].Y, 1e-5);
        Assert.Equal(105 + (50 * 0.99), drawn.Points[2].Y, 1e-5);
        Assert.Equal(297, PdfPaths.Millimetres(page.Width), 1e-4);
        Assert.Contains("Corrected for printer attic: across × 1.0100, up × 0.9900.", page.Text, StringComparison.Ordinal);

        var reference = (IndirectReferenceToken)((DictionaryToken)((ArrayToken)page.Dictionary.Data["VP"]).Data.Single()).Data["Measure"];
        var measure = (DictionaryToken)document.Structure.GetObject(reference.Data).Data;
        Assert.Equal(200, 202 * 72 / 25.4 * Factor(measure, "X"), 1e-8);
        Assert.Equal(100, 99 * 72 / 25.4 * Factor(measure, "Y"), 1e-8);
        Assert.Equal(1, ((NumericToken)measure.Data["CYX"]).Double);
    }

    [Fact]
    public void Sources_come_back_byte_for_byte()
    {
        byte[] yaml = [.. "name: Größe\n"u8, 0xFF, 0x00];
        var info = Info with { Attachments = [new("wing.yaml", "application/yaml", yaml), new("a.dat", "text/plain", new byte[3000]), new("b.dat", "text/plain", "abc"u8.ToArray())] };
        var file = PdfWriter.Write(Samples.Set(Samples.Sheet()), info);
        using var document = PdfDocument.Open(file);
        Assert.True(document.Advanced.TryGetEmbeddedFiles(out var files));
        Assert.Equal(["a.dat", "b.dat", "wing.yaml"], files.Select(one => one.Name));
        Assert.Equal(yaml, files[2].Bytes.ToArray());
        Assert.Equal(new byte[3000], files[0].Bytes.ToArray());
        var text = Encoding.Latin1.GetString(file);
        Assert.Contains("/Subtype /application#2Fyaml /Params << /Size 16 ", text, StringComparison.Ordinal);

        // RFC 1321, A.5: MD5 ("abc").
        Assert.Contains("/Subtype /text#2Fplain /Params << /Size 3 /CheckSum <900150983CD24FB0D6963F7D28E17F72> >>", text, StringComparison.Ordinal);
        Assert.Contains("/AFRelationship /Source", text, StringComparison.Ordinal);
        Assert.DoesNotContain("Date", text, StringComparison.Ordinal);
        Assert.Equal(3, ((ArrayToken)document.Structure.Catalog.CatalogDictionary.Data["AF"]).Length);
    }

    [Fact]
    public void Metadata_says_what_the_information_says()
    {
        var info = Info with { Author = "A & B <C>", Subject = "Wing", Keywords = "wing, Größe" };
        using var document = PdfDocument.Open(PdfWriter.Write(new SheetSet("Größe < 3", "de", [Samples.Sheet()]), info));
        Assert.True(document.TryGetXmpMetadata(out var metadata));
        var packet = XDocument.Load(new MemoryStream(metadata.GetXmlBytes().ToArray()));
        var values = packet.Descendants().Where(element => !element.HasElements).Select(element => element.Value).ToArray();
        Assert.Equal(("A & B <C>", "Wing", "wing, Größe"), (document.Information.Author, document.Information.Subject, document.Information.Keywords));
        Assert.Superset(new HashSet<string> { "Größe < 3", "A & B <C>", "Wing", "wing, Größe", "PlanForge 0.1.0", "de" }, values.ToHashSet());
        Assert.DoesNotContain("Date", packet.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void The_same_tiles_give_the_same_bytes() => Assert.Equal(PdfWriter.Write(Tiles(), Info), PdfWriter.Write(Tiles(), Info));

    private static PageSet Tiles(Sheet sheet) => TilePlan.Of(Samples.Set(sheet), new(Paper.Find("A4")!)).Pages!;

    private static PageSet Tiles() => TilePlan.Of(Sheets, new(Paper.Find("A4")!)).Pages!;

    private static Sheet Large(int number, string title, params DrawingItem[] items) => new(number, title, 420, 297, new([.. items]), []);

    private static double Factor(DictionaryToken measure, string axis) =>
        ((NumericToken)((DictionaryToken)((ArrayToken)measure.Data[axis]).Data.Single()).Data["C"]).Double;

    private static string Content(PageSet set, int page)
    {
        using var document = PdfDocument.Open(PdfWriter.Write(set, Info));
        var reference = (IndirectReferenceToken)document.GetPage(page).Dictionary.Data["Contents"];
        var stream = (StreamToken)document.Structure.GetObject(reference.Data).Data;
        return Encoding.Latin1.GetString(stream.Data.Span);
    }

    [GeneratedRegex("/Subtype /Form ")]
    private static partial Regex Forms();

    [GeneratedRegex("/Subtype /Form [^\\n]*\\n/Resources << [^\\n]*")]
    private static partial Regex FormResources();
}
