using System.Diagnostics;

namespace PlanForge.Tests;

/// <summary>Runs the built program as a process of its own, as a shell would.</summary>
internal sealed record ProgramProcess(int ExitCode, string Results, string Messages)
{
    public static ProgramProcess Run(string folder, params string[] words)
    {
        using var process = Start(folder, words);
        return End(process);
    }

    public static Process Start(string folder, params string[] words)
    {
        var program = Path.Combine(AppContext.BaseDirectory, "planforge.dll");
        return Process.Start(new ProcessStartInfo("dotnet", [program, .. words])
        {
            WorkingDirectory = folder,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        })!;
    }

    /// <summary>Waits for the end; what a run writes in a test fits the pipes.</summary>
    public static ProgramProcess End(Process process)
    {
        var results = process.StandardOutput.ReadToEnd();
        var messages = process.StandardError.ReadToEnd();
        process.WaitForExit();
        return new(process.ExitCode, results, messages);
    }
}
