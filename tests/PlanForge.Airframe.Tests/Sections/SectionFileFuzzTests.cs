using CsCheck;
using PlanForge.Airframe.Diagnostics;
using PlanForge.Airframe.Sections;

namespace PlanForge.Airframe.Tests.Sections;

public sealed class SectionFileFuzzTests
{
    private const string Alphabet = "0123456789.-+eED ,;\t\r\n#abN\u221E\uFEFF\0\uD800";

    private static readonly string[] Files =
    [
        DatText.Loop(DatText.Surface(Naca.Section("2412").Upper, 8), DatText.Surface(Naca.Section("2412").Lower, 8)),
        DatText.Lists(DatText.Surface(Naca.Section("0009").Upper, 6), DatText.Surface(Naca.Section("0009").Lower, 7), format: "0.000"),
        TableFile.Text("clark-y.dat"),
    ];

    private static readonly Gen<(int Kind, double Place, int Character)> Edits =
        Gen.Select(Gen.Int[0, 4], Gen.Double[0, 1], Gen.Int[0, Alphabet.Length - 1]);

    [Fact]
    public void A_mutated_file_gives_a_usable_section_or_errors_but_never_throws() =>
        Gen.Select(Gen.Int[0, 2], Edits.Array[1, 12]).Sample((file, edits) => Check(edits.Aggregate(Files[file], Edited)), iter: 8000);

    [Fact]
    public void Any_text_gives_a_usable_section_or_errors_but_never_throws() =>
        Gen.String[Gen.Char[Alphabet], 0, 400].Sample(Check, iter: 8000);

    [Fact]
    public void Any_points_give_a_usable_section_or_errors_but_never_throw() =>
        Gen.Select(Gen.Int[-3, 12], Gen.Int[-4, 4]).Array[5, 24].Sample(
            points => Check(string.Concat(points.Select(point => FormattableString.Invariant($"{point.Item1 / 10.0} {point.Item2 / 20.0}\n")))),
            iter: 8000);

    private static string Edited(string text, (int Kind, double Place, int Character) edit)
    {
        if (text.Length == 0)
        {
            return text;
        }

        var at = (int)(edit.Place * (text.Length - 1));
        var lines = text.Split('\n');
        var line = (int)(edit.Place * (lines.Length - 1));
        return edit.Kind switch
        {
            0 => text.Remove(at, 1),
            1 => text.Insert(at, Alphabet[edit.Character].ToString()),
            2 => string.Join('\n', [.. lines[..line], .. lines[(line + 1)..]]),
            3 => string.Join('\n', [.. lines[..line], lines[edit.Character % lines.Length], .. lines[line..]]),
            _ => text[..at] + Alphabet[edit.Character] + text[(at + 1)..],
        };
    }

    private static void Check(string text)
    {
        var (section, findings) = SectionFile.Read("fuzz.dat", text);
        Assert.Equal(section is null, findings.Any(finding => finding.Severity == Severity.Error));
        Assert.All(findings, finding => Assert.True(finding.At.Line <= text.Length + 1 && finding.At.Length > 0));
        if (section is null)
        {
            return;
        }

        for (var i = 0; i <= 16; i++)
        {
            foreach (var point in (SectionPoint[])[section.Upper(i / 16.0), section.Lower(i / 16.0)])
            {
                Assert.True(double.IsFinite(point.X) && double.IsFinite(point.Y) && double.IsFinite(point.Dx) && double.IsFinite(point.Dy));
                Assert.True(Math.Abs(point.Y) < 10);
            }
        }

        Assert.True(double.IsFinite(section.Thickness) && double.IsFinite(section.Camber));
        Assert.True(section.Underside is not { } line || double.IsFinite(line.Angle));
        Assert.All(section.UpperBreaks.Concat(section.LowerBreaks), w => Assert.InRange(w, 1e-12, 1 - 1e-12));
    }
}
