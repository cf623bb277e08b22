using System.Collections.Immutable;
using PlanForge.Drafting.Clipping;
using PlanForge.Drafting.Conventions;
using PlanForge.Drafting.Lettering;
using PlanForge.Drafting.Model;
using PlanForge.Drafting.PartDrawings;
using PlanForge.Geometry;
using PlanForge.Parts;

namespace PlanForge.Drafting.Nests;

/// <summary>
/// Writes on every part of a nest what it is: its name where there is room, else a number that a key explains; a number that
/// finds no room on its part stands beside it with a leader. No two texts overlap, and none is crossed by an edge.
/// </summary>
/// <param name="sketch">The drawing, which holds the edges.</param>
/// <param name="sheet">The sheet on the drawing.</param>
internal sealed class NestLabels(Sketch sketch, Bounds2 sheet)
{
    private const double Height = LetteringSizes.Least;

    // Chords for the outlines that tell where a text stands, mm on paper.
    private const double Tolerance = 0.05;

    // Clear of the texts by this much, a leader is not taken for a stroke of theirs.
    private const double Air = 0.5;

    private readonly List<Placed> _parts = [];
    private readonly List<Path2> _lines = [Path2.Rectangle(sheet)];
    private readonly List<Bounds2> _texts = [];
    private readonly List<string> _key = [];

    /// <summary>Adds a part that is to be named.</summary>
    /// <param name="part">The part.</param>
    /// <param name="contours">Its edges on the drawing.</param>
    public void Add(Part part, ImmutableArray<Path2> contours)
    {
        var outlines = contours.Where(contour => contour.SignedArea > 0).ToList();
        _lines.AddRange(contours);
        _parts.Add(new(
            part, contours, contours[0].Bounds, new(outlines, Tolerance), new(contours, Tolerance), outlines.Sum(outline => outline.SignedArea)));
    }

    /// <summary>Keeps all texts off a line.</summary>
    public void KeepOff(Path2 line) => _lines.Add(line);

    /// <summary>Draws the names, and returns the key of the numbers: <c>1 Former F6</c> and so on, none where all are named.</summary>
    public IEnumerable<string> Draw()
    {
        var occupancy = new Occupancy(sheet);
        foreach (var line in _lines)
        {
            occupancy.Mark(line);
        }

        var beside = new List<(int Part, string Text)>();
        for (var i = 0; i < _parts.Count; i++)
        {
            if (!Write(_parts[i].Part.Title, i, occupancy) && NumberOf(_parts[i].Part.Title) is var number && !Write(number, i, occupancy))
            {
                beside.Add((i, number));
            }
        }

        foreach (var (part, text) in beside)
        {
            WriteBeside(text, part, occupancy);
        }

        return _key.Select((title, index) => FormattableString.Invariant($"{index + 1} {title}"));
    }

    // Copies have one number.
    private string NumberOf(string title)
    {
        if (!_key.Contains(title))
        {
            _key.Add(title);
        }

        return (_key.IndexOf(title) + 1).ToString(System.Globalization.CultureInfo.InvariantCulture);
    }

    private bool Write(string text, int part, Occupancy occupancy)
    {
        var (bounds, material) = (_parts[part].Bounds, _parts[part].Material);
        var extents = TextExtents.Of(text, default, Height, 0);
        if (extents.Width > bounds.Width || extents.Height > bounds.Height)
        {
            return false;
        }

        var corner = occupancy.Find(extents.Width, extents.Height, bounds.Centre, at => bounds.Contains(at) && material.Contains(at) && OwnerOf(at) == part, bounds)
            ?? occupancy.Find(extents.Width, extents.Height, bounds.Centre, at => bounds.Contains(at) && OwnerOf(at) == part, bounds);
        if (corner is not { } found)
        {
            return false;
        }

        Letter(text, found - new Vector2(extents.MinX, extents.MinY), occupancy);
        return true;
    }

    private void WriteBeside(string text, int part, Occupancy occupancy)
    {
        var contours = _parts[part].Contours;
        var extents = TextExtents.Of(text, default, Height, 0);
        var middle = contours[0].Bounds.Centre;
        if (occupancy.Find(extents.Width, extents.Height, middle, at => IsClear(at, NearestOn(contours, at))) is not { } corner)
        {
            return;
        }

        var at = corner - new Vector2(extents.MinX, extents.MinY);
        var centre = corner + new Vector2(extents.Width / 2, extents.Height / 2);
        var target = NearestOn(contours, centre);
        var way = target - centre;
        var start = centre + (way * Math.Min(1, ((extents.Height / 2) + Air) / way.Length));
        sketch.Line(Layer.Dimensions, start, target, LineConventions.Thin);
        Letter(text, at, occupancy);
    }

    private void Letter(string text, Point2 at, Occupancy occupancy)
    {
        var box = sketch.Text(Layer.Notes, text, at, Height);
        occupancy.Mark(box);
        _texts.Add(box);
    }

    /// <summary>The part a place lies in: of a part and one in its opening, the inner one.</summary>
    private int OwnerOf(Point2 at)
    {
        var (owner, least) = (-1, double.PositiveInfinity);
        for (var i = 0; i < _parts.Count; i++)
        {
            if (_parts[i].Area < least && _parts[i].Bounds.Contains(at) && _parts[i].Inside.Contains(at))
            {
                (owner, least) = (i, _parts[i].Area);
            }
        }

        return owner;
    }

    private bool IsClear(Point2 from, Point2 to)
    {
        const int Steps = 40;
        for (var i = 0; i <= Steps; i++)
        {
            var at = from.Towards(to, (double)i / Steps);
            if (_texts.Exists(text => text.Grown(Air).Contains(at)))
            {
                return false;
            }
        }

        return true;
    }

    private static Point2 NearestOn(ImmutableArray<Path2> contours, Point2 at)
    {
        var (nearest, least) = (at, double.PositiveInfinity);
        foreach (var segment in contours[0].Segments)
        {
            var point = segment.PointAt(segment.NearestFraction(at));
            if (point.DistanceTo(at) is var distance && distance < least)
            {
                (nearest, least) = (point, distance);
            }
        }

        return nearest;
    }

    /// <summary>A part on the drawing.</summary>
    /// <param name="Part">The part.</param>
    /// <param name="Contours">Its edges.</param>
    /// <param name="Bounds">The smallest upright rectangle around it.</param>
    /// <param name="Inside">All within its outline, openings included.</param>
    /// <param name="Material">Where its material is.</param>
    /// <param name="Area">What its outline encloses.</param>
    private sealed record Placed(
        Part Part, ImmutableArray<Path2> Contours, Bounds2 Bounds, EvenOddArea Inside, EvenOddArea Material, double Area);
}
