using System.Text;
using PlanForge.Output.Inspection.Checks;
using PlanForge.Output.Inspection.Reading;
using PlanForge.Output.Inspection.Reading.Dxf;
using PlanForge.Output.Inspection.Reading.Svg;

namespace PlanForge.Output.Inspection;

/// <summary>Looks through a cut file, of this program or any other, for what goes wrong at the cutter.</summary>
public static class CutFileInspector
{
    /// <summary>The most bytes of a file that are read.</summary>
    public const int GreatestSize = 64 * 1024 * 1024;

    // With these words every DXF file in binary form begins (DXF reference, binary DXF files; from memory).
    private const string BinaryMark = "AutoCAD Binary DXF";

    /// <summary>Inspects a DXF or SVG file. Never throws for what the file holds; time and memory are bounded by <see cref="GreatestSize"/>.</summary>
    /// <param name="name">Its name: the ending tells the format, where it does not the content does; R12 files name their unit in it.</param>
    /// <param name="content">Its bytes.</param>
    /// <param name="options">What is known about the sheet.</param>
    /// <exception cref="ArgumentOutOfRangeException">A size of the options that is not over 0.</exception>
    public static InspectionResult Inspect(string name, byte[] content, InspectionOptions options)
    {
        ArgumentNullException.ThrowIfNull(name);
        ArgumentNullException.ThrowIfNull(content);
        ArgumentNullException.ThrowIfNull(options);
        CheckOver0(options.Thickness);
        CheckOver0(options.Sheet?.Width);
        CheckOver0(options.Sheet?.Height);
        var findings = new FindingList();
        var file = new CutFile();
        if (content.Length > GreatestSize)
        {
            findings.Fault(FindingCode.TooLarge, TextPlace.WholeFile, "the file is larger than 64 MiB");
            return new(findings.ToSorted(), new("", "", [], []));
        }

        Read(name, content, file, findings);
        var layers = DrawingCheck.Run(file, options, findings);
        return new(findings.ToSorted(), new(file.Format, file.Unit, layers, [.. file.Colours]));
    }

    private static void Read(string name, byte[] content, CutFile file, FindingList findings)
    {
        var text = TextOf(content);
        if (text.StartsWith(BinaryMark, StringComparison.Ordinal))
        {
            file.IsIncomplete = true;
            findings.Fault(FindingCode.Syntax, TextPlace.WholeFile, "this is DXF in binary form, which few machines read; save it as text");
        }
        else if (IsSvg(name, text))
        {
            SvgFileReader.Read(text, file, findings);
        }
        else
        {
            DxfFileReader.Read(name, text, file, findings);
        }

        if (file.IsFull)
        {
            findings.Fault(FindingCode.TooLarge, TextPlace.WholeFile, FormattableString.Invariant($"there are more than {CutFile.MostSegments} lines and arcs; the others were not looked at"));
        }
    }

    private static bool IsSvg(string name, string text) => Path.GetExtension(name) switch
    {
        var ending when ending.Equals(".svg", StringComparison.OrdinalIgnoreCase) => true,
        var ending when ending.Equals(".dxf", StringComparison.OrdinalIgnoreCase) => false,
        _ => text.AsSpan().TrimStart().StartsWith("<"),
    };

    // DXF before AC1021 is written in a code page: what is no UTF-8 is read byte by byte, which keeps ASCII and the places.
    private static string TextOf(byte[] content)
    {
        ReadOnlySpan<byte> bytes = content;
        bytes = bytes.StartsWith("\uFEFF"u8) ? bytes[3..] : bytes;
        return System.Text.Unicode.Utf8.IsValid(bytes) ? Encoding.UTF8.GetString(bytes) : Encoding.Latin1.GetString(bytes);
    }

    private static void CheckOver0(double? size)
    {
        if (size is { } given && !(given > 0 && double.IsFinite(given)))
        {
            throw new ArgumentOutOfRangeException(nameof(size), given, "A thickness or sheet is over 0 mm.");
        }
    }
}
