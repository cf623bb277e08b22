using PlanForge.Drafting.Conventions;
using PlanForge.Drafting.Lettering;
using PlanForge.Drafting.Measures;
using PlanForge.Drafting.Model;
using PlanForge.Geometry;
using PlanForge.Parts;
using PlanForge.Parts.Wording;

namespace PlanForge.Drafting.PartDrawings;

/// <summary>The block of text that belongs to a part: title, material, quantity, notes and tables, one under the other.</summary>
internal sealed class TextBlock
{
    private const double SwatchWidth = 8;
    private const double SwatchHeight = 4;
    private const double Gap = 2.5;
    private const double ColumnGap = 8;

    private readonly Sketch _sketch = new();
    private readonly LetteringSizes _sizes;
    private readonly double _width;
    private double _y;

    private TextBlock(LetteringSizes sizes, double width) => (_sizes, _width) = (sizes, width);

    /// <summary>Sets the block downwards from the origin, tables under the notes.</summary>
    /// <param name="part">The part.</param>
    /// <param name="units">The units lengths are shown in.</param>
    /// <param name="sizes">Heights of lettering.</param>
    /// <param name="width">Lines break at this width, mm; tables may be wider.</param>
    /// <param name="grain">A grain arrow that found no room on the part, or null.</param>
    public static Sketch InOneColumn(Part part, ShownUnits units, LetteringSizes sizes, double width, Sketch? grain)
    {
        var block = Texts(part, units, sizes, width, grain);
        foreach (var table in part.Tables)
        {
            block.AddBelow(TableDrawing.Draw(table, sizes.Body));
        }

        return block._sketch;
    }

    /// <summary>The same with each table to the right of what comes before it.</summary>
    /// <param name="part">The part.</param>
    /// <param name="units">The units lengths are shown in.</param>
    /// <param name="sizes">Heights of lettering.</param>
    /// <param name="width">Lines break at this width, mm.</param>
    /// <param name="grain">A grain arrow that found no room on the part, or null.</param>
    public static Sketch InColumns(Part part, ShownUnits units, LetteringSizes sizes, double width, Sketch? grain)
    {
        var sketch = Texts(part, units, sizes, width, grain)._sketch;
        foreach (var table in part.Tables)
        {
            var drawn = TableDrawing.Draw(table, sizes.Body);
            sketch.Add(drawn, new(sketch.Bounds.MaxX + ColumnGap - drawn.Bounds.MinX, sketch.Bounds.MaxY - drawn.Bounds.MaxY));
        }

        return sketch;
    }

    private static TextBlock Texts(Part part, ShownUnits units, LetteringSizes sizes, double width, Sketch? grain)
    {
        var block = new TextBlock(sizes, width);
        block.AddLines(part.Title, 0, sizes.Title);
        block.AddMaterial(part, units);
        if (grain is not null)
        {
            block.AddBelow(grain);
        }

        foreach (var note in part.Notes)
        {
            block.AddLines(note, 0, sizes.Body);
        }

        return block;
    }

    private static string MaterialLine(Part part, ShownUnits units)
    {
        var what = part.Making == Making.Cut || part.Material.Length > 0 ? part.Material : part.Making == Making.Template && part.Lines.Length > 0 ? "paper template" : "";
        var thickness = part.Thickness > 0 ? " " + Measure.LengthWithUnit(part.Thickness, units, 2) : "";
        var quantity = part.Making == Making.Cut || part.Quantity > 1 ? $", make {Measure.Number(part.Quantity, 0)}" : "";
        var fingerprint = part.Fingerprint is { } own ? $"{(what.Length > 0 ? ", " : "")}{own.Code}" : "";
        return what + thickness + quantity + fingerprint;
    }

    private void AddMaterial(Part part, ShownUnits units)
    {
        _y -= Gap / 2;
        if (part.Making == Making.View)
        {
            return;
        }

        if (part.Making != Making.Cut || HatchPattern.Find(part.Material) is not { } pattern)
        {
            AddLines(MaterialLine(part, units), 0, _sizes.Body);
            return;
        }

        var swatch = Path2.Rectangle(new(0, _y - SwatchHeight, SwatchWidth, _y));
        _sketch.Stroke(Layer.Notes, swatch, LineConventions.Thin);
        foreach (var line in Hatching.Of([swatch], pattern))
        {
            _sketch.Stroke(Layer.Notes, line, LineConventions.Thin);
        }

        var swatchEnd = _y - SwatchHeight;
        AddLines(MaterialLine(part, units), SwatchWidth + Gap, _sizes.Body);
        _y = Math.Min(_y, swatchEnd - (Gap / 2));
    }

    private void AddLines(string text, double indent, double height)
    {
        foreach (var line in TextWrap.Lines(text, _width - indent, height))
        {
            var pitch = LetteringSizes.PitchOf(line, height);
            _sketch.Text(Layer.Notes, line, new(indent, _y - pitch + (StrokeAlphabet.Descent * height)), height);
            _y -= pitch;
        }

        _y -= Gap / 4;
    }

    private void AddBelow(Sketch sketch)
    {
        _y -= Gap;
        _sketch.Add(sketch, new(-sketch.Bounds.MinX, _y - sketch.Bounds.MaxY));
        _y = _sketch.Bounds.MinY - (Gap / 2);
    }
}
