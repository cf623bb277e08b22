using PlanForge.Folders;

namespace PlanForge.Following;

/// <summary>
/// The folder of the run before, opened and prepared while the next run works out what is to be written. When something is in the way,
/// the run comes upon it where it writes, and says so there.
/// </summary>
internal sealed class FolderAhead : IDisposable
{
    private readonly string _target;
    private Task<DesignFolder?>? _opening;

    /// <summary>Begins to open a folder.</summary>
    /// <param name="target">The folder.</param>
    /// <param name="disk">The file system.</param>
    /// <param name="known">What earlier runs of this process wrote there.</param>
    public FolderAhead(string target, IDisk disk, WrittenFiles known)
    {
        _target = target;
        _opening = Task.Run(() => Opened(target, disk, known));
    }

    /// <summary>The folder, which the caller closes; null when it is another one or could not be opened. Once.</summary>
    public DesignFolder? Take(string target)
    {
        var opened = _opening?.GetAwaiter().GetResult();
        _opening = null;
        if (target == _target)
        {
            return opened;
        }

        opened?.Dispose();
        return null;
    }

    public void Dispose() => Take(_target)?.Dispose();

    private static DesignFolder? Opened(string target, IDisk disk, WrittenFiles known)
    {
        DesignFolder? folder = null;
        try
        {
            folder = DesignFolder.Open(target, disk, known);
            folder.Prepare();
            return folder;
        }
        catch (FolderFault)
        {
            folder?.Dispose();
            return null;
        }
    }
}
