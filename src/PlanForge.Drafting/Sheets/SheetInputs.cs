using PlanForge.Airframe.Inputs;
using PlanForge.Parts;

namespace PlanForge.Drafting.Sheets;

/// <summary>Which values of the description went into which sheet.</summary>
/// <param name="Room">What decides how much room a sheet has: parts are turned or cut in pieces by it.</param>
/// <param name="Units">What decides how lengths are written.</param>
/// <param name="Stock">What nests read besides their parts.</param>
/// <param name="List">The parts.</param>
internal sealed record SheetInputs(InputSet Room, InputSet Units, InputSet Stock, PartList List)
{
    /// <summary>What the views of the whole airframe are drawn from.</summary>
    public InputSet Arrangement { get; init; } = InputSet.None;

    /// <summary>What decides which drawings lie together: all parts are placed one after the other.</summary>
    public InputSet Placing { get; } = InputSet.OfAll([Room, Units, Stock, .. List.Parts.Select(part => part.Inputs)]);

    /// <summary>What a sheet itself reads for its drawings, whatever the parts on it are made from.</summary>
    public InputSet Own(OpenSheet sheet)
    {
        var sets = new List<InputSet> { Room, Units };
        foreach (var (item, _) in sheet.Drawings)
        {
            // A nest is of all parts that might be cut of its stock; a drawing of neither part nor nest is the arrangement.
            sets.AddRange(item.Part is not null ? []
                : item.Kind == PartPlacing.Nests ? [Stock, .. List.Parts.Where(cut => cut.Making == Making.Cut).Select(cut => cut.Inputs)]
                : [Arrangement]);
        }

        return InputSet.OfAll(sets.Distinct());
    }

    /// <summary>What the parts on a sheet are made from.</summary>
    public static InputSet OfParts(OpenSheet sheet) => InputSet.OfAll(sheet.Drawings.Select(drawing => drawing.Item.Part?.Inputs).OfType<InputSet>().Distinct());
}
