using System.Collections.Immutable;
using PlanForge.Airframe.Diagnostics;

namespace PlanForge.Airframe.Reading;

/// <summary>The sheets of stock by name, for slots and tabs that follow a sheet's measured thickness.</summary>
/// <param name="stock">The sheets.</param>
/// <param name="fit">How much wider than the sheet a slot is, mm.</param>
/// <param name="findings">Takes names of sheets that there are not.</param>
internal sealed class NamedSheets(ImmutableArray<StockDescription> stock, double fit, Findings findings)
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
}
