using System.Collections.Immutable;
using PlanForge.Airframe.Diagnostics;
using PlanForge.Airframe.Expressions;
using PlanForge.Airframe.Format;
using PlanForge.Airframe.Quantities;
using PlanForge.Airframe.Reading;
using PlanForge.Airframe.Reading.Yaml;

namespace PlanForge.Airframe.Measuring;

/// <summary>Reads files of measurements: the YAML, the units and the expressions of descriptions, with keys of their own.</summary>
public static class MeasurementReader
{
    /// <summary>Reads a file; one run reports all errors.</summary>
    /// <param name="fileName">Its name as the user gave it, for messages.</param>
    /// <param name="text">Its text.</param>
    /// <param name="designUnits">The unit of bare numbers where the file names none: the design's.</param>
    public static MeasurementResult Read(string fileName, string text, DisplayUnit designUnits)
    {
        ArgumentNullException.ThrowIfNull(fileName);
        ArgumentNullException.ThrowIfNull(text);
        var diagnostics = new DiagnosticList(fileName);
        var read = YamlLoader.Load(new SourceText(fileName, text), diagnostics) is { } root && !IsDescription(root, diagnostics)
            ? Read(new BoardWords(diagnostics).Checked(root), designUnits, diagnostics)
            : null;
        return new(diagnostics.HasErrors ? null : read, diagnostics.ToSorted());
    }

    /// <summary>True for a file of measurements that was given where a description belongs.</summary>
    internal static bool IsMeasurements(YamlMapping root) =>
        root.Find(MeasuringFormat.Rounds.Name) is not null && root.Find(AirframeFormat.Version.Name) is null && root.Find(AirframeFormat.Wing.Name) is null;

    private static bool IsDescription(YamlMapping root, DiagnosticList diagnostics)
    {
        if (root.Find(AirframeFormat.Version.Name) is null || root.Find(MeasuringFormat.Rounds.Name) is not null)
        {
            return false;
        }

        diagnostics.Error(root.At, "this is a description of an airframe, not a file of measurements: the description comes first, what was measured second");
        return true;
    }

    private static BenchMeasurements Read(YamlMapping root, DisplayUnit designUnits, DiagnosticList diagnostics)
    {
        var quantities = new QuantityReader(UnitsOf(root, designUnits), diagnostics);
        var values = new ValueReader(quantities, new NoParameters(), diagnostics).ReadMapping(root, MeasuringFormat.Root);
        var rounds = ImmutableArray.CreateBuilder<MeasuringRound>();
        foreach (var item in values.List(MeasuringFormat.Rounds))
        {
            if (item is MappingValues round)
            {
                rounds.Add(RoundReader.Read(round, diagnostics));
            }
        }

        var tolerance = values.Mapping(MeasuringFormat.Tolerance);
        var design = values.TextValue(MeasuringFormat.Design);
        return new(
            design?.Text,
            design?.At ?? values.At,
            new(
                tolerance?.Number(MeasuringFormat.AcrossTolerance) ?? double.NaN,
                tolerance?.Number(MeasuringFormat.RiseTolerance) ?? double.NaN,
                tolerance?.Number(MeasuringFormat.SquareTolerance) ?? double.NaN,
                tolerance?.Number(MeasuringFormat.ThrustTolerance) ?? double.NaN),
            rounds.ToImmutable());
    }

    private static DisplayUnit UnitsOf(YamlMapping root, DisplayUnit designUnits) =>
        root.Find(MeasuringFormat.Units.Name) is YamlScalar scalar
            && MeasuringFormat.Units.Format.Words.IndexOf(scalar.Text) is >= 0 and var index
            ? (DisplayUnit)index
            : designUnits;

    /// <summary>Measurements are plain numbers: there is nothing to name.</summary>
    private sealed class NoParameters : IParameters
    {
        public IReadOnlyList<string> Names => [];

        public bool IsKnown(string name) => false;

        public Quantity? ValueOf(string name) => null;
    }
}

/// <summary>What came of reading a file of measurements.</summary>
/// <param name="Measurements">The measurements, or null when there is an error among the findings.</param>
/// <param name="Findings">What is wrong.</param>
public sealed record MeasurementResult(BenchMeasurements? Measurements, ImmutableArray<Diagnostic> Findings);
