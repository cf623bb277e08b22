using System.Text;
using PlanForge.Airframe.Diagnostics;

namespace PlanForge.Designs;

/// <summary>Reads the text files of a design.</summary>
internal static class TextFile
{
    // Twice what the reader of descriptions accepts: enough for it to say so itself, little enough for /dev/zero.
    private const int GreatestSize = 2 * 1024 * 1024;

    /// <summary>A file's text as UTF-8, of which no more than two MiB are read; what is not UTF-8 becomes U+FFFD.</summary>
    /// <param name="path">The file.</param>
    /// <param name="bytes">What was read.</param>
    /// <param name="fault">What is not UTF-8, or null.</param>
    /// <exception cref="IOException">The file cannot be read.</exception>
    /// <exception cref="UnauthorizedAccessException">The file may not be read.</exception>
    public static string Read(string path, out byte[] bytes, out Diagnostic? fault)
    {
        bytes = ReadBytes(path);
        try
        {
            fault = null;
            return new UTF8Encoding(false, throwOnInvalidBytes: true).GetString(bytes);
        }
        catch (DecoderFallbackException wrong)
        {
            // The file may have been cut within a character; then it is too large, and the reader says so.
            fault = bytes.Length == GreatestSize ? null : NotUtf8(path, bytes.AsSpan(0, wrong.Index));
            return Encoding.UTF8.GetString(bytes);
        }
    }

    private static byte[] ReadBytes(string path)
    {
        using var stream = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.Read, bufferSize: 0);

        // Devices and pipes state no length.
        var bytes = new byte[stream.CanSeek && stream.Length > 0 ? Math.Min(stream.Length, GreatestSize) : GreatestSize];
        var count = stream.ReadAtLeast(bytes, bytes.Length, throwOnEndOfStream: false);
        return count == bytes.Length ? bytes : bytes[..count];
    }

    private static Diagnostic NotUtf8(string path, ReadOnlySpan<byte> before)
    {
        var line = before.Count((byte)'\n') + 1;
        var column = Encoding.UTF8.GetCharCount(before[(before.LastIndexOf((byte)'\n') + 1)..]) + 1;
        return Diagnostic.Error(new(path, line, column), "this character is not UTF-8; save the file in that encoding");
    }
}
