using System.Collections.Immutable;
using System.Runtime.InteropServices;
using PlanForge.Drafting.Model;
using PlanForge.Drafting.PartDrawings;
using PlanForge.Geometry;
using PlanForge.Parts;

namespace PlanForge.Drafting.Sheets;

/// <summary>Something that goes on a sheet as a whole: a part, a piece of one, or a view.</summary>
/// <param name="Title">What it shows.</param>
/// <param name="Kind">What is kept together.</param>
/// <param name="Part">The part it shows, or null.</param>
/// <param name="Items">What is drawn.</param>
/// <param name="Bounds">The smallest upright rectangle around it.</param>
internal sealed record SheetItem(string Title, string Kind, Part? Part, ImmutableArray<DrawingItem> Items, Bounds2 Bounds)
{
    /// <summary>The name of the scale of nearly all drawings.</summary>
    public const string TrueSize = "1:1";

    /// <summary>The name of its scale.</summary>
    public string Scale { get; init; } = TrueSize;

    /// <summary>The lines in it that belong to no part.</summary>
    public LinesUsed Used { get; init; }

    /// <summary>The views in it that are not at true size, in its own coordinates.</summary>
    public ImmutableArray<ScaledView> ScaledViews { get; init; } = [];

    /// <summary>The list of what is drawn, by which it is known again; not to be written to.</summary>
    public DrawingItem[] List => ImmutableCollectionsMarshal.AsArray(Items)!;

    /// <summary>A whole part.</summary>
    public static SheetItem Of(PartDrawing drawing) => new(drawing.Part.Title, drawing.Part.Kind, drawing.Part, drawing.Items, drawing.Bounds);
}

/// <summary>A drawing and where it goes on its sheet.</summary>
internal sealed record PlacedDrawing(SheetItem Item, Vector2 Move)
{
    /// <summary>The room it takes on the sheet.</summary>
    public Bounds2 Place => Item.Bounds.MovedBy(Move);
}

/// <summary>A sheet while drawings are placed on it.</summary>
internal sealed record OpenSheet(SheetLayout Layout, FreeRectangles Free, List<PlacedDrawing> Drawings)
{
    /// <summary>True when a part of a kind is on it.</summary>
    public bool Holds(string kind) => Drawings.Exists(drawing => drawing.Item.Kind == kind);

    /// <summary>Places a drawing where it fits; false when it fits nowhere.</summary>
    public bool TryPlace(SheetItem item)
    {
        if (Free.Place(item.Bounds.Width, item.Bounds.Height) is not { } place)
        {
            return false;
        }

        Drawings.Add(new(item, new(place.MinX - item.Bounds.MinX, place.MinY - item.Bounds.MinY)));
        return true;
    }
}
