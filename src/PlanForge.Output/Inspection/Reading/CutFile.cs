using PlanForge.Geometry;

namespace PlanForge.Output.Inspection.Reading;

/// <summary>The lines of a cut file in the order they stand there, mm, and what the file says about itself.</summary>
internal sealed class CutFile
{
    /// <summary>How many segments are taken: ten times the largest nest seen; what is more is refused.</summary>
    public const int MostSegments = 500_000;

    // Beyond a kilometre the digits of a double no longer carry the tolerances here; nothing of that size is cut.
    private const double Farthest = 1e6;

    private readonly Dictionary<string, FileLayer> _layers = new(StringComparer.OrdinalIgnoreCase);

    /// <summary>Such as <c>DXF AC1015</c>.</summary>
    public string Format { get; set; } = "";

    /// <summary>What a number means, empty when the file does not say.</summary>
    public string Unit { get; set; } = "";

    public List<FileLayer> Layers { get; } = [];

    public List<string> Colours { get; } = [];

    public List<FileShape> Shapes { get; } = [];

    public List<FileSegment> Segments { get; } = [];

    /// <summary>The area the file announces, mm, or null.</summary>
    public Bounds2? Area { get; set; }

    /// <summary>True when the announced area must be that of the lines, false when it only has to hold them.</summary>
    public bool IsAreaTight { get; set; }

    /// <summary>Where the area is announced.</summary>
    public TextPlace AreaPlace { get; set; }

    /// <summary>True once more was drawn than is taken.</summary>
    public bool IsFull { get; private set; }

    /// <summary>True when something could not be read, so that what is missing need not be missing in the file.</summary>
    public bool IsIncomplete { get; set; }

    /// <summary>Adds lines that were drawn in one go; those without length stay, to be found.</summary>
    /// <returns>False when they lie too far away to be judged.</returns>
    public bool Add(FileLayer layer, TextPlace at, IReadOnlyList<FileSegment> segments, bool isClosed)
    {
        foreach (var segment in segments)
        {
            if (!IsNear(segment.Segment.Start) || !IsNear(segment.Segment.End) || !IsSound(segment.Segment))
            {
                return false;
            }
        }

        if (Segments.Count + segments.Count > MostSegments)
        {
            IsFull = true;
            return true;
        }

        Shapes.Add(new(layer, at, Segments.Count, segments.Count, isClosed));
        Segments.AddRange(segments);
        layer.IsUsed = true;
        return true;
    }

    /// <summary>The layer of that name, made when it is new.</summary>
    public FileLayer LayerOf(string name)
    {
        if (!_layers.TryGetValue(name, out var layer))
        {
            layer = new(name);
            _layers.Add(name, layer);
            Layers.Add(layer);
        }

        return layer;
    }

    private static bool IsNear(Point2 point) => Math.Abs(point.X) <= Farthest && Math.Abs(point.Y) <= Farthest;

    // The circle of an arc that turns by nearly nothing or nearly all may be out of reach although its ends are not.
    private static bool IsSound(in Segment2 segment) =>
        segment.IsLine || segment.Start == segment.End || (double.IsFinite(segment.Radius) && Math.Abs(segment.Bulge) <= Farthest
            && (segment.Radius <= Farthest || Math.Abs(segment.Bulge) < 1));
}

/// <summary>A layer of a cut file.</summary>
internal sealed class FileLayer(string name)
{
    // What layers that are not cut are called in English; common practice, no source.
    private static readonly string[] MarkWords =
        ["score", "engrav", "etch", "mark", "text", "label", "note", "dim", "centre", "center", "datum", "reference", "frame", "fold", "raster", "bend"];

    public string Name { get; } = name;

    /// <summary>False when the name says that the layer is marked or left out.</summary>
    public bool IsCut { get; } = !Array.Exists(MarkWords, word => name.Contains(word, StringComparison.OrdinalIgnoreCase));

    /// <summary>True when the file's table of layers names it.</summary>
    public bool IsListed { get; set; }

    /// <summary>True when it is switched off or frozen.</summary>
    public bool IsOff { get; set; }

    /// <summary>Where the table names it.</summary>
    public TextPlace At { get; set; }

    public bool IsUsed { get; set; }
}

/// <summary>What was drawn in one go.</summary>
/// <param name="Layer">On which layer.</param>
/// <param name="At">Where it begins in the file.</param>
/// <param name="First">Its first segment.</param>
/// <param name="Count">How many segments it has.</param>
/// <param name="IsClosed">True when the last segment leads to the first.</param>
internal readonly record struct FileShape(FileLayer Layer, TextPlace At, int First, int Count, bool IsClosed);

/// <summary>A line or an arc of a file.</summary>
/// <param name="Segment">The line or arc, mm.</param>
/// <param name="At">Where it stands in the file.</param>
/// <param name="IsChord">True for a piece of a curve that was taken apart here, so that its length says nothing about the file.</param>
internal readonly record struct FileSegment(Segment2 Segment, TextPlace At, bool IsChord = false);
