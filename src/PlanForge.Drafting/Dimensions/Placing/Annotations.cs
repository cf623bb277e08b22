using PlanForge.Drafting.Clipping;
using PlanForge.Drafting.Conventions;
using PlanForge.Drafting.Measures;
using PlanForge.Drafting.Model;
using PlanForge.Geometry;
using PlanForge.Parts;
using PlanForge.Parts.Wording;

namespace PlanForge.Drafting.Dimensions.Placing;

/// <summary>
/// Draws all dimensions, labels and leaders of a part so that no two texts overlap and no text stands on an arrow head;
/// lines keep clear of texts where there is room.
/// </summary>
/// <remarks>
/// What can give way least goes first: dimension lines in their rows and the arrow heads of leaders take their room, then
/// come the texts on dimension lines, the names on the part, the labels, the leaders, and the centre line signs. Each takes
/// the cheapest free place and no later one moves it, so that the same part is always drawn the same way.
/// </remarks>
internal sealed class Annotations
{
    // Texts may move out of the part by about this much, mm; beyond it places are only found less quickly.
    private const double Around = 60;

    // A label is worth a leader only where its own place costs more, mm: a shift of a few millimetres needs none.
    private const double LeaderInstead = 20;

    private readonly Part _part;
    private readonly LetteringSizes _sizes;
    private readonly Sketch _sketch;
    private readonly Obstacles _obstacles;
    private readonly LeaderPlaces _leaders;
    private readonly LabelPlaces _labels;

    private Annotations(Part part, LetteringSizes sizes, EvenOddArea material, Sketch sketch)
    {
        (_part, _sizes, _sketch) = (part, sizes, sketch);
        _obstacles = new((sketch.Bounds.IsEmpty ? new(0, 0, 0, 0) : sketch.Bounds).Grown(Around));
        _leaders = new(_obstacles, material);
        _labels = new(_obstacles);
    }

    /// <summary>Adds them to a sketch that holds the part's lines.</summary>
    public static void Draw(Sketch sketch, Part part, ShownUnits units, LetteringSizes sizes, EvenOddArea material)
    {
        var annotations = new Annotations(part, sizes, material, sketch);
        foreach (var line in part.Lines)
        {
            annotations._obstacles.AddPath(line.Path);
        }

        annotations.DrawDimensions(units);
        annotations.DrawLabels(isEngraved: true);
        annotations.DrawLabels(isEngraved: false);
        annotations.DrawLeaders();
        annotations.DrawCentreLineSigns();
    }

    private void DrawDimensions(ShownUnits units)
    {
        var linear = new List<(PartDimension.Linear Dimension, TextInk Ink)>();
        foreach (var dimension in _part.Dimensions)
        {
            if (dimension is PartDimension.Linear one)
            {
                linear.Add((one, new(one.Text ?? Measure.Dimension(DimensionLine.LengthOf(one), units), _sizes.Body)));
            }
        }

        var lines = new DimensionRows(OutlinePoints(), _sizes.Body).Place(linear);
        foreach (var line in lines)
        {
            Take(line);
        }

        ReserveArrows();
        foreach (var line in lines)
        {
            DrawText(line);
        }
    }

    // Centre, datum and station lines stand out of the part on purpose: rows need not stand off from them.
    private List<Point2> OutlinePoints()
    {
        var points = new List<Point2>();
        foreach (var line in _part.Lines)
        {
            if (line.Use is not (LineUse.Centre or LineUse.Datum))
            {
                points.AddRange(line.Path.Flattened(1));
            }
        }

        return points;
    }

    private void Take(DimensionLine line)
    {
        foreach (var extension in line.Extensions)
        {
            if (extension is { } drawn)
            {
                _obstacles.AddLine(drawn.Start, drawn.End, isDimension: true);
            }
        }

        var (start, end) = line.Line(textStart: null);
        _obstacles.AddLine(start, end, isDimension: true);
        foreach (var (tip, direction) in line.Arrows)
        {
            _obstacles.AddArrow(Arrowhead.BoxOf(tip, direction));
        }
    }

    private void ReserveArrows()
    {
        for (var i = 0; i < _part.Dimensions.Length; i++)
        {
            if (_part.Dimensions[i] is PartDimension.Leader leader)
            {
                _obstacles.AddArrow(LeaderPlace.ArrowRoom(leader.At, leader.Radius), i);
            }
        }
    }

    private void DrawText(DimensionLine line)
    {
        double? best = null;
        var least = int.MaxValue;
        foreach (var start in line.TextStarts())
        {
            var box = line.Ink.At(line.TextAt(start), line.Angle);
            var (from, to) = line.Line(start);
            if (least > 0 && _obstacles.IsFree(box)
                && _obstacles.LinesAt(box).Through + _obstacles.TextsOn(from, to) is var faults && faults < least)
            {
                (best, least) = (start, faults);
            }
        }

        // Without room along the line, or only across other lines: beside it, with a plain leader to it (ISO 129-1, from memory).
        if (least > 0)
        {
            var beside = _leaders.Find(line.First.Towards(line.Last, 0.5), 0, line.Ink, line.Reading.Left, -1);
            if (best is null || beside.Cost < LeaderPlaces.TextOnLine * least)
            {
                line.Draw(_sketch, textStart: null);
                DrawLeader(beside.Place, Layer.Dimensions, hasArrow: false);
                return;
            }
        }

        line.Draw(_sketch, best);
        if (best is { } chosen)
        {
            var at = line.TextAt(chosen);
            var (from, to) = line.Line(chosen);
            _obstacles.AddText(line.Ink.At(at, line.Angle));
            _obstacles.AddLine(from, to, isDimension: true);
            Letter(Layer.Dimensions, line.Ink, at, line.Angle);
        }
    }

    private void DrawLabels(bool isEngraved)
    {
        foreach (var label in _part.Labels)
        {
            if (label.IsEngraved == isEngraved)
            {
                Draw(label);
            }
        }
    }

    private void Draw(PartLabel label)
    {
        var ink = new TextInk(label.Text, Math.Max(LetteringSizes.Least, label.Height));
        var wanted = ReadableText.Place(label.Text, label.At, label.Anchor, label.Angle, ink.Height);
        var layer = label.IsEngraved ? Layer.Score : Layer.Notes;
        var near = _labels.Find(ink, wanted.At, wanted.Angle);
        var far = near is { Cost: < LeaderInstead } ? null : ((LeaderPlace Place, double Cost)?)_leaders.Find(label.At, 0, ink, default, -1);
        if (near is { } place && !(far?.Cost < place.Cost))
        {
            _obstacles.AddText(ink.At(place.At, wanted.Angle));
            Letter(layer, ink, place.At, wanted.Angle);
        }
        else if (far is { Place: var chosen })
        {
            // The place may lie under a text by now: the line alone has to do then.
            var hasArrow = _obstacles.IsFree(Arrowhead.BoxOf(chosen.Tip, (chosen.Tip - chosen.Knee).Unit()));
            DrawLeader(chosen, layer, hasArrow);
        }
    }

    private void DrawLeaders()
    {
        for (var i = 0; i < _part.Dimensions.Length; i++)
        {
            if (_part.Dimensions[i] is PartDimension.Leader leader)
            {
                var ink = new TextInk(leader.Text, _sizes.Body);
                DrawLeader(_leaders.Find(leader.At, leader.Radius, ink, leader.TextAt - leader.At, i).Place, Layer.Dimensions, hasArrow: true);
            }
        }
    }

    private void DrawLeader(LeaderPlace place, Layer layer, bool hasArrow)
    {
        place.Take(_obstacles);
        _sketch.Stroke(Layer.Dimensions, Path2.Polyline(place.Side, place.Knee, place.Tip), LineConventions.Thin);
        if (hasArrow)
        {
            var direction = (place.Tip - place.Knee).Unit();
            _obstacles.AddArrow(Arrowhead.BoxOf(place.Tip, direction));
            Arrowhead.Draw(_sketch, place.Tip, direction);
        }

        Letter(layer, place.Ink, place.TextAt, 0);
    }

    private void DrawCentreLineSigns()
    {
        foreach (var line in _part.Lines)
        {
            foreach (var sign in line.Use == LineUse.Centre ? CentreLineSymbol.For(line.Path, _sizes.Name) : [])
            {
                var box = TextBox.Of(sign);
                if (_obstacles.IsFree(box) && _obstacles.LinesAt(box).Through == 0)
                {
                    _obstacles.AddText(box);
                    _sketch.Text(sign.Layer, sign.Content, sign.At, sign.Height);
                    break;
                }
            }
        }
    }

    private void Letter(Layer layer, TextInk ink, Point2 at, double angle) => _sketch.Text(layer, ink.Text, at, ink.Height, angle);
}
