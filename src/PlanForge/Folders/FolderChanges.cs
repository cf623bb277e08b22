namespace PlanForge.Folders;

/// <summary>What writing a folder changed in it.</summary>
/// <param name="Written">How many files were written.</param>
/// <param name="Kept">How many were there already with the same bytes and left as they were.</param>
/// <param name="Removed">How many of an earlier run's are there no more.</param>
/// <param name="Before">What the run before drew there; null when there was none.</param>
internal sealed record FolderChanges(int Written, int Kept, int Removed, DrawnState? Before);
