using System.Runtime.InteropServices;

namespace PlanForge.Folders;

/// <summary>Calls of the C library that .NET does not offer. All answer false where the system lacks them or refuses.</summary>
internal static partial class NativeCalls
{
    // linux/fcntl.h and linux/fs.h.
    private const int CurrentFolder = -100;
    private const uint Exchange = 2;

    /// <summary>Swaps two paths in one step (renameat2, Linux 3.15).</summary>
    public static bool TryExchange(string one, string other)
    {
        if (!OperatingSystem.IsLinux())
        {
            return false;
        }

        try
        {
            return RenameAt2(CurrentFolder, one, CurrentFolder, other, Exchange) == 0;
        }
        catch (EntryPointNotFoundException)
        {
            // Some C libraries have no wrapper for it.
            return false;
        }
    }

    /// <summary>Gives a file a second name; a symbolic link is not followed but gets the second name itself.</summary>
    public static bool TryLink(string existing, string path) =>
        OperatingSystem.IsLinux() && LinkAt(CurrentFolder, existing, CurrentFolder, path, 0) == 0;

    [LibraryImport("libc", EntryPoint = "renameat2", StringMarshalling = StringMarshalling.Utf8)]
    private static partial int RenameAt2(int oldFolder, string oldPath, int newFolder, string newPath, uint flags);

    [LibraryImport("libc", EntryPoint = "linkat", StringMarshalling = StringMarshalling.Utf8)]
    private static partial int LinkAt(int oldFolder, string oldPath, int newFolder, string newPath, int flags);
}
