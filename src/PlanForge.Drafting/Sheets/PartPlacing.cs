using System.Collections.Immutable;
using PlanForge.Drafting.Measures;
using PlanForge.Drafting.Nests;
using PlanForge.Drafting.PartDrawings;
using PlanForge.Parts;
using PlanForge.Parts.Wording;

namespace PlanForge.Drafting.Sheets;

/// <summary>
/// Places parts on sheets in order, those of a kind together; one that is larger than a sheet continues on the next in pieces.
/// </summary>
internal sealed class PartPlacing
{
    /// <summary>The kind of drawings of nests.</summary>
    public const string Nests = "Nests";

    // On a smaller nest most parts have only a number beside them.
    private const double LeastNestScale = 0.2;

    private readonly SheetLayout _first;
    private readonly SheetLayout _layout;
    private readonly FreeRectangles _empty;
    private readonly ShownUnits _units;
    private readonly KeptDrawings _kept;
    private readonly List<OpenSheet> _sheets = [];
    private readonly ImmutableArray<string>.Builder _warnings = ImmutableArray.CreateBuilder<string>();
    private OpenSheet? _current;

    /// <summary>Least distance between drawings, mm.</summary>
    public const double Gap = 8;

    /// <summary>Begins with no sheet.</summary>
    /// <param name="first">Where everything stands on the first sheet, which carries the revision table.</param>
    /// <param name="layout">Where everything stands on the others.</param>
    /// <param name="units">The units lengths are shown in.</param>
    /// <param name="kept">What is kept from earlier runs; null for nothing.</param>
    public PartPlacing(SheetLayout first, SheetLayout layout, ShownUnits units, KeptDrawings? kept = null)
    {
        (_first, _layout, _units, _kept) = (first, layout, units, kept ?? new());
        _empty = layout.NewSpace(Gap);
    }

    public IReadOnlyList<OpenSheet> Sheets => _sheets;

    public ImmutableArray<string> Warnings => _warnings.ToImmutable();

    /// <summary>Puts a sheet that is already begun before all others; on a roll, parts follow on it.</summary>
    public void Begin(OpenSheet sheet)
    {
        _sheets.Add(sheet);
        _current = sheet.Layout.Paper.IsRoll ? sheet : null;
    }

    /// <summary>
    /// Places the parts of a kind in their order. Several that are only read lie on a sheet of their own, to be taken to the bench: there
    /// the large ones come first, so that all find room.
    /// </summary>
    public void Add(ImmutableArray<Part> kind)
    {
        if (kind.Length == 1 || kind.Any(part => part.Making != Making.View))
        {
            foreach (var part in kind)
            {
                Add(part);
            }

            return;
        }

        // A roll goes on: it is cut where it ends.
        _current = _layout.Paper.IsRoll ? _current : null;
        var drawn = kind.Select(part => (Part: part, Upright: Upright(part)));
        foreach (var (part, upright) in drawn.OrderByDescending(it => it.Upright.LeastArea))
        {
            Add(part, upright);
        }
    }

    /// <summary>Places a part, those of its kind together as far as there is room.</summary>
    public void Add(Part part) => Add(part, Upright(part));

    private void Add(Part part, PartArrangements upright)
    {
        var wanted = Whole(upright);
        if (wanted.Count == 0)
        {
            wanted = Whole(_kept.Arrangements.Of((new(part), _units, true), () => PartArrangements.Turned(part, _units.Main, _units.IsBoth)));
        }

        if (wanted.Count > 0)
        {
            Place(wanted);
            return;
        }

        var (pieces, blocks) = PartPieces.Of(part, _units, _empty.All);
        foreach (var piece in pieces)
        {
            Place([piece]);
        }

        if (!blocks.IsEmpty)
        {
            Place([.. blocks]);
        }

        // Part and text block apart are no pieces.
        if (pieces.Length < 2)
        {
            return;
        }

        var paper = _layout.Paper;
        _warnings.Add(
            $"`{part.Title}` is larger than the drawing space of {paper.Name} ({Measure.Number(paper.Width, 1)} x {Measure.Number(paper.Height, 1)} mm); "
            + $"it is drawn in {Measure.Number(pieces.Length, 0)} pieces that join at match lines");
    }

    /// <summary>
    /// Places the drawing of a nest, to the largest scale at which it fits; where there are several, two at least go on a sheet, as
    /// long as their parts can be told apart. One that fits at no scale is left out.
    /// </summary>
    public void Add(NestedSheet nest, bool isAlone)
    {
        if (_empty.Largest is { } room && Draw() is { } drawing)
        {
            Place(
            [
                new(drawing.Title, Nests, null, drawing.Items, drawing.Bounds)
                {
                    Scale = drawing.ScaleName,
                    ScaledViews = [drawing.View],
                    Used = new(0, HasCutParts: true, HasBenchWork: false),
                },
            ]);
        }

        NestDrawing? Draw() => _kept.NestDrawings.Of(new(nest, _units, room.Width, room.Height, isAlone), () =>
        {
            var half = isAlone ? null : NestDrawing.Of(nest, _units, room.Width, (room.Height - Gap) / 2);
            return half is { View.Scale: >= LeastNestScale } ? half : NestDrawing.Of(nest, _units, room.Width, room.Height);
        });
    }

    private PartArrangements Upright(Part part) =>
        _kept.Arrangements.Of((new(part), _units, false), () => PartArrangements.Upright(part, _units.Main, _units.IsBoth));

    private List<SheetItem> Whole(PartArrangements arrangements)
    {
        var items = new List<SheetItem>();
        foreach (var drawing in arrangements.Fitting(_empty.HasRoom))
        {
            items.Add(SheetItem.Of(drawing));
        }

        return items;
    }

    /// <summary>Places a drawing on the first sheet that has room among those of its kind and the one at hand, else on a new one.</summary>
    private void Place(List<SheetItem> wanted)
    {
        foreach (var sheet in _sheets)
        {
            if ((ReferenceEquals(sheet, _current) || sheet.Holds(wanted[0].Kind)) && wanted.Exists(sheet.TryPlace))
            {
                return;
            }
        }

        // Beside a revision table there may be no room: then the first sheet carries that alone.
        if (!(Open(_sheets.Count == 0 ? _first : _layout).TryPlace(wanted[0]) || Open(_layout).TryPlace(wanted[0])))
        {
            throw new InvalidOperationException($"{wanted[0].Title} was found to fit an empty sheet and does not.");
        }
    }

    private OpenSheet Open(SheetLayout layout)
    {
        _current = new(layout, layout.NewSpace(Gap), []);
        _sheets.Add(_current);
        return _current;
    }
}
