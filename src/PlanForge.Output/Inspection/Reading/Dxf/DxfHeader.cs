using PlanForge.Geometry;

namespace PlanForge.Output.Inspection.Reading.Dxf;

/// <summary>The variables of the HEADER section that say what the drawing is.</summary>
internal sealed class DxfHeader
{
    /// <summary>The version R11 and R12 write; files without a header count as such.</summary>
    public const string R12 = "AC1009";

    // $ACADVER and its years: shared facts of section 10, DXF reference.
    private static readonly string[] Versions =
        ["AC1006", R12, "AC1012", "AC1014", "AC1015", "AC1018", "AC1021", "AC1024", "AC1027", "AC1032"];

    private readonly Dictionary<string, List<DxfTag>> _variables = new(StringComparer.Ordinal);

    public string Version { get; private set; } = R12;

    public bool IsR12 => string.CompareOrdinal(Version, "AC1012") < 0;

    /// <summary>Millimetres of a unit of the drawing.</summary>
    public double Millimetres { get; private set; } = 1;

    public string Unit { get; private set; } = "";

    public void Add(string variable, DxfTag value)
    {
        if (!_variables.TryGetValue(variable, out var values))
        {
            _variables.Add(variable, values = []);
        }

        // No variable has more than three.
        if (values.Count < 4)
        {
            values.Add(value);
        }
    }

    /// <summary>Takes version and units from what was read.</summary>
    /// <param name="fileName">Where R12 has to say its units.</param>
    /// <param name="findings">Takes what is at fault.</param>
    public void Settle(string fileName, FindingList findings)
    {
        if (_variables.GetValueOrDefault("$ACADVER") is [var version, ..])
        {
            Version = version.Value;
            if (!Versions.Contains(Version, StringComparer.Ordinal))
            {
                findings.Warning(FindingCode.Syntax, version.ValueAt, $"{Words.Quote(Version)} is no version known here; AC1015 is read by every program");
            }
        }

        if (_variables.GetValueOrDefault("$INSUNITS") is [var units, ..] && !units.Is(70, "0"))
        {
            if (units.TryInteger(out var code) && UnitOf(code) is { } known)
            {
                (Unit, Millimetres) = known;
            }
            else
            {
                findings.Fault(FindingCode.Units, units.ValueAt, $"$INSUNITS {Words.Quote(units.Value)} is no unit for a sheet to cut; 4 is mm");
            }
        }
        else if (IsR12)
        {
            Unit = FileNameUnit.Of(fileName) ?? "";
            Millimetres = Unit == "in" ? 25.4 : 1;
            if (Unit.Length == 0)
            {
                findings.Warning(FindingCode.Units, TextPlace.WholeFile, "this version of DXF carries no units: let the name of the file say them, as in part-mm.dxf");
            }
        }
        else
        {
            var at = _variables.GetValueOrDefault("$INSUNITS") is [var zero, ..] ? zero.ValueAt : TextPlace.WholeFile;
            findings.Fault(FindingCode.Units, at, "$INSUNITS is missing or 0, so the numbers may be anything; 4 is mm");
        }
    }

    /// <summary>The announced extents in mm and where; null when they are not given or not set (writers that do not know them put 1e20 and -1e20).</summary>
    public (Bounds2 Bounds, TextPlace At)? Extents()
    {
        if (Corner("$EXTMIN") is not var (low, at) || Corner("$EXTMAX") is not var (high, _))
        {
            return null;
        }

        return low.X > high.X || low.Y > high.Y ? null : (new(low.X, low.Y, high.X, high.Y), at);
    }

    /// <summary>The drawing limits in mm when they are switched on.</summary>
    public (Bounds2 Bounds, TextPlace At)? Limits()
    {
        var isOn = _variables.GetValueOrDefault("$LIMCHECK") is [{ Value: not "0" }, ..];
        return isOn && Corner("$LIMMIN") is var (low, at) && Corner("$LIMMAX") is var (high, _)
            ? (new(low.X, low.Y, high.X, high.Y), at)
            : null;
    }

    // DXF reference: $INSUNITS; in mm.
    private static (string Name, double Millimetres)? UnitOf(int code) => code switch
    {
        1 => ("in", 25.4),
        2 => ("ft", 304.8),
        4 => ("mm", 1),
        5 => ("cm", 10),
        6 => ("m", 1000),
        _ => null,
    };

    private (Point2 Point, TextPlace At)? Corner(string variable)
    {
        if (!_variables.TryGetValue(variable, out var values))
        {
            return null;
        }

        var (x, y) = (double.NaN, double.NaN);
        foreach (var value in values)
        {
            if (value.TryNumber(out var number))
            {
                x = value.Code == 10 ? number * Millimetres : x;
                y = value.Code == 20 ? number * Millimetres : y;
            }
        }

        return double.IsFinite(x) && double.IsFinite(y) ? (new(x, y), values[0].At) : null;
    }
}

/// <summary>The unit a file name speaks of.</summary>
internal static class FileNameUnit
{
    /// <summary><c>mm</c> or <c>in</c> when the name has that word between signs that are no letters, else null.</summary>
    public static string? Of(string fileName)
    {
        var name = Path.GetFileNameWithoutExtension(fileName);
        var word = 0;
        for (var i = 0; i <= name.Length; i++)
        {
            if (i < name.Length && char.IsAsciiLetter(name[i]))
            {
                continue;
            }

            foreach (var known in (ReadOnlySpan<string>)["mm", "in", "inch", "inches"])
            {
                if (name.AsSpan(word, i - word).Equals(known, StringComparison.OrdinalIgnoreCase))
                {
                    return known[..2];
                }
            }

            word = i + 1;
        }

        return null;
    }
}
