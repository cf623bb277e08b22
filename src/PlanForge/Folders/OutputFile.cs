namespace PlanForge.Folders;

/// <summary>A file to write.</summary>
/// <param name="Path">Path inside the design's folder, with <c>/</c> between its parts.</param>
/// <param name="Content">Its bytes.</param>
internal sealed record OutputFile(string Path, ReadOnlyMemory<byte> Content);
