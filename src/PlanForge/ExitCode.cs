namespace PlanForge;

/// <summary>What the command reports to the shell. Of several descriptions the highest code decides.</summary>
internal enum ExitCode
{
    /// <summary>Everything asked for was done.</summary>
    Done = 0,

    /// <summary>A description, a section file it names, or the file of printers is at fault.</summary>
    DescriptionFault = 1,

    /// <summary>The command line is at fault; nothing was read or written.</summary>
    CommandLineFault = 2,

    /// <summary>A file or folder cannot be read or written.</summary>
    FileSystemFault = 3,

    /// <summary>A cut file that was inspected would be cut wrongly, or not at all.</summary>
    CutFileFault = 4,

    /// <summary>Paper or wood that was asked about is not current, or not known.</summary>
    NotCurrent = 5,

    /// <summary>The program itself is at fault (<c>EX_SOFTWARE</c> of BSD's sysexits.h); nothing of that description was written.</summary>
    InternalFault = 70,

    /// <summary>Stopped by SIGINT (Ctrl-C): 128 and the signal's number, as shells count it.</summary>
    Interrupted = 130,

    /// <summary>Stopped by SIGTERM.</summary>
    Terminated = 143,
}
