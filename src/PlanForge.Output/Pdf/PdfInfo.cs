using System.Collections.Immutable;

namespace PlanForge.Output.Pdf;

/// <summary>What a PDF says about its making. No date: the same sheets give the same bytes on any day.</summary>
/// <param name="Producer">Program and version, such as <c>PlanForge 0.1.0</c>.</param>
public sealed record PdfInfo(string Producer)
{
    /// <summary>Whose the drawing is; empty for nobody.</summary>
    public string Author { get; init; } = "";

    /// <summary>What it is about; empty to leave it out.</summary>
    public string Subject { get; init; } = "";

    /// <summary>Words to find it by, parted by commas; empty to leave them out.</summary>
    public string Keywords { get; init; } = "";

    /// <summary>The files it was made from, which travel with it; their names are different from each other.</summary>
    public ImmutableArray<PdfAttachment> Attachments { get; init; } = [];
}

/// <summary>A file inside a PDF.</summary>
/// <param name="Name">Its file name.</param>
/// <param name="MediaType">What it is, such as <c>text/plain</c>; ASCII.</param>
/// <param name="Content">Its bytes.</param>
public sealed record PdfAttachment(string Name, string MediaType, ReadOnlyMemory<byte> Content);
