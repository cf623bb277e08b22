using System.Globalization;
using PlanForge.Drafting.Conventions;
using PlanForge.Drafting.Model;
using PlanForge.Geometry;
using PlanForge.Parts;

namespace PlanForge.Drafting.Cutting;

/// <summary>A test piece that tells the kerf of a cutter in one material, and which slot the sheet fits into.</summary>
/// <remarks>
/// A row of equal strips is cut out, pushed together and measured: each strip has lost half a kerf on either side, so the row
/// is shorter than drawn by as many kerfs as there are strips. Beside it a plate with slots around the sheet's thickness and
/// one with tongues around the slots' length, each engraved with its size. Nothing on it is compensated.
/// </remarks>
public static class KerfCoupon
{
    /// <summary>How many strips lie in the row.</summary>
    public const int Strips = 10;

    /// <summary>Width of a strip as drawn, mm.</summary>
    public const double StripWidth = 10;

    /// <summary>Length of a slot, and width of the middle tongue, mm.</summary>
    public const double SlotLength = 10;

    /// <summary>Width of the whole row as drawn, mm.</summary>
    public const double RowWidth = Strips * StripWidth;

    /// <summary>The thinnest sheet, mm.</summary>
    public const double LeastThickness = 0.5;

    /// <summary>The thickest sheet, mm.</summary>
    public const double GreatestThickness = 25;

    // Slots and tongues: three steps of a tenth to either side.
    private const int Steps = 3;
    private const double Step = 0.1;

    private const double StripLength = 25;
    private const double Gap = 3;
    private const double Wall = 6;
    private const double Lettering = 2.5;
    private const double TongueDepth = 6;

    private static readonly LineStyle Line = LineConventions.StyleOf(LineUse.Cut);

    /// <summary>The coupon for a sheet.</summary>
    /// <param name="material">What the sheet is.</param>
    /// <param name="thickness">Its measured thickness, mm, 0.5 to 25.</param>
    public static CutDrawing Of(string material, double thickness)
    {
        ArgumentNullException.ThrowIfNull(material);
        ArgumentOutOfRangeException.ThrowIfLessThan(thickness, LeastThickness);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(thickness, GreatestThickness);
        var sketch = new Sketch();
        AddStrips(sketch);
        AddTongues(sketch, StripLength + Gap);
        AddSlots(sketch, StripLength + Gap + Wall + Lettering + Wall + TongueDepth + Gap, thickness);
        var sheet = $"{material} {CutParts.Length(thickness)}".Trim();
        return new("kerf-coupon", new(sketch.Items))
        {
            Notes =
            [
                $"Kerf coupon for {sheet}. Do not compensate.",
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"Push the {Strips} strips together and measure the row across: kerf = ({RowWidth:0} mm - measured) / {Strips}."),
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"Fit: the slot that holds the sheet as wanted has the size engraved; tongues go into slots of {SlotLength:0} mm."),
            ],
        };
    }

    /// <summary>True for a row that came out narrower than it was drawn, but not by half.</summary>
    /// <param name="measured">Width of the whole row pushed together, mm.</param>
    public static bool IsPlausible(double measured) => measured is > RowWidth / 2 and < RowWidth;

    /// <summary>The kerf from what was measured, mm: (drawn − measured) / strips.</summary>
    /// <param name="measured">Width of the whole row pushed together, mm.</param>
    /// <exception cref="ArgumentOutOfRangeException">The row is not shorter than drawn, or has lost half of it.</exception>
    public static double KerfOf(double measured)
    {
        if (!IsPlausible(measured))
        {
            throw new ArgumentOutOfRangeException(nameof(measured), measured, "The row must be shorter than it was drawn, and longer than half of that.");
        }

        return (RowWidth - measured) / Strips;
    }

    private static void AddStrips(Sketch sketch)
    {
        for (var i = 0; i < Strips; i++)
        {
            var x = i * (StripWidth + Gap);
            sketch.Stroke(Layer.Cut, Path2.Rectangle(new(x, 0, x + StripWidth, StripLength)), Line);
            Engrave(sketch, (i + 1).ToString(CultureInfo.InvariantCulture), x + (StripWidth / 2), StripLength / 2);
        }
    }

    // A comb: the tongues stand up from the plate, their sizes on it.
    private static void AddTongues(Sketch sketch, double bottom)
    {
        var back = bottom + Wall + Lettering + Wall;
        var outline = new List<Point2> { new(0, bottom) };
        var tops = new List<Point2>();
        var x = Wall;
        for (var i = -Steps; i <= Steps; i++)
        {
            var width = SlotLength + (i * Step);
            tops.AddRange([new(x, back), new(x, back + TongueDepth), new(x + width, back + TongueDepth), new(x + width, back)]);
            Engrave(sketch, Size(width), x + (width / 2), bottom + Wall + (Lettering / 2));
            x += width + Wall;
        }

        outline.AddRange([new(x, bottom), new(x, back)]);
        tops.Reverse();
        outline.AddRange(tops);
        outline.Add(new(0, back));
        sketch.Stroke(Layer.Cut, Path2.Polygon(outline), Line);
    }

    private static void AddSlots(Sketch sketch, double bottom, double thickness)
    {
        var floor = bottom + Wall + Lettering + Wall;
        var x = Wall;
        for (var i = -Steps; i <= Steps; i++)
        {
            var width = thickness + (i * Step);
            var room = Math.Max(width, 3.5 * Lettering);
            var left = x + ((room - width) / 2);
            sketch.Stroke(Layer.Cut, Path2.Rectangle(new(left, floor, left + width, floor + SlotLength)).Reversed(), Line);
            Engrave(sketch, Size(width), x + (room / 2), bottom + Wall + (Lettering / 2));
            x += room + Wall;
        }

        sketch.Stroke(Layer.Cut, Path2.Rectangle(new(0, bottom, x, floor + SlotLength + Wall)), Line);
    }

    private static void Engrave(Sketch sketch, string text, double x, double y)
    {
        var place = Dimensions.ReadableText.Place(text, new(x, y), Anchor.Middle, 0, Lettering);
        sketch.Text(Layer.Score, text, place.At, Lettering, place.Angle);
    }

    private static string Size(double width) => width.ToString("0.0#", CultureInfo.InvariantCulture);
}
