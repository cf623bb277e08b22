using System.Collections.Immutable;
using System.Text;
using PlanForge.Airframe.Diagnostics;
using PlanForge.Designs;
using PlanForge.Folders;
using PlanForge.Terminals;

namespace PlanForge.Printers;

/// <summary>Finds and keeps printers in the file of profiles; says what is wrong.</summary>
/// <param name="path">The file.</param>
/// <param name="messages">Where to say it.</param>
internal sealed class ProfileStore(string path, Messages messages)
{
    /// <summary>All profiles; none, without a word, when there is no file; null, and the faults said, when it is broken.</summary>
    public ImmutableArray<PrinterProfile>? Read()
    {
        if (!File.Exists(path))
        {
            return [];
        }

        var text = TextFile.Read(path, out _, out var notUtf8);
        ImmutableArray<Diagnostic> findings = [];
        var profiles = notUtf8 is null ? ProfileFile.Read(path, text, out findings) : [];
        foreach (var finding in notUtf8 is null ? findings : [notUtf8])
        {
            messages.Finding(finding, text);
        }

        return notUtf8 is null && findings.IsEmpty ? profiles : null;
    }

    /// <summary>The profile of a name; null, and why said, when there is none or its measures cannot be a printer's error.</summary>
    public PrinterProfile? Find(string name, out ExitCode code)
    {
        code = ExitCode.DescriptionFault;
        if (Read() is not { } profiles)
        {
            return null;
        }

        var found = profiles.FirstOrDefault(profile => profile.Name == name);
        if (found is null)
        {
            code = ExitCode.CommandLineFault;
            messages.Error(path, profiles.IsEmpty
                ? $"there is no printer `{name}`, nor any other; planforge calibrate --printer keeps one"
                : Spelling.Near(name, profiles.Select(profile => profile.Name)) is { } near
                    ? $"there is no printer `{name}`; did you mean `{near}`?"
                    : $"there is no printer `{name}`; known are {string.Join(", ", profiles.Select(profile => $"`{profile.Name}`"))}");
            return null;
        }

        return IsSound(found) ? found : null;
    }

    /// <summary>Says what is doubtful about a profile; false when it cannot be used.</summary>
    public bool IsSound(PrinterProfile profile)
    {
        if (profile.Fault is { } fault)
        {
            messages.Error(path, $"printer `{profile.Name}`, {fault}");
            return false;
        }

        if (profile.Doubt is { } doubt)
        {
            messages.Warning(path, $"printer `{profile.Name}`, {doubt}");
        }

        return true;
    }

    /// <summary>Keeps a profile in the place of one of the same name, else after the others; false when the file is broken.</summary>
    public bool Keep(PrinterProfile profile)
    {
        if (Read() is not { } profiles)
        {
            return false;
        }

        var place = profiles.ToList().FindIndex(other => other.Name == profile.Name);
        var all = place < 0 ? profiles.Add(profile) : profiles.SetItem(place, profile);
        Directory.CreateDirectory(Path.GetDirectoryName(Path.GetFullPath(path))!);
        SingleFile.Replace(path, Encoding.UTF8.GetBytes(ProfileFile.Write(all)));
        return true;
    }
}
