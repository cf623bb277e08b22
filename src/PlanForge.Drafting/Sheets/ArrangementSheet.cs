using System.Collections.Immutable;
using PlanForge.Drafting.Arrangement;
using PlanForge.Drafting.Conventions;
using PlanForge.Parts;
using PlanForge.Parts.Arrangement;

namespace PlanForge.Drafting.Sheets;

/// <summary>The first sheet of a set: the general arrangement, by itself; on a roll the parts follow beside it.</summary>
internal static class ArrangementSheet
{
    private const string Title = "General arrangement";

    // On a roll, width of the arrangement to its height: that of an ISO sheet.
    private static readonly double Proportion = Math.Sqrt(2);

    /// <summary>The sheet; null where the arrangement does not fit at any standard scale.</summary>
    /// <param name="layout">Where everything stands on the first sheet.</param>
    /// <param name="views">The airframe in views.</param>
    /// <param name="figures">The figures of the airframe.</param>
    /// <param name="options">What the sheets say and are drawn on.</param>
    public static OpenSheet? Of(SheetLayout layout, ArrangementViews views, ImmutableArray<Figure> figures, PlanOptions options)
    {
        var sheet = new OpenSheet(layout, layout.NewSpace(PartPlacing.Gap), []);
        if (sheet.Free.Largest is not { } space)
        {
            return null;
        }

        if (layout.Paper.IsRoll)
        {
            space = space with { MaxX = space.MinX + Math.Min(space.Width, space.Height * Proportion) };
        }

        var projection = options.Sheets.IsThirdAngle ? ProjectionAngle.Third : ProjectionAngle.First;
        if (GeneralArrangement.Draw(views, figures, space, projection, options.Unit) is not { } drawing)
        {
            return null;
        }

        var item = new SheetItem(Title, Title, null, drawing.Items, drawing.Bounds)
        {
            Scale = drawing.ScaleName,
            ScaledViews = drawing.Views,
            Used = LinesUsed.Of(views),
        };
        if (layout.Paper.IsRoll)
        {
            return sheet.TryPlace(item) ? sheet : null;
        }

        // It stands where it was drawn, in the middle of the free space.
        sheet.Drawings.Add(new(item, default));
        return sheet;
    }
}
