using PlanForge.Airframe;
using PlanForge.Airframe.Inputs;

namespace PlanForge.Drafting.Sheets;

/// <summary>Writes down what is read of a description while its sheets are drawn. One thread draws the sheets.</summary>
/// <param name="Log">The log that watches issue and sheet settings.</param>
/// <param name="Name">What the design's name was read from.</param>
/// <param name="Unit">What the unit was read from.</param>
/// <param name="Notes">What the notes were made from.</param>
/// <param name="Stock">What nests read besides their parts.</param>
internal sealed record PlanRecording(InputLog Log, RecordedInputs Name, RecordedInputs Unit, RecordedInputs Notes, RecordedInputs Stock)
{
    /// <summary>
    /// Reads what a nest is laid out by besides parts: which stock there is and its sizes, and the kerf. Nests are laid out on another thread, which
    /// no log follows: so it is all that it may read.
    /// </summary>
    public static int ReadStock(AirframeDescription airframe)
    {
        var count = 0;
        foreach (var sheet in airframe.Stock)
        {
            var values = (sheet.Name, sheet.Material, sheet.Thickness, sheet.Width, sheet.Length, sheet.OnHand, sheet.Margin, sheet.Spacing, sheet.Remnants);
            count += values.Remnants.Length;
        }

        return count + airframe.Cutter.Kerfs.Length + (airframe.Cutter.Kerf is null ? 0 : 1);
    }
}
