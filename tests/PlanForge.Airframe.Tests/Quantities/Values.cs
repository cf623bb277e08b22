using PlanForge.Airframe.Diagnostics;
using PlanForge.Airframe.Expressions;
using PlanForge.Airframe.Format;
using PlanForge.Airframe.Quantities;
using PlanForge.Airframe.Reading;
using PlanForge.Airframe.Reading.Yaml;

namespace PlanForge.Airframe.Tests.Quantities;

/// <summary>Works out single values as the reader does.</summary>
internal static class Values
{
    /// <summary>A value in mm, rad, g or plain; NaN when it is refused.</summary>
    public static double Of(string text, Dimension dimension = Dimension.Length, DisplayUnit units = DisplayUnit.Millimetre)
    {
        var diagnostics = new DiagnosticList("test");
        var scalar = new YamlScalar(new("test", 1, 1), text, null);
        return new QuantityReader(units, diagnostics).Read(scalar, new QuantityFormat(dimension, Interval.Any), "`value`", new NoParameters());
    }

    private sealed class NoParameters : IParameters
    {
        public IReadOnlyList<string> Names => [];

        public bool IsKnown(string name) => false;

        public Quantity? ValueOf(string name) => null;
    }
}
