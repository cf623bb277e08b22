using System.Collections.Immutable;
using System.Globalization;
using PlanForge.Drafting.Conventions;
using PlanForge.Drafting.Lettering;
using PlanForge.Drafting.PartDrawings;

namespace PlanForge.Drafting.Model;

/// <summary>The pages of a printable document, in order.</summary>
/// <param name="Title">The design's name and revision.</param>
/// <param name="Language">Language tag of the lettering, such as <c>en</c>.</param>
/// <param name="Pages">The pages.</param>
public sealed record PageSet(string Title, string Language, ImmutableArray<Page> Pages)
{
    // The line of a correction is drawn smaller before the printer's name is shortened; under this it cannot be read.
    private const double LeastStampHeight = 1.8;

    /// <summary>How the pages are stretched for one printer, or null when they are printed as they are.</summary>
    public PrinterScale? Correction { get; private init; }

    /// <summary>Every sheet as a page.</summary>
    public static PageSet Of(SheetSet set)
    {
        ArgumentNullException.ThrowIfNull(set);
        var pages = ImmutableArray.CreateBuilder<Page>(set.Sheets.Length);
        foreach (var sheet in set.Sheets)
        {
            pages.Add(Page.Of(sheet));
        }

        return new(set.Title, set.Language, pages.MoveToImmutable());
    }

    /// <summary>The same pages for one printer: stretched about their middles when written, and each says so.</summary>
    public PageSet CorrectedFor(PrinterScale printer)
    {
        ArgumentNullException.ThrowIfNull(printer);
        var pages = ImmutableArray.CreateBuilder<Page>(Pages.Length);
        foreach (var page in Pages)
        {
            pages.Add(page with { Drawing = new(page.Drawing.Items.Add(Stamp(page, printer))) });
        }

        return this with { Pages = pages.MoveToImmutable(), Correction = printer };
    }

    private static DrawingItem.Text Stamp(Page page, PrinterScale printer)
    {
        var room = page.FreeLine;
        var isUpright = room.Height > room.Width;
        var width = Math.Max(room.Width, room.Height) - (LetteringSizes.Least * StrokeAlphabet.StrokeWidth);
        for (var name = printer.Printer; ; name = name[..^2].TrimEnd() + "…")
        {
            var text = string.Create(
                CultureInfo.InvariantCulture,
                $"Corrected for printer {name}: across × {printer.X:F4}, up × {printer.Y:F4}. Wrong on any other printer.");
            var (_, height) = TextWrap.Fitted(text, width, [LetteringSizes.Least, LeastStampHeight]);
            if (name.Length < 3 || StrokeAlphabet.WidthOf(text, height) <= width)
            {
                var pen = height * StrokeAlphabet.StrokeWidth / 2;
                var (along, above) = (pen, (height * StrokeAlphabet.Descent) + pen);
                return isUpright
                    ? new(Layer.Frame, text, new(room.MaxX - above, room.MinY + along), height, Math.PI / 2)
                    : new(Layer.Frame, text, new(room.MinX + along, room.MinY + above), height, 0);
            }
        }
    }
}
