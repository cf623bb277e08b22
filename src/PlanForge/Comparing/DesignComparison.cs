using System.Collections.Immutable;
using PlanForge.Airframe.Described;
using PlanForge.Designs;
using PlanForge.Folders;
using PlanForge.Parts;
using PlanForge.Parts.Comparison;

namespace PlanForge.Comparing;

/// <summary>Two designs held against each other.</summary>
/// <param name="Old">What there was.</param>
/// <param name="New">What there is.</param>
/// <param name="Parts">Their parts and figures.</param>
/// <param name="Sheets">The new sheets.</param>
/// <param name="GoneSheets">The old sheets that no new one is like.</param>
/// <param name="Values">The values of the description that differ.</param>
internal sealed record DesignComparison(
    Design Old,
    Design New,
    PartListComparison Parts,
    ImmutableArray<SheetComparison> Sheets,
    ImmutableArray<DrawnSheet> GoneSheets,
    ImmutableArray<ValueChange> Values)
{
    /// <summary>True when all that was printed and cut still holds, and no figure differs.</summary>
    public bool IsSame => Parts.Parts.All(part => part.State == PartState.Same) && Parts.Figures.IsEmpty && Sheets.All(sheet => sheet.Was is not null);

    /// <summary>Compares two designs.</summary>
    /// <param name="old">What there was.</param>
    /// <param name="printed">What was printed of it, where a folder says so.</param>
    /// <param name="now">What there is.</param>
    public static DesignComparison Of(Design old, DrawnState? printed, Design now)
    {
        var oldSheets = (printed ?? DrawnState.Of(old)).Sheets;
        var newSheets = DrawnState.Of(now).Sheets;
        return new(
            old,
            now,
            PartListComparison.Of(ListOf(old), ListOf(now)),
            SheetComparison.Between(oldSheets, newSheets),
            [.. oldSheets.Where(sheet => newSheets.All(it => it.Fingerprint != sheet.Fingerprint))],
            now.ListValues().Since(old.ListValues()));
    }

    /// <summary>The values that differ of those that a part was or is made from; none for one that is the same.</summary>
    public IEnumerable<ValueChange> CausesOf(PartComparison part) => part.State == PartState.Same
        ? []
        : Values.Where(value => part.New?.Inputs.Covers(value.Path) == true || part.Old?.Inputs.Covers(value.Path) == true);

    /// <summary>
    /// The values that differ and are behind a sheet that must be printed though no part on it changed: what it reads itself, else what put
    /// other parts on it. None for a sheet that is kept, or of which a part says why.
    /// </summary>
    public IEnumerable<ValueChange> CausesOf(SheetComparison sheet)
    {
        if (sheet.Was is not null || Parts.Parts.Any(part => part.State != PartState.Same && sheet.Sheet.Parts.Contains(part.Part.Id)))
        {
            return [];
        }

        var now = New.Sheets.Sheets.First(drawn => drawn.Number == sheet.Sheet.Number);
        var was = Old.Sheets.Sheets.FirstOrDefault(drawn => drawn.Title == now.Title && drawn.Parts.SequenceEqual(now.Parts));
        var own = Values.Where(value => now.OwnInputs.Covers(value.Path) || was?.OwnInputs.Covers(value.Path) == true).ToList();
        return own.Count > 0 ? own : Values.Where(value => now.PlacingInputs.Covers(value.Path));
    }

    private static PartList ListOf(Design design) => new(design.Parts, [], []) { AirframeFigures = design.AirframeFigures };
}
