using System.Collections.Immutable;
using System.Security.Cryptography;
using PlanForge.Drafting.Cutting;
using PlanForge.Drafting.Model;
using PlanForge.Geometry;
using PlanForge.Output.Dxf;
using PlanForge.Output.Inspection;

namespace PlanForge.Folders;

/// <summary>Files kept from one run to the next by the drawing they hold, with what was worked out from their bytes.</summary>
internal sealed class KeptFiles
{
    private readonly Kept<Itself<OutputFile>, string> _hashes = new();

    /// <summary>What was written to the disk.</summary>
    public WrittenFiles Written { get; } = new();

    /// <summary>Pictures of sheets, by sheet and path.</summary>
    public Kept<(Itself<Sheet> Sheet, string Path), OutputFile> Pictures { get; } = new();

    /// <summary>Cut files of parts, DXF and SVG.</summary>
    public Kept<(Itself<CutDrawing> Cut, Itself<CutProfile> Profile, DxfVersion Version), ImmutableArray<OutputFile>> Parts { get; } = new();

    /// <summary>What is told of parts for the cutter.</summary>
    public Kept<(Itself<CutDrawing> Cut, Itself<CutProfile> Profile), CutFigures> CutFigures { get; } = new();

    /// <summary>Cut files of sheets of stock, DXF and SVG.</summary>
    public Kept<CutSheetKey, ImmutableArray<OutputFile>> Sheets { get; } = new();

    /// <summary>What the inspection found at fault in a file.</summary>
    public Kept<Itself<OutputFile>, ImmutableArray<Finding>> Faults { get; } = new();

    /// <summary>The SHA-256 of a file in small hexadecimal digits.</summary>
    public string HashOf(OutputFile file) => _hashes.Of(new(file), () => Convert.ToHexStringLower(SHA256.HashData(file.Content.Span)));

    /// <summary>Ends a run that came to its end; what it did not ask for is let go.</summary>
    public void EndRun()
    {
        _hashes.EndRun();
        Pictures.EndRun();
        Parts.EndRun();
        CutFigures.EndRun();
        Sheets.EndRun();
        Faults.EndRun();
    }
}

/// <summary>All that the cut files of a sheet of stock depend on.</summary>
internal sealed class CutSheetKey(CutSheet sheet, CutProfile profile, DxfVersion version) : IEquatable<CutSheetKey>
{
    private readonly CutSheet _frame = sheet with { Cuts = [], Notes = [] };
    private readonly ImmutableArray<PlacedCut> _cuts = sheet.Cuts;
    private readonly ImmutableArray<string> _notes = sheet.Notes;
    private readonly (Itself<CutProfile> Profile, DxfVersion Version) _way = (new(profile), version);

    public bool Equals(CutSheetKey? other) => other is not null && _way == other._way && _frame == other._frame
        && _cuts.AsSpan().SequenceEqual(other._cuts.AsSpan()) && _notes.AsSpan().SequenceEqual(other._notes.AsSpan());

    public override bool Equals(object? obj) => Equals(obj as CutSheetKey);

    public override int GetHashCode() => HashCode.Combine(_way, _frame.Name, _cuts.Length);
}
