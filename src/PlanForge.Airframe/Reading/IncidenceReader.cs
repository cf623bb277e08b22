using PlanForge.Airframe.Diagnostics;
using PlanForge.Airframe.Format;
using PlanForge.Airframe.Inputs;

namespace PlanForge.Airframe.Reading;

/// <summary>Reads an incidence in any of its forms.</summary>
internal static class IncidenceReader
{
    /// <summary>Reads an incidence; its angle is NaN when it failed.</summary>
    /// <param name="value">The value.</param>
    /// <param name="chord">The chord of the root section, mm.</param>
    /// <param name="root">Where that chord comes from.</param>
    /// <param name="at">Where the wing or tailplane stands.</param>
    /// <param name="findings">Receives what is wrong.</param>
    public static IncidenceDescription Read(ReadValue? value, double chord, Origin root, SourcePosition at, Findings findings) => value switch
    {
        NumberValue number => new(number.Number, IncidenceReference.Chord, number.At) { Origin = number.Origin },
        MappingValues mapping => new(
            mapping.Format == IncidenceFormat.ByRise ? OfRise(mapping, chord, findings) : mapping.Number(IncidenceFormat.Angle),
            (IncidenceReference)mapping.Word(IncidenceFormat.Reference),
            mapping.At)
        {
            Origin = mapping.Format == IncidenceFormat.ByRise && mapping.Choice(IncidenceFormat.Over) is WordValue
                ? mapping.Origin.From(IncidenceFormat.Rise, root, WingFormat.Chord)
                : mapping.Origin,
        },
        _ => new(double.NaN, IncidenceReference.Chord, value?.At ?? at),
    };

    private static double OfRise(MappingValues mapping, double chord, Findings findings)
    {
        var rise = mapping.Number(IncidenceFormat.Rise);
        var at = mapping.AtValue(IncidenceFormat.Rise);
        double angle;
        if (mapping.Choice(IncidenceFormat.Over) is NumberValue { Number: var length })
        {
            angle = Math.Atan(rise / length);
        }
        else if (Math.Abs(rise) > chord)
        {
            findings.Error(at, $"`rise` is {findings.Length(rise)}; it cannot be over the chord, {findings.Length(chord)}");
            return double.NaN;
        }
        else
        {
            angle = Math.Asin(rise / chord);
        }

        return findings.IsAllowed(angle, IncidenceFormat.Angle.Format, "the angle of this rise", at) ? angle : double.NaN;
    }
}
