using System.Globalization;
using System.Text;
using PlanForge.Drafting.Cutting;
using PlanForge.Drafting.Model;
using PlanForge.Geometry;
using PlanForge.Output.Dxf;
using PlanForge.Output.Tests.Readers;

namespace PlanForge.Output.Tests.Dxf;

// What a file must hold: shared/check-values.md section 10 (rows "minimal R13+", confirmed there in the notes of ezdxf). The
// verdict of ezdxf itself is part of tests/outside.
public sealed class DxfWriterTests
{
    private static readonly DxfFile Former = Read(Samples.Former);

    [Fact]
    public void Sections_come_in_the_order_of_the_format() => Assert.Equal(
        ["HEADER", "CLASSES", "TABLES", "BLOCKS", "ENTITIES", "OBJECTS"], Former.Sections.Keys);

    [Fact]
    public void The_header_tells_version_units_and_extents()
    {
        Assert.Equal([new(1, "AC1015")], Former.Header["$ACADVER"]);
        Assert.Equal([new(70, "4")], Former.Header["$INSUNITS"]);
        Assert.Equal([new(70, "1")], Former.Header["$MEASUREMENT"]);
        Assert.Equal([0, 0, 0], Former.Header["$EXTMIN"].Select(tag => tag.Number));

        // The lid is an arc of bulge 0.12 over 92 mm: its sagitta is 0.12 * 92 / 2 = 5.52 mm (section 10, "chord/sagitta").
        Assert.Equal([92, 109.52, 0], Former.Header["$EXTMAX"].Select(tag => Math.Round(tag.Number, 9)));
    }

    [Fact]
    public void All_nine_tables_are_there_with_their_standard_records()
    {
        var tables = Former.Sections["TABLES"].Where(record => record.Kind == "TABLE").ToList();
        Assert.Equal(
            ["VPORT", "LTYPE", "LAYER", "STYLE", "VIEW", "UCS", "APPID", "DIMSTYLE", "BLOCK_RECORD"], tables.Select(table => table[2]));
        Assert.Equal(["ByBlock", "ByLayer", "Continuous"], Names("LTYPE"));
        Assert.Equal(["0", "SCORE", "CUT"], Names("LAYER"));
        Assert.Equal(["*ACTIVE"], Names("VPORT"));
        Assert.Equal(["ACAD"], Names("APPID"));
        Assert.Equal(["*Model_Space", "*Paper_Space"], Names("BLOCK_RECORD"));
        foreach (var table in tables)
        {
            Assert.Equal(table[70], Names(table[2]).Count().ToString(CultureInfo.InvariantCulture));
        }

        static IEnumerable<string> Names(string kind) =>
            Former.Sections["TABLES"].Where(record => record.Kind == kind).Select(record => record[2]);
    }

    [Fact]
    public void Handles_are_unique_and_below_the_seed()
    {
        var handles = Former.Objects.Select(entry => entry.Handle).OfType<string>().Select(Hex).ToList();
        Assert.Equal(handles.Count, handles.Distinct().Count());
        Assert.All(handles, handle => Assert.InRange(handle, 1, Hex(Former.Header["$HANDSEED"].Single().Value) - 1));
        Assert.All(Former.Objects.Where(entry => entry.Kind is not ("ENDTAB" or "ENDSEC")), entry => Assert.NotNull(entry.Handle));
    }

    [Fact]
    public void Owners_and_references_exist()
    {
        var handles = Former.Objects.Select(entry => entry.Handle).OfType<string>().Append("0").ToHashSet();
        var references = Former.Objects.SelectMany(entry => entry.Tags).Where(tag => tag.Code is 330 or 350).Select(tag => tag.Value);
        Assert.All(references, reference => Assert.Contains(reference, handles));
        var modelSpace = Former.Sections["TABLES"].Single(record => record.Kind == "BLOCK_RECORD" && record[2] == "*Model_Space").Handle;
        Assert.All(Former.Entities, entity => Assert.Equal(modelSpace, entity[330]));
    }

    [Fact]
    public void Each_path_is_the_plainest_entity_that_holds_it() => Assert.Equal(
        ["LINE", "ARC", "LWPOLYLINE", "LWPOLYLINE", "CIRCLE", "LWPOLYLINE", "LWPOLYLINE"], Former.Entities.Select(entity => entity.Kind));

    [Fact]
    public void Outlines_are_closed_by_their_flag_and_do_not_repeat_the_first_vertex()
    {
        Assert.Equal("1", Former.Entities[5][70]);
        Assert.Equal("6", Former.Entities[5][90]);
        Assert.Equal("0", Former.Entities[2][70]);
    }

    [Theory]
    [InlineData(30, 0.131652498)]
    [InlineData(90, 0.414213562)]
    [InlineData(120, 0.577350269)]
    [InlineData(180, 1)]
    [InlineData(-45, -0.198912367)]
    public void Bulges_are_those_of_the_format(double degrees, double bulge)
    {
        // Values: shared/check-values.md section 10 ("bulge values"). The arc is turned about (0, 0) from (10, 0).
        var end = Point2.Origin + (Vector2.FromAngle(degrees * Math.PI / 180) * 10);
        var path = Path2.Open([new(new(10, 0), Math.Tan(degrees * Math.PI / 720)), new(end), new(new(0, -30))]);
        var entity = Read(new("A", new([Samples.Stroke(Layer.Cut, path)]))).Entities.Single();
        Assert.Equal(bulge, entity.Number(42), 1e-9);
    }

    [Fact]
    public void Arcs_run_anticlockwise_whichever_way_they_are_drawn()
    {
        var quarter = Path2.Open([new(new(10, 0), Math.Tan(Math.PI / 8)), new(new(0, 10))]);
        foreach (var path in (Path2[])[quarter, quarter.Reversed()])
        {
            var arc = Read(new("A", new([Samples.Stroke(Layer.Score, path)]))).Entities.Single();
            Assert.Equal("ARC", arc.Kind);
            Assert.Equal([0, 0, 10, 0, 90], ((int[])[10, 20, 40, 50, 51]).Select(code => Math.Round(arc.Number(code), 6)));
        }
    }

    [Fact]
    public void Lettering_becomes_open_strokes_on_its_layer()
    {
        var file = Read(new("A", new([new DrawingItem.Text(Layer.Score, "L", new(5, 7), 10, 0)])));
        Assert.All(file.Entities, entity => Assert.Equal("ENGRAVE", entity[8]));
        var points = file.Entities.SelectMany(entity => DxfFile.Contour(entity).Points).ToList();
        Assert.Equal(5, points.Min(point => point.X), 1e-9);
        Assert.Equal(7, points.Min(point => point.Y), 1e-9);
        Assert.Equal(17, points.Max(point => point.Y), 1e-9);
    }

    [Fact]
    public void A_shop_may_name_colour_and_order_the_layers()
    {
        var profile = new CutProfile(
            [new(CutOperation.CutInside, "Inner", 2, 0), new(CutOperation.CutOutside, "Through-cut", 1, 0), new(CutOperation.Score, "mark_2", 30, 0xFF)]);
        var file = new DxfFile(DxfWriter.Write(Samples.Former, profile));
        Assert.Equal(
            [("0", "7"), ("Inner", "2"), ("Through-cut", "1"), ("mark_2", "30")],
            file.Sections["TABLES"].Where(record => record.Kind == "LAYER").Select(record => (record[2], record[62])));
        Assert.Equal(
            ["Inner", "Through-cut", "Through-cut", "mark_2", "mark_2", "mark_2", "mark_2"], file.Entities.Select(entity => entity[8]));
    }

    [Theory]
    [InlineData("", 1, 0)]
    [InlineData("CUT THIS", 1, 0)]
    [InlineData("größe", 1, 0)]
    [InlineData("A123456789012345678901234567890X", 1, 0)]
    [InlineData("CUT", 0, 0)]
    [InlineData("CUT", 256, 0)]
    [InlineData("CUT", 1, -1)]
    [InlineData("CUT", 1, 0x1000000)]
    public void Layer_names_and_colours_that_some_reader_refuses_are_refused(string name, int colour, int stroke) =>
        Assert.ThrowsAny<ArgumentException>(() => new OperationStyle(CutOperation.CutOutside, name, colour, stroke));

    [Fact]
    public void Fills_empty_drawings_and_what_means_no_work_are_refused()
    {
        var fill = new CutDrawing("A", new([new DrawingItem.Fill(Layer.Cut, [Path2.Circle(new(0, 0), 1)], 0)]));
        Assert.Throws<ArgumentException>(() => DxfWriter.Write(fill, CutProfile.Default));
        Assert.Throws<ArgumentException>(() => DxfWriter.Write(new CutDrawing("A", new([])), CutProfile.Default));
        Assert.Throws<ArgumentException>(() => Read(new("A", new([Samples.Stroke(Layer.Dimensions, Path2.Circle(new(0, 0), 1))]))));
    }

    // Group codes of the layer record: shared/check-values.md section 10.
    [Fact]
    public void Notes_are_on_a_frozen_layer_that_is_not_plotted_and_at_the_head_of_the_file()
    {
        var file = Read(Samples.Former with { Kerf = 0.15, Notes = ["Kerf 0.15 mm is compensated", "Größe"] });
        var layer = file.Sections["TABLES"].Single(record => record.Kind == "LAYER" && record[2] == "NOTES_NOT_CUT");
        Assert.Equal(("1", "0"), (layer[70], layer[290]));
        Assert.Equal(["F3, kerf 0.15 mm compensated, mm", "Kerf 0.15 mm is compensated", "Gr??e"], file.Remarks);
        Assert.Contains(file.Entities, entity => entity[8] == "NOTES_NOT_CUT");

        // The extents stay those of the work.
        Assert.Equal(Former.Header["$EXTMIN"].Concat(Former.Header["$EXTMAX"]), file.Header["$EXTMIN"].Concat(file.Header["$EXTMAX"]));
    }

    [Fact]
    public void A_sheet_of_stock_holds_its_parts_one_after_the_other()
    {
        foreach (var version in (DxfVersion[])[DxfVersion.R2000, DxfVersion.R12])
        {
            var file = new DxfFile(DxfWriter.Write(Samples.Stock, CutProfile.Default, version));
            string[] part = ["SCORE", "SCORE", "SCORE", "SCORE", "CUT", "CUT", "CUT"];
            Assert.Equal([.. part, .. part], file.Plain.Select(entity => entity[8]).Where(layer => layer != "NOTES_NOT_CUT"));

            // The stock's edge is the first of the notes: 300 by 200 mm.
            Assert.Equal([0, 300, 300, 0], file.Plain[0].Numbers(10));
            Assert.Equal([0, 0, 200, 200], file.Plain[0].Numbers(20));
        }
    }

    // R12: shared/check-values.md section 10, "R12 differences".
    [Fact]
    public void R12_has_no_handles_no_units_and_polylines_of_vertices()
    {
        var file = new DxfFile(DxfWriter.Write(Samples.Former, CutProfile.Default, DxfVersion.R12));
        Assert.Equal(["HEADER", "TABLES", "ENTITIES"], file.Sections.Keys);
        Assert.Equal([new(1, "AC1009")], file.Header["$ACADVER"]);
        Assert.Equal(["$ACADVER", "$EXTMAX", "$EXTMIN", "$LIMMAX", "$LIMMIN"], file.Header.Keys.Order(StringComparer.Ordinal));
        Assert.DoesNotContain(file.Tags, tag => tag.Code is 5 or 100 or 330 or 370 or 290);
        Assert.Equal(["LINE", "ARC", "POLYLINE"], file.Entities.Take(3).Select(entity => entity.Kind));
        Assert.All(file.Entities.Select(entity => entity.Kind), kind => Assert.Contains(kind, (string[])["LINE", "ARC", "CIRCLE", "POLYLINE", "VERTEX", "SEQEND"]));
        Assert.Equal(["0", "SCORE", "CUT"], file.Sections["TABLES"].Where(record => record.Kind == "LAYER").Select(record => record[2]));
    }

    [Fact]
    public void Coordinates_that_are_not_finite_are_refused() => Assert.ThrowsAny<ArgumentException>(
        () => Read(new("A", new([Samples.Stroke(Layer.Cut, Path2.Line(new(0, 0), new(double.NaN, 1)))]))));

    [Fact]
    public void Numbers_are_plain_and_text_is_ASCII()
    {
        var bytes = DxfWriter.Write(Samples.Former, CutProfile.Default);
        Assert.All(bytes, value => Assert.InRange(value, (byte)'\n', (byte)'~'));
        var reals = Former.Tags.Where(tag => tag.Code is >= 10 and < 60).Select(tag => tag.Value);
        Assert.All(reals, real => Assert.True(real.All(c => char.IsAsciiDigit(c) || c is '-' or '.') && real != "-0", real));
        Assert.DoesNotContain("TEXT", Encoding.ASCII.GetString(bytes), StringComparison.Ordinal);
    }

    private static DxfFile Read(CutDrawing drawing) => new(DxfWriter.Write(drawing, CutProfile.Default));

    private static long Hex(string text) => long.Parse(text, NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture);
}
