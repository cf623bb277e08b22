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

    private readonly List<(Part Part, ImmutableArray<Path2> Contours, EvenOddArea Inside, Bounds2 Bounds, double Area)> _parts = [];
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
        var bounds = outlines.Aggregate(Bounds2.Empty, static (all, outline) => all.Joined(outline.Bounds));
        _parts.Add((part, contours, new(outlines, Tolerance), bounds.Grown(Tolerance), outlines.Sum(outline => outline.SignedArea)));
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
        var contours = _parts[part].Contours;
        var material = new EvenOddArea(contours, Tolerance);
        var extents = TextExtents.Of(text, default, Height, 0);
        var middle = contours[0].Bounds.Centre;
        var corner = occupancy.Find(extents.Width, extents.Height, middle, at => IsOwner(part, at) && material.Contains(at), _parts[part].Bounds)
            ?? occupancy.Find(extents.Width, extents.Height, middle, at => IsOwner(part, at), _parts[part].Bounds);
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

    /// <summary>True when a place lies in a part; of a part and one in its opening, in the inner one only.</summary>
    private bool IsOwner(int part, Point2 at)
    {
        if (!Holds(part, at))
        {
            return false;
        }

        var area = _parts[part].Area;
        for (var i = 0; i < _parts.Count; i++)
        {
            if (i != part && (_parts[i].Area < area || (_parts[i].Area == area && i < part)) && Holds(i, at))
            {
                return false;
            }
        }

        return true;
    }

    private bool Holds(int part, Point2 at) => _parts[part].Bounds.Contains(at) && _parts[part].Inside.Contains(at);

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
}
