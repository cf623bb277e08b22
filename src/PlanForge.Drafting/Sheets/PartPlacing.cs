using System.Collections.Immutable;
using PlanForge.Airframe;
using PlanForge.Drafting.Measures;
using PlanForge.Drafting.PartDrawings;
using PlanForge.Geometry;
using PlanForge.Parts;

namespace PlanForge.Drafting.Sheets;

/// <summary>A drawn part and where it goes on its sheet.</summary>
internal readonly record struct PlacedPart(PartDrawing Drawing, Vector2 Move);

/// <summary>A sheet while parts are placed on it.</summary>
internal sealed record OpenSheet(SheetLayout Layout, Skyline Skyline, List<PlacedPart> Parts)
{
    /// <summary>True when a part of a kind is on it.</summary>
    public bool Holds(string kind) => Parts.Exists(part => part.Drawing.Part.Kind == kind);
}

/// <summary>
/// Places parts on sheets in order; one that fits no sheet of the wanted paper goes on the smallest larger one that holds it.
/// </summary>
internal sealed class PartPlacing
{
    private const double Gap = 8;

    private readonly SheetLayout _layout;
    private readonly FootNotes _notes;
    private readonly DisplayUnit _unit;
    private readonly List<OpenSheet> _sheets = [];
    private readonly ImmutableArray<string>.Builder _warnings = ImmutableArray.CreateBuilder<string>();
    private OpenSheet? _current;

    public PartPlacing(Paper paper, FootNotes notes, DisplayUnit unit)
    {
        (_notes, _unit) = (notes, unit);
        _layout = SheetLayout.Of(paper, notes.HeightFor);
    }

    public IReadOnlyList<OpenSheet> Sheets => _sheets;

    public ImmutableArray<string> Warnings => _warnings.ToImmutable();

    public void Add(Part part)
    {
        var upright = PartArrangements.Upright(part, _unit);
        var wanted = upright.Fitting(_layout.HasRoom).ToList();
        var turned = wanted.Count > 0 ? null : PartArrangements.Turned(part, _unit);
        wanted.AddRange(turned?.Fitting(_layout.HasRoom) ?? []);
        if (wanted.Count > 0)
        {
            PlaceOnWantedPaper(part, wanted);
            return;
        }

        var (layout, larger) = OnLargerPaper(upright, turned!);
        Open(layout, larger);
        _warnings.Add(
            $"{part.Title} does not fit {_layout.Paper.Name} ({SizeOf(_layout.Paper)}); "
            + $"it is drawn on {layout.Paper.Name} ({SizeOf(layout.Paper)}).");
    }

    /// <summary>Places a part on the first sheet that has room among those of its kind and the one at hand, else on a new one.</summary>
    private void PlaceOnWantedPaper(Part part, List<PartDrawing> wanted)
    {
        foreach (var sheet in _sheets)
        {
            if (!ReferenceEquals(sheet, _current) && !(ReferenceEquals(sheet.Layout, _layout) && sheet.Holds(part.Kind)))
            {
                continue;
            }

            foreach (var drawing in wanted)
            {
                if (TryPlace(sheet, drawing))
                {
                    return;
                }
            }
        }

        _current = Open(_layout, wanted[0]);
    }

    private static string SizeOf(Paper paper) => $"{Measure.Number(paper.Width, 1)} x {Measure.Number(paper.Height, 1)} mm";

    /// <summary>The smallest larger sheet that holds a part, upright on it lying either way before turned on it.</summary>
    private (SheetLayout Layout, PartDrawing Drawing) OnLargerPaper(PartArrangements upright, PartArrangements turned)
    {
        var isWide = _layout.Paper.Width > _layout.Paper.Height;
        foreach (var paper in Paper.Iso)
        {
            if (paper.Width * paper.Height <= _layout.Paper.Width * _layout.Paper.Height)
            {
                continue;
            }

            var same = SheetLayout.Of(isWide ? paper.Across() : paper, _notes.HeightFor);
            var other = SheetLayout.Of(isWide ? paper : paper.Across(), _notes.HeightFor);
            foreach (var part in (ReadOnlySpan<PartArrangements>)[upright, turned])
            {
                foreach (var layout in (ReadOnlySpan<SheetLayout>)[same, other])
                {
                    if (part.Fitting(layout.HasRoom).FirstOrDefault() is { } drawing)
                    {
                        return (layout, drawing);
                    }
                }
            }
        }

        var any = upright.Fitting((_, _) => true).First();
        var roll = SheetLayout.Of(SheetLayout.LargeEnough(any.Bounds.Width, any.Bounds.Height, _notes.HeightFor), _notes.HeightFor);
        return (roll, any);
    }

    private OpenSheet Open(SheetLayout layout, PartDrawing first)
    {
        var sheet = new OpenSheet(layout, layout.NewSkyline(Gap), []);
        _sheets.Add(sheet);
        return TryPlace(sheet, first)
            ? sheet
            : throw new InvalidOperationException($"{first.Part.Id} was found to fit an empty sheet and does not.");
    }

    private static bool TryPlace(OpenSheet sheet, PartDrawing drawing)
    {
        if (sheet.Skyline.Place(drawing.Bounds.Width, drawing.Bounds.Height) is not { } place)
        {
            return false;
        }

        sheet.Parts.Add(new(drawing, new(place.MinX - drawing.Bounds.MinX, place.MinY - drawing.Bounds.MinY)));
        return true;
    }
}
