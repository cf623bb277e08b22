using System.Collections.Immutable;
using PlanForge.Geometry;

namespace PlanForge.Parts;

/// <summary>Collects what belongs to a part while a kind draws it, then makes the immutable <see cref="Part"/>.</summary>
internal sealed class PartSketch
{
    private readonly ImmutableArray<PartLine>.Builder _lines = ImmutableArray.CreateBuilder<PartLine>();
    private readonly ImmutableArray<PartLabel>.Builder _labels = ImmutableArray.CreateBuilder<PartLabel>();
    private readonly ImmutableArray<PartDimension>.Builder _dimensions = ImmutableArray.CreateBuilder<PartDimension>();
    private readonly ImmutableArray<PartTable>.Builder _tables = ImmutableArray.CreateBuilder<PartTable>();
    private readonly ImmutableArray<string>.Builder _notes = ImmutableArray.CreateBuilder<string>();
    private readonly ImmutableArray<Figure>.Builder _figures = ImmutableArray.CreateBuilder<Figure>();

    public void Line(LineUse use, Path2 path) => _lines.Add(new(use, path));

    public void Line(LineUse use, Point2 start, Point2 end) => Line(use, Path2.Line(start, end));

    public void Line(LineUse use, Point2 start, Point2 end, Placement2 placement) => Line(use, Path2.Line(start, end).Placed(placement));

    public void Label(PartLabel label) => _labels.Add(label);

    public void Label(string text, Point2 at, Anchor anchor = Anchor.Middle, double angle = 0) => _labels.Add(new(text, at, anchor, angle));

    /// <summary>The part's name on the part itself, also where it is cut.</summary>
    public void Engrave(string text, Point2 at, double height = 3.5) =>
        _labels.Add(new(text, at, Anchor.Middle, 0, height, IsEngraved: true));

    public void Across(Point2 from, Point2 to, double offset, string? text = null) =>
        _dimensions.Add(new PartDimension.Linear(from, to, new(1, 0), offset, text));

    public void Up(Point2 from, Point2 to, double offset, string? text = null) =>
        _dimensions.Add(new PartDimension.Linear(from, to, new(0, 1), offset, text));

    public void Dimension(PartDimension dimension) => _dimensions.Add(dimension);

    public void Leader(Point2 at, Point2 textAt, string text) => _dimensions.Add(new PartDimension.Leader(at, textAt, text));

    /// <summary>A text with a leader whose arrow touches a circle, wherever the text finds room.</summary>
    public void Hole(Point2 centre, double radius, Point2 textAt, string text) =>
        _dimensions.Add(new PartDimension.Leader(centre, textAt, text, radius));

    public void Table(string title, ImmutableArray<string> header, IEnumerable<ImmutableArray<string>> rows) =>
        _tables.Add(new(title, header, [.. rows]));

    /// <summary>A table with blank columns at the right to write in.</summary>
    public void Form(string title, ImmutableArray<string> header, ImmutableArray<string> blanks, IEnumerable<ImmutableArray<string>> rows)
    {
        ImmutableArray<string> empty = [.. blanks.Select(_ => "")];
        _tables.Add(new(title, header.AddRange(blanks), [.. rows.Select(row => row.AddRange(empty))], blanks.Length));
    }

    public void Note(string note) => _notes.Add(note);

    public void Figure(string key, string label, double value, FigureQuantity quantity) =>
        _figures.Add(new(key, label, value, quantity));

    /// <summary>A cross of two short lines at a place to prick through or drill.</summary>
    public void Cross(LineUse use, Point2 at, double size)
    {
        Line(use, at - new Vector2(size / 2, 0), at + new Vector2(size / 2, 0));
        Line(use, at - new Vector2(0, size / 2), at + new Vector2(0, size / 2));
    }

    /// <summary>A template to print.</summary>
    public Part AsTemplate(string id, string kind, string title, int quantity = 1) =>
        Build(id, kind, title, Making.Template, "", 0, quantity, null);

    /// <summary>Something to read or to write on.</summary>
    public Part AsView(string id, string kind, string title) => Build(id, kind, title, Making.View, "", 0, 1, null);

    /// <summary>A part to cut from sheet.</summary>
    public Part AsCut(string id, string kind, string title, string material, double thickness, double? grainAngle, int quantity = 1) =>
        Build(id, kind, title, Making.Cut, material, thickness, quantity, grainAngle);

    private Part Build(
        string id, string kind, string title, Making making, string material, double thickness, int quantity, double? grainAngle)
    {
        var part = new Part(
            id,
            kind,
            title,
            making,
            material,
            thickness,
            quantity,
            grainAngle,
            _lines.ToImmutable(),
            _labels.ToImmutable(),
            _dimensions.ToImmutable(),
            _tables.ToImmutable(),
            _notes.ToImmutable(),
            _figures.ToImmutable());
        return part with { Fingerprint = PartFingerprint.Of(part) };
    }
}
