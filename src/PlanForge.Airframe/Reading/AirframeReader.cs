using PlanForge.Airframe.Described;
using PlanForge.Airframe.Diagnostics;
using PlanForge.Airframe.Format;
using PlanForge.Airframe.Reading.Yaml;

namespace PlanForge.Airframe.Reading;

/// <summary>Reads descriptions.</summary>
public static class AirframeReader
{
    /// <summary>Reads a description and checks everything about it that needs no geometry.</summary>
    /// <remarks>
    /// One run reports all errors. A value that failed is reported once, not again by what uses it. Key order does not matter.
    /// The method keeps no state and never throws on account of the text.
    /// </remarks>
    /// <param name="fileName">The description's name as the user gave it, for messages.</param>
    /// <param name="text">Its text.</param>
    /// <param name="readSectionFile">
    /// Gives the text of a file named in the description, by its path relative to it with <c>/</c> between the parts; null when
    /// there is no such file. Called once for each name; what it throws is the caller's.
    /// </param>
    public static ReadResult Read(string fileName, string text, Func<string, string?> readSectionFile) =>
        Read(fileName, text, readSectionFile, ParameterOverrides.None);

    /// <summary>The same, with other values for some parameters than the text gives them.</summary>
    /// <param name="fileName">The description's name as the user gave it, for messages.</param>
    /// <param name="text">Its text.</param>
    /// <param name="readSectionFile">Gives the text of a file named in the description.</param>
    /// <param name="overrides">The other values; they are checked like the text's own, and the fingerprint is that of what results.</param>
    public static ReadResult Read(string fileName, string text, Func<string, string?> readSectionFile, ParameterOverrides overrides)
    {
        ArgumentNullException.ThrowIfNull(fileName);
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(readSectionFile);
        ArgumentNullException.ThrowIfNull(overrides);
        var diagnostics = new DiagnosticList(fileName);
        var files = new SectionFiles(fileName, readSectionFile, diagnostics);
        return YamlLoader.Load(new SourceText(fileName, text), diagnostics) is { } root && Read(root, files, overrides, diagnostics) is { } read && !diagnostics.HasErrors
            ? new(read.Airframe, diagnostics.ToSorted(), read.Values)
            : new(null, diagnostics.ToSorted());
    }

    private static (AirframeDescription Airframe, Func<DescribedValues> Values)? Read(
        YamlMapping root, SectionFiles files, ParameterOverrides overrides, DiagnosticList diagnostics)
    {
        // Units and parameters are needed before any other value, wherever they stand.
        var units = UnitsOf(root);
        var quantities = new QuantityReader(units, diagnostics);
        var parameters = ParameterTable.Read(root.Find(AirframeFormat.Parameters.Name), overrides, quantities, diagnostics);
        var values = new ValueReader(quantities, parameters, diagnostics).ReadMapping(root, AirframeFormat.Root);

        var findings = new Findings(quantities, diagnostics);
        var sections = new SectionReader(files, diagnostics);
        var wing = WingReader.Read(values.Mapping(AirframeFormat.Wing), sections, findings);
        var fuselage = FuselageReader.Read(values.Mapping(AirframeFormat.Fuselage), findings);
        var stock = WorkshopReader.Stock(values.List(AirframeFormat.Stock), findings);
        var cutter = CutterReader.Read(values.Mapping(AirframeFormat.Cutter), findings);
        var formers = FormerReader.Read(values.List(AirframeFormat.Formers), new(stock, cutter?.Fit ?? 0, cutter?.Origin ?? default, findings), findings);
        var retention = values.Mapping(AirframeFormat.Retention);
        var saddle = FittingReader.Saddle(values.Mapping(AirframeFormat.Saddle), wing, findings);
        var dowels = FittingReader.Dowels(retention?.Mapping(FittingFormat.Dowels));
        var bolts = FittingReader.Bolts(retention?.Mapping(FittingFormat.Bolts));
        var tailplane = TailplaneReader.Read(values.Mapping(AirframeFormat.Tailplane), sections, findings);
        var shims = FittingReader.Shims(values.Mapping(AirframeFormat.Shims), findings);
        var thrustLine = FittingReader.ThrustLine(values.Mapping(AirframeFormat.ThrustLine));
        var bench = BenchReader.Read(values.Mapping(AirframeFormat.Bench), fuselage, wing, findings);
        var sheets = WorkshopReader.Sheets(values.Mapping(AirframeFormat.Sheets), units);
        if (diagnostics.HasErrors || wing is null || fuselage is null || saddle is null || shims is null || bench is null
            || sheets is null || cutter is null)
        {
            return null;
        }

        parameters.WarnOfUnused();
        var airframe = new AirframeDescription(
            values.Text(AirframeFormat.Name),
            IssueReader.Read(values, files),
            [.. values.List(AirframeFormat.Notes).OfType<TextValue>().Select(note => note.Text)],
            units,
            parameters.ToNamed(),
            wing,
            fuselage,
            formers,
            saddle,
            dowels,
            bolts,
            tailplane,
            shims,
            thrustLine,
            bench,
            stock,
            sheets,
            cutter)
        { Origin = values.Origin, Overrides = parameters.Overridden() };
        CommonPractice.Check(airframe, findings);
        return (airframe, () => ValueListing.Of(values, files, parameters, units));
    }

    /// <summary>The unit of bare numbers; millimetres while the key is missing or wrong, which is reported with the other keys.</summary>
    private static DisplayUnit UnitsOf(YamlMapping root) =>
        root.Find(AirframeFormat.Units.Name) is YamlScalar scalar
            && AirframeFormat.Units.Format.Words.IndexOf(scalar.Text) is >= 0 and var index
            ? (DisplayUnit)index
            : DisplayUnit.Millimetre;
}
