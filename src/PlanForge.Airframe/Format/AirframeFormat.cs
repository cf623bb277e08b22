using static PlanForge.Airframe.Format.Presence;

namespace PlanForge.Airframe.Format;

/// <summary>The keys of a whole description: the root of the table.</summary>
internal static class AirframeFormat
{
    public static readonly Key<VersionFormat> Version = new("planforge", new(), "Version of the format.", Required);

    public static readonly Key<TextFormat> Name = new("name", TextFormat.Name,
        "The design's name; the output folder is called after it.", Required);

    public static readonly Key<TextFormat> Revision = new("revision", TextFormat.Line, "Revision for the title block.");

    public static readonly Key<TextFormat> Owner = new("owner", TextFormat.Line, "Legal owner for the title block.");

    public static readonly Key<TextFormat> Creator = new("creator", TextFormat.Line, "Who made the design, for the title block.");

    public static readonly Key<TextFormat> Approver = new("approver", TextFormat.Line, "Who approved it, for the title block.");

    public static readonly Key<TextFormat> IssueDate = new("date_of_issue", TextFormat.Line,
        "Date of issue for the title block, as it is to stand there; without it there is none.");

    public static readonly Key<TextFormat> RevisionIndex = new("revision", TextFormat.Line, "Its letter or number.", Required);

    public static readonly Key<TextFormat> RevisionChange = new("change", TextFormat.Line, "What was changed.", Required);

    public static readonly Key<TextFormat> RevisionDate = new("date", TextFormat.Line, "When, as it is to stand there.");

    public static readonly Key<TextFormat> RevisionBy = new("by", TextFormat.Line, "By whom.");

    public static readonly MappingFormat PastRevision = new("revision-entry", "a revision",
        RevisionIndex, RevisionChange, RevisionDate, RevisionBy);

    public static readonly Key<ListFormat> Revisions = new("revisions", new(() => PastRevision),
        "The revision table of the first sheet, oldest first.");

    public static readonly Key<ListFormat> Notes = new("notes", new(() => TextFormat.Line), "Lines of text for the sheets.");

    public static readonly Key<WordFormat> Units = new("units", new("mm", "cm", "in"),
        "The unit of bare numbers where a length stands.", Required);

    public static readonly Key<ParameterValueFormat> ParameterValue = new("value", new(), "Its value.", Required);

    public static readonly Key<ParameterValueFormat> ParameterFrom = new("from", new(), "The least value allowed.");

    public static readonly Key<ParameterValueFormat> ParameterTo = new("to", new(), "The greatest value allowed.");

    public static readonly Key<TextFormat> ParameterNote = new("note", TextFormat.Line, "What it is for.");

    public static readonly Key<ParametersFormat> Parameters = new("parameters",
        new(new("parameter", "a parameter", ParameterValue, ParameterFrom, ParameterTo, ParameterNote)),
        "Named values for use in expressions.");

    public static readonly Key<MappingFormat> Wing = new("wing", WingFormat.Wing,
        "The wing; its outside is the finished outside.", Required);

    public static readonly Key<MappingFormat> Fuselage = new("fuselage", FuselageFormat.Fuselage,
        "The fuselage; its outside is the finished outside.", Required);

    public static readonly Key<ListFormat> Formers = new("formers", new(() => FormerFormat.Former),
        "Cross-section frames inside the skins.");

    public static readonly Key<MappingFormat> Saddle = new("saddle", FittingFormat.Saddle, "How the saddles are cut.", AssumedEmpty);

    public static readonly Key<MappingFormat> Retention = new("retention", FittingFormat.Retention, "What holds the wing.", AssumedEmpty);

    public static readonly Key<MappingFormat> Tailplane = new("tailplane", WingFormat.Tailplane, "The tailplane.");

    public static readonly Key<MappingFormat> Shims = new("shims", FittingFormat.Shims, "The incidence shims to make.", AssumedEmpty);

    public static readonly Key<MappingFormat> ThrustLine = new("thrust_line", FittingFormat.ThrustLine, "The line of thrust.");

    public static readonly Key<MappingFormat> Bench = new("bench", BenchFormat.Bench,
        "How the set-up on the building board is measured.", AssumedEmpty);

    public static readonly Key<ListFormat> Stock = new("stock", new(() => WorkshopFormat.Stock), "Sheets of material on hand.");

    public static readonly Key<MappingFormat> Sheets = new("sheets", WorkshopFormat.Sheets, "What to draw on.", AssumedEmpty);

    public static readonly Key<MappingFormat> Cutter = new("cutter", WorkshopFormat.Cutter,
        "What the cutting machine needs to know.", AssumedEmpty);

    public static readonly Key<MappingFormat> AsBuilt = new("as_built", AsBuiltFormat.AsBuilt,
        "What was measured on the wood; everything that depends on it is drawn to it.");

    public static readonly MappingFormat Root = new("description", "the description", Version, Name, Revision, Owner, Creator,
        Approver, IssueDate, Revisions, Notes, Units,
        Parameters, Wing, Fuselage, Formers, Saddle, Retention, Tailplane, Shims, ThrustLine, Bench, Stock, Sheets, Cutter, AsBuilt);
}
