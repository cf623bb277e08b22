using System.Collections.Immutable;
using PlanForge.Airframe.Diagnostics;
using PlanForge.Airframe.Format;
using PlanForge.Airframe.Inputs;

namespace PlanForge.Airframe.Reading;

/// <summary>The sheets of stock by name, for slots and tabs that follow a sheet's measured thickness.</summary>
/// <param name="stock">The sheets.</param>
/// <param name="fit">How much wider than the sheet a slot is, mm.</param>
/// <param name="cutter">Where the fit comes from.</param>
/// <param name="findings">Takes names of sheets that there are not.</param>
internal sealed class NamedSheets(ImmutableArray<StockDescription> stock, double fit, Origin cutter, Findings findings)
{
    /// <summary>The width of a slot for a sheet: its thickness and the fit, mm; NaN, reported, when there is no such slot.</summary>
    public double SlotWidth(TextValue? name)
    {
        var thickness = Thickness(name);
        if (thickness + fit <= 0)
        {
            findings.Error(name!.At, $"nothing is left of a slot for {Quote.Text(name.Text)}: it is {findings.Length(thickness)} thick and the fit {findings.Length(fit)}");
        }

        return thickness + fit;
    }

    /// <summary>The origin of a slot for a sheet: its size comes from the sheet and the fit too.</summary>
    public Origin SlotOrigin(Origin own, TextValue? name) => OfThickness(own, FormerFormat.SlotSheet, name).From(FormerFormat.SlotSheet, cutter, WorkshopFormat.SlotFit);

    /// <summary>The origin of a tab that goes through a sheet.</summary>
    public Origin TabOrigin(Origin own, TextValue? name) => OfThickness(own, FormerFormat.TabThrough, name);

    /// <summary>The measured thickness of a sheet, mm; NaN, reported, when there is none of that name.</summary>
    public double Thickness(TextValue? name)
    {
        if (name is null)
        {
            return double.NaN;
        }

        foreach (var sheet in stock)
        {
            if (sheet.Name == name.Text)
            {
                return sheet.Thickness;
            }
        }

        findings.Unknown(name, "sheet", "in the stock", [.. stock.Select(sheet => sheet.Name)]);
        return double.NaN;
    }

    // Which sheet has the name is read off all names.
    private Origin OfThickness(Origin own, Key key, TextValue? name)
    {
        foreach (var sheet in stock)
        {
            if (name is not null && sheet.Name == name.Text)
            {
                return own.From(key, sheet.Origin, WorkshopFormat.StockThickness);
            }
        }

        return own;
    }
}
