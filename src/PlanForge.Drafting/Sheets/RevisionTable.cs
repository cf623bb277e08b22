using System.Collections.Immutable;
using PlanForge.Airframe;
using PlanForge.Drafting.Conventions;
using PlanForge.Drafting.Model;
using PlanForge.Drafting.PartDrawings;
using PlanForge.Geometry;

namespace PlanForge.Drafting.Sheets;

/// <summary>The revision table above the title block: heads at its foot, the newest revision on top.</summary>
internal static class RevisionTable
{
    private const double Height = LetteringSizes.Least;
    private const double Pitch = 4.2;
    private const double Inset = 1.5;

    // Left edges of the columns for revision, change, date and name, and the right edge of the table.
    private static ReadOnlySpan<double> Edges => [0, 18, 118, 146, TitleBlock.Width];

    /// <summary>How high the table is, mm; 0 without revisions.</summary>
    public static double HeightOf(ImmutableArray<RevisionDescription> revisions) => LinesOf(revisions) is > 0 and var lines ? (lines + 1) * Pitch : 0;

    /// <summary>Draws the table upwards from its lower left corner.</summary>
    public static void Draw(Sketch sketch, Point2 corner, ImmutableArray<RevisionDescription> revisions)
    {
        if (revisions.IsEmpty)
        {
            return;
        }

        var bottom = corner.Y;
        bottom = DrawRow(sketch, corner.X, bottom, "Rev.", ["Change"], "Date", "By");
        foreach (var revision in revisions)
        {
            bottom = DrawRow(sketch, corner.X, bottom, revision.Revision, Change(revision), revision.Date, revision.By);
        }

        foreach (var edge in Edges)
        {
            sketch.Line(Layer.Frame, new(corner.X + edge, corner.Y), new(corner.X + edge, bottom), LineConventions.Thin);
        }
    }

    private static int LinesOf(ImmutableArray<RevisionDescription> revisions)
    {
        var lines = 0;
        foreach (var revision in revisions)
        {
            lines += Change(revision).Length;
        }

        return lines;
    }

    private static ImmutableArray<string> Change(RevisionDescription revision) =>
        TextWrap.Lines(revision.Change, Edges[2] - Edges[1] - (2 * Inset), Height);

    /// <summary>Draws a row above a height and returns its upper edge.</summary>
    private static double DrawRow(
        Sketch sketch, double left, double bottom, string revision, ImmutableArray<string> change, string date, string by)
    {
        var top = bottom + (change.Length * Pitch);
        var baseline = top - Pitch + ((Pitch - Height) / 2);
        Cell(0, revision);
        Cell(2, date);
        Cell(3, by);
        for (var i = 0; i < change.Length; i++)
        {
            sketch.Text(Layer.Frame, change[i], new(left + Edges[1] + Inset, baseline - (i * Pitch)), Height);
        }

        sketch.Line(Layer.Frame, new(left, top), new(left + TitleBlock.Width, top), LineConventions.Thin);
        return top;

        void Cell(int column, string text)
        {
            var (shown, height) = TextWrap.Fitted(text, Edges[column + 1] - Edges[column] - (2 * Inset), [Height]);
            if (shown.Length > 0)
            {
                sketch.Text(Layer.Frame, shown, new(left + Edges[column] + Inset, baseline), height);
            }
        }
    }
}
