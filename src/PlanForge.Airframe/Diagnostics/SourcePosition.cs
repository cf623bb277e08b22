namespace PlanForge.Airframe.Diagnostics;

/// <summary>A stretch of text on one line of a file: where a message points.</summary>
/// <param name="File">The file's name as the user gave it.</param>
/// <param name="Line">Line, counted from 1; 0 when the message is about the file as a whole.</param>
/// <param name="Column">Column of the first character, counted from 1 in UTF-16 units; 0 with line 0.</param>
/// <param name="Length">How many characters the caret line underlines, at least 1.</param>
public readonly record struct SourcePosition(string File, int Line, int Column, int Length = 1)
{
    /// <summary>The file as a whole.</summary>
    public static SourcePosition WholeFile(string file) => new(file, 0, 0);
}
