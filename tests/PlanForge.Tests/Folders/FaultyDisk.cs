using PlanForge.Folders;

namespace PlanForge.Tests.Folders;

/// <summary>The real disk, made to fail at a chosen step; counts its calls. Writes may come from several threads.</summary>
internal sealed class FaultyDisk : IDisk
{
    private readonly Disk _disk = new();
    private int _writes;
    private int _moves;

    /// <summary>Called before each write with its number, from 1.</summary>
    public Action<int> OnWrite { get; init; } = _ => { };

    /// <summary>Called before each renaming with its number, from 1.</summary>
    public Action<int> OnMove { get; init; } = _ => { };

    /// <summary>False for a system that cannot let two folders change places.</summary>
    public bool CanExchange { get; init; } = true;

    /// <summary>Calls that wrote new bytes.</summary>
    public int Writes => _writes;

    public void Write(string path, ReadOnlySpan<byte> content)
    {
        OnWrite(Interlocked.Increment(ref _writes));
        _disk.Write(path, content);
    }

    public void Keep(string existing, string path) => _disk.Keep(existing, path);

    public bool TryExchange(string one, string other) => CanExchange && _disk.TryExchange(one, other);

    public void Move(string from, string to)
    {
        OnMove(++_moves);
        _disk.Move(from, to);
    }
}
