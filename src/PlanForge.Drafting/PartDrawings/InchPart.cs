using System.Collections.Immutable;
using PlanForge.Airframe;
using PlanForge.Drafting.Conventions;
using PlanForge.Drafting.Lettering;
using PlanForge.Parts;

namespace PlanForge.Drafting.PartDrawings;

/// <summary>A part on a sheet in inches: the fractions in its texts become fractions of the lettering.</summary>
internal static class InchPart
{
    public static Part Of(Part part)
    {
        var labels = ImmutableArray.CreateBuilder<PartLabel>(part.Labels.Length);
        foreach (var label in part.Labels)
        {
            labels.Add(Lettered(label));
        }

        var dimensions = ImmutableArray.CreateBuilder<PartDimension>(part.Dimensions.Length);
        foreach (var dimension in part.Dimensions)
        {
            dimensions.Add(Lettered(dimension));
        }

        var tables = ImmutableArray.CreateBuilder<PartTable>(part.Tables.Length);
        foreach (var table in part.Tables)
        {
            var rows = ImmutableArray.CreateBuilder<ImmutableArray<string>>(table.Rows.Length);
            foreach (var row in table.Rows)
            {
                rows.Add(Lettered(row));
            }

            tables.Add(table with { Title = InchText.WithFractions(table.Title), Header = Lettered(table.Header), Rows = rows.MoveToImmutable() });
        }

        return part with
        {
            Labels = labels.MoveToImmutable(),
            Dimensions = dimensions.MoveToImmutable(),
            Tables = tables.MoveToImmutable(),
            Notes = Lettered(part.Notes),
        };
    }

    // Figures of a fraction are smaller than the text: labels are lettered as large as dimensions are, all of them, for one
    // size beside another looks like a mistake. Names that are engraved keep the size they are cut in.
    private static PartLabel Lettered(PartLabel label) => label.IsEngraved
        ? label
        : label with
        {
            Text = InchText.WithFractions(label.Text),
            Height = Math.Max(label.Height, LetteringSizes.For(new(DisplayUnit.Inch)).Body),
        };

    private static PartDimension Lettered(PartDimension dimension) => dimension switch
    {
        PartDimension.Linear { Text: { } text } linear => linear with { Text = InchText.WithFractions(text) },
        PartDimension.Leader leader => leader with { Text = InchText.WithFractions(leader.Text) },
        _ => dimension,
    };

    private static ImmutableArray<string> Lettered(ImmutableArray<string> texts)
    {
        var lettered = ImmutableArray.CreateBuilder<string>(texts.Length);
        foreach (var text in texts)
        {
            lettered.Add(InchText.WithFractions(text));
        }

        return lettered.MoveToImmutable();
    }
}
