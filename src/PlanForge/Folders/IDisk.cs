namespace PlanForge.Folders;

/// <summary>The steps of writing a folder that fail for reasons outside this program, so that tests can make them fail.</summary>
internal interface IDisk
{
    /// <summary>Writes a new file.</summary>
    void Write(string path, ReadOnlySpan<byte> content);

    /// <summary>Makes a file, link or the like of one folder appear in another too: the same file where the system can, else a copy.</summary>
    void Keep(string existing, string path);

    /// <summary>Lets two folders change places in one step; false, with nothing done, where the system cannot.</summary>
    bool TryExchange(string one, string other);

    /// <summary>Renames a folder to a name that is free.</summary>
    void Move(string from, string to);
}
